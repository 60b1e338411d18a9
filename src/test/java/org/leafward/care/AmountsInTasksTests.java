package org.leafward.care;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.leafward.accounts.People;
import org.leafward.climate.ForecastDay;
import org.leafward.climate.Forecasts;
import org.leafward.climate.Observations;
import org.leafward.climate.ObservedDay;
import org.leafward.climate.Station;
import org.leafward.climate.StationId;
import org.leafward.climate.Stations;
import org.leafward.measure.DayWindow;
import org.leafward.measure.GeoPoint;
import org.leafward.plants.SpeciesId;
import org.leafward.register.Bed;
import org.leafward.register.Beds;
import org.leafward.register.NewBed;
import org.leafward.register.NewPlanting;
import org.leafward.register.NewSite;
import org.leafward.register.NewWatering;
import org.leafward.register.Placement;
import org.leafward.register.Planting;
import org.leafward.register.PlantingSize;
import org.leafward.register.Raised;
import org.leafward.register.RaisedIn;
import org.leafward.register.Register;
import org.leafward.register.SiteId;
import org.leafward.register.SiteSetting;
import org.leafward.register.SoilTexture;
import org.leafward.register.Sun;
import org.leafward.register.Waterings;
import org.leafward.register.Wind;
import org.leafward.support.SettableClock;
import org.leafward.support.StillServer;
import org.springframework.beans.factory.annotation.Autowired;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

/**
 * Amounts and ramps in the tasks of the whole server: they follow the size of a planting,
 * the hose of its site, the forecast, and what people note day by day.
 */
@StillServer
class AmountsInTasksTests {

	private static final GeoPoint POINT = new GeoPoint(45, -70, 200);

	private static final ZoneId ZONE = ZoneId.of("America/Chicago");

	private static final StationId STATION = new StationId("XX000000055");

	/** The first day of a ramp that ends before 20 May. */
	private static final LocalDate FIRST = LocalDate.of(2027, 5, 6);

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
	private Replanning replanning;

	@Autowired
	private TaskCalendar calendar;

	@Autowired
	private CareLog log;

	@Autowired
	private SettableClock clock;

	@Autowired
	private RampPictures pictures;

	@Autowired
	private Waterings waterings;

	private SiteId site;

	private Planting tomatoes;

	private static Instant noon(LocalDate day) {
		return day.atTime(12, 0).atZone(ZONE).toInstant();
	}

	@BeforeEach
	void plant() {
		this.clock.set(noon(FIRST));
		this.stations.register(new Station(STATION, "Made up", POINT, true));
		List<ObservedDay> days = new ArrayList<>();
		for (LocalDate day = LocalDate.of(2006, 1, 1); day.isBefore(FIRST); day = day.plusDays(1)) {
			double warmth = 100 - 130 * Math.cos((day.getDayOfYear() - 20) * 2 * Math.PI / 365);
			days.add(new ObservedDay(day, (int) warmth - 60, (int) warmth + 60, (day.toEpochDay() % 20 == 0) ? 60 : 0,
					0, 20));
		}
		this.observations.load(STATION, days);
		this.site = this.register
			.addSite(this.people.join("Ada", UUID.randomUUID() + "@example.org", ZONE).id(),
					new NewSite("Garden", "Merrow County", POINT, ZONE, SoilTexture.LOAM, Sun.FULL_SUN, Wind.AVERAGE))
			.id();
		this.tomatoes = this.register.addPlantings(this.site,
				List.of(new NewPlanting(new SpeciesId("solanum-lycopersicum"), "tomatoes", 8, LocalDate.of(2027, 5, 20),
						Placement.GROUND, false, false, PlantingSize.UNKNOWN,
						new Raised(RaisedIn.MIDDAY_WINDOW, null, null))))
			.get(0);
	}

	private List<CareTask> tasks(String rule) {
		return this.calendar.ofSite(this.site, new DayWindow(FIRST, FIRST.plusDays(120)))
			.stream()
			.filter((task) -> task.rule().equals(rule) && task.state() != TaskState.WITHDRAWN)
			.toList();
	}

	private CareTask ramp(int day) {
		return tasks("hardening/harden-off-seedlings").stream()
			.filter((task) -> task.occurrence() == day)
			.findFirst()
			.orElseThrow(() -> new AssertionError("no day " + day));
	}

	private void day(LocalDate today, int maximum, int tomorrow) {
		this.clock.set(noon(today));
		List<ForecastDay> ahead = new ArrayList<>();
		for (int i = 0; i < 5; i++) {
			ahead.add(new ForecastDay(today.plusDays(i), 110, (i == 0) ? maximum : (i == 1) ? tomorrow : 200, 0, 0, 30,
					50));
		}
		this.forecasts.keep(STATION, "test", noon(today).minusSeconds(3600), ahead);
		this.replanning.derive(this.site);
	}

	@Test
	void aRampFollowsTheLightAndWaitsForWarmth() {
		day(FIRST, 200, 200);
		assertThat(tasks("hardening/harden-off-seedlings")).hasSize(14);
		assertThat(ramp(1).text().title()).startsWith("Day 1 of 14");
		assertThat(ramp(1).text().amount()).contains("hours outside from").contains("shade").contains("mol/m² a day");
		assertThat(this.calendar.explain(ramp(4).id()).orElseThrow().toString()).contains("Step 4 of 14");
		day(FIRST.plusDays(1), 200, 50);
		assertThat(tasks("hardening/harden-off-seedlings")).as("a cold day is expected").hasSize(15);
		assertThat(ramp(3).text().title()).startsWith("Day 3 of 15, kept in");
		day(FIRST.plusDays(2), 50, 200);
		assertThat(ramp(3).text().title()).startsWith("Day 3 of 15, kept in");
		assertThat(this.calendar.explain(ramp(4).id()).orElseThrow().toString()).contains("Step 3 of 14");
		day(FIRST.plusDays(3), 200, 200);
		assertThat(ramp(4).text().amount()).contains("outside");
		assertThat(this.calendar.explain(ramp(4).id()).orElseThrow().toString()).contains("Step 3 of 14");
		assertThat(this.pictures.of(ramp(15))).hasValueSatisfying((picture) -> {
			assertThat(picture.rows()).hasSize(15);
			assertThat(picture.rows().get(2).held()).isEqualTo("Kept in");
			assertThat(picture.rows().get(14).light()).isEqualTo(picture.rows().get(14).site(), within(0.5));
			assertThat(picture.svg()).contains("<svg");
		});
		assertThat(this.pictures.of(tasks("edibles/water-weekly").get(0))).isEmpty();
		assertThat(ramp(15).window()).isEqualTo(DayWindow.of(LocalDate.of(2027, 5, 20)));
	}

	@Test
	void aDayThatIsLeftOutIsRepeatedAtOnceAndTakenBackAgain() {
		day(FIRST, 200, 200);
		String second = String.valueOf(this.calendar.explain(ramp(2).id()).orElseThrow());
		this.log.skip(List.of(ramp(1).id()), "too busy", null);
		assertThat(tasks("hardening/harden-off-seedlings")).hasSize(15);
		assertThat(this.calendar.explain(ramp(2).id()).orElseThrow().toString()).contains("Step 1 of 14");
		this.log.undo(List.of(ramp(1).id()), null);
		assertThat(String.valueOf(this.calendar.explain(ramp(2).id()).orElseThrow())).isEqualTo(second);
		assertThat(this.calendar.ofSite(this.site, new DayWindow(FIRST, FIRST.plusDays(120)))
			.stream()
			.filter((task) -> task.rule().startsWith("hardening/harden") && task.occurrence() == 15)).singleElement()
			.satisfies((task) -> assertThat(task.state()).isEqualTo(TaskState.WITHDRAWN));
	}

	@Test
	void waterFollowsTheBalanceTheAreaAndTheHose() {
		Planting bed = this.register
			.addPlantings(this.site, List.of(new NewPlanting(new SpeciesId("asparagus-officinalis"), "asparagus", 30,
					LocalDate.of(2020, 5, 1), Placement.GROUND, false, false)))
			.get(0);
		day(FIRST, 200, 200);
		String plain = amount();
		assertThat(plain).contains("litres on each square metre").contains("Merrow County allows it on");
		this.register.changeSize(bed.id(), new PlantingSize(20.0, null, null), null);
		String sized = amount();
		assertThat(sized).contains("litres (").doesNotContain("square metre").doesNotContain("minutes");
		this.register.change(this.site, (now) -> new SiteSetting(now.place(), now.region(), now.features(), 10.0));
		assertThat(amount()).contains("minutes").startsWith(sized.substring(0, sized.indexOf(';')));
		this.waterings.record(this.site, new NewWatering(bed.id(), FIRST.minusDays(1), 60, ""), null);
		assertThat(amount()).as("its own bed was watered").startsWith("Nothing now");
		CareTask task = tasks("edibles/water-lasting-crops").get(0);
		assertThat(this.calendar.explain(task.id()).orElseThrow().toString()).contains("Local limit")
			.contains("FAO Irrigation and Drainage Paper 56");
	}

	@Test
	void aBedsOwnHoseGoesBeforeThatOfTheSite() {
		Planting planting = this.register.addPlantings(this.site,
				List.of(new NewPlanting(new SpeciesId("asparagus-officinalis"), "asparagus", 30,
						LocalDate.of(2020, 5, 1), Placement.GROUND, false, false, new PlantingSize(20.0, null, null),
						null)))
			.get(0);
		day(FIRST, 200, 200);
		this.register.change(this.site, (now) -> new SiteSetting(now.place(), now.region(), now.features(), 10.0));
		String slow = amount();
		Bed bed = this.beds.add(this.site, new NewBed("drip line", null, null, 40.0));
		assertThat(amount()).as("an empty bed").isEqualTo(slow);
		this.beds.put(planting.id(), bed.id());
		// Four times the water takes a quarter of the time.
		assertThat(minutes(amount())).isBetween(minutes(slow) / 4 - 2, minutes(slow) / 4 + 2);
		List<CareTask> ofBed = this.calendar.ofBed(bed.id(), new DayWindow(FIRST, FIRST.plusDays(300)));
		assertThat(ofBed).isNotEmpty()
			.isEqualTo(this.calendar.ofSite(this.site, new DayWindow(FIRST, FIRST.plusDays(300)))
				.stream()
				.filter((task) -> planting.id().equals(task.planting()))
				.toList());
		this.beds.change(bed.id(), (now) -> new NewBed("drip line", null, null, null));
		assertThat(amount()).as("as at the site again").isEqualTo(slow);
		this.beds.change(bed.id(), (now) -> new NewBed("drip line", null, null, 40.0));
		this.beds.remove(bed.id());
		assertThat(amount()).as("the bed is gone").isEqualTo(slow);
		assertThat(this.register.find(planting.id()).orElseThrow().bed()).isNull();
		assertThat(this.calendar.ofBed(bed.id(), new DayWindow(FIRST, FIRST.plusDays(300)))).isEmpty();
	}

	private static int minutes(String amount) {
		Matcher hours = Pattern.compile("(\\d+) hours?").matcher(amount);
		Matcher minutes = Pattern.compile("(\\d+) minutes?").matcher(amount);
		int found = (hours.find() ? 60 * Integer.parseInt(hours.group(1)) : 0)
				+ (minutes.find() ? Integer.parseInt(minutes.group(1)) : 0);
		assertThat(found).as(amount).isPositive();
		return found;
	}

	private String amount() {
		return String.valueOf(tasks("edibles/water-lasting-crops").get(0).text().amount());
	}

}
