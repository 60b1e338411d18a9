package org.leafward.amounts.light;

import java.util.ArrayList;
import java.util.List;
import org.leafward.amounts.Degrees;
import org.leafward.measure.DayWords;
import org.leafward.measure.Explanation;
import org.leafward.measure.NumberWords;

/** Days of a ramp in words, and how they came about. */
final class RampWords {

	static final String OPEN_SKY = "FAO Irrigation and Drainage Paper 56, equations 21 and 37; 0.45 of the sun’s energy "
			+ "(Faust and Logan 2018) at 4.57 µmol/J (Thimijan and Heins 1983, at second hand)";

	static final String OURS = "our choice, from memory; growers’ practice gives the order of magnitude";

	private static final String LENGTH = "Two weeks at least: California Master Gardener Handbook, 2nd edition, read in "
			+ "an excerpt; hours from 3 to 4 on, 1 to 2 more a day: Minnesota Master Gardeners, read in a newspaper";

	private RampWords() {
	}

	static String of(RampDay day) {
		StringBuilder words = new StringBuilder(160);
		if (day.nightOut()) {
			words.append("Out day and night: ");
		}
		else if (day.from() == null) {
			words.append("All day outside: ");
		}
		else {
			words.append(day.hoursOutside())
				.append((day.hoursOutside() == 1) ? " hour" : " hours")
				.append(" outside from ")
				.append(day.from())
				.append(": ");
		}
		words.append(exposure(day));
		words.append(
				day.nightOut() ? "; in again for a night below " + Degrees.words(day.basis().limits().nightCelsius())
						: "; in for the night");
		if (!day.basis().lightAlready()) {
			words.append(" (aim ")
				.append(moles(day.targetMoles()))
				.append(" of ")
				.append(moles(day.siteMoles()))
				.append(" mol/m² a day)");
		}
		return words.toString();
	}

	private static String exposure(RampDay day) {
		return switch (day.exposure()) {
			case SUN_UNTIL -> "sun until " + day.until() + ", then bright shade";
			case ITS_PLACE ->
				"in the place where it will grow" + (day.basis().lightAlready() ? ", sheltered from wind" : "");
			default -> day.exposure().words();
		};
	}

	/** Moles as readers need them. */
	static String moles(double moles) {
		return NumberWords.fixed(moles, (moles < 9.95) ? 1 : 0);
	}

	private static String unit(double moles) {
		return moles(moles) + " mol/m²";
	}

	static Explanation explain(RampDay day) {
		RampBasis basis = day.basis();
		List<Explanation> steps = new ArrayList<>();
		steps.add(new Explanation("Light now", unit(basis.presentMoles()), "It stands " + basis.start().words() + ".",
				basis.start().source(), List.of()));
		steps.add(new Explanation(
				"Light of the site", unit(day.siteMoles()), NumberWords.fixed(100 * basis.site().share(), 0)
						+ " % of the open sky’s light, as for " + basis.site().words() + ".",
				OURS, List.of(openSky(day.openMoles()))));
		if (basis.lightAlready()) {
			steps.add(Explanation.of("Length", basis.steps() + " days")
				.withDetail("It has the site’s light already; only wind and cooler air are new to it.")
				.withSource(OURS));
		}
		else {
			steps.add(new Explanation("Step " + day.step() + " of " + basis.steps(), unit(day.targetMoles()),
					"The light now, times the same factor each day, so that the last step is the site’s light: now × "
							+ "(site ÷ now)^(" + day.step() + "/" + basis.steps()
							+ "); never more than the site has on this or a later day of the ramp.",
					"geometric steps: our choice. " + LENGTH, List.of()));
			steps.add(outside(day));
		}
		steps.add(new Explanation("Kept in", "nights below " + Degrees.words(basis.limits().nightCelsius()),
				"By day below " + Degrees.words(basis.limits().dayCelsius()) + ", above "
						+ Degrees.words(basis.limits().heatCelsius()) + ", or in wind above "
						+ NumberWords.fixed(basis.limits().windKmh(), 0) + " km/h.",
				RampLimits.SOURCE, List.of()));
		return Explanation.of("Step " + day.step() + " on " + DayWords.of(day.date()), of(day)).withSteps(steps);
	}

	static Explanation openSky(double moles) {
		return new Explanation("Open sky on a clear day", unit(moles), null, OPEN_SKY, List.of());
	}

	private static Explanation outside(RampDay day) {
		return new Explanation("What comes of it", unit(day.lightMoles()),
				NumberWords.fixed(100 * day.outsideShare(), 0)
						+ " % of the day’s light comes while it is out, the rest "
						+ "where it stands now. Deep shade has "
						+ NumberWords.fixed(100 * Exposure.DEEP_SHADE.share(), 0) + " %, bright shade "
						+ NumberWords.fixed(100 * Exposure.BRIGHT_SHADE.share(), 0)
						+ " % of the open sky’s light, and the sun’s part grows with the hour.",
				"part of a day by the clock: FAO Irrigation and Drainage Paper 56, equation 28; the shares: " + OURS,
				List.of());
	}

}
