package org.leafward.demo;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.leafward.care.CareTask;
import org.leafward.care.Replanning;
import org.leafward.care.TaskCalendar;
import org.leafward.care.TaskKind;
import org.leafward.care.core.rule.Grade;
import org.leafward.climate.Forecasts;
import org.leafward.climate.ObservedDay;
import org.leafward.climate.Observations;
import org.leafward.climate.Place;
import org.leafward.climate.SeasonSoFar;
import org.leafward.climate.SeasonView;
import org.leafward.climate.StationId;
import org.leafward.measure.DayWindow;
import org.leafward.climate.StateQuestion;
import org.leafward.climate.WeatherStates;
import org.leafward.measure.Explanation;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.leafward.support.TestDatabase;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.context.SpringBootTest.WebEnvironment;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.context.ActiveProfiles;
import org.springframework.test.context.ContextConfiguration;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * The invented region on a real database: complete, dated, and still when nothing
 * changes.
 */
@SpringBootTest(webEnvironment = WebEnvironment.RANDOM_PORT, properties = "leafward.base-url=")
@ActiveProfiles("demo")
@ContextConfiguration(initializers = TestDatabase.class)
class DemoTests {

	private static final DayWindow ALWAYS = new DayWindow(LocalDate.of(1900, 1, 1), LocalDate.of(2199, 12, 31));

	@Autowired
	private Register register;

	@Autowired
	private TaskCalendar calendar;

	@Autowired
	private Replanning replanning;

	@Autowired
	private JdbcClient database;

	@Autowired
	private SeasonSoFar seasons;

	@Autowired
	private WeatherStates states;

	@Autowired
	private Observations observations;

	@Autowired
	private Forecasts forecasts;

	@Autowired
	private DemoWeather weather;

	@Autowired
	private Clock clock;

	@Test
	void hasSixSitesInThreeCountiesWithAboutSixtyPlantings() {
		List<Site> sites = this.register.sites(0, 50);
		assertThat(sites).extracting(Site::county).contains("Alder County", "Merrow County", "Sable County");
		int plantings = sites.stream().mapToInt((site) -> this.register.plantingsOf(site.id()).size()).sum();
		assertThat(plantings).isBetween(55, 70);
	}

	@Test
	void datesEveryRuleAndKeepsAnExplanationDownToAnInventedStation() {
		for (Site site : this.register.sites(0, 50)) {
			// Nothing lacks a date; what a hold-off leaves no day for is told with it.
			assertThat(this.calendar.undated(site.id())).as(site.name())
				.allSatisfy((gap) -> assertThat(gap.reason()).startsWith("The hold-off"));
			List<CareTask> tasks = this.calendar.ofSite(site.id(), ALWAYS);
			assertThat(tasks).as(site.name()).hasSizeGreaterThan(20);
			Set<TaskKind> kinds = tasks.stream().map(CareTask::kind).collect(Collectors.toSet());
			assertThat(kinds).as(site.name()).contains(TaskKind.DO, TaskKind.HOLD_OFF);
			// Those that a case added name their case instead.
			for (CareTask task : tasks.stream().filter((one) -> !one.added()).toList()) {
				Explanation explanation = this.calendar.explain(task.id()).orElseThrow();
				assertThat(explanation.steps()).as(task.rule())
					.extracting(Explanation::label)
					.contains("Rule")
					.containsAnyOf(Stream.of(Grade.values()).map(Grade::heading).toArray(String[]::new));
			}
		}
	}

	/**
	 * What the made-up weather of the day calls for: walks are cleared on days with an
	 * inch of new snow and on no others, whenever the demo is started.
	 */
	@Test
	void theWeatherWithdrawsTasksAndCallsForOthers() {
		LocalDate today = LocalDate.ofInstant(this.clock.instant(), DemoRegion.zone());
		List<String> withdrawn = this.database.sql("select withdrawn_because from care.task where state = 'WITHDRAWN'")
			.query(String.class)
			.list();
		assertThat(withdrawn).allMatch((why) -> why.startsWith("The weather"));
		Site site = this.register.sites(0, 50)
			.stream()
			.filter((one) -> one.name().equals("Quill Harbor promenade"))
			.findFirst()
			.orElseThrow();
		List<LocalDate> snowy = today.datesUntil(today.plusDays(4))
			.filter((day) -> Boolean.TRUE.equals(this.states.outlook(site.place(), today)
				.on(day, StateQuestion.parse("new-snow-at-least-1in"))
				.holds()))
			.toList();
		List<LocalDate> cleared = this.database.sql(
				"select distinct to_day from care.task where site = ? and rule = ? and state = 'PLANNED' order by to_day")
			.params(site.id().value(), "salt/clear-with-little-salt")
			.query(LocalDate.class)
			.list();
		// Not every day of snow needs one: the rule ends with the de-icing.
		assertThat(snowy).containsAll(cleared);
	}

	@Test
	void derivingAgainWritesNothing() {
		String before = fingerprint();
		for (Site site : this.register.sites(0, 50)) {
			Optional<?> diff = this.replanning.derive(site.id()).filter((found) -> !found.isEmpty());
			assertThat(diff).as(site.name()).isEmpty();
		}
		assertThat(fingerprint()).isEqualTo(before);
	}

	@Test
	void itsPeopleHaveWrittenDownWhatTheyDidAndSaw() {
		assertThat(tell("select count(*) from care.log where task is not null")).isGreaterThanOrEqualTo(2);
		assertThat(tell("select count(*) from care.task where state = 'SKIPPED'")).isPositive();
		assertThat(tell("select count(*) from care.observation where kind = 'PHASE'")).isEqualTo(2);
		// Hold-offs from pruning are in force on the day this runs on, but for some weeks
		// in early summer, when spring bloomers and evergreens may both be cut.
		int holdOffs = tell("""
				select count(*) from care.task t join register.site s on s.id = t.site where t.kind = 'HOLD_OFF'
					and t.rule like '%%prun%%' and t.planting is not null
					and s.name in ('Tamsin Library garden', 'Larkmoor demonstration garden')
					and date '%s' between t.from_day + 1 and t.to_day - 1
				""".formatted(LocalDate.now(ZoneOffset.UTC)));
		assertThat(tell("select count(*) from care.log where inside_hold_off is not null") > 0).isEqualTo(holdOffs > 0);
	}

	private int tell(String count) {
		return this.database.sql(count).query(Integer.class).single();
	}

	/** PostgreSQL's row versions: any update, even to equal values, would show. */
	private String fingerprint() {
		return this.database.sql("select md5(string_agg(id::text || xmin::text, ',' order by id)) from care.task")
			.query(String.class)
			.single();
	}

	@Test
	void inventsTheSameWeatherEachTimeAndThirtyOneYearsOfIt() {
		InventedWeather.Character character = DemoRegion.stations().get(0).character();
		LocalDate last = LocalDate.of(2025, 12, 31);
		List<ObservedDay> once = new InventedWeather(DemoRegion.SEED).record(0, character, last);
		assertThat(once).hasSize(11_323)
			.isEqualTo(new InventedWeather(DemoRegion.SEED).record(0, character, last))
			.isEqualTo(new InventedWeather(DemoRegion.SEED).record(0, character, last.plusYears(1)).subList(0, 11_323));
		assertThat(new InventedWeather(DemoRegion.SEED + 1).record(0, character, last)).isNotEqualTo(once);
	}

	@Test
	void hasWeatherUpToYesterdayAndAForecastFromTodayOn() {
		LocalDate today = LocalDate.ofInstant(this.clock.instant(), DemoRegion.zone());
		for (DemoRegion.DemoStation one : DemoRegion.stations()) {
			SeasonView view = this.seasons.of(Place.of(one.station().point()), today.getYear(), today).orElseThrow();
			assertThat(view.station()).isEqualTo(one.station());
			assertThat(view.recordEnd()).isNull();
			// The last days may lack a value, as any day may.
			assertThat(view.lastObserved()).isBetween(today.minusDays(4), today.minusDays(1));
			assertThat(view.forecast().days()).hasSize(7);
			assertThat(view.forecast().days().get(0).day()).isEqualTo(today);
			assertThat(view.forecast().stale()).isFalse();
		}
	}

	/** A demo that was stopped for days goes on with the weather of these days. */
	@Test
	void theWeatherGoesOnWhereItWasLeft() {
		LocalDate today = LocalDate.ofInstant(this.clock.instant(), DemoRegion.zone());
		StationId station = DemoRegion.stations().get(0).station().id();
		List<String> before = months(station);
		this.database.sql("delete from climate.observation_month where station_id = ? and month >= ?")
			.params(station.value(), today.minusDays(5).withDayOfMonth(1))
			.update();
		this.database.sql("update climate.station set record_version = record_version + 1 where id = ?")
			.param(station.value())
			.update();
		assertThat(this.observations.lastDay(station).orElseThrow()).isBefore(today.minusDays(1));
		this.weather.catchUp();
		assertThat(this.observations.lastDay(station)).contains(today.minusDays(1));
		assertThat(months(station)).hasSizeGreaterThan(300).isEqualTo(before);
		assertThat(this.forecasts.of(station).orElseThrow().days().get(0).day()).isEqualTo(today);
	}

	private List<String> months(StationId station) {
		return this.database.sql("select m::text from climate.observation_month m where station_id = ? order by month")
			.param(station.value())
			.query(String.class)
			.list();
	}

}
