package org.leafward.care.core.plan;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import org.leafward.amounts.soiltest.SoilTreatment;
import org.leafward.care.core.rule.SoilTestAnchor;

/**
 * What the latest soil test of a bed asks for.
 *
 * @param day on which the sample was taken
 * @param treatment what to do about the bed
 */
public record TestedSoil(LocalDate day, SoilTreatment treatment) {

	/**
	 * In how many parts the gypsum goes on, half a year apart.
	 * @return 1 where there is none
	 */
	public int parts() {
		return Math.max(1, this.treatment.applications().size());
	}

	/**
	 * Which part is due from a day on.
	 * @param from the day
	 * @return 1 to the number of parts
	 */
	public int part(LocalDate from) {
		long passed = ChronoUnit.DAYS.between(this.day, from) / SoilTestAnchor.HALF_YEAR;
		return (int) Math.min(parts(), Math.max(1, passed + 1));
	}

}
