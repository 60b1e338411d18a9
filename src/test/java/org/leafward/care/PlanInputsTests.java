package org.leafward.care;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.leafward.accounts.People;
import org.leafward.care.workshop.Author;
import org.leafward.care.workshop.PackHistory;
import org.leafward.care.workshop.Workshop;
import org.leafward.climate.Forecasts;
import org.leafward.climate.Observations;
import org.leafward.climate.ObservedDay;
import org.leafward.climate.Place;
import org.leafward.climate.Station;
import org.leafward.climate.StationId;
import org.leafward.climate.Stations;
import org.leafward.measure.GeoPoint;
import org.leafward.plants.SpeciesId;
import org.leafward.register.Bed;
import org.leafward.register.Beds;
import org.leafward.register.NewBed;
import org.leafward.register.NewPlanting;
import org.leafward.register.NewSite;
import org.leafward.register.NewSoilTest;
import org.leafward.register.NewWatering;
import org.leafward.register.Placement;
import org.leafward.register.Register;
import org.leafward.register.SiteId;
import org.leafward.register.SoilDrainage;
import org.leafward.register.SoilExtract;
import org.leafward.register.SoilFigures;
import org.leafward.register.SoilTestId;
import org.leafward.register.SoilTests;
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
 * A site is planned again as soon as anything that its plan is made from is another, and
 * not before. Whether it was is seen from the stored fingerprint of its plan, which the
 * test spoils beforehand; whether what was written is right, from a derivation that knows
 * of no fingerprint and must find nothing to write.
 */
@StillServer
class PlanInputsTests {

	private static final GeoPoint POINT = new GeoPoint(45, -66, 200);

	private static final ZoneId ZONE = ZoneId.of("America/Chicago");

	private static final StationId STATION = new StationId("XX000000207");

	private static final LocalDate TODAY = LocalDate.of(2026, 9, 23);

	private static final Instant NOON = TODAY.atTime(12, 0).atZone(ZONE).toInstant();

	@Autowired
	private Register register;

	@Autowired
	private Beds beds;

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
	private SoilTests soilTests;

	@Autowired
	private Workshop workshop;

	@Autowired
	private PackHistory history;

	@Autowired
	private Replanning replanning;

	@Autowired
	private SettableClock clock;

	@Autowired
	private JdbcClient database;

	private SiteId site;

	@BeforeEach
	void plant() {
		this.clock.set(NOON);
		this.stations.register(new Station(STATION, "Made up", POINT, true));
		List<ObservedDay> days = new ArrayList<>();
		for (LocalDate day = LocalDate.of(2004, 1, 1); day.isBefore(TODAY.minusDays(1)); day = day.plusDays(1)) {
			days.add(day(day, (day.toEpochDay() % 3 == 0) ? 100 : 0));
		}
		this.observations.load(STATION, days);
		this.site = this.register
			.addSite(this.people.join("Ada", UUID.randomUUID() + "@example.org", ZONE).id(),
					new NewSite("Garden", "", POINT, ZONE, SoilTexture.SAND, Sun.FULL_SUN, Wind.AVERAGE))
			.id();
		this.register.addPlantings(this.site,
				List.of(planting("buxus-sempervirens"), planting("solanum-lycopersicum")));
		this.replanning.derive(this.site);
	}

	@Test
	void nothingIsPlannedWhileNothingIsAnother() {
		spoil();
		assertThat(planned()).isFalse();
		this.clock.set(NOON.plusSeconds(3600));
		assertThat(planned()).as("an hour later").isFalse();
	}

	@Test
	void aNewDayOfTheStationIsSeen() {
		spoil();
		this.observations.load(STATION, List.of(day(TODAY.minusDays(1), 700)));
		assertSeen("a new day");
		spoil();
		this.observations.load(STATION, List.of(day(TODAY.minusDays(40), 1)));
		assertSeen("a corrected day");
	}

	@Test
	void aNewForecastIsSeenAndSoIsItsAge() {
		spoil();
		forecast(9, 1);
		assertSeen("a first forecast");
		spoil();
		assertThat(planned()).isFalse();
		// At the same time by the clock: neither issue nor arrival tells them apart.
		forecast(9, 9);
		assertSeen("another forecast");
		spoil();
		forecast(9, 9);
		assertThat(planned()).as("the same forecast again").isFalse();
		// Still the same day in Chicago, and the forecast is older than twelve hours.
		this.clock.set(TODAY.atTime(0, 30).atZone(ZONE).toInstant());
		forecast(9, 2);
		assertSeen("early in the morning");
		spoil();
		this.clock.set(TODAY.atTime(23, 0).atZone(ZONE).toInstant());
		assertSeen("a forecast that became stale");
	}

	@Test
	void anotherStationIsSeen() {
		spoil();
		this.stations.register(new Station(new StationId("XX000000209"), "Next door", POINT, true));
		assertSeen("a new station");
		spoil();
		this.stations.register(new Station(STATION, "Made up", new GeoPoint(45.1, -66, 300), true));
		assertSeen("a station elsewhere");
	}

	@Test
	void aWateringIsSeenWhenItComesAndWhenItGoes() {
		spoil();
		WateringId watering = this.waterings.record(this.site, new NewWatering(null, TODAY, 40, ""), null).id();
		assertSeen("a watering");
		spoil();
		this.waterings.remove(this.site, watering);
		assertSeen("a watering taken back");
	}

	@Test
	void aSoilTestIsSeenWhenItComesAndWhenItGoes() {
		spoil();
		SoilTestId test = this.soilTests
			.keep(this.site,
					new NewSoilTest(null, TODAY, new SoilFigures(8.9, 2, SoilExtract.SATURATED_PASTE, 20.0, null, 15.0),
							15, SoilDrainage.GOOD, ""),
					null)
			.id();
		assertSeen("a soil test");
		spoil();
		this.soilTests.remove(this.site, test);
		assertSeen("a soil test taken back");
	}

	@Test
	void theSiteItsPlantingsAndWhatWasSeenThereAreSeen() {
		spoil();
		this.register.changePlace(this.site, Place.of(new GeoPoint(45, -66, 260)));
		assertSeen("another height");
		spoil();
		this.register.removePlanting(this.register.plantingsOf(this.site).get(0).id());
		assertSeen("a planting gone");
		spoil();
		this.database.sql("""
				insert into care.observation (id, site, kind, name, day, season, entered_at)
				values (gen_random_uuid(), ?, 'EVENT', 'made-up', ?, 2026, now())
				""").params(this.site.value(), TODAY).update();
		assertSeen("something was seen");
	}

	@Test
	void bedsAreSeen() {
		spoil();
		Bed bed = this.beds.add(this.site, NewBed.named("front"));
		assertSeen("a bed");
		spoil();
		this.beds.put(this.register.plantingsOf(this.site).get(0).id(), bed.id());
		assertSeen("a planting in a bed");
		spoil();
		this.beds.change(bed.id(), (now) -> new NewBed(now.name(), Sun.SHADE, null, null));
		assertSeen("other light in a bed");
		spoil();
		this.beds.remove(bed.id());
		assertSeen("no bed");
	}

	@Test
	void theNextDayIsSeen() {
		spoil();
		this.clock.set(TODAY.plusDays(1).atTime(0, 1).atZone(ZONE).toInstant());
		assertSeen("a minute after midnight");
	}

	@Test
	void aNewVersionOfAPackIsSeen() {
		PackVersion before = this.history.newest("evergreens").orElseThrow();
		spoil();
		this.workshop.publish("evergreens", before.version(), before.content() + "\n# nothing but a remark\n",
				"a remark", new Author("Ada", null));
		assertSeen("another text of a pack");
	}

	private static ObservedDay day(LocalDate day, int rain) {
		double mean = 8 - 16 * Math.cos(2 * Math.PI * (day.getDayOfYear() - 15) / 365.25) + day.toEpochDay() % 7;
		return new ObservedDay(day, (int) Math.round(10 * (mean - 9)), (int) Math.round(10 * (mean + 9)), rain, 0,
				null);
	}

	private static NewPlanting planting(String species) {
		return new NewPlanting(new SpeciesId(species), species, 3, LocalDate.of(2024, 5, 20), Placement.GROUND, false,
				false);
	}

	/** Minima from today on, °C. */
	private void forecast(int... minima) {
		StringBuilder csv = new StringBuilder("# issued: " + this.clock.instant() + "\ndate,min_c,max_c\n");
		for (int day = 0; day < minima.length; day++) {
			csv.append("%s,%d,20\n".formatted(TODAY.plusDays(day), minima[day]));
		}
		this.forecasts.upload(STATION, csv.toString());
	}

	/** Lets the stored fingerprint of the plan be one that no plan has. */
	private void spoil() {
		this.replanning.derive(this.site);
		assertThat(this.database.sql("update care.site_plan set hash = '\\x00' where site = ?")
			.param(this.site.value())
			.update()).isEqualTo(1);
	}

	/** Whether deriving plans the site. */
	private boolean planned() {
		this.replanning.derive(this.site);
		return this.database.sql("select hash <> '\\x00' from care.site_plan where site = ?")
			.param(this.site.value())
			.query(Boolean.class)
			.single();
	}

	private void assertSeen(String what) {
		assertThat(planned()).as(what).isTrue();
		this.database.sql("delete from care.site_plan where site = ?").param(this.site.value()).update();
		assertThat(this.replanning.derive(this.site)).as(what)
			.hasValueSatisfying((diff) -> assertThat(diff.isEmpty()).isTrue());
	}

}
