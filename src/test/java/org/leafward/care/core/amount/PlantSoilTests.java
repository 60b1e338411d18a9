package org.leafward.care.core.amount;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leafward.amounts.Amount;
import org.leafward.care.core.plan.Subject;
import org.leafward.care.core.rule.Computes;
import org.leafward.care.core.rule.SoilFinding;
import org.leafward.measure.DayWindow;
import org.leafward.plants.Habits;
import org.leafward.plants.Species;
import org.leafward.plants.SpeciesId;
import org.leafward.plants.Tolerance;
import org.leafward.register.KeptSoilTest;
import org.leafward.register.Placement;
import org.leafward.register.Planting;
import org.leafward.register.PlantingId;
import org.leafward.register.PlantingSize;
import org.leafward.register.SiteId;
import org.leafward.register.SoilDrainage;
import org.leafward.register.SoilExtract;
import org.leafward.register.SoilFigures;
import org.leafward.register.SoilTestId;
import org.leafward.register.SoilTexture;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * Which soil test a bed goes by, and its amounts. The figures of gypsum are those whose
 * tables and worked examples {@code SoilTreatmentTests} names; classes are those of USDA
 * Agriculture Handbook 60, as there.
 */
class PlantSoilTests {

	private static final LocalDate DAY = LocalDate.of(2027, 4, 6);

	private static final DayWindow FIRST = new DayWindow(DAY, DAY.plusDays(181));

	private static final DayWindow SECOND = new DayWindow(DAY.plusDays(182), DAY.plusDays(363));

	/**
	 * By the mass balance 0.0086 F Ds rho CEC (ESPi - ESPf), read in a copy of Oster's
	 * equation: 0.0086 x 1.25 x 0.15 m x 1.47 x 150 mmol/kg x 15 = 5.33 t/ha, of nine
	 * tenths gypsum 5.93, which is 5.9 kg on ten square metres.
	 */
	@Test
	void aSodicBedTakesTheGypsumOfTheMassBalance() {
		KeptSoilTest sodic = test(null, DAY, figures(8.8, 2, 25, 15.0), SoilDrainage.GOOD);
		assertThat(amount(Computes.GYPSUM, FIRST, 10.0, sodic)).startsWith("About 5.9 kg (13 lb) of gypsum. Water");
		assertThat(amount(Computes.GYPSUM, FIRST, null, sodic))
			.startsWith("For each square metre (11 sq ft): About 0.59 kg (1.3 lb)");
		assertThat(amount(Computes.TESTED_LEACHING, FIRST, 10.0, sodic)).as("no other salt").isEmpty();
	}

	@Test
	void muchGypsumComesInPartsAndThenWater() {
		KeptSoilTest both = test(null, DAY, figures(8.4, 8, 45, 30.0), SoilDrainage.GOOD);
		assertThat(amount(Computes.GYPSUM, FIRST, 10.0, both))
			.startsWith("About 9.2 kg (20 lb) of gypsum, part 1 of 3, half a year apart, 28 kg (61 lb) in all.");
		assertThat(amount(Computes.GYPSUM, SECOND, 10.0, both)).contains("part 2 of 3");
		assertThat(amount(Computes.TESTED_LEACHING, FIRST, 10.0, both)).startsWith("About 1,500 litres");
		assertThat(soil(both).tested(bed(10.0)).orElseThrow().parts()).isEqualTo(3);
	}

	@ParameterizedTest
	@CsvSource({ "8.8, 2, 25, GOOD, 15, GYPSUM", "8.4, 8, 45, SLOW, 30, GYPSUM LEACH_AFTER_GYPSUM",
			"7.5, 8, 5, GOOD, 15, LEACH", "5.5, 2, 25, GOOD, 15, LIME", "8.8, 2, 25, NONE, 15, DRAIN_FIRST",
			"8.8, 2, 25, GOOD, , MEASURE_EXCHANGE", "7.0, 1, 5, GOOD, 15, ''", "7.0, 1, 5, NONE, , ''" })
	void aTestAsksForWhatItsClassNeeds(double ph, double conductivity, double percent, SoilDrainage drainage,
			@Nullable Double exchange, String findings) {
		KeptSoilTest test = test(null, DAY, figures(ph, conductivity, percent, exchange), drainage);
		String found = Set.of(SoilFinding.values())
			.stream()
			.filter((one) -> one.isAskedBy(soil(test).tested(bed(10.0)).orElseThrow().treatment()))
			.sorted()
			.map(SoilFinding::name)
			.reduce("", (one, other) -> (one + " " + other).strip());
		assertThat(found).isEqualTo(findings);
	}

	@Test
	void theLatestOfTheBedOrOfTheWholeSiteCounts() {
		SoilFigures sodic = figures(8.8, 2, 25, 15.0);
		SoilFigures normal = figures(7, 1, 5, 15.0);
		Subject bed = bed(10.0);
		PlantingId own = new PlantingId(bed.id());
		KeptSoilTest whole = test(null, DAY, sodic, SoilDrainage.GOOD);
		assertThat(day(bed, whole, test(own, DAY.minusDays(1), normal, SoilDrainage.GOOD))).isEqualTo(DAY);
		assertThat(day(bed, whole, test(own, DAY.plusDays(1), normal, SoilDrainage.GOOD))).isEqualTo(DAY.plusDays(1));
		assertThat(soil(whole, test(own, DAY, normal, SoilDrainage.GOOD)).amount(Computes.GYPSUM, bed, FIRST))
			.as("on the same day that of the bed")
			.isEmpty();
		PlantingId other = new PlantingId(UUID.randomUUID());
		assertThat(soil(test(other, DAY, sodic, SoilDrainage.GOOD)).tested(bed)).isEmpty();
		assertThat(soil(whole).tested(Subject.of(whole.site()))).isEmpty();
	}

	/** The bounds of what is kept lie within those of what is worked out. */
	@Test
	void whateverMayBeKeptHasAnAnswer() {
		for (double ph : new double[] { 2, 12 }) {
			for (double salt : new double[] { 0, 100 }) {
				for (SoilExtract extract : SoilExtract.values()) {
					for (@Nullable
					Double ratio : new @Nullable Double[] { 0.0, 150.0, null }) {
						for (@Nullable
						Double exchange : new @Nullable Double[] { 0.5, 100.0, null }) {
							for (SoilDrainage drainage : SoilDrainage.values()) {
								Double percent = (ratio == null) ? 70.0 : null;
								SoilFigures figures = new SoilFigures(ph, salt, extract, ratio, percent, exchange);
								KeptSoilTest test = test(null, DAY, figures, drainage);
								assertThat(soil(test).tested(bed(null))).isPresent();
							}
						}
					}
				}
			}
		}
	}

	private static PlantSoil soil(KeptSoilTest... tests) {
		return new PlantSoil(SoilTexture.LOAM, List.of(tests));
	}

	private static LocalDate day(Subject bed, KeptSoilTest... tests) {
		return soil(tests).tested(bed).orElseThrow().day();
	}

	private static String amount(Computes computes, DayWindow window, @Nullable Double area, KeptSoilTest test) {
		return soil(test).amount(computes, bed(area), window).map(Amount::words).orElse("");
	}

	private static SoilFigures figures(double ph, double conductivity, double percent, @Nullable Double exchange) {
		return new SoilFigures(ph, conductivity, SoilExtract.SATURATED_PASTE, null, percent, exchange);
	}

	private static KeptSoilTest test(@Nullable PlantingId planting, LocalDate day, SoilFigures figures,
			SoilDrainage drainage) {
		return new KeptSoilTest(new SoilTestId(UUID.randomUUID()), new SiteId(UUID.randomUUID()), planting, day,
				figures, 15, drainage, "", null, Instant.EPOCH);
	}

	private static Subject bed(@Nullable Double area) {
		Species species = new Species(new SpeciesId("some-plant"), "Some plant", "some plant", List.of(),
				List.of("oak"), Set.of(), null, new Habits(null, null, null, Tolerance.UNKNOWN, List.of(), null),
				List.of());
		return Subject
			.of(new Planting(new PlantingId(UUID.randomUUID()), new SiteId(UUID.randomUUID()), species.id(), "bed", 3,
					LocalDate.of(2020, 5, 1), Placement.GROUND, false, false, new PlantingSize(area, null, null), null),
					species);
	}

}
