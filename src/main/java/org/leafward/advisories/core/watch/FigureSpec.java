package org.leafward.advisories.core.watch;

import java.time.MonthDay;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.MarkerKey;
import org.leafward.climate.TemperatureThreshold;

/**
 * A figure and what it needs to be worked out.
 *
 * @param kind which figure
 * @param days over how many days; 0 where it counts over none
 * @param marker of days until a marker; else null
 * @param base of degree-days; else null
 * @param start first day of degree-days, northern hemisphere; else null
 * @param dull of dull days: the share of a clear day's light, percent, up to which a day
 * is one; 0 elsewhere
 */
public record FigureSpec(FigureKind kind, int days, @Nullable MarkerKey marker, @Nullable TemperatureThreshold base,
		@Nullable MonthDay start, double dull) {

	/**
	 * A figure that needs nothing more.
	 * @param kind which figure
	 * @return the figure
	 */
	public static FigureSpec of(FigureKind kind) {
		return new FigureSpec(kind, 0, null, null, null, 0);
	}

}
