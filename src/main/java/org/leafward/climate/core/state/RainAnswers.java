package org.leafward.climate.core.state;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.core.water.DrySpell;
import org.leafward.measure.Explanation;

/** What rain that fell or is forecast says. */
final class RainAnswers {

	/** A hundredth of an inch: the least that gauges in the United States tell, mm. */
	private static final double MEASURABLE = 0.254;

	private final LocalDate today;

	private final Map<LocalDate, Double> observed;

	private final Map<LocalDate, Double> forecast;

	/** Of a day to come, what is forecast before it counts as fallen. */
	RainAnswers(LocalDate today, List<DayFigures> observed, List<DayFigures> forecast) {
		this.today = today;
		this.observed = rain(forecast.stream().filter((day) -> day.day().isBefore(today)).toList());
		this.observed.putAll(rain(observed));
		this.forecast = rain(forecast);
	}

	private static Map<LocalDate, Double> rain(List<DayFigures> days) {
		Map<LocalDate, Double> rain = new HashMap<>();
		for (DayFigures day : days) {
			if (day.rain() != null) {
				rain.put(day.day(), day.rain());
			}
		}
		return rain;
	}

	/** Rain of some days before today, mm; null when a day isn't known. */
	@Nullable Double of(int days) {
		double sum = 0;
		for (int back = 1; back <= days; back++) {
			sum += this.observed.getOrDefault(this.today.minusDays(back), Double.NaN);
		}
		return Double.isNaN(sum) ? null : sum;
	}

	/** Whether so much rain fell in some days; a yes needs no more than its own rain. */
	Finding fell(int days, double least) {
		double sum = 0;
		boolean known = true;
		for (int back = 1; back <= days; back++) {
			Double rain = this.observed.get(this.today.minusDays(back));
			known &= rain != null;
			sum += (rain != null) ? rain : 0;
		}
		// A hundredth of a millimetre: 2.54 cm and an inch are the same rain.
		return Finding.of((sum >= least - 0.01) ? Boolean.TRUE : known ? Boolean.FALSE : null,
				Finding.figure("Rain known of the last %d days".formatted(days), sum, "mm"),
				Finding.limit("At least", least, "mm"));
	}

	/** Whether some days before today were a dry spell. */
	Finding dryDays(int days) {
		boolean known = true;
		boolean wet = false;
		double sum = 0;
		for (int back = 1; back <= days; back++) {
			Double rain = this.observed.get(this.today.minusDays(back));
			known &= rain != null;
			wet |= rain != null && rain >= DrySpell.WET_DAY;
			sum += (rain != null) ? rain : 0;
		}
		wet |= sum >= DrySpell.WET_SPELL;
		return Finding.of(settled(wet, known), Finding.figure(
				(days == 1) ? "Rain known of yesterday" : "Rain known of the last %d days".formatted(days), sum, "mm"),
				Explanation
					.of("Holds with",
							"no day of %.1f mm or more, and less than %.1f mm in all".formatted(DrySpell.WET_DAY,
									DrySpell.WET_SPELL))
					.withSource("common practice of extension services"));
	}

	/** Whether no rain is forecast for some days, today included. */
	Finding dryAhead(int days) {
		boolean known = true;
		boolean wet = false;
		double sum = 0;
		for (int ahead = 0; ahead < days; ahead++) {
			Double rain = this.forecast.get(this.today.plusDays(ahead));
			known &= rain != null;
			wet |= rain != null && rain >= MEASURABLE;
			sum += (rain != null) ? rain : 0;
		}
		return Finding.of(settled(wet, known), Finding
			.figure((days == 1) ? "Rain forecast for today" : "Rain forecast for %d days".formatted(days), sum, "mm"),
				Explanation.of("Holds with", "no day of a hundredth of an inch (0.25 mm) or more"));
	}

	private static @Nullable Boolean settled(boolean wet, boolean known) {
		return wet ? Boolean.FALSE : known ? Boolean.TRUE : null;
	}

}
