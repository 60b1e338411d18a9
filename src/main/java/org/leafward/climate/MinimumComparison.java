package org.leafward.climate;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A thermometer of somebody's own beside the minima estimated for open, level ground at
 * the height of its place.
 *
 * @param nights the readings, in the order of their days
 * @param counted nights that have both
 * @param mean mean of thermometer less estimate over these, °C; null without any
 * @param spread standard deviation of these differences, divided by one less than their
 * number, °C; null with fewer than two
 * @param stations the stations behind the estimate, the nearest first
 * @param lastDay last day with a minimum in any of their records; null without any
 */
public record MinimumComparison(List<Night> nights, int counted, @Nullable Double mean, @Nullable Double spread,
		List<Station> stations, @Nullable LocalDate lastDay) {

	/** Fewer nights are too few to lean on: two weeks. */
	public static final int ENOUGH = 14;

	/**
	 * Differences that spread wider make one look at where the thermometer hangs, °C. Our
	 * choice: nearby gardens differ by less from night to night, while sun on the
	 * thermometer or a reading of another day differs by more.
	 */
	public static final double WIDE_CELSIUS = 2.5;

	public MinimumComparison {
		nights = List.copyOf(nights);
		stations = List.copyOf(stations);
	}

	/**
	 * A night.
	 *
	 * @param day the day whose minimum it is
	 * @param own what the thermometer showed, °C
	 * @param estimated for open, level ground, °C; null when no station has that night
	 */
	public record Night(LocalDate day, double own, @Nullable Double estimated) {

		/**
		 * Thermometer less estimate.
		 * @return °C, negative when the thermometer was colder; null without an estimate
		 */
		public @Nullable Double difference() {
			return (this.estimated != null) ? Double.valueOf(this.own - this.estimated) : null;
		}

	}

	/** Whether there are too few nights to lean on. */
	public boolean few() {
		return this.counted < ENOUGH;
	}

	/** Whether the differences scatter more than a garden's do. */
	public boolean wide() {
		return this.spread != null && this.spread > WIDE_CELSIUS;
	}

	/**
	 * How far the mean may be off: twice its standard error, as if each night stood for
	 * itself. Nights in a row are alike, so it is rather more.
	 * @return °C; null with fewer than two nights
	 */
	public @Nullable Double uncertainty() {
		return (this.spread != null) ? Double.valueOf(2 * this.spread / Math.sqrt(this.counted)) : null;
	}

	/**
	 * The mean as a site keeps it.
	 * @return °C, to a tenth; null without a night, and when it is larger than a
	 * {@link Microclimate} takes
	 */
	public @Nullable Double offset() {
		if (this.mean == null) {
			return null;
		}
		double tenths = Math.round(this.mean * 10) / 10.0;
		return (Math.abs(tenths) <= Microclimate.MOST_CELSIUS) ? Double.valueOf(tenths) : null;
	}

}
