package org.leafward.amounts.light;

import java.time.LocalDate;
import org.leafward.climate.core.light.DailyLight;
import org.leafward.climate.core.light.LightSource;
import org.leafward.measure.BadInput;
import org.leafward.measure.GeoPoint;
import org.leafward.measure.NumberWords;

/** Where a plant stands now, and how much light that gives it. */
public sealed interface StartingLight {

	/**
	 * The light that the plant gets in a day.
	 * @param point the place
	 * @param date the day, taken as clear where the sky counts
	 * @return mol/m² of photons
	 */
	double molesPerDay(GeoPoint point, LocalDate date);

	/**
	 * Where that is.
	 * @return for example "on a south windowsill"
	 */
	String words();

	/**
	 * Where the figure comes from.
	 * @return a source with how far to trust it
	 */
	String source();

	private static double check(String field, String what, double value, double low, double high, String unit) {
		if (!(value >= low && value <= high)) {
			throw new BadInput("%s %s is outside %s to %s".formatted(what, value, low, high), field,
					"give it in %s".formatted(unit));
		}
		return value;
	}

	/**
	 * On the sill of a window.
	 *
	 * @param aspect the side it looks to
	 */
	record Windowsill(Aspect aspect) implements StartingLight {

		@Override
		public double molesPerDay(GeoPoint point, LocalDate date) {
			return this.aspect.share(point, date) * DailyLight.clearSky(point, date);
		}

		@Override
		public String words() {
			return ((this.aspect == Aspect.EAST) ? "on an " : "on a ") + this.aspect.words() + " windowsill";
		}

		@Override
		public String source() {
			return "share of the open sky’s light behind a pane: from memory";
		}

	}

	/**
	 * Under a lamp, nothing else counted.
	 *
	 * @param flux photon flux density at the leaves, µmol/m²s, 0 to 3,000
	 * @param hours how long it burns in a day, 0 to 24
	 */
	record Lamp(double flux, double hours) implements StartingLight {

		public Lamp {
			check("level", "light", flux, 0, 3_000, "µmol/m²s, lux or foot-candles at the leaves");
			check("hours", "the lamp’s day", hours, 0, 24, "hours");
		}

		/**
		 * From a reading in lux.
		 * @param source the kind of lamp
		 * @param lux at the leaves
		 * @param hours how long in a day
		 * @return the lamp
		 */
		public static Lamp ofLux(LightSource source, double lux, double hours) {
			return new Lamp(source.fluxOfLux(lux), hours);
		}

		/**
		 * From a reading in foot-candles.
		 * @param source the kind of lamp
		 * @param footCandles at the leaves
		 * @param hours how long in a day
		 * @return the lamp
		 */
		public static Lamp ofFootCandles(LightSource source, double footCandles, double hours) {
			return new Lamp(source.fluxOfFootCandles(footCandles), hours);
		}

		@Override
		public double molesPerDay(GeoPoint point, LocalDate date) {
			return DailyLight.ofFlux(this.flux, this.hours);
		}

		@Override
		public String words() {
			boolean whole = this.hours == Math.rint(this.hours);
			return "under a lamp of " + NumberWords.fixed(this.flux, 0) + " µmol/m²s for "
					+ NumberWords.fixed(this.hours, whole ? 0 : 1) + " hours";
		}

		@Override
		public String source() {
			return "photons by the second times seconds; lux and foot-candles by Thimijan and Heins (1983), "
					+ "HortScience 18:818-822, at second hand";
		}

	}

	/**
	 * In a glasshouse, a cold frame or under cloth.
	 *
	 * @param transmission part of the open sky's light that comes through, 0 to 1, often
	 * 0.5 to 0.7 in a glasshouse with its frame
	 */
	record UnderGlass(double transmission) implements StartingLight {

		/** A glasshouse with its frame and some dust; from memory. */
		public static final UnderGlass GLASSHOUSE = new UnderGlass(0.6);

		public UnderGlass {
			check("transmission", "the part of the light that comes through", transmission, 0, 1, "parts of one");
		}

		@Override
		public double molesPerDay(GeoPoint point, LocalDate date) {
			return this.transmission * DailyLight.clearSky(point, date);
		}

		@Override
		public String words() {
			return "under glass or cloth that lets " + NumberWords.fixed(100 * this.transmission, 0)
					+ " % of the light through";
		}

		@Override
		public String source() {
			return "the part that comes through as given; 60 % for a glasshouse is from memory";
		}

	}

	/**
	 * Outside, where it was grown or has stood for weeks.
	 *
	 * @param light the light there
	 */
	record Outdoors(SiteLight light) implements StartingLight {

		@Override
		public double molesPerDay(GeoPoint point, LocalDate date) {
			return this.light.molesPerDay(point, date);
		}

		@Override
		public String words() {
			return "outdoors in " + this.light.words();
		}

		@Override
		public String source() {
			return "share of the open sky’s light: from memory";
		}

	}

	/** Nobody knows; taken as a dim windowsill, which is the safe side. */
	record Unknown() implements StartingLight {

		@Override
		public double molesPerDay(GeoPoint point, LocalDate date) {
			return Math.min(Aspect.NORTH.share(point, date), Aspect.SOUTH.share(point, date))
					* DailyLight.clearSky(point, date);
		}

		@Override
		public String words() {
			return "on a dim windowsill, as nothing else is known";
		}

		@Override
		public String source() {
			return "share of the open sky’s light on a sill away from the sun: from memory";
		}

	}

}
