package org.leafward.climate.fetch;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.DoubleSupplier;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.core.FetchBackOff;
import org.leafward.climate.source.FetchFailed;
import org.leafward.climate.source.WeatherSource;
import org.leafward.climate.source.WeatherSource.Fetched;
import org.leafward.climate.store.FetchState;
import org.leafward.climate.store.FetchTable;
import org.leafward.measure.BadInput;
import org.leafward.measure.NotThere;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Asks each source about each of its stations when that is due. A failure is noted and
 * waits longer each time; it never keeps the next station from its turn. Where nothing is
 * configured, nothing is asked and the database is left alone.
 */
public class Fetcher {

	private static final Logger LOG = LoggerFactory.getLogger(Fetcher.class);

	/**
	 * Longer than the longest fetch: eighteen slow answers of the record of a station.
	 */
	private static final Duration CLAIM = Duration.ofMinutes(15);

	/** How long a fetch that somebody waits for may take. */
	private static final Duration WAIT = Duration.ofMinutes(2);

	private final List<WeatherSource> sources;

	private final FetchTable table;

	private final DoubleSupplier random;

	private final Clock clock;

	/**
	 * Creates the fetcher.
	 * @param sources whom it asks
	 * @param table keeps how it stands
	 * @param random 0 (inclusive) to 1 (exclusive)
	 * @param clock the time
	 */
	public Fetcher(List<WeatherSource> sources, FetchTable table, DoubleSupplier random, Clock clock) {
		this.sources = List.copyOf(sources);
		this.table = table;
		this.random = random;
		this.clock = clock;
	}

	/**
	 * Fetches the observations that are due.
	 * @param timeBox no station is begun later than this from now
	 * @return what came of it, without the stations that weren't due
	 */
	public List<FetchOutcome> observations(Duration timeBox) {
		return sweep(true, timeBox);
	}

	/**
	 * Fetches the forecasts that are due.
	 * @param timeBox no station is begun later than this from now
	 * @return what came of it, without the stations that weren't due
	 */
	public List<FetchOutcome> forecasts(Duration timeBox) {
		return sweep(false, timeBox);
	}

	private List<FetchOutcome> sweep(boolean observed, Duration timeBox) {
		Instant end = this.clock.instant().plus(timeBox);
		List<FetchOutcome> outcomes = new ArrayList<>();
		for (WeatherSource source : this.sources) {
			for (String station : (source.observed() == observed) ? source.stations() : List.<String>of()) {
				if (this.clock.instant().isBefore(end)) {
					fetch(source, station, false, end).ifPresent(outcomes::add);
				}
			}
		}
		return outcomes;
	}

	/**
	 * Fetches all that is configured for a station, due or not.
	 * @param station identifier
	 * @return what came of each source
	 * @throws BadInput when no source is configured for the station
	 */
	public List<FetchOutcome> now(String station) {
		Instant end = this.clock.instant().plus(WAIT);
		List<FetchOutcome> outcomes = new ArrayList<>();
		for (WeatherSource source : this.sources) {
			if (source.stations().contains(station)) {
				outcomes.add(fetch(source, station, true, end)
					.orElseGet(() -> new FetchOutcome(source.name(), station, "busy", null, null)));
			}
		}
		if (outcomes.isEmpty()) {
			throw new BadInput("no source is configured for station " + station, "id",
					"name the station in leafward.ncei.stations, leafward.forecast.nws.stations or leafward.forecast.csv");
		}
		return outcomes;
	}

	private Optional<FetchOutcome> fetch(WeatherSource source, String station, boolean early, Instant end) {
		Instant now = this.clock.instant();
		UUID token = UUID.randomUUID();
		return this.table.claim(source.name(), station, now, now.plus(CLAIM), token, early)
			.map((state) -> fetch(source, station, new Claimed(token, state.reached(), end), state.failures()));
	}

	private FetchOutcome fetch(WeatherSource source, String station, Claimed claimed, int failures) {
		try {
			Fetched fetched = source.fetch(station, claimed);
			Instant now = this.clock.instant();
			this.table.succeeded(claimed.token, now, fetched.complete() ? now.plus(source.every()) : now);
			return new FetchOutcome(source.name(), station, fetched.complete() ? "fetched" : "partly", fetched.report(),
					null);
		}
		catch (RuntimeException ex) {
			String words = words(ex);
			Duration asked = (ex instanceof FetchFailed failed) ? failed.retryAfter() : null;
			Instant next = this.clock.instant()
				.plus(FetchBackOff.delay(failures + 1, this.random.getAsDouble(), asked));
			LOG.info("{} of station {} could not be fetched, next try at {}: {}", source.name(), station, next, words);
			this.table.failed(claimed.token, next, words);
			return new FetchOutcome(source.name(), station, "failed", null, words);
		}
	}

	private static String words(RuntimeException ex) {
		if (ex instanceof FetchFailed) {
			return String.valueOf(ex.getMessage());
		}
		if (ex instanceof BadInput bad) {
			return bad.toString();
		}
		if (ex instanceof NotThere) {
			return ex.getMessage() + " isn't registered; register it or take it out of the settings";
		}
		LOG.error("Fetching broke here, not outside", ex);
		return "something went wrong here; the log says what";
	}

	/**
	 * How it stands with everything that is configured.
	 * @return in the order of the settings
	 */
	public List<SourceStatus> status() {
		List<SourceStatus> all = new ArrayList<>();
		for (WeatherSource source : this.sources) {
			if (!source.stations().isEmpty()) {
				Map<String, FetchState> states = this.table.of(source.name())
					.stream()
					.collect(Collectors.toMap(FetchState::key, (state) -> state));
				source.stations().forEach((station) -> all.add(status(source, station, states.get(station))));
			}
		}
		return all;
	}

	private static SourceStatus status(WeatherSource source, String station, @Nullable FetchState state) {
		String kind = source.observed() ? "observations" : "forecast";
		return (state == null) ? new SourceStatus(source.name(), station, kind, null, null, 0, null, null)
				: new SourceStatus(source.name(), station, kind, state.lastOkAt(), state.lastTryAt(), state.failures(),
						state.lastError(), state.nextTryAt());
	}

	private final class Claimed implements WeatherSource.Progress {

		private final UUID token;

		private final Instant end;

		private @Nullable LocalDate reached;

		Claimed(UUID token, @Nullable LocalDate reached, Instant end) {
			this.token = token;
			this.reached = reached;
			this.end = end;
		}

		@Override
		public @Nullable LocalDate reached() {
			return this.reached;
		}

		@Override
		public void reached(LocalDate day) {
			this.reached = day;
			Fetcher.this.table.reached(this.token, day);
		}

		@Override
		public boolean outOfTime() {
			return !Fetcher.this.clock.instant().isBefore(this.end);
		}

	}

}
