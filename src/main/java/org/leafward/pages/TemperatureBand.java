package org.leafward.pages;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.DoubleStream;

import org.jspecify.annotations.Nullable;

/**
 * Each day's minimum and maximum over the usual range.
 *
 * @param id unique among the pictures of a page
 * @param today the day that gets a line
 * @param days one for each day, in order
 */
public record TemperatureBand(String id, LocalDate today, List<Day> days) {

	public TemperatureBand {
		Pictures.checkId(id);
		days = List.copyOf(days);
	}

	/**
	 * Whether there is anything to draw.
	 * @return false where fewer than two days have a temperature
	 */
	public boolean drawable() {
		return this.days.stream().filter((day) -> day.low() != null || day.usualLow() != null).count() > 1;
	}

	/**
	 * The picture: days from left to right, temperature from bottom to top. It takes the
	 * width it is given.
	 * @return inline SVG
	 * @throws IllegalStateException when it is not {@link #drawable}
	 */
	public String svg() {
		if (!drawable()) {
			throw new IllegalStateException("band %s has fewer than two days".formatted(this.id));
		}
		return new TemperatureBandDrawing(this).draw();
	}

	/**
	 * The figures behind the picture.
	 * @return a row for each month
	 */
	public List<TableRow> rows() {
		Map<YearMonth, List<Day>> months = new TreeMap<>();
		this.days
			.forEach((day) -> months.computeIfAbsent(YearMonth.from(day.date()), (key) -> new ArrayList<>()).add(day));
		List<TableRow> rows = new ArrayList<>();
		months.forEach((month,
				own) -> rows.add(new TableRow(month.atDay(1), mean(own, Day::low), mean(own, Day::high),
						mean(own, Day::usualLow), mean(own, Day::usualHigh), orNull(values(own, Day::low).min()),
						orNull(values(own, Day::high).max()), (int) values(own, Day::low).count())));
		return rows;
	}

	private static @Nullable Double mean(List<Day> days, Function<Day, @Nullable Double> value) {
		return orNull(values(days, value).average());
	}

	private static DoubleStream values(List<Day> days, Function<Day, @Nullable Double> value) {
		return days.stream().map(value).filter(Objects::nonNull).mapToDouble(Double::doubleValue);
	}

	private static @Nullable Double orNull(OptionalDouble value) {
		return value.isPresent() ? value.getAsDouble() : null;
	}

	/**
	 * A day, °C; null where nothing is known.
	 *
	 * @param date the day
	 * @param low observed minimum
	 * @param high observed maximum
	 * @param usualLow usual minimum
	 * @param usualHigh usual maximum
	 */
	public record Day(LocalDate date, @Nullable Double low, @Nullable Double high, @Nullable Double usualLow,
			@Nullable Double usualHigh) {
	}

	/**
	 * A month, °C; null where nothing is known.
	 *
	 * @param month its first day
	 * @param low mean observed minimum
	 * @param high mean observed maximum
	 * @param usualLow mean usual minimum
	 * @param usualHigh mean usual maximum
	 * @param lowest lowest observed minimum
	 * @param highest highest observed maximum
	 * @param days days with an observed minimum
	 */
	public record TableRow(LocalDate month, @Nullable Double low, @Nullable Double high, @Nullable Double usualLow,
			@Nullable Double usualHigh, @Nullable Double lowest, @Nullable Double highest, int days) {
	}

}
