package org.leafward.climate.web;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.leafward.climate.Forecasts;
import org.leafward.climate.Observations;
import org.leafward.climate.StationForecast;
import org.leafward.climate.StationId;
import org.leafward.climate.fetch.Fetcher;
import org.leafward.climate.fetch.SourceStatus;
import org.springframework.stereotype.Component;

/** Says in sentences how fresh a station's record and forecast are. */
@Component
class Latest {

	private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM yyyy", Locale.ENGLISH);

	private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("EEE d MMM yyyy, HH:mm 'UTC'",
			Locale.ENGLISH);

	private final Observations observations;

	private final Forecasts forecasts;

	private final Fetcher fetcher;

	private final Clock clock;

	Latest(Observations observations, Forecasts forecasts, Fetcher fetcher, Clock clock) {
		this.observations = observations;
		this.forecasts = forecasts;
		this.fetcher = fetcher;
		this.clock = clock;
	}

	List<String> of(StationId station) {
		List<String> sentences = new ArrayList<>();
		sentences.add(this.observations.lastDay(station)
			.map((day) -> "The last day with an observation is %s.".formatted(DAY.format(day)))
			.orElse("No day has an observation yet."));
		sentences.add(this.forecasts.of(station).map(this::forecast).orElse("There is no forecast for this station."));
		for (SourceStatus status : this.fetcher.status()) {
			if (status.lastFailure() != null && status.station().equals(station.value())) {
				sentences.add("The last try to fetch the %s failed: %s. What was there before is kept."
					.formatted(status.kind(), status.lastFailure().replaceAll("\\.$", "")));
			}
		}
		return sentences;
	}

	private String forecast(StationForecast forecast) {
		String sentence = "The forecast was made on %s, %s ago".formatted(time(forecast.issuedAt()),
				age(Duration.between(forecast.issuedAt(), this.clock.instant())));
		return forecast.stale() ? sentence + "; it is stale, too old to lean on." : sentence + ".";
	}

	private static String time(Instant instant) {
		return TIME.format(instant.atOffset(ZoneOffset.UTC));
	}

	private static String age(Duration age) {
		long hours = age.toHours();
		if (hours < 1) {
			return "less than an hour";
		}
		if (hours < 48) {
			return (hours == 1) ? "1 hour" : hours + " hours";
		}
		return age.toDays() + " days";
	}

}
