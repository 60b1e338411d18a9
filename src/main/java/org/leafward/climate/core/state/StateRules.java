package org.leafward.climate.core.state;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.WeatherState;
import org.leafward.climate.WeatherState.Kind;
import org.leafward.climate.core.water.DrySpell;
import org.leafward.measure.DayWords;
import org.leafward.measure.Explanation;

/**
 * Tells which states of the weather hold on a day, from the days observed before it and
 * the days forecast from it on. What is not known is answered with null, never with no.
 */
public final class StateRules {

	/** A forecast of 72 hours reaches into the third day after. */
	private static final int DAYS_AHEAD = 3;

	private static final double FROST = 0;

	/** 28 °F, in tenths as records have it. */
	private static final double HARD_FREEZE = -2.2;

	/** 90 °F. From memory, as the other figures of the hot dry wind. */
	private static final double HOT = (90 - 32) / 1.8;

	/** 15 mph in m/s. */
	private static final double WINDY = 15 * 0.44704;

	private static final double DRY_AIR = 30;

	/** Half an inch in a week, mm. */
	private static final double LITTLE_RAIN = 12.7;

	private static final int WEEK = 7;

	/** 95 °F. */
	private static final double GREAT_HEAT = 35;

	/** 40 °F, the least for watering in winter (extension services, common practice). */
	private static final double THAW = (40 - 32) / 1.8;

	/** Three inches, mm. */
	private static final double HEAVY_SNOW = 76.2;

	private final LocalDate today;

	private final List<DayFigures> observed;

	private final List<DayFigures> forecast;

	/**
	 * Creates the rules for a day.
	 * @param today the day
	 * @param observed days before it, in order
	 * @param forecast the day itself and days after it, in order; empty without a
	 * forecast that can be leaned on
	 */
	public StateRules(LocalDate today, List<DayFigures> observed, List<DayFigures> forecast) {
		this.today = today;
		this.observed = List.copyOf(observed);
		this.forecast = forecast.stream()
			.filter((day) -> !day.day().isBefore(today) && !day.day().isAfter(today.plusDays(DAYS_AHEAD)))
			.toList();
	}

	/**
	 * Every state.
	 * @return one for each kind, in the order of the kinds
	 */
	public List<WeatherState> all() {
		List<WeatherState> states = new ArrayList<>();
		states.add(cold(Kind.FROST_AHEAD, FROST));
		states.add(cold(Kind.HARD_FREEZE_AHEAD, HARD_FREEZE));
		states.add(hotDryWind());
		states.add(heat());
		states.add(dry(Kind.DRY_SPELL, 14));
		states.add(dry(Kind.LONG_DRY_SPELL, 21));
		states.add(thaw());
		states.add(snow());
		return states;
	}

	private WeatherState cold(Kind kind, double limit) {
		Double lowest = extreme(DayFigures::minimum, -1);
		return answer(kind, (lowest != null) ? lowest <= limit : null,
				figure("Lowest minimum forecast for three days", lowest, "°C"), limit("At or below", limit, "°C"));
	}

	private WeatherState heat() {
		Double highest = extreme(DayFigures::maximum, 1);
		return answer(Kind.GREAT_HEAT_AHEAD, (highest != null) ? highest >= GREAT_HEAT : null,
				figure("Highest maximum forecast for three days", highest, "°C"),
				limit("At or above", GREAT_HEAT, "°C"));
	}

	private WeatherState hotDryWind() {
		Double rain = recentRain();
		Boolean day = null;
		for (DayFigures figures : this.forecast) {
			Boolean one = hotAndDry(figures);
			if (Boolean.TRUE.equals(one)) {
				day = true;
				break;
			}
			day = (one != null) ? one : day;
		}
		Boolean holds = (rain != null && rain >= LITTLE_RAIN) || Boolean.FALSE.equals(day) ? Boolean.FALSE
				: (rain == null || day == null) ? null : Boolean.TRUE;
		return answer(Kind.HOT_DRY_WIND, holds,
				figure("Highest maximum forecast for three days", extreme(DayFigures::maximum, 1), "°C"),
				figure("Strongest mean wind forecast", extreme(DayFigures::wind, 1), "m/s"),
				figure("Lowest humidity forecast", extreme(DayFigures::lowestHumidity, -1), "%"),
				figure("Rain of the last seven days", rain, "mm"),
				Explanation.of("Holds with",
						"a day of at least %.0f °C with wind of %.1f m/s or air below %.0f %%, after less than %.1f mm"
							.formatted(HOT, WINDY, DRY_AIR, LITTLE_RAIN))
					.withSource("from memory, to be checked"));
	}

	/** Null when the day's figures don't settle it. */
	private static @Nullable Boolean hotAndDry(DayFigures day) {
		if (day.maximum() == null || day.maximum() < HOT) {
			return (day.maximum() == null) ? null : false;
		}
		boolean windy = day.wind() != null && day.wind() >= WINDY;
		boolean dryAir = day.lowestHumidity() != null && day.lowestHumidity() <= DRY_AIR;
		if (windy || dryAir) {
			return true;
		}
		return (day.wind() == null || day.lowestHumidity() == null) ? null : false;
	}

	private @Nullable Double recentRain() {
		double[] rain = lastRain(WEEK);
		double sum = 0;
		for (double day : rain) {
			sum += day;
		}
		return Double.isNaN(sum) ? null : sum;
	}

	private WeatherState dry(Kind kind, int days) {
		double[] rain = lastRain(days);
		boolean known = true;
		boolean wet = false;
		double sum = 0;
		for (double day : rain) {
			known &= !Double.isNaN(day);
			wet |= day >= DrySpell.WET_DAY;
			sum += Double.isNaN(day) ? 0 : day;
		}
		wet |= sum >= DrySpell.WET_SPELL;
		return answer(kind, wet ? Boolean.FALSE : known ? Boolean.TRUE : null,
				figure("Rain known of the last %d days".formatted(days), sum, "mm"),
				Explanation
					.of("Holds with",
							"no day of %.1f mm or more, and less than %.1f mm in all".formatted(DrySpell.WET_DAY,
									DrySpell.WET_SPELL))
					.withSource("common practice of extension services"));
	}

	/** Rain of the days before today; NaN where it is not known. */
	private double[] lastRain(int days) {
		double[] rain = new double[days];
		for (int back = 1; back <= days; back++) {
			LocalDate day = this.today.minusDays(back);
			rain[days - back] = this.observed.stream()
				.filter((one) -> one.day().equals(day) && one.rain() != null)
				.mapToDouble((one) -> (one.rain() != null) ? one.rain() : Double.NaN)
				.findFirst()
				.orElse(Double.NaN);
		}
		return rain;
	}

	private WeatherState thaw() {
		Double maximum = todays(DayFigures::maximum);
		return answer(Kind.THAW_DAY, (maximum != null) ? maximum > THAW : null,
				figure("Maximum forecast for today", maximum, "°C"), limit("Above", THAW, "°C"));
	}

	private WeatherState snow() {
		Double snow = todays(DayFigures::newSnow);
		return answer(Kind.HEAVY_SNOW, (snow != null) ? snow >= HEAVY_SNOW : null,
				figure("New snow forecast for today", snow, "mm"), limit("At least", HEAVY_SNOW, "mm"));
	}

	private @Nullable Double todays(Function<DayFigures, @Nullable Double> figure) {
		for (DayFigures day : this.forecast) {
			if (day.day().equals(this.today)) {
				return figure.apply(day);
			}
		}
		return null;
	}

	private @Nullable Double extreme(Function<DayFigures, @Nullable Double> figure, int sign) {
		Double extreme = null;
		for (DayFigures day : this.forecast) {
			Double value = figure.apply(day);
			if (value != null && (extreme == null || sign * value > sign * extreme)) {
				extreme = value;
			}
		}
		return extreme;
	}

	private WeatherState answer(Kind kind, @Nullable Boolean holds, Explanation... steps) {
		String words = (holds == null) ? "not known" : holds ? "yes" : "no";
		return new WeatherState(kind, holds,
				Explanation.of(kind.words(), words)
					.withDetail("on " + DayWords.of(this.today))
					.withSteps(List.of(steps)));
	}

	private static Explanation figure(String label, @Nullable Double value, String unit) {
		return Explanation.of(label,
				(value != null) ? String.format(Locale.ROOT, "%.1f %s", value, unit).replace('-', '−') : "not known");
	}

	private static Explanation limit(String label, double value, String unit) {
		return Explanation.of(label, String.format(Locale.ROOT, "%.1f %s", value, unit).replace('-', '−'));
	}

}
