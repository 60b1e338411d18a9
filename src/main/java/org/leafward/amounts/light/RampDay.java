package org.leafward.amounts.light;

import java.time.LocalDate;
import java.time.LocalTime;
import org.jspecify.annotations.Nullable;
import org.leafward.amounts.Amount;

/**
 * A day of a ramp. Light is in mol/m² of photons a day, under a clear sky.
 *
 * @param step which step it is, from 1
 * @param date the day
 * @param targetMoles light that the step aims at; never falls from step to step
 * @param lightMoles light that comes of doing it, with what the old place gives for the
 * rest of the day; above the aim only in the place where it will grow, or where an hour
 * of deep shade is already more
 * @param siteMoles light of the place where the plant will grow
 * @param openMoles light of the open sky
 * @param outsideShare part of the day's light that comes while the plant is out
 * @param hoursOutside whole hours by day
 * @param from when it goes out, by the clock of the place; null for all day
 * @param exposure where it stands
 * @param until until when in the sun, by the clock of the place; null without
 * @param nightOut whether it stays out for the night, when the night keeps the limit
 * @param basis what all days have in common
 */
public record RampDay(int step, LocalDate date, double targetMoles, double lightMoles, double siteMoles,
		double openMoles, double outsideShare, int hoursOutside, @Nullable LocalTime from, Exposure exposure,
		@Nullable LocalTime until, boolean nightOut, RampBasis basis) {

	/**
	 * The same day with the night inside, when the night will be too cold.
	 * @return in for the night
	 */
	public RampDay nightIn() {
		return new RampDay(this.step, this.date, this.targetMoles, this.lightMoles, this.siteMoles, this.openMoles,
				this.outsideShare, this.hoursOutside, this.from, this.exposure, this.until, false, this.basis);
	}

	/**
	 * What to do.
	 * @return for example "6 hours outside from 10:15: sun until 11:15, then bright
	 * shade; in for the night (aim 9 of 38 mol/m² a day)"
	 */
	public String words() {
		return RampWords.of(this);
	}

	/**
	 * The same with how it came about.
	 * @return an amount for a task
	 */
	public Amount amount() {
		return new Amount(words(), RampWords.explain(this));
	}

}
