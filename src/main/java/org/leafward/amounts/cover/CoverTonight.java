package org.leafward.amounts.cover;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.leafward.amounts.Amount;
import org.leafward.amounts.Degrees;
import org.leafward.measure.BadInput;
import org.leafward.measure.Explanation;

/**
 * Whether a plant needs a cover tonight, and which.
 *
 * @param verdict what to do
 * @param cover the lightest cover that is enough, null without
 * @param plantCelsius temperature at the plant without a cover, °C
 * @param coveredCelsius temperature under the cover, °C, by the gain that can be counted
 * on; the same as {@code plantCelsius} without a cover
 * @param amount what to do in words, with how it came about
 */
public record CoverTonight(Verdict verdict, @Nullable Cover cover, double plantCelsius, double coveredCelsius,
		Amount amount) {

	/** What to do. */
	public enum Verdict {

		/** The plant isn't hurt. */
		NONE_NEEDED,

		/** A cover keeps it from harm. */
		COVER,

		/** Bring it in or harvest. */
		NO_COVER_IS_ENOUGH

	}

	private static final List<Cover> LIGHTEST_FIRST = Stream.of(Cover.values())
		.sorted(Comparator.comparingDouble(Cover::lowGain))
		.toList();

	/**
	 * Judges a night.
	 * @param forecastCelsius lowest temperature that is forecast, °C, -60 to 40
	 * @param offsetCelsius how much warmer the site is than the place of the forecast,
	 * degrees Celsius, negative when it is colder, -15 to 15
	 * @param sky what the night is like
	 * @param hurtCelsius temperature at which the plant is hurt, °C, -40 to 20; it still
	 * counts as hurt at that temperature
	 * @param atHand covers to choose from, may be empty
	 * @return what to do
	 * @throws BadInput when a temperature is out of its bounds
	 */
	public static CoverTonight judge(double forecastCelsius, double offsetCelsius, NightSky sky, double hurtCelsius,
			Collection<Cover> atHand) {
		check("forecast", "the forecast", forecastCelsius, -60, 40);
		check("offset", "the difference of the site", offsetCelsius, -15, 15);
		check("hurt", "the temperature that hurts", hurtCelsius, -40, 20);
		double plant = forecastCelsius + offsetCelsius - sky.colder();
		Optional<Cover> enough = enough(plant, hurtCelsius, atHand);
		Verdict verdict = (plant > hurtCelsius) ? Verdict.NONE_NEEDED
				: enough.isPresent() ? Verdict.COVER : Verdict.NO_COVER_IS_ENOUGH;
		Cover cover = (verdict == Verdict.COVER) ? enough.orElse(null) : null;
		double covered = plant + ((cover != null) ? cover.lowGain() : 0);
		String words = words(verdict, cover, plant, covered, hurtCelsius, atHand);
		return new CoverTonight(verdict, cover, plant, covered, new Amount(words, Explanation.of("Cover tonight", words)
			.withSteps(List.of(
					Explanation.of("At the plant", Degrees.words(plant))
						.withDetail("Forecast " + Degrees.words(forecastCelsius) + site(offsetCelsius) + ", plants "
								+ Degrees.difference(sky.colder()) + " colder still; the night is " + sky.words() + ".")
						.withSource(NightSky.SOURCE),
					Explanation.of("The plant is hurt at", Degrees.words(hurtCelsius)), gains(cover, atHand)))));
	}

	private static String name(Verdict verdict, @Nullable Cover cover) {
		return (cover != null) ? cover.words() : (verdict == Verdict.NONE_NEEDED) ? "none needed" : "none is enough";
	}

	private static String warmer(double difference) {
		return (Math.abs(difference) < 0.05) ? "no different"
				: Degrees.difference(Math.abs(difference)) + ((difference < 0) ? " colder" : " warmer");
	}

	private static String site(double offset) {
		return (offset == 0) ? ""
				: ", the site " + Degrees.difference(Math.abs(offset)) + ((offset < 0) ? " colder" : " warmer");
	}

	private static void check(String field, String what, double value, double low, double high) {
		if (!(value >= low && value <= high)) {
			throw new BadInput("%s %.1f °C is outside %.0f to %.0f °C".formatted(what, value, low, high), field,
					"give a temperature between the two");
		}
	}

	private static Optional<Cover> enough(double plant, double hurt, Collection<Cover> covers) {
		return LIGHTEST_FIRST.stream()
			.filter(covers::contains)
			.filter((one) -> plant + one.lowGain() > hurt)
			.findFirst();
	}

	private static String words(Verdict verdict, @Nullable Cover cover, double plant, double covered, double hurt,
			Collection<Cover> atHand) {
		String about = "about " + Degrees.words(plant) + " at the plant";
		if (verdict == Verdict.NONE_NEEDED) {
			return "No cover needed: " + about + ", and it is hurt at " + Degrees.words(hurt) + ".";
		}
		if (cover != null) {
			return "Cover with " + cover.words() + " before sunset, down to the ground: " + about + ", about "
					+ Degrees.words(covered) + " under it.";
		}
		String other = enough(plant, hurt, LIGHTEST_FIRST)
			.map((one) -> "Of what you have no cover is enough, " + one.words() + " would be: bring it in or harvest, ")
			.orElse("No cover is enough: bring it indoors or harvest, ");
		boolean atBest = atHand.stream().anyMatch((one) -> plant + one.highGain() > hurt);
		return other + about + "." + (atBest ? " A cover may just do, but don’t count on it." : "");
	}

	private static Explanation gains(@Nullable Cover chosen, Collection<Cover> atHand) {
		return Explanation.of("What covers gain", (chosen != null) ? gain(chosen) : "by kind")
			.withDetail("The lower figure is counted on. A cover holds the warmth of the ground; in wind, or over cold "
					+ "or dry ground, there is less to hold.")
			.withSteps(LIGHTEST_FIRST.stream()
				.filter(atHand::contains)
				.map((one) -> Explanation.of(one.words(), gain(one)).withSource(one.source()))
				.toList());
	}

	private static String gain(Cover cover) {
		return Degrees.difference(cover.lowGain()) + " to " + Degrees.difference(cover.highGain());
	}

}
