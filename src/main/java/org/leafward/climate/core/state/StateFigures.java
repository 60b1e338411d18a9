package org.leafward.climate.core.state;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.DroughtReading;
import org.leafward.climate.GroundReading;

/** What is known of the weather of a place on a day. */
public interface StateFigures {

	/**
	 * Days before today.
	 * @return in order
	 */
	List<DayFigures> observed();

	/**
	 * Today and days after it.
	 * @return in order; empty without a forecast that can be leaned on
	 */
	List<DayFigures> forecast();

	/**
	 * What a station's rain says of drought.
	 * @return null when no station can tell
	 */
	@Nullable DroughtReading drought();

	/**
	 * Whether the ground is frozen.
	 * @return null when no station can tell
	 */
	@Nullable GroundReading ground();

}
