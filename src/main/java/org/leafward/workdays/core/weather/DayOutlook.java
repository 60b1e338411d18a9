package org.leafward.workdays.core.weather;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * What is forecast for a day at a place; null where nothing is. Forecasts are kept
 * without chances of rain, so the amount that is expected has to do.
 *
 * @param day the day
 * @param rainMillimetres rain of the day, mm
 * @param snowMillimetres depth of new snow, mm
 * @param low minimum, °C
 * @param high maximum in the shade, °C
 * @param humidity relative humidity in the afternoon, percent
 * @param wind mean speed, m/s
 * @param frozenGround whether the ground is frozen at 10 cm
 */
public record DayOutlook(LocalDate day, @Nullable Double rainMillimetres, @Nullable Double snowMillimetres,
		@Nullable Double low, @Nullable Double high, @Nullable Integer humidity, @Nullable Double wind,
		@Nullable Boolean frozenGround) {

	/**
	 * Whether anything is known.
	 * @return false when no forecast reaches that day
	 */
	public boolean known() {
		return this.rainMillimetres != null || this.snowMillimetres != null || this.low != null || this.high != null
				|| this.frozenGround != null;
	}

}
