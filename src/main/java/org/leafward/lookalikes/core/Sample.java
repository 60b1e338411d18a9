package org.leafward.lookalikes.core;

import java.time.Month;
import java.util.List;

/**
 * How a sample is taken for a laboratory.
 *
 * @param what what to take and how much, a sentence
 * @param when when, a sentence
 * @param months months in which it can be taken on the northern hemisphere, in order;
 * empty for any month
 * @param packing how to pack and send it, a sentence
 */
public record Sample(String what, String when, List<Month> months, String packing) {

	public Sample {
		months = List.copyOf(months);
	}

	/**
	 * Whether it can be taken in a month.
	 * @param month the month at the site
	 * @param south whether the site is on the southern hemisphere, half a year off
	 * @return true in its months
	 */
	public boolean inSeason(Month month, boolean south) {
		return this.months.isEmpty() || this.months.contains(south ? month.plus(6) : month);
	}

}
