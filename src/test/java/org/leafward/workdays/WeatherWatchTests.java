package org.leafward.workdays;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leafward.accounts.People;
import org.leafward.accounts.PersonId;
import org.leafward.care.CareTask;
import org.leafward.care.TaskCalendar;
import org.leafward.care.core.rule.Work;
import org.leafward.climate.ForecastDay;
import org.leafward.climate.GroundReading;
import org.leafward.climate.Grounds;
import org.leafward.climate.SeasonSoFar;
import org.leafward.climate.SeasonView;
import org.leafward.climate.StationForecast;
import org.leafward.climate.StationId;
import org.leafward.climate.TemperatureShift;
import org.leafward.measure.Explanation;
import org.leafward.measure.DayWords;
import org.leafward.measure.GeoPoint;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.leafward.register.SiteId;
import org.leafward.register.SoilTexture;
import org.leafward.register.Sun;
import org.leafward.register.Wind;
import org.leafward.support.TestDatabase;
import org.leafward.workdays.store.DayMailTable;
import org.leafward.workdays.store.DayMailTable.MessageRow;
import org.leafward.workdays.store.WorkdayTable;
import org.quartz.Scheduler;
import org.quartz.SchedulerException;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.context.ContextConfiguration;
import org.springframework.transaction.support.TransactionTemplate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.ArgumentMatchers.anyCollection;
import static org.mockito.ArgumentMatchers.anyInt;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.when;

/** Whoever leads is warned in time, and once; mails and workdays are on real tables. */
@SpringBootTest
@ContextConfiguration(initializers = TestDatabase.class)
class WeatherWatchTests {

	private static final ZoneId ZONE = ZoneId.of("America/Chicago");

	@Autowired
	private People people;

	@Autowired
	private GroupDesk desk;

	@Autowired
	private Groups groups;

	@Autowired
	private WorkdayDesk days;

	@Autowired
	private Workdays real;

	@Autowired
	private WorkdayTable table;

	@Autowired
	private RainDates rainDates;

	@Autowired
	private WorkdayMail mail;

	@Autowired
	private DayMailTable outbox;

	@Autowired
	private TransactionTemplate transaction;

	@Autowired
	private Clock clock;

	@Autowired
	private JdbcClient database;

	@Autowired
	private Scheduler quartz;

	private final Register register = mock(Register.class);

	private final Workdays workdays = mock(Workdays.class);

	private final TaskCalendar calendar = mock(TaskCalendar.class);

	private final SeasonSoFar seasons = mock(SeasonSoFar.class);

	private final Grounds grounds = mock(Grounds.class);

	private WeatherWatch watch;

	private PersonId lead;

	private PersonId member;

	private GroupId group;

	private LocalDate today;

	@BeforeEach
	void group() throws SchedulerException {
		this.quartz.standby();
		this.database.sql("delete from workdays.workday").update();
		this.database.sql("delete from workdays.message").update();
		this.watch = new WeatherWatch(this.table, this.workdays, this.register, this.calendar, this.seasons,
				this.grounds, this.rainDates, this.mail, this.transaction, this.clock);
		this.today = LocalDate.ofInstant(this.clock.instant(), ZONE);
		this.lead = person();
		this.member = person();
		this.group = this.desk.make(TestCrew.told(ZONE, 5), this.lead);
		this.desk.join(this.group, this.member);
		SiteId site = new SiteId(UUID.randomUUID());
		when(this.workdays.find(any())).thenAnswer((call) -> this.real.find(call.getArgument(0)));
		when(this.register.find(anyCollection())).thenReturn(List.of(new Site(site, this.lead, "Site", "",
				new GeoPoint(41, -93, 300), ZONE, SoilTexture.LOAM, Sun.FULL_SUN, Wind.AVERAGE)));
		when(this.grounds.at(any(), any())).thenReturn(Optional.empty());
	}

	@AfterEach
	void goOn() throws SchedulerException {
		this.quartz.start();
	}

	private PersonId person() {
		PersonId id = this.people.join("Somebody", UUID.randomUUID() + "@example.org", ZONE).id();
		this.people.confirm(id);
		return id;
	}

	private WorkdayId in(int days, @Nullable LocalDate rain) {
		WorkdayId id = this.days.add(this.groups.find(this.group).orElseThrow(),
				TestCrew.at(this.today.plusDays(days), 5, rain));
		this.days.fix(id);
		return id;
	}

	/**
	 * The same for each of the next ten days.
	 * @param high tenths of °C
	 * @param rain tenths of mm
	 * @param humidity percent
	 * @param stale whether it is too old to lean on
	 */
	private void forecast(int high, int rain, int humidity, boolean stale) {
		List<ForecastDay> all = this.today.datesUntil(this.today.plusDays(10))
			.map((day) -> new ForecastDay(day, high - 80, high, rain, 0, 10, humidity))
			.toList();
		SeasonView view = mock(SeasonView.class);
		when(view.shift()).thenReturn(TemperatureShift.height(0));
		when(view.forecast()).thenReturn(new StationForecast(new StationId("USW00094728"), "test", Instant.EPOCH,
				Instant.EPOCH, stale, null, all));
		when(this.seasons.of(any(), anyInt(), any())).thenReturn(Optional.of(view));
	}

	private List<String> warnings(WorkdayId workday, PersonId to) {
		return this.outbox.of(workday)
			.stream()
			.filter((one) -> one.kind().equals("weather") && one.person().equals(to))
			.map(MessageRow::body)
			.toList();
	}

	@Test
	void theRainDateIsProposedTwoDaysAheadAndNotTwice() {
		LocalDate rain = this.today.plusDays(9);
		WorkdayId near = in(2, rain);
		WorkdayId far = in(3, rain);
		forecast(200, 150, 60, false);
		assertThat(this.watch.look()).isEqualTo(1);
		assertThat(warnings(near, this.lead)).singleElement()
			.asString()
			.contains("15 mm (0.6 in) of rain", "Better on its rain date, " + DayWords.of(rain))
			.contains("lightning", "air quality index");
		assertThat(warnings(near, this.member)).as("members are told by whoever leads").isEmpty();
		assertThat(warnings(far, this.lead)).isEmpty();
		forecast(200, 170, 60, false);
		assertThat(this.watch.look()).as("other figures, same advice").isZero();
		forecast(200, 30, 60, false);
		assertThat(this.watch.look()).as("it can take place after all, with care").isEqualTo(1);
		assertThat(warnings(near, this.lead)).hasSize(2);
	}

	@Test
	void aRainDateOnWhichAnotherWorkdayStandsIsNone() {
		WorkdayId near = in(2, this.today.plusDays(9));
		this.days.add(this.groups.find(this.group).orElseThrow(), TestCrew.at(this.today.plusDays(9), 5, null));
		forecast(200, 150, 60, false);
		assertThat(this.watch.look()).isEqualTo(1);
		assertThat(warnings(near, this.lead)).singleElement()
			.asString()
			.contains("Better on another day; another workday stands on its rain date.");
	}

	@Test
	void anOldForecastSaysNothing() {
		in(1, null);
		forecast(200, 150, 60, true);
		assertThat(this.watch.look()).isZero();
	}

	@Test
	void fineWeatherIsNoNews() {
		in(1, null);
		forecast(200, 0, 50, false);
		assertThat(this.watch.look()).isZero();
	}

	/**
	 * Cells of the heat index chart of the US National Weather Service: 90 °F with 60 %
	 * is 100 °F, 98 °F with 40 % is 105 °F, 92 °F with 70 % is 112 °F; danger from 103
	 * °F.
	 */
	@ParameterizedTest
	@CsvSource({ "322, 60, 100, extreme caution, It can take place", "367, 40, 105, danger, it has no rain date",
			"333, 70, 112, danger, it has no rain date" })
	void heatIsToldByItsBand(int high, int humidity, int index, String band, String advice) {
		WorkdayId workday = in(1, null);
		forecast(high, 0, humidity, false);
		assertThat(this.watch.look()).isEqualTo(1);
		assertThat(warnings(workday, this.lead)).singleElement()
			.asString()
			.contains("Heat index %d °F (%d °C) in the afternoon (%s)".formatted(index, Math.round((index - 32) / 1.8),
					band), advice);
	}

	@Test
	@SuppressWarnings("unchecked")
	void frozenGroundIsToldWhereDiggingIsPlanned() {
		WorkdayId workday = in(1, null);
		CareTask planting = mock(CareTask.class);
		when(planting.work()).thenReturn(Work.PLANT);
		when(this.calendar.find(anyCollection())).thenReturn((Map) Map.of("one", planting));
		when(this.grounds.at(any(), any()))
			.thenReturn(Optional.of(new GroundReading(this.today, true, Explanation.of("ground", "frozen"))));
		forecast(80, 0, 50, false);
		assertThat(this.watch.look()).isEqualTo(1);
		assertThat(warnings(workday, this.lead)).singleElement()
			.asString()
			.contains("The ground is frozen, so there is no planting.")
			.doesNotContain("lightning");
	}

	@Test
	void oneTapCallsOffAndTellsAll() {
		WorkdayId workday = in(2, null);
		forecast(200, 150, 60, false);
		this.watch.look();
		this.days.callOff(workday, "Heavy rain is forecast.");
		for (PersonId one : Arrays.asList(this.lead, this.member)) {
			assertThat(this.outbox.of(workday))
				.filteredOn((mail) -> mail.person().equals(one) && mail.kind().equals("called-off"))
				.singleElement()
				.matches((mail) -> mail.body().contains("Heavy rain is forecast.") && "CANCEL".equals(mail.method()));
		}
		forecast(200, 300, 60, false);
		assertThat(this.watch.look()).as("it is off already").isZero();
	}

	@Test
	void onTheRainDayTheWatchBeginsAnew() {
		LocalDate rain = this.today.plusDays(2);
		WorkdayId workday = in(1, rain);
		forecast(200, 150, 60, false);
		this.watch.look();
		this.days.moveToRainDay(workday);
		assertThat(this.watch.look()).as("it rains on the rain date, too").isEqualTo(1);
		assertThat(warnings(workday, this.lead)).hasSize(2);
	}

}
