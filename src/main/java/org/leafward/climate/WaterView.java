package org.leafward.climate;

import java.time.LocalDate;
import java.util.List;
import org.leafward.measure.Explanation;

/**
 * The water in a bed, day by day.
 *
 * @param availableMillimetres all the water that the root zone can hold for plants
 * @param days in order
 * @param explanation how it came about, down to the stations
 */
public record WaterView(double availableMillimetres, List<Day> days, Explanation explanation) {

	public WaterView {
		days = List.copyOf(days);
	}

	/**
	 * A day; amounts in mm.
	 *
	 * @param date the day
	 * @param rain that fell
	 * @param watering that was given
	 * @param demand what the plants would lose without stress (ETc)
	 * @param loss what they lose
	 * @param percolation out of reach of the roots
	 * @param depletion what is missing to a full root zone in the evening
	 * @param readily depletion at which stress begins
	 * @param stress coefficient Ks, 1 without stress down to 0
	 * @param stressed whether the plants feel drought in the evening
	 * @param due whether this is the evening on which depletion passed the readily
	 * available water: FAO-56, chapter 8, has irrigation come before or at this moment
	 * @param wetEnough whether less than half of the readily available water is gone
	 * @param dryDays length of the dry spell that the day ends, 0 after a wet day; rain
	 * that nobody measured ends it too
	 * @param complete whether both rain and temperatures were measured
	 */
	public record Day(LocalDate date, double rain, double watering, double demand, double loss, double percolation,
			double depletion, double readily, double stress, boolean stressed, boolean due, boolean wetEnough,
			int dryDays, boolean complete) {
	}

}
