package org.leafward.climate;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.core.Element;
import org.leafward.climate.source.forecast.ForecastCsv;
import org.leafward.climate.store.FetchState;
import org.leafward.climate.store.FetchTable;
import org.leafward.climate.store.ForecastTable;
import org.leafward.climate.store.StationTable;
import org.leafward.measure.BadInput;
import org.leafward.measure.NotThere;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * The forecasts of stations. Each source has one per station, replaced whole; a forecast
 * stays until a better one is there, and its age is told.
 */
@Service
public class Forecasts {

	/** Name of the source of forecasts that are handed in. */
	public static final String UPLOADED = "upload";

	/** Most days in a forecast. */
	public static final int MOST_DAYS = 60;

	/** Forecasts whose days are kept, some kB each. */
	private static final int MOST_KEPT = 2_000;

	private static final Comparator<LocalDate> DAYS = Comparator.naturalOrder();

	private final StationTable stations;

	private final ForecastTable forecasts;

	private final FetchTable fetches;

	private final TransactionTemplate transaction;

	private final Clock clock;

	private final Duration staleAfter;

	private final ApplicationEventPublisher events;

	private final BoundedCache<ForecastTable.Version, List<ForecastDay>> days = new BoundedCache<>(MOST_KEPT);

	Forecasts(StationTable stations, ForecastTable forecasts, FetchTable fetches, TransactionTemplate transaction,
			Clock clock, @Value("${leafward.forecast.stale-after:12h}") Duration staleAfter,
			ApplicationEventPublisher events) {
		this.stations = stations;
		this.forecasts = forecasts;
		this.fetches = fetches;
		this.transaction = transaction;
		this.clock = clock;
		this.staleAfter = staleAfter;
		this.events = events;
	}

	/**
	 * The forecast of a station that was issued last, whatever its source and age.
	 * @param station which station
	 * @return empty when none was ever stored
	 */
	public Optional<StationForecast> of(StationId station) {
		return this.transaction.execute((status) -> this.forecasts.newest(station).map((head) -> {
			String failure = this.fetches.find(head.source(), station.value()).map(FetchState::lastError).orElse(null);
			return new StationForecast(station, head.source(), head.issuedAt(), head.fetchedAt(), stale(head), failure,
					this.forecasts.days(station, head.source()));
		}));
	}

	private boolean stale(ForecastTable.Head head) {
		return head.issuedAt().plus(this.staleAfter).isBefore(this.clock.instant());
	}

	/**
	 * A forecast that can be leaned on.
	 *
	 * @param station the station
	 * @param issuedAt when it was made
	 * @param days in their order
	 */
	record Fresh(Station station, Instant issuedAt, List<ForecastDay> days) {
	}

	/** The forecasts of some stations, of those that have one that isn't stale. */
	Map<StationId, Fresh> fresh(Collection<Station> stations) {
		Map<StationId, ForecastTable.Version> versions = this.forecasts
			.newest(stations.stream().map(Station::id).toList());
		Map<StationId, Fresh> fresh = new HashMap<>();
		for (Station station : stations) {
			ForecastTable.Version version = versions.get(station.id());
			if (version != null && !stale(version.head())) {
				fresh.put(station.id(), new Fresh(station, version.head().issuedAt(),
						this.days.get(version, () -> this.forecasts.days(station.id(), version.head().source()))));
			}
		}
		return fresh;
	}

	/** The forecast of the first of some stations that has one that isn't stale. */
	Optional<Fresh> freshest(List<Station> stations) {
		Set<StationId> with = this.forecasts.among(stations.stream().map(Station::id).toList());
		return stations.stream()
			.filter((station) -> with.contains(station.id()))
			.flatMap((station) -> this.forecasts.newest(station.id())
				.filter((head) -> !stale(head))
				.map((head) -> new Fresh(station, head.issuedAt(), this.forecasts.days(station.id(), head.source())))
				.stream())
			.findFirst();
	}

	/** Days of the newest forecast, unless it is stale. */
	private Optional<List<ForecastDay>> fresh(StationId station) {
		return this.forecasts.newest(station)
			.filter((head) -> !stale(head))
			.map((head) -> this.forecasts.days(station, head.source()));
	}

	/**
	 * Takes a forecast in as a CSV that somebody hands in; its format is told in
	 * {@link ForecastCsv}.
	 * @param station whose forecast; must be registered
	 * @param csv the text
	 * @return the forecast as stored
	 * @throws BadInput when a line can't be used; nothing is stored then
	 * @throws NotThere when the station isn't registered
	 */
	public StationForecast upload(StationId station, String csv) {
		ForecastCsv read = ForecastCsv.read(csv);
		keep(station, UPLOADED, read.issuedAt(), read.days());
		return of(station).orElseThrow();
	}

	/**
	 * Puts a forecast in the place of the source's former one, all in one transaction.
	 * When the days that can be leaned on are others than before, {@link ForecastChanged}
	 * tells of it.
	 * @param station whose forecast; must be registered
	 * @param source name of the source
	 * @param issuedAt when it was made; null or a time to come counts as now
	 * @param days 1 to 60 days, each once
	 * @throws BadInput when there is no day, too many, one twice, or a value out of
	 * bounds
	 * @throws NotThere when the station isn't registered
	 */
	public void keep(StationId station, String source, @Nullable Instant issuedAt, List<ForecastDay> days) {
		if (days.isEmpty() || days.size() > MOST_DAYS) {
			throw new BadInput("the forecast has %d days".formatted(days.size()), "days",
					"give 1 to %d days".formatted(MOST_DAYS));
		}
		Set<LocalDate> seen = new HashSet<>();
		for (ForecastDay day : days) {
			if (!seen.add(day.day())) {
				throw new BadInput("%s is given twice".formatted(day.day()), "days", "give each day once");
			}
			check(day, "minimum", day.minimum(), Element.TMIN.lowest(), Element.TMIN.highest());
			check(day, "maximum", day.maximum(), Element.TMAX.lowest(), Element.TMAX.highest());
			check(day, "precipitation", day.precipitation(), 0, Element.PRCP.highest());
			check(day, "snowfall", day.snowfall(), 0, Element.SNWD.highest());
			check(day, "wind", day.wind(), 0, Element.AWND.highest());
			check(day, "humidity", day.lowestHumidity(), 0, 100);
		}
		Instant now = this.clock.instant();
		Instant issued = (issuedAt == null || issuedAt.isAfter(now)) ? now : issuedAt;
		this.transaction.executeWithoutResult((status) -> {
			Station known = this.stations.lock(station)
				.orElseThrow(() -> new NotThere("station " + station.value()))
				.station();
			Optional<List<ForecastDay>> before = fresh(station);
			this.forecasts.replace(station, new ForecastTable.Head(source, issued, now), days);
			if (!fresh(station).equals(before)) {
				this.events.publishEvent(new ForecastChanged(station.value(), known.point().latitude(),
						known.point().longitude(), days.stream().map(ForecastDay::day).min(DAYS).orElseThrow(),
						days.stream().map(ForecastDay::day).max(DAYS).orElseThrow()));
			}
		});
	}

	private static void check(ForecastDay day, String what, @Nullable Integer value, int low, int high) {
		if (value != null && (value < low || value > high)) {
			throw new BadInput("%s %d of %s is outside %d to %d".formatted(what, value, day.day(), low, high), what,
					"correct or leave out the value");
		}
	}

}
