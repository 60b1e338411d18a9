package org.leafward.amounts.light;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.leafward.amounts.Amount;
import org.leafward.climate.core.light.DailyLight;
import org.leafward.measure.BadInput;
import org.leafward.measure.DayWords;
import org.leafward.measure.Explanation;
import org.leafward.measure.GeoPoint;

/**
 * Houseplants in again before nights get cold, over a week from sun to light shade to
 * heavy shade: Clemson HGIC, Indoor Plants: Moving Plants Indoors & Outdoors, read in an
 * excerpt.
 */
public final class MovingHouseplants {

	/** Days of the way in by default: a week. */
	public static final int USUAL_DAYS_IN = 7;

	private static final int MOST_DAYS_IN = 28;

	private static final String SOURCE = "Clemson HGIC, Indoor Plants: Moving Plants Indoors & Outdoors, read in an "
			+ "excerpt; equal factors from day to day: our choice";

	private MovingHouseplants() {
	}

	/** Where a plant stands on its way in. */
	public enum Halt {

		/** Its summer place. */
		SUMMER_PLACE("in its summer place"),

		/** Out of the sun. */
		LIGHT_SHADE("in light shade"),

		/** A dark corner outdoors. */
		DEEP_SHADE("in deep shade; wash the leaves on both sides and look for scale, mites and ants"),

		/** The last days. */
		INDOORS_BY_DAY("indoors by day in its brightest window, out again for a mild night");

		private final String words;

		Halt(String words) {
			this.words = words;
		}

	}

	/**
	 * A day of the way in.
	 *
	 * @param step which day it is, from 1
	 * @param date the day
	 * @param targetMoles light that the day aims at, mol/m²
	 * @param siteMoles light of its summer place, mol/m²
	 * @param roomMoles light of its winter place, mol/m²
	 * @param halt where it stands
	 */
	public record DayIn(int step, LocalDate date, double targetMoles, double siteMoles, double roomMoles, Halt halt) {

		/**
		 * What to do.
		 * @return for example "Stand it in light shade (aim 12 of 45 mol/m² a day)"
		 */
		public String words() {
			return "Stand it " + this.halt.words + " (aim " + RampWords.moles(this.targetMoles) + " of "
					+ RampWords.moles(this.siteMoles) + " mol/m² a day)";
		}

		/**
		 * The same with how it came about.
		 * @return an amount for a task
		 */
		public Amount amount() {
			return new Amount(words(), Explanation.of("Step " + this.step + " on " + DayWords.of(this.date), words())
				.withSource(SOURCE)
				.withSteps(List.of(
						Explanation.of("Light of its summer place", RampWords.moles(this.siteMoles) + " mol/m²"),
						Explanation.of("Light of its winter place", RampWords.moles(this.roomMoles) + " mol/m²")
							.withDetail("Where that is far less, take four to eight weeks more to get it there."),
						Explanation.of("Aim", RampWords.moles(this.targetMoles) + " mol/m²"))));
		}

	}

	/**
	 * The way in, ending on the day before it comes in for good.
	 * @param point the place
	 * @param firstDay the first day
	 * @param days how many, 3 to 28
	 * @param summer its summer place
	 * @param winter its winter place
	 * @return the days; empty when its winter place is as bright
	 * @throws BadInput when the days are out of their bounds
	 */
	public static List<DayIn> in(GeoPoint point, LocalDate firstDay, int days, SiteLight summer, StartingLight winter) {
		if (days < 3 || days > MOST_DAYS_IN) {
			throw new BadInput("days %d is outside 3 to %d".formatted(days, MOST_DAYS_IN), "days", "give a week");
		}
		double least = Double.POSITIVE_INFINITY;
		List<DayIn> all = new ArrayList<>();
		for (int step = 1; step <= days; step++) {
			LocalDate date = firstDay.plusDays(step - 1L);
			double open = DailyLight.clearSky(point, date);
			double site = open * summer.share();
			double room = Math.max(winter.molesPerDay(point, date), 0.01 * open);
			if (room >= site) {
				return List.of();
			}
			least = Math.min(least, site * Math.pow(room / site, (double) step / days));
			all.add(new DayIn(step, date, least, site, room, halt(step, days, least / open, summer)));
		}
		return all;
	}

	private static Halt halt(int step, int days, double share, SiteLight summer) {
		if (step > days - Math.max(1, days * 2 / 7)) {
			return Halt.INDOORS_BY_DAY;
		}
		// The darker of two places once the aim lies below their geometric mean.
		double bright = Exposure.BRIGHT_SHADE.share();
		if (share < Math.sqrt(bright * Exposure.DEEP_SHADE.share())) {
			return Halt.DEEP_SHADE;
		}
		return (share < Math.sqrt(summer.share() * bright)) ? Halt.LIGHT_SHADE : Halt.SUMMER_PLACE;
	}

}
