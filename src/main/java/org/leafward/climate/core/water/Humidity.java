package org.leafward.climate.core.water;

/** What is known of the moisture of the air on a day. */
public sealed interface Humidity {

	/**
	 * The vapour pressure.
	 * @param minimum °C
	 * @param maximum °C
	 * @param pressure of the air, kPa
	 * @return kPa
	 * @throws IllegalArgumentException when a value is out of its bounds
	 */
	double vapour(double minimum, double maximum, double pressure);

	/**
	 * What it is, for explanations.
	 * @return a few words
	 */
	String words();

	/**
	 * The dew point.
	 *
	 * @param celsius the dew point
	 */
	record DewPoint(double celsius) implements Humidity {

		@Override
		public double vapour(double minimum, double maximum, double pressure) {
			return Vapour.fromDewPoint(this.celsius);
		}

		@Override
		public String words() {
			return "dew point";
		}

	}

	/**
	 * Both extremes of the relative humidity.
	 *
	 * @param lowest %
	 * @param highest %
	 */
	record Extremes(double lowest, double highest) implements Humidity {

		@Override
		public double vapour(double minimum, double maximum, double pressure) {
			return Vapour.fromHumidity(minimum, maximum, this.lowest, this.highest);
		}

		@Override
		public String words() {
			return "extremes of relative humidity";
		}

	}

	/**
	 * The highest relative humidity.
	 *
	 * @param percent %
	 */
	record Highest(double percent) implements Humidity {

		@Override
		public double vapour(double minimum, double maximum, double pressure) {
			return Vapour.fromHighestHumidity(minimum, this.percent);
		}

		@Override
		public String words() {
			return "highest relative humidity";
		}

	}

	/**
	 * The mean relative humidity.
	 *
	 * @param percent %
	 */
	record Mean(double percent) implements Humidity {

		@Override
		public double vapour(double minimum, double maximum, double pressure) {
			return Vapour.fromMeanHumidity(minimum, maximum, this.percent);
		}

		@Override
		public String words() {
			return "mean relative humidity";
		}

	}

	/**
	 * A wet and a dry thermometer.
	 *
	 * @param wet °C
	 * @param dry °C
	 * @param psychrometer how they are aired
	 */
	record WetBulb(double wet, double dry, Vapour.Psychrometer psychrometer) implements Humidity {

		@Override
		public double vapour(double minimum, double maximum, double pressure) {
			return Vapour.fromWetBulb(this.wet, this.dry, pressure, this.psychrometer);
		}

		@Override
		public String words() {
			return "wet and dry thermometer";
		}

	}

}
