package org.leafward.climate.core;

import java.util.ArrayList;
import java.util.List;
import org.leafward.climate.Microclimate;
import org.leafward.measure.Explanation;
import org.leafward.measure.NumberWords;

/**
 * How a station's temperatures are carried to a site: by height, and at night by its lie.
 */
final class CarriedExplanation {

	private static final String LABEL = "Its temperatures carried to the site";

	private CarriedExplanation() {
	}

	/**
	 * Says how.
	 * @param nightShare how much of what the event hangs on is the night minimum, 0 to 1
	 * @param neighbour the station, seen from the site
	 * @return one step
	 */
	static Explanation of(double nightShare, Neighbour neighbour) {
		List<Microclimate.Effect> effects = neighbour.microclimate().effects();
		if (nightShare == 0) {
			return height(LABEL, neighbour, effects.isEmpty() ? ""
					: " What the site's lie does to its nights is left out here: by day the air is mixed.");
		}
		if (effects.isEmpty()) {
			return height(LABEL, neighbour,
					" A hollow can be colder on clear nights; where the site lies in one, say so with the site.");
		}
		List<Explanation> steps = new ArrayList<>();
		steps.add(height("Height", neighbour, ""));
		effects.forEach((effect) -> steps.add(step(effect)));
		return new Explanation(LABEL, words(neighbour.colderBy(nightShare), 2), (nightShare == 1)
				? "The site's height and its microclimate together; the station's dates are taken at a threshold shifted by as much."
				: "The site's height, and half of what its lie does to its nights: a sum of heat adds up the mean of minimum and maximum.",
				null, steps);
	}

	private static Explanation height(String label, Neighbour neighbour, String more) {
		double higher = neighbour.higherBy();
		return new Explanation(label, words(neighbour.colderBy(), 2),
				"The site lies " + NumberWords.fixed(Math.abs(higher), 0) + ((higher >= 0) ? " m higher" : " m lower")
						+ ", and air cools by 6.5 °C for each 1000 m of height." + more,
				"Lapse rate of the ICAO Standard Atmosphere (Doc 7488)", List.of());
	}

	private static Explanation step(Microclimate.Effect effect) {
		boolean whole = effect.celsius() == Math.rint(effect.celsius());
		return new Explanation(effect.name(),
				words(-effect.celsius(), whole ? 0 : 1) + (effect.measured() ? "" : ", from memory"), null,
				effect.source(), List.of());
	}

	private static String words(double colder, int decimals) {
		return NumberWords.fixed(Math.abs(colder), decimals) + ((colder >= 0) ? " °C colder" : " °C warmer");
	}

}
