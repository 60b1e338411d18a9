package org.leafward.care;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import org.awaitility.Awaitility;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.leafward.accounts.People;
import org.leafward.climate.Forecasts;
import org.leafward.climate.Microclimate;
import org.leafward.climate.Observations;
import org.leafward.climate.ObservedDay;
import org.leafward.climate.Place;
import org.leafward.climate.Station;
import org.leafward.climate.StationId;
import org.leafward.climate.Stations;
import org.leafward.measure.GeoPoint;
import org.leafward.plants.SpeciesId;
import org.leafward.register.NewPlanting;
import org.leafward.register.NewSite;
import org.leafward.register.NewWatering;
import org.leafward.register.Placement;
import org.leafward.register.Register;
import org.leafward.register.SiteFeature;
import org.leafward.register.SiteId;
import org.leafward.register.SiteSetting;
import org.leafward.register.SoilTexture;
import org.leafward.register.Sun;
import org.leafward.register.WateringId;
import org.leafward.register.Waterings;
import org.leafward.register.Wind;
import org.leafward.support.SettableClock;
import org.leafward.support.StillServer;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * Tasks on PostgreSQL that follow made-up weather: two rainy years, a dry spell from 14
 * September 2026 on, hard cold from 25 October 2026 on. What the rules say stands with
 * its sources in the rule packs.
 */
@StillServer
class LivingTasksTests {

	private static final GeoPoint WATCHED = new GeoPoint(45, -86, 200);

	/** Its station stopped, more than 150 km from the other. */
	private static final GeoPoint SILENT = new GeoPoint(45, -106, 200);

	private static final ZoneId ZONE = ZoneId.of("America/Chicago");

	private static final LocalDate DRY = LocalDate.of(2026, 9, 14);

	private static final String WATER = "evergreens/fall-deep-watering";

	@Autowired
	private Register register;

	@Autowired
	private People people;

	@Autowired
	private Stations stations;

	@Autowired
	private Observations observations;

	@Autowired
	private Forecasts forecasts;

	@Autowired
	private Waterings waterings;

	@Autowired
	private Replanning replanning;

	@Autowired
	private DayTurn turn;

	@Autowired
	private SettableClock clock;

	@Autowired
	private JdbcClient database;

	@BeforeEach
	void observe() {
		today("2026-12-31");
		load("XX000000107", WATCHED, LocalDate.of(2026, 12, 1));
		load("XX000000118", SILENT, LocalDate.of(2026, 1, 1));
		today("2026-08-01");
	}

	@Test
	void wateringRestsInMoistSoilComesBackInADrySpellAndEndsWithFrozenGround() {
		SiteId site = site(WATCHED, SoilTexture.SAND, "buxus-sempervirens", "2015-05-20");
		Turn moist = turnOf(site, WATER, DRY);
		assertThat(moist.state()).isEqualTo("PLANNED");
		today(moist.from());
		this.replanning.derive(site);
		Turn resting = turnOf(site, WATER, DRY);
		assertThat(resting.state()).isEqualTo("WITHDRAWN");
		assertThat(resting.because()).startsWith("The weather makes it needless for now.").contains("moist");
		today(moist.to());
		this.replanning.derive(site);
		Turn back = turnOf(site, WATER, DRY);
		assertThat(back.state()).isEqualTo("PLANNED");
		assertThat(back.id()).isEqualTo(moist.id());
		assertThat(history(back)).containsExactly("PLANNED WITHDRAWN", "WITHDRAWN PLANNED");
		LocalDate frozen = LocalDate.of(2026, 11, 4);
		today(frozen);
		this.replanning.derive(site);
		Turn last = turnOf(site, WATER, frozen);
		assertThat(last.state()).isEqualTo("WITHDRAWN");
		assertThat(last.because()).contains("Frozen ground");
	}

	/** Half an inch on sand is far from an inch of rain; 40 mm fill the root zone. */
	@Test
	void aWateringThatIsRecordedMakesTheTaskRest() {
		SiteId site = site(WATCHED, SoilTexture.SAND, "buxus-sempervirens", "2015-05-20");
		LocalDate day = DRY.plusDays(9);
		today(day);
		this.replanning.derive(site);
		assertThat(turnOf(site, WATER, day).state()).isEqualTo("PLANNED");
		WateringId watering = this.waterings.record(site, new NewWatering(null, day, 40, ""), null).id();
		assertThat(turnOf(site, WATER, day).state()).as("derived when it returns").isEqualTo("WITHDRAWN");
		this.waterings.remove(site, watering);
		assertThat(turnOf(site, WATER, day).state()).isEqualTo("PLANNED");
	}

	@Test
	void aFrostCoverFollowsTheForecast() {
		SiteId site = site(WATCHED, SoilTexture.LOAM, "solanum-lycopersicum", "2026-05-20");
		String cover = "frost-nights/cover-%tender";
		assertThat(states(site, cover)).isEmpty();
		forecast(9, 9, 1, 9);
		Awaitility.await().untilAsserted(() -> assertThat(states(site, cover)).containsExactly("PLANNED 2026-08-02"));
		// A minimum comes about sunrise (common practice): the evening before counts.
		assertThat(windows(site, cover)).containsExactly("2026-08-02 2026-08-02");
		List<UUID> ids = ids(site, cover);
		forecast(9, 9, 9, 9);
		this.replanning.derive(site);
		assertThat(states(site, cover)).containsExactly("WITHDRAWN 2026-08-02");
		forecast(9, 9, 2, 9);
		this.replanning.derive(site);
		assertThat(states(site, cover)).containsExactly("PLANNED 2026-08-02");
		assertThat(ids(site, cover)).isEqualTo(ids);
		forecast(9, 9, 4, 9);
		this.replanning.derive(site);
		assertThat(states(site, cover)).containsExactly("WITHDRAWN 2026-08-02");
		this.register.changePlace(site,
				new Place(WATCHED, new Microclimate(Microclimate.Lie.HOLLOW, false, false, null)));
		assertThat(states(site, cover)).as("a hollow is two degrees colder").containsExactly("PLANNED 2026-08-02");
	}

	/** Michigan DNR: 15 April to 15 July, by the pack's source. */
	@Test
	void oaksFollowTheDatesOfTheirState() {
		SiteId site = site(WATCHED, SoilTexture.LOAM, "quercus-rubra", "2015-05-20");
		String rest = "oaks/oak-no-pruning";
		List<String> elsewhere = windows(site, rest);
		assertThat(elsewhere).isNotEmpty().doesNotContain("2027-04-15 2027-07-15");
		this.register.change(site, (now) -> new SiteSetting(now.place(), "us-mi", Set.of(SiteFeature.IRRIGATION)));
		assertThat(this.register.require(site).region()).isEqualTo("US-MI");
		assertThat(windows(site, rest)).contains("2027-04-15 2027-07-15");
		assertThat(this.database.sql("select count(*) from care.task where site = ? and planting is null")
			.param(site.value())
			.query(Integer.class)
			.single()).as("what irrigation needs").isPositive();
		this.register.change(site, (now) -> new SiteSetting(now.place(), "", Set.of()));
		assertThat(windows(site, rest)).isEqualTo(elsewhere);
	}

	@Test
	void whatIsNotKnownOfTheWeatherChangesNothing() {
		SiteId site = site(SILENT, SoilTexture.SAND, "buxus-sempervirens", "2015-05-20");
		this.register.addPlantings(site, List.of(planting("solanum-lycopersicum", "2026-05-20")));
		List<String> before = states(site, "%");
		assertThat(before).isNotEmpty().allMatch((task) -> task.startsWith("PLANNED"));
		for (LocalDate day = DRY; day.isBefore(DRY.plusDays(60)); day = day.plusDays(9)) {
			today(day);
			this.replanning.derive(site);
		}
		// What the weather has to open is added on its day, since it may be needed.
		assertThat(states(site, "%")).containsAll(before).allMatch((task) -> task.startsWith("PLANNED"));
	}

	@Test
	void sitesAreAskedForWhenTheirDayTurns() {
		SiteId site = site(WATCHED, SoilTexture.LOAM, "buxus-sempervirens", "2015-05-20");
		this.turn.ask();
		this.replanning.drain(Duration.ofMinutes(1));
		assertThat(this.turn.ask()).isZero();
		this.clock.set(Instant.parse("2026-08-02T04:59:00Z"));
		assertThat(this.turn.ask()).as("a minute to midnight in Chicago").isZero();
		this.clock.set(Instant.parse("2026-08-02T05:01:00Z"));
		assertThat(this.turn.ask()).isPositive();
		assertThat(this.database.sql("select count(*) from care.replan where site = ?")
			.param(site.value())
			.query(Integer.class)
			.single()).isEqualTo(1);
		this.replanning.drain(Duration.ofMinutes(1));
	}

	private void today(String day) {
		today(LocalDate.parse(day));
	}

	/** Noon in Chicago. */
	private void today(LocalDate day) {
		this.clock.set(day.atTime(12, 0).atZone(ZONE).toInstant());
	}

	private SiteId site(GeoPoint point, SoilTexture soil, String species, String planted) {
		SiteId site = this.register
			.addSite(this.people.join("Ada", UUID.randomUUID() + "@example.org", ZONE).id(),
					new NewSite("Garden", "", point, ZONE, soil, Sun.FULL_SUN, Wind.AVERAGE))
			.id();
		this.register.addPlantings(site, List.of(planting(species, planted)));
		return site;
	}

	private static NewPlanting planting(String species, String planted) {
		return new NewPlanting(new SpeciesId(species), species, 3, LocalDate.parse(planted), Placement.GROUND, false,
				false);
	}

	/** Minima from 1 August on, °C. */
	private void forecast(int... minima) {
		StringBuilder csv = new StringBuilder("# issued: " + this.clock.instant() + "\ndate,min_c,max_c\n");
		for (int day = 0; day < minima.length; day++) {
			csv.append("2026-08-0%d,%d,20\n".formatted(day + 1, minima[day]));
		}
		this.forecasts.upload(new StationId("XX000000107"), csv.toString());
	}

	private void load(String id, GeoPoint point, LocalDate end) {
		StationId station = new StationId(id);
		this.stations.register(new Station(station, "Made up", point, true));
		Random random = new Random(7);
		List<ObservedDay> days = new ArrayList<>();
		for (LocalDate day = LocalDate.of(2004, 1, 1); day.isBefore(end); day = day.plusDays(1)) {
			double mean = 8 - 16 * Math.cos(2 * Math.PI * (day.getDayOfYear() - 15) / 365.25)
					+ 2 * random.nextGaussian();
			boolean cold = !day.isBefore(LocalDate.of(2026, 10, 25));
			int rain = (day.isBefore(DRY) && day.toEpochDay() % 2 == 0) ? 100 : 0;
			days.add(new ObservedDay(day, cold ? -150 : (int) Math.round(10 * (mean - 10)),
					cold ? -50 : (int) Math.round(10 * (mean + 10)), rain, 0, null));
		}
		this.observations.load(station, days);
	}

	private record Turn(UUID id, String state, LocalDate from, LocalDate to, String because) {
	}

	/** The turn of a rule that a day falls into. */
	private Turn turnOf(SiteId site, String rule, LocalDate day) {
		return this.database.sql("""
				select id, state, from_day, to_day, coalesce(withdrawn_because, '') from care.task
				where site = ? and rule = ? and ? between from_day and to_day
				""")
			.params(site.value(), rule, day)
			.query((row, number) -> new Turn(row.getObject(1, UUID.class), row.getString(2),
					row.getObject(3, LocalDate.class), row.getObject(4, LocalDate.class), row.getString(5)))
			.single();
	}

	private List<String> history(Turn turn) {
		return this.database
			.sql("select from_state || ' ' || to_state from care.task_history where task = ? order by id")
			.param(turn.id())
			.query(String.class)
			.list();
	}

	private List<String> states(SiteId site, String rule) {
		return list(site, rule, "state || ' ' || to_day", String.class);
	}

	private List<String> windows(SiteId site, String rule) {
		return list(site, rule, "from_day || ' ' || to_day", String.class);
	}

	private List<UUID> ids(SiteId site, String rule) {
		return list(site, rule, "id", UUID.class);
	}

	private <T> List<T> list(SiteId site, String rule, String what, Class<T> type) {
		return this.database
			.sql("select " + what + " from care.task where site = ? and rule like ? order by from_day, id")
			.params(site.value(), rule)
			.query(type)
			.list();
	}

}
