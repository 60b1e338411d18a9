package org.leafward.care.core.keep;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leafward.accounts.PersonId;
import org.leafward.amounts.calculator.Calculation;
import org.leafward.amounts.calculator.GivenFigures;
import org.leafward.amounts.light.Aspect;
import org.leafward.amounts.light.SiteLight;
import org.leafward.amounts.light.StartingLight;
import org.leafward.amounts.salt.Conductivity;
import org.leafward.amounts.salt.Drainage;
import org.leafward.amounts.salt.Extract;
import org.leafward.amounts.soiltest.SoilTest;
import org.leafward.amounts.soiltest.TreatedBed;
import org.leafward.climate.core.water.TextureClass;
import org.leafward.measure.BadInput;
import org.leafward.measure.GeoPoint;
import org.leafward.plants.SpeciesId;
import org.leafward.register.Placement;
import org.leafward.register.Planting;
import org.leafward.register.PlantingId;
import org.leafward.register.PlantingSize;
import org.leafward.register.Raised;
import org.leafward.register.RaisedIn;
import org.leafward.register.Site;
import org.leafward.register.SiteId;
import org.leafward.register.SoilDrainage;
import org.leafward.register.SoilExtract;
import org.leafward.register.SoilFigures;
import org.leafward.register.SoilTexture;
import org.leafward.register.Sun;
import org.leafward.register.Wind;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

class KeepingTests {

	private static final LocalDate TODAY = LocalDate.of(2027, 5, 6);

	private static final UUID ID = new UUID(1, 2);

	private static Planting planting(LocalDate day, Placement placement, PlantingSize size, @Nullable Raised raised) {
		return new Planting(new PlantingId(ID), new SiteId(ID), new SpeciesId("acer-rubrum"), "maple", 1, day,
				placement, false, false, size, raised);
	}

	private static Planting ground() {
		return planting(TODAY.minusYears(1), Placement.GROUND, new PlantingSize(12.0, 50.0, null), null);
	}

	private static Keeping keep(String calculator, GivenFigures figures, Planting planting, double latitude) {
		Site site = new Site(new SiteId(ID), new PersonId(ID), "Garden", "", new GeoPoint(latitude, -90, 200),
				ZoneId.of("UTC"), SoilTexture.LOAM, Sun.FULL_SUN, Wind.AVERAGE);
		return Keeping.of(new Calculation(calculator, Map.of(), "About so much.", figures), planting, site, TODAY,
				TODAY.minusDays(3));
	}

	@Test
	void aBedSetsAreaAndHoseAndLeavesTheRest() {
		Keeping keeping = keep("water", GivenFigures.ofBed(20.0, 10.0, "clay"), ground(), 45);
		assertThat(keeping.figures().size()).isEqualTo(new PlantingSize(20.0, 50.0, null));
		assertThat(keeping.litresPerMinute()).isEqualTo(10);
		assertThat(keeping.soilTest()).isNull();
		assertThat(keeping.figures().plantedOn()).isEqualTo(TODAY.minusYears(1));
		assertThat(keeping.changes()).containsExactly(
				new Keeping.Change("Area of its bed", "20 m² (220 sq ft)", "12 m² (130 sq ft)", false),
				new Keeping.Change("The hose here gives", "10 litres (2.6 gal) a minute", null, false));
		assertThat(keeping.remarks()).anyMatch((one) -> one.contains("stays loam") && one.contains("not by clay"));
	}

	@Test
	void whatIsSoAlreadyIsSaidSo() {
		Keeping keeping = keep("water", GivenFigures.ofBed(12.0, null, "loam"), ground(), 45);
		assertThat(keeping.changes()).singleElement().matches(Keeping.Change::same);
		assertThat(keeping.remarks()).noneMatch((one) -> one.contains("stays loam"));
	}

	@Test
	void aTreePlanSetsTrunkAndDay() {
		Keeping keeping = keep("new-tree", GivenFigures.ofTree(63.5, null, TODAY.minusDays(20)), ground(), 45);
		assertThat(keeping.figures().size().calliperMillimetres()).isEqualTo(63.5);
		assertThat(keeping.figures().plantedOn()).isEqualTo(TODAY.minusDays(20));
		assertThat(keeping.changes()).extracting(Keeping.Change::what)
			.containsExactly("Thickness of one trunk", "Day of planting");
	}

	/** The sun stands in the south at noon on one half of the earth only. */
	@ParameterizedTest
	@CsvSource({ "SOUTH, 45, MIDDAY_WINDOW", "NORTH, 45, SUNLESS_WINDOW", "EAST, 45, MORNING_WINDOW",
			"WEST, 45, AFTERNOON_WINDOW", "NORTH, -37, MIDDAY_WINDOW", "SOUTH, -37, SUNLESS_WINDOW" })
	void aWindowIsOneByTheSun(Aspect aspect, double latitude, RaisedIn window) {
		Keeping keeping = keep("light", GivenFigures.ofLight(new StartingLight.Windowsill(aspect), TODAY.plusDays(20)),
				ground(), latitude);
		assertThat(keeping.figures().raised()).isEqualTo(new Raised(window, null, null));
	}

	@Test
	void seedlingsGetTheirLampAndTheirDayAndWhatStandsOutsideKeepsItsOwn() {
		GivenFigures lamp = GivenFigures.ofLight(new StartingLight.Lamp(180, 15), TODAY.plusDays(20));
		Planting seedlings = planting(TODAY.plusDays(9), Placement.GROUND, PlantingSize.UNKNOWN, null);
		assertThat(keep("light", lamp, seedlings, 45).figures().raised())
			.isEqualTo(new Raised(RaisedIn.LAMPS, 180.0, 15.0));
		assertThat(keep("light", lamp, seedlings, 45).figures().plantedOn()).isEqualTo(TODAY.plusDays(20));
		assertThat(keep("light", lamp, ground(), 45).figures().plantedOn()).isEqualTo(TODAY.minusYears(1));
	}

	@Test
	void lightThatIsNoFigureStaysAsItWas() {
		Raised before = new Raised(RaisedIn.GREENHOUSE, null, null);
		Planting seedlings = planting(TODAY.plusDays(9), Placement.GROUND, PlantingSize.UNKNOWN, before);
		for (StartingLight light : new StartingLight[] { new StartingLight.Unknown(),
				new StartingLight.Outdoors(SiteLight.SHADE) }) {
			Keeping keeping = keep("light", GivenFigures.ofLight(light, TODAY.plusDays(9)), seedlings, 45);
			assertThat(keeping.figures().raised()).isEqualTo(before);
			assertThat(keeping.remarks()).anyMatch((one) -> one.startsWith("Where it stands now stays"));
		}
	}

	@Test
	void saltIsKnownToReachItFromThenOn() {
		Keeping keeping = keep("salt", GivenFigures.ofSalt(30.0, true), ground(), 45);
		assertThat(keeping.figures().saltExposed()).isTrue();
		assertThat(keep("salt", GivenFigures.ofSalt(30.0, false), ground(), 45).figures().saltExposed()).isFalse();
		Planting pot = planting(TODAY, Placement.CONTAINER, PlantingSize.UNKNOWN, null);
		assertThat(keep("salt", GivenFigures.ofSalt(null, true), pot, 45).remarks())
			.anyMatch((one) -> one.contains("for plants in the ground"));
	}

	@Test
	void aSoilTestBecomesOneOfTheBed() {
		Conductivity salt = new Conductivity(2, Extract.ONE_TO_TWO, TextureClass.LOAM);
		Keeping keeping = keep("soil-test",
				GivenFigures.ofTest(SoilTest.ofRatio(8.8, salt, 24, 18.0), new TreatedBed(10, 0.2, Drainage.SLOW)),
				ground(), 45);
		assertThat(keeping.figures().size().squareMetres()).isEqualTo(10);
		assertThat(keeping.soilTest()).satisfies((test) -> {
			assertThat(test.planting()).isEqualTo(new PlantingId(ID));
			assertThat(test.day()).isEqualTo(TODAY.minusDays(3));
			assertThat(test.figures()).isEqualTo(new SoilFigures(8.8, 2, SoilExtract.ONE_TO_TWO, 24.0, null, 18.0));
			assertThat(test.depthCentimetres()).isEqualTo(20);
			assertThat(test.drainage()).isEqualTo(SoilDrainage.SLOW);
		});
		Keeping percent = keep("soil-test", GivenFigures.ofTest(new SoilTest(8.8, salt, 20, null, null),
				new TreatedBed(10, 0.15, Drainage.UNTESTED)), ground(), 45);
		assertThat(percent.soilTest().figures().sodiumPercent()).isEqualTo(20);
	}

	@Test
	void figuresThatNoPlantingHasAreRefused() {
		assertThatExceptionOfType(BadInput.class)
			.isThrownBy(() -> keep("water", GivenFigures.ofPot(9000.0, null), ground(), 45))
			.matches((ex) -> ex.where().equals("pot"));
	}

}
