package org.leafward.amounts.soiltest;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.leafward.amounts.Amount;
import org.leafward.amounts.Quantity;
import org.leafward.amounts.salt.Drainage;
import org.leafward.amounts.salt.Leaching;
import org.leafward.amounts.salt.LeachingCurve;
import org.leafward.amounts.salt.SaltedBed;
import org.leafward.measure.BadInput;
import org.leafward.measure.Explanation;

/**
 * What to do about a soil after its test.
 *
 * @param soil its class
 * @param remedy what answers it
 * @param kilograms gypsum to spread in all, 0 where it does nothing
 * @param applications the same in parts, kg each; they add up to the whole
 * @param leaching water that carries the salt out, after the gypsum where there is some;
 * null where nothing has to be leached
 * @param retest when to test again
 * @param amount what to do in words, with how it came about
 */
public record SoilTreatment(SoilClass soil, Remedy remedy, double kilograms, List<Double> applications,
		@Nullable Leaching leaching, String retest, Amount amount) {

	/** ESP to come down to, %: below the limit with room to spare, from memory. */
	public static final double USUAL_ESP = 10;

	/** Most gypsum at once, kg/m²: 20 lb on 100 square feet. */
	public static final double MOST_AT_ONCE = 20 * Quantity.KILOGRAMS_PER_POUND
			/ (100 * Quantity.SQUARE_METRES_PER_SQUARE_FOOT);

	/** Water right after spreading, mm: 2 inches, rounded. */
	public static final double WATER_AFTER = 50;

	/** Gypsum that a litre of water dissolves, g, at 25 °C; from memory. */
	private static final double SOLUBILITY = 2.4;

	/** dS/m that leaching after the test aims at. */
	private static final double CLEAR_ENOUGH = 2;

	/** More parts than in two years are told to be a doubtful plan (our choice). */
	private static final int MANY = 4;

	private static final String PURDUE = "the lower of two amounts that were tried in 1980 (20 and 40 lb on 100 sq ft), "
			+ "and 2 inches of water after it: Purdue Landscape Report, Salt in the landscape, read; agencies differ "
			+ "widely";

	public SoilTreatment {
		applications = List.copyOf(applications);
	}

	/**
	 * Answers a test.
	 * @param test the test
	 * @param bed the bed
	 * @param wanted ESP to come down to, %, 1 to 14
	 * @param purity share of gypsum in what is spread, 0.2 to 1
	 * @return what to do
	 * @throws BadInput when something is out of its bounds
	 */
	public static SoilTreatment of(SoilTest test, TreatedBed bed, double wanted, double purity) {
		Quantity.within("espWanted", "ESP wanted", wanted, 1, 14);
		Quantity.within("purity", "share of gypsum in %", purity * 100, 20, 100);
		Remedy remedy = Remedy.of(test, bed.drainage());
		List<Explanation> steps = new ArrayList<>();
		steps.add(test.explanation());
		steps.add(Explanation.of("Gypsum or not", (remedy == Remedy.GYPSUM) ? "yes" : "no")
			.withDetail(remedy.words())
			.withSource(Remedy.SOURCE));
		double perSquareMetre = 0;
		if (remedy == Remedy.GYPSUM) {
			double sodium = GypsumRequirement.sodium(Objects.requireNonNull(test.exchange()), test.exchangeable(),
					wanted);
			double pure = GypsumRequirement.pure(sodium, bed.depthMetres(), GypsumRequirement.USUAL_DENSITY);
			perSquareMetre = GypsumRequirement.spread(pure, purity);
			steps.add(gypsum(sodium, pure, perSquareMetre, bed, purity, test.exchangeable(), wanted));
		}
		int times = (int) Math.ceil(perSquareMetre / MOST_AT_ONCE - 1e-9);
		double kilograms = perSquareMetre * bed.squareMetres();
		Leaching leaching = leaching(test, bed, remedy);
		if (remedy == Remedy.GYPSUM) {
			steps.add(parts(perSquareMetre, times));
		}
		if (leaching != null) {
			steps.add(leaching.amount().explanation());
		}
		String retest = retest(remedy, times);
		steps.add(Explanation.of("Test again", retest).withSource("common practice, from memory"));
		String words = words(test.soilClass(), remedy, kilograms, times, leaching)
				+ ((remedy == Remedy.GYPSUM && bed.drainage() == Drainage.UNTESTED) ? " First see that the soil drains."
						: "");
		return new SoilTreatment(test.soilClass(), remedy, kilograms,
				(times == 0) ? List.of() : Collections.nCopies(times, kilograms / times), leaching, retest,
				new Amount(words, Explanation.of("What the test asks for", remedy.label()).withSteps(steps)));
	}

	private static Explanation gypsum(double sodium, double pure, double spread, TreatedBed bed, double purity,
			double now, double wanted) {
		return Explanation.of("Gypsum", Quantity.kilograms(spread * bed.squareMetres()))
			.withDetail(Quantity.figure(spread) + " kg on a square metre, "
					+ Quantity
						.figure(spread * 100 * Quantity.SQUARE_METRES_PER_SQUARE_FOOT / Quantity.KILOGRAMS_PER_POUND)
					+ " lb on 100 square feet; " + Quantity.area(bed.squareMetres()) + " in all.")
			.withSource(GypsumRequirement.SOURCE)
			.withSteps(List.of(
					Explanation.of("Sodium to replace", Quantity.figure(sodium) + " cmol/kg")
						.withDetail("CEC times the way from " + SoilTest.percent(now) + " to "
								+ SoilTest.percent(wanted) + " exchangeable sodium."),
					Explanation.of("Pure gypsum", Quantity.figure(pure) + " kg/m²")
						.withDetail("One equivalent, 86 g, for each of sodium in "
								+ Quantity.soilDepth(bed.depthMetres()) + " of soil."),
					Explanation.of("A quarter more, and purity", Math.round(purity * 100) + " % gypsum")));
	}

	private static Explanation parts(double perSquareMetre, int times) {
		return Explanation.of("Parts", (times == 1) ? "at once" : times + " applications, half a year apart")
			.withDetail("At most " + Quantity.figure(MOST_AT_ONCE) + " kg on a square metre (20 lb on 100 sq ft) at "
					+ "once, then " + Quantity.millimetres(WATER_AFTER) + " of water. All of it takes about "
					+ Quantity.millimetres(perSquareMetre * 1000 / SOLUBILITY)
					+ " of rain and water to dissolve. Dig it in where no roots are."
					+ ((times > MANY) ? " With so many parts new soil may be less work." : ""))
			.withSource(PURDUE + "; 2.4 g of gypsum dissolve in a litre, from memory");
	}

	private static @Nullable Leaching leaching(SoilTest test, TreatedBed bed, Remedy remedy) {
		double now = test.conductivity().saturated();
		if (!test.soilClass().saline() || remedy == Remedy.DRAIN_FIRST) {
			return null;
		}
		return Leaching.to(new SaltedBed(bed.squareMetres(), bed.depthMetres(), bed.drainage(), SaltedBed.Cause.TESTED),
				now, Math.max(CLEAR_ENOUGH, now * LeachingCurve.LEAST_SHARE));
	}

	private static String retest(Remedy remedy, int times) {
		return switch (remedy) {
			case NONE -> "In about three years, or when plants suffer.";
			case LEACH -> "A week after leaching and before you plant, and again in fall.";
			case GYPSUM -> (times > 1) ? "Before each further application, and next spring."
					: "Next spring, before you spread more.";
			case LIME -> "Next spring.";
			case DRAIN_FIRST -> "When water drains.";
			case MEASURE_EXCHANGE -> "Now, for the CEC of the same sample.";
		};
	}

	private static String words(SoilClass soil, Remedy remedy, double kilograms, int times,
			@Nullable Leaching leaching) {
		String start = "The soil is " + soil.words() + ". ";
		String water = (leaching != null && leaching.litres() != null)
				? " Leach with about " + Quantity.litres(leaching.litres()) + " in all." : "";
		if (remedy != Remedy.GYPSUM) {
			return start + remedy.words() + ((remedy == Remedy.LEACH) ? water : "");
		}
		return start + "Spread about " + Quantity.kilograms(kilograms) + " of gypsum"
				+ ((times == 1) ? ""
						: " in " + times + " parts of " + Quantity.kilograms(kilograms / times) + ", half a year apart")
				+ ", and water in with " + Quantity.millimetres(WATER_AFTER) + ((times == 1) ? "." : " each time.")
				+ water.replace("Leach", "Then leach");
	}

}
