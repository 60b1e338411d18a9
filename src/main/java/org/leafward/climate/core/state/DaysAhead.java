package org.leafward.climate.core.state;

import java.time.LocalDate;
import java.util.List;
import java.util.function.DoublePredicate;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * What is forecast for a day and the three days after it: a forecast of 72 hours reaches
 * into the third. A yes needs one day; a no needs each of the three days after, since the
 * day itself may be half over and left out of the forecast.
 */
final class DaysAhead {

	static final int DAYS = 3;

	private final LocalDate today;

	private final int after;

	private final List<DayFigures> days;

	/** A day with so many days after it; without any, the day alone is asked about. */
	DaysAhead(LocalDate today, int after, List<DayFigures> forecast) {
		this.today = today;
		this.after = after;
		this.days = forecast.stream()
			.filter((day) -> !day.day().isBefore(today) && !day.day().isAfter(today.plusDays(after)))
			.toList();
	}

	/** How long it looks ahead, for readers. */
	String words() {
		return (this.after == 0) ? "forecast for the day" : "forecast for three days";
	}

	/** Whether a day has a figure that meets; null when that isn't settled. */
	@Nullable Boolean any(Function<DayFigures, @Nullable Double> figure, DoublePredicate meets) {
		return any((day) -> {
			Double value = figure.apply(day);
			return (value != null) ? meets.test(value) : null;
		});
	}

	/** Whether one of the days says yes; null when that isn't settled. */
	@Nullable Boolean any(Function<DayFigures, @Nullable Boolean> says) {
		long settled = 0;
		for (DayFigures day : this.days) {
			Boolean answer = says.apply(day);
			if (Boolean.TRUE.equals(answer)) {
				return true;
			}
			if (answer != null) {
				settled += (this.after == 0 || day.day().isAfter(this.today)) ? 1 : 0;
			}
		}
		return (settled == Math.max(1, this.after)) ? Boolean.FALSE : null;
	}

	/** The highest (sign 1) or lowest (sign -1) value forecast, or null. */
	@Nullable Double extreme(Function<DayFigures, @Nullable Double> figure, int sign) {
		Double extreme = null;
		for (DayFigures day : this.days) {
			Double value = figure.apply(day);
			if (value != null && (extreme == null || sign * value > sign * extreme)) {
				extreme = value;
			}
		}
		return extreme;
	}

	/** Today's figure, or null. */
	@Nullable Double todays(Function<DayFigures, @Nullable Double> figure) {
		for (DayFigures day : this.days) {
			if (day.day().equals(this.today)) {
				return figure.apply(day);
			}
		}
		return null;
	}

}
