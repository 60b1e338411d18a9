package org.leafward.care.core.amount;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.leafward.amounts.Amount;
import org.leafward.amounts.Quantity;

import org.leafward.amounts.salt.Conductivity;
import org.leafward.amounts.salt.Drainage;
import org.leafward.amounts.salt.Extract;
import org.leafward.amounts.soiltest.SoilTest;
import org.leafward.amounts.soiltest.SoilTreatment;
import org.leafward.amounts.soiltest.TreatedBed;
import org.leafward.care.core.plan.Subject;
import org.leafward.care.core.plan.TestedSoil;
import org.leafward.care.core.rule.Computes;
import org.leafward.climate.core.water.TextureClass;
import org.leafward.measure.DayWindow;
import org.leafward.measure.DayWords;
import org.leafward.measure.Explanation;
import org.leafward.register.BedId;
import org.leafward.register.KeptSoilTest;
import org.leafward.register.Planting;
import org.leafward.register.PlantingId;
import org.leafward.register.SoilFigures;
import org.leafward.register.SoilTexture;

/**
 * The soil of a site's beds by their latest test: one of the bed itself or of the whole
 * site, whichever is later; on the same day that of the bed. A sample from one planting
 * of a bed stands for the others in it, as they share its soil.
 */
public final class PlantSoil {

	/** Share of gypsum in what is spread, as most products have it; from memory. */
	private static final double USUAL_PURITY = 0.9;

	private final SoilTexture soil;

	private final List<KeptSoilTest> tests;

	private final Map<PlantingId, BedId> beds;

	private final Map<Tested, TestedSoil> known = new HashMap<>();

	/**
	 * Prepares a site; nothing is worked out before a rule asks.
	 * @param soil its texture, for extracts that are moved to the saturated paste
	 * @param tests its latest soil tests, one of the whole site and of each bed at most
	 */
	public PlantSoil(SoilTexture soil, List<KeptSoilTest> tests) {
		this(soil, tests, List.of());
	}

	/**
	 * The same for a site with beds.
	 * @param soil its texture
	 * @param tests its latest soil tests
	 * @param plantings its plantings, which tell who shares a bed
	 */
	public PlantSoil(SoilTexture soil, List<KeptSoilTest> tests, List<Planting> plantings) {
		this.soil = soil;
		this.tests = List.copyOf(tests);
		Map<PlantingId, BedId> beds = new HashMap<>();
		for (Planting planting : tests.isEmpty() ? List.<Planting>of() : plantings) {
			BedId bed = planting.bed();
			if (bed != null) {
				beds.put(planting.id(), bed);
			}
		}
		this.beds = beds;
	}

	/** A test and the bed it counts for; beds of the same size share an answer. */
	private record Tested(KeptSoilTest test, @Nullable Double squareMetres) {
	}

	/**
	 * What the latest test of a bed asks for.
	 * @param subject the planting
	 * @return empty without a test, and for a site as a whole
	 */
	public Optional<TestedSoil> tested(Subject subject) {
		Planting planting = subject.planting();
		if (planting == null || this.tests.isEmpty()) {
			return Optional.empty();
		}
		return this.tests.stream()
			.filter((test) -> near(test, planting) >= 0)
			.max(Comparator.comparing(KeptSoilTest::day).thenComparing((test) -> near(test, planting)))
			.map((test) -> this.known.computeIfAbsent(new Tested(test, planting.size().squareMetres()), this::answer));
	}

	/**
	 * How near a sample was taken: 2 here, 1 in the same bed, 0 somewhere; -1 elsewhere.
	 */
	private int near(KeptSoilTest test, Planting planting) {
		PlantingId from = test.planting();
		if (from == null) {
			return 0;
		}
		BedId bed = planting.bed();
		return from.equals(planting.id()) ? 2 : (bed != null && bed.equals(this.beds.get(from))) ? 1 : -1;
	}

	private TestedSoil answer(Tested tested) {
		KeptSoilTest test = tested.test();
		SoilFigures figures = test.figures();
		Conductivity salt = new Conductivity(figures.conductivity(), Extract.valueOf(figures.extract().name()),
				TextureClass.named(this.soil.words()));
		Double percent = figures.sodiumPercent();
		SoilTest read = (percent != null) ? new SoilTest(figures.acidity(), salt, percent, null, figures.exchange())
				: SoilTest.ofRatio(figures.acidity(), salt, Objects.requireNonNull(figures.sodiumRatio()),
						figures.exchange());
		double size = (tested.squareMetres() != null) ? tested.squareMetres() : 1;
		TreatedBed bed = new TreatedBed(size, test.depthCentimetres() / 100, Drainage.valueOf(test.drainage().name()));
		return new TestedSoil(test.day(), SoilTreatment.of(read, bed, SoilTreatment.USUAL_ESP, USUAL_PURITY));
	}

	/**
	 * How much.
	 * @param computes gypsum, or the leaching that a test asks for
	 * @param subject for which planting
	 * @param window the days of the task
	 * @return empty where the test asks for nothing of it
	 */
	public Optional<Amount> amount(Computes computes, Subject subject, DayWindow window) {
		Planting planting = subject.planting();
		return tested(subject).flatMap((soil) -> {
			boolean sized = planting != null && planting.size().squareMetres() != null;
			Optional<String> words = (computes == Computes.GYPSUM) ? gypsum(soil, window, sized)
					: Optional.ofNullable(soil.treatment().leaching())
						.map((water) -> perSquareMetre(water.amount().words(), sized));
			return words.map((amount) -> new Amount(amount, explanation(soil, sized)));
		});
	}

	private static Optional<String> gypsum(TestedSoil soil, DayWindow window, boolean sized) {
		SoilTreatment treatment = soil.treatment();
		if (treatment.applications().isEmpty()) {
			return Optional.empty();
		}
		int part = soil.part(window.from());
		String one = Quantity.kilograms(treatment.applications().get(part - 1));
		String all = (soil.parts() == 1) ? "" : ", part %d of %d, half a year apart, %s in all".formatted(part,
				soil.parts(), Quantity.kilograms(treatment.kilograms()));
		return Optional.of(perSquareMetre("About %s of gypsum%s. Water it in with %s.".formatted(one, all,
				Quantity.millimetres(SoilTreatment.WATER_AFTER)), sized)
				+ " A product that is not nine tenths gypsum takes another amount.");
	}

	/** Where nobody knows the size of the bed, a square metre stands for it. */
	private static String perSquareMetre(String words, boolean sized) {
		return sized ? words : "For each square metre (11 sq ft): " + words;
	}

	private static Explanation explanation(TestedSoil soil, boolean sized) {
		Explanation answer = soil.treatment().amount().explanation();
		List<Explanation> steps = new ArrayList<>();
		steps.add(Explanation.of("Soil test", "sample of " + DayWords.of(soil.day()))
			.withDetail("The latest of this bed or of the whole site."
					+ (sized ? "" : " The size of the bed isn’t known, so a square metre stands for it.")));
		steps.addAll(answer.steps());
		return answer.withSteps(steps);
	}

}
