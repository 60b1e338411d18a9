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
import org.leafward.measure.NumberWords;

/**
 * Shade cloth for plants that have lost the shade they grew in, thinned out over weeks.
 * Cloth of 30 to 50 % for two to three weeks is common practice; here it is denser in the
 * first days where much shade was lost, and goes by the same factor each day.
 */
public final class EmergencyShade {

	/** Days by default: three weeks. */
	public static final int USUAL_DAYS = 21;

	private static final int FEWEST = 7;

	private static final int MOST = 42;

	/** Cloth is sold in such steps, per cent. */
	private static final int CLOTHS = 10;

	private EmergencyShade() {
	}

	/**
	 * A day under cloth.
	 *
	 * @param step which day it is, from 1
	 * @param date the day
	 * @param targetMoles light that the day aims at, mol/m²
	 * @param siteMoles light without cloth, mol/m²
	 * @param clothPercent part of the light that the cloth holds back, tens of per cent,
	 * 0 for none
	 * @param before the light that the plant grew in
	 * @param now the light that it stands in
	 * @param steps how many days
	 */
	public record Day(int step, LocalDate date, double targetMoles, double siteMoles, int clothPercent,
			SiteLight before, SiteLight now, int steps) {

		/**
		 * What to do.
		 * @return for example "Shade cloth of 60 % (aim 18 of 45 mol/m² a day)"
		 */
		public String words() {
			return ((this.clothPercent > 0)
					? "Shade cloth of " + this.clothPercent + " % to the south and west, clear of the leaves"
					: "The cloth comes off, on a dull day if you can choose") + " (aim "
					+ RampWords.moles(this.targetMoles) + " of " + RampWords.moles(this.siteMoles) + " mol/m² a day)";
		}

		/**
		 * The same with how it came about.
		 * @return an amount for a task
		 */
		public Amount amount() {
			return new Amount(words(),
					Explanation.of("Step " + this.step + " on " + DayWords.of(this.date), words())
						.withSteps(List.of(
								new Explanation("Light without cloth", RampWords.moles(this.siteMoles) + " mol/m²",
										this.now.words()
												+ "; it grew in " + this.before
													.words()
												+ ", " + percent(
														this.before)
												+ " of the open sky’s light against " + percent(this.now) + " now.",
										RampWords.OURS, List.of(RampWords.openSky(this.siteMoles / this.now.share()))),
								new Explanation("Cloth", this.clothPercent + " %", "What is left must be no more than "
										+ percent(this.before) + " × (" + percent(this.now) + " ÷ "
										+ percent(this.before) + ")^(" + this.step + "/" + this.steps
										+ "), to the next ten per cent of denser cloth. Two layers of 50 % hold back 75 %.",
										"Cloth of 30 to 50 % for two to three weeks: common practice; thinning it by the "
												+ "same factor each day: our choice",
										List.of()))));
		}

		private static String percent(SiteLight light) {
			return NumberWords.fixed(100 * light.share(), 0) + " %";
		}

	}

	/**
	 * Plans the cloth. New leaves grow fit for the sun, old ones never do.
	 * @param point the place
	 * @param firstDay the first day without the old shade
	 * @param days how many, 7 to 42
	 * @param before the light that the plant grew in
	 * @param now the light that it stands in
	 * @return the days; empty when it stands in no more light than before
	 * @throws BadInput when the days are out of their bounds
	 */
	public static List<Day> plan(GeoPoint point, LocalDate firstDay, int days, SiteLight before, SiteLight now) {
		if (days < FEWEST || days > MOST) {
			throw new BadInput("days %d is outside %d to %d".formatted(days, FEWEST, MOST), "days",
					"give two to three weeks");
		}
		List<Day> all = new ArrayList<>();
		for (int step = 1; step <= days && now.share() > before.share(); step++) {
			LocalDate date = firstDay.plusDays(step - 1L);
			double open = DailyLight.clearSky(point, date);
			double share = before.share() * Math.pow(now.share() / before.share(), (double) step / days);
			int cloth = (int) Math.ceil(100 * (1 - share / now.share()) / CLOTHS - 1e-9) * CLOTHS;
			all.add(new Day(step, date, open * share, open * now.share(), cloth, before, now, days));
		}
		return all;
	}

}
