package org.leafward.climate.source.ncei;

import java.net.URI;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.LineProblem;
import org.leafward.climate.LoadReport;
import org.leafward.climate.Observations;
import org.leafward.climate.StationId;
import org.leafward.climate.Stations;
import org.leafward.climate.source.Download;
import org.leafward.climate.source.WeatherSource;
import org.leafward.measure.NotThere;
import org.springframework.stereotype.Component;
import org.springframework.web.util.UriComponentsBuilder;

/**
 * Daily records from NCEI's data service (documented at
 * https://www.ncei.noaa.gov/support/access-data-service-api-user-documentation). A record
 * is fetched whole the first time, ten years at a time from the oldest on, each stored at
 * once, so that a break costs only what is missing; then only its last 60 days and what
 * is new, since recent values are still corrected.
 */
@Component
public class NceiSource implements WeatherSource {

	private static final String NAME = "ncei";

	/** The service is about two days behind; asking more often only costs. */
	private static final Duration EVERY = Duration.ofHours(3).minusMinutes(2);

	private static final Set<String> TYPES = Set.of("text/csv", "text/plain", "application/csv",
			"application/octet-stream");

	/** Few records of United States stations are older. */
	private static final LocalDate BEGIN = LocalDate.of(1850, 1, 1);

	private static final int YEARS_AT_ONCE = 10;

	private static final int DAYS_AGAIN = 60;

	/** A record shorter than this was handed in; its past is fetched too. */
	private static final int DAYS_OF_A_RECORD = 365;

	private static final int MOST_PROBLEMS = 50;

	private final NceiSettings settings;

	private final Download download;

	private final Stations stations;

	private final Observations observations;

	private final Clock clock;

	/**
	 * Creates the source.
	 * @param settings which stations
	 * @param download fetches
	 * @param stations which are registered
	 * @param observations takes what comes
	 * @param clock tells where records end
	 */
	public NceiSource(NceiSettings settings, Download download, Stations stations, Observations observations,
			Clock clock) {
		this.settings = settings;
		this.download = download;
		this.stations = stations;
		this.observations = observations;
		this.clock = clock;
	}

	@Override
	public String name() {
		return NAME;
	}

	@Override
	public boolean observed() {
		return true;
	}

	@Override
	public Duration every() {
		return EVERY;
	}

	@Override
	public List<String> stations() {
		return this.settings.stations();
	}

	@Override
	public Fetched fetch(String station, Progress progress) {
		StationId id = new StationId(station);
		if (this.stations.find(id).isEmpty()) {
			throw new NotThere("station " + id.value());
		}
		LocalDate today = LocalDate.now(this.clock);
		LocalDate from = begin(id, progress.reached());
		LoadReport sum = new LoadReport(id.value(), 0, 0, 0, 0, List.of(), 0, 0, 0, null, null);
		while (!from.isAfter(today)) {
			if (progress.outOfTime()) {
				return new Fetched(false, sum);
			}
			LocalDate to = earlier(from.plusYears(YEARS_AT_ONCE).minusDays(1), today);
			NceiDays read = NceiReader.read(this.download.text(address(id, from, to), "text/csv", TYPES), id);
			sum = plus(sum, this.observations.load(id, read.days()), read);
			reached(progress, read.last(), to, today);
			from = to.plusDays(1);
		}
		return new Fetched(true, sum);
	}

	private LocalDate begin(StationId id, @Nullable LocalDate reached) {
		Optional<LocalDate> first = this.observations.firstDay(id);
		Optional<LocalDate> last = this.observations.lastDay(id);
		if (reached != null) {
			return later(BEGIN, reached.minusDays(DAYS_AGAIN));
		}
		if (first.isEmpty() || last.isEmpty() || ChronoUnit.DAYS.between(first.get(), last.get()) < DAYS_OF_A_RECORD) {
			return BEGIN;
		}
		return later(BEGIN, last.get().minusDays(DAYS_AGAIN));
	}

	/** Years without a day count as read once nothing is likely to come for them. */
	private static void reached(Progress progress, Optional<LocalDate> last, LocalDate to, LocalDate today) {
		LocalDate day = last.orElse(to.isBefore(today.minusDays(DAYS_AGAIN)) ? to : null);
		LocalDate before = progress.reached();
		if (day != null && (before == null || day.isAfter(before))) {
			progress.reached(day);
		}
	}

	private URI address(StationId id, LocalDate from, LocalDate to) {
		return UriComponentsBuilder.fromUri(this.settings.url())
			.queryParam("dataset", "daily-summaries")
			.queryParam("stations", id.value())
			.queryParam("startDate", from)
			.queryParam("endDate", to)
			.queryParam("dataTypes", "TMIN,TMAX,PRCP,SNWD,AWND")
			.queryParam("format", "csv")
			.queryParam("includeAttributes", "true")
			.encode()
			.build()
			.toUri();
	}

	private static LoadReport plus(LoadReport sum, LoadReport loaded, NceiDays read) {
		List<LineProblem> problems = new ArrayList<>(sum.problems());
		read.problems().stream().limit(MOST_PROBLEMS - problems.size()).forEach(problems::add);
		return new LoadReport(sum.station(), sum.lines() + read.lines(), sum.valuesKept() + loaded.valuesKept(),
				sum.valuesFlagged() + read.flagged(), sum.valuesMissing() + read.missing(), problems,
				sum.problemsInAll() + read.problemsInAll(), sum.daysInserted() + loaded.daysInserted(),
				sum.daysChanged() + loaded.daysChanged(), (sum.firstDay() != null) ? sum.firstDay() : loaded.firstDay(),
				(loaded.lastDay() != null) ? loaded.lastDay() : sum.lastDay());
	}

	private static LocalDate earlier(LocalDate one, LocalDate other) {
		return one.isBefore(other) ? one : other;
	}

	private static LocalDate later(LocalDate one, LocalDate other) {
		return one.isAfter(other) ? one : other;
	}

}
