package org.leafward.climate.core.water;

/** What is known of the light of a day. */
public sealed interface Sunlight {

	/**
	 * The radiation at the ground.
	 * @param dayLength hours
	 * @param extraterrestrial radiation above the atmosphere, MJ/m²
	 * @return MJ/m²
	 * @throws IllegalArgumentException when the value is out of its bounds
	 */
	double radiation(double dayLength, double extraterrestrial);

	/**
	 * What it is, for explanations.
	 * @return a few words
	 */
	String words();

	/**
	 * Radiation that was measured.
	 *
	 * @param megajoules MJ/m², 0 to 50
	 */
	record Measured(double megajoules) implements Sunlight {

		@Override
		public double radiation(double dayLength, double extraterrestrial) {
			return Bounds.check("radiation in MJ/m²", this.megajoules, 0, 50);
		}

		@Override
		public String words() {
			return "radiation";
		}

	}

	/**
	 * Hours of bright sunshine.
	 *
	 * @param hours 0 to 24
	 */
	record Sunshine(double hours) implements Sunlight {

		@Override
		public double radiation(double dayLength, double extraterrestrial) {
			return Radiation.fromSunshine(this.hours, dayLength, extraterrestrial);
		}

		@Override
		public String words() {
			return "hours of sunshine";
		}

	}

}
