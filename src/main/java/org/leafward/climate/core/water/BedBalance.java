package org.leafward.climate.core.water;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.WaterBed;
import org.leafward.climate.WaterView;
import org.leafward.climate.WeatherSeries;
import org.leafward.measure.BadInput;
import org.leafward.measure.DayWindow;
import org.leafward.measure.DayWords;
import org.leafward.measure.Explanation;
import org.leafward.measure.NumberWords;

/** Runs the balance of a bed over the weather of its place. */
public final class BedBalance {

	private static final double MOST_WATERING = 500;

	private BedBalance() {
	}

	/**
	 * The root zone of a bed.
	 * @param bed the bed
	 * @return level, without salt, depletion fraction adjusted each day
	 * @throws BadInput when something is out of its bounds
	 */
	public static RootZone zone(WaterBed bed) {
		within("rootDepthMetres", bed.rootDepthMetres(), 0.01, 5);
		within("plantFactor", bed.plantFactor(), 0, 2);
		within("depletionFraction", bed.depletionFraction(), 0.1, 0.8);
		bed.waterings().forEach((day, amount) -> within("watering of " + day, amount, 0, MOST_WATERING));
		return RootZone.of(TextureClass.named(bed.soil()), bed.rootDepthMetres(), bed.depletionFraction());
	}

	private static void within(String field, double value, double low, double high) {
		if (!(value >= low && value <= high)) {
			throw new BadInput("%s %s is outside %s to %s".formatted(field, value, low, high), field,
					"give a number between the two");
		}
	}

	/**
	 * Runs a balance.
	 * @param bed the bed
	 * @param weather of its place; the days before {@code from} let the start fade
	 * @param from first day that is shown
	 * @return empty when no day of the weather has temperatures
	 * @throws BadInput when something of the bed is out of its bounds
	 */
	public static Optional<WaterView> of(WaterBed bed, WeatherSeries weather, LocalDate from) {
		RootZone zone = zone(bed);
		List<WeatherSeries.Day> days = weather.days();
		double[] measured = new double[days.size()];
		double[] rain = new double[days.size()];
		double[] reference = new double[days.size()];
		double[] factor = new double[days.size()];
		double[] watering = new double[days.size()];
		Arrays.fill(factor, bed.plantFactor());
		int unmeasured = 0;
		for (int at = 0; at < days.size(); at++) {
			WeatherSeries.Day day = days.get(at);
			measured[at] = orNaN(day.rain());
			rain[at] = (day.rain() != null) ? day.rain() : 0;
			unmeasured += (day.rain() != null) ? 0 : 1;
			reference[at] = orNaN(day.evapotranspiration());
			watering[at] = bed.waterings().isEmpty() ? 0 : bed.waterings().getOrDefault(day.date(), 0.0);
		}
		int bridged = Gaps.bridge(reference);
		if (bridged < 0) {
			return Optional.empty();
		}
		BalanceDays out = BalanceDays.of(days.size());
		RootZoneBalance.run(zone, 0, new DailyWater(reference, factor, rain, watering), out);
		int[] dry = DrySpell.lengths(measured);
		List<WaterView.Day> shown = new ArrayList<>(days.size());
		for (int at = 0; at < days.size(); at++) {
			WeatherSeries.Day day = days.get(at);
			if (!day.date().isBefore(from)) {
				Moisture moisture = out.moisture(at);
				shown.add(new WaterView.Day(day.date(), rain[at], watering[at], out.loss()[at], out.actual()[at],
						out.percolation()[at], out.depletion()[at], out.readily()[at], out.stress()[at],
						moisture == Moisture.STRESSED, out.due(at), moisture == Moisture.WET_ENOUGH, dry[at],
						day.rain() != null && day.evapotranspiration() != null));
			}
		}
		return Optional
			.of(new WaterView(zone.available(), shown, explanation(bed, zone, weather, shown, bridged, unmeasured)));
	}

	private static double orNaN(@Nullable Double value) {
		return (value != null) ? value : Double.NaN;
	}

	private static Explanation explanation(WaterBed bed, RootZone zone, WeatherSeries weather,
			List<WaterView.Day> shown, int bridged, int unmeasured) {
		LocalDate first = weather.days().get(0).date();
		TextureClass texture = TextureClass.named(bed.soil());
		WaterView.Day last = shown.get(shown.size() - 1);
		Explanation soil = new Explanation("Water that the root zone holds", millimetres(zone.available()),
				texture.words() + ", " + NumberWords.fixed(texture.availablePerMetre(), 0) + " mm per metre, roots to "
						+ NumberWords.fixed(bed.rootDepthMetres(), 2) + " m.",
				"FAO Irrigation and Drainage Paper 56, table 19, middle of the range", List.of());
		Explanation plants = new Explanation("Plant factor", NumberWords.fixed(bed.plantFactor(), 2),
				NumberWords.fixed(100 * bed.depletionFraction(), 0)
						+ " % of the water can be used without stress at 5 mm a day.",
				null, List.of());
		Explanation rules = new Explanation("Daily balance", "from " + DayWords.of(first) + ", full at first",
				"Water comes early in the day; what the root zone can't hold percolates; rain below a fifth of "
						+ "the day's evapotranspiration counts nothing; nothing runs off; snow counts as rain on its day.",
				"FAO Irrigation and Drainage Paper 56, chapter 8", List.of());
		Explanation gaps = Explanation.of("Days without a measurement",
				bridged + " of evapotranspiration bridged, " + unmeasured + " of rain taken as dry");
		return new Explanation("Water in the soil, " + DayWords.of(new DayWindow(shown.get(0).date(), last.date())),
				millimetres(last.depletion()) + " missing on the last day", null, null,
				List.of(soil, plants, rules, gaps, weather.explanation()));
	}

	private static String millimetres(double amount) {
		return NumberWords.fixed(amount, 1) + " mm";
	}

}
