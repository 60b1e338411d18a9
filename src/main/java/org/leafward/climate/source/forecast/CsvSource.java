package org.leafward.climate.source.forecast;

import java.net.URI;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.leafward.climate.Forecasts;
import org.leafward.climate.StationId;
import org.leafward.climate.source.Download;
import org.leafward.climate.source.WeatherSource;
import org.leafward.measure.NotThere;
import org.springframework.stereotype.Component;

/** Forecasts that lie as plain CSV at an address, one for each station. */
@Component
public class CsvSource implements WeatherSource {

	private static final String NAME = "csv";

	private static final Duration EVERY = Duration.ofMinutes(58);

	private static final Set<String> TYPES = Set.of("text/csv", "text/plain", "application/csv",
			"application/octet-stream");

	private final Map<String, URI> addresses;

	private final Download download;

	private final Forecasts forecasts;

	/**
	 * Creates the source.
	 * @param settings the addresses
	 * @param download fetches
	 * @param forecasts takes what comes
	 */
	public CsvSource(ForecastSettings settings, Download download, Forecasts forecasts) {
		// An environment variable gives its key in lower case.
		this.addresses = settings.csv()
			.entrySet()
			.stream()
			.collect(Collectors.toMap((entry) -> entry.getKey().toUpperCase(Locale.ROOT), Map.Entry::getValue));
		this.download = download;
		this.forecasts = forecasts;
	}

	@Override
	public String name() {
		return NAME;
	}

	@Override
	public boolean observed() {
		return false;
	}

	@Override
	public Duration every() {
		return EVERY;
	}

	@Override
	public List<String> stations() {
		return this.addresses.keySet().stream().sorted().toList();
	}

	@Override
	public Fetched fetch(String station, Progress progress) {
		StationId id = new StationId(station);
		URI address = this.addresses.get(station);
		if (address == null) {
			throw new NotThere("forecast of station " + station);
		}
		ForecastCsv read = ForecastCsv.read(this.download.text(address, "text/csv", TYPES));
		this.forecasts.keep(id, NAME, read.issuedAt(), read.days());
		return new Fetched(true, null);
	}

}
