package org.leafward.pages;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

import org.jspecify.annotations.Nullable;

import org.leafward.pages.TemperatureBand.Day;

/** Draws a {@link TemperatureBand}. */
final class TemperatureBandDrawing {

	private static final int PLOT = 240;

	private static final int STEP = 10;

	/** How far to the right figures and what touches them reach on a phone, percent. */
	private static final double FIGURE = 55;

	private static final int COLDEST_LABEL = 15;

	private final TemperatureBand band;

	private final Plot plot;

	private final Formats formats;

	private final List<Plot.At> usualLows = new ArrayList<>();

	private final List<Plot.At> usualHighs = new ArrayList<>();

	TemperatureBandDrawing(TemperatureBand band) {
		this.band = band;
		double low = all(Day::low, Day::usualLow).min(Comparator.naturalOrder()).orElse(0.0);
		double high = all(Day::high, Day::usualHigh).max(Comparator.naturalOrder()).orElse(0.0);
		LocalDate from = band.days().get(0).date();
		this.plot = new Plot(new DateAxis(from, band.days().get(band.days().size() - 1).date()), Pictures.LINE + 8,
				PLOT, Math.min(-5, low - 5), Math.max(10, high + 4));
		this.formats = new Formats(from.getYear());
		for (Day day : band.days()) {
			if (day.usualLow() != null && day.usualHigh() != null) {
				this.usualLows.add(new Plot.At(day.date(), day.usualLow()));
				this.usualHighs.add(new Plot.At(day.date(), day.usualHigh()));
			}
		}
	}

	private Stream<Double> all(Function<Day, @Nullable Double> one, Function<Day, @Nullable Double> other) {
		return this.band.days()
			.stream()
			.flatMap((day) -> Stream.of(Optional.ofNullable(one.apply(day)), Optional.ofNullable(other.apply(day))))
			.flatMap(Optional::stream);
	}

	String draw() {
		String id = this.band.id();
		Svg svg = new Svg();
		svg.open("svg", "class", "picture temperature-band", "role", "img", "width", "100%", "height",
				this.plot.bottom() + Pictures.LINE + 6, "aria-labelledby", id + "-title " + id + "-desc");
		svg.element("title", "Each day’s minimum and maximum over the usual range", "id", id + "-title");
		svg.element("desc", description(), "id", id + "-desc");
		this.plot.open(svg);
		this.plot.area(svg, "normal-band", this.usualHighs, this.usualLows);
		svg.close();
		this.plot.grid(svg, STEP);
		Pictures.months(svg, this.plot.axis(), this.plot.bottom() + 14, this.plot.top(), this.plot.bottom() + 4);
		this.plot.open(svg);
		svg.empty("path", "class", "observed-range", "d", ribbon());
		this.plot.line(svg, "usual-edge", this.usualHighs);
		this.plot.line(svg, "usual-edge", this.usualLows);
		svg.close();
		this.plot.figures(svg, STEP, this::figure);
		double freezing = this.plot.y(0);
		svg.empty("line", "class", "freeze-line", "x1", "0", "x2", "100%", "y1", freezing, "y2", freezing);
		svg.element("text", "freezing, 0 °C (32 °F)", "class", "freeze-label", "x", "100%", "y", freezing - 5,
				"text-anchor", "end");
		Pictures.dateLines(svg, this.plot.axis(), List.of(new DateLine("Today", this.band.today())), "today", 0,
				this.plot.bottom());
		extreme(svg, coldest(), Day::low, COLDEST_LABEL);
		extreme(svg, warmest(), Day::high, -7);
		return svg.close().toString();
	}

	/**
	 * None beside freezing, which has its own label, or in the way of the coldest day's.
	 */
	private String figure(double value) {
		boolean inTheWay = coldest().filter((day) -> this.plot.percent(day.date()) < FIGURE)
			.map(Day::low)
			.filter((low) -> Math.abs(this.plot.y(value) - this.plot.y(low) - COLDEST_LABEL) < Pictures.LINE)
			.isPresent();
		return (value == 0 || inTheWay) ? "" : this.formats.wholeTemperature(value);
	}

	private String ribbon() {
		StringBuilder path = new StringBuilder();
		for (Day day : this.band.days()) {
			if (day.low() != null && day.high() != null) {
				this.plot.bar(path, day.date(), day.low(), day.high(), 1);
			}
		}
		return path.toString();
	}

	private Optional<Day> coldest() {
		return this.band.days()
			.stream()
			.filter((day) -> day.low() != null)
			.min(Comparator.comparing((day) -> (day.low() != null) ? day.low() : 0));
	}

	private Optional<Day> warmest() {
		return this.band.days()
			.stream()
			.filter((day) -> day.high() != null)
			.max(Comparator.comparing((day) -> (day.high() != null) ? day.high() : 0));
	}

	private void extreme(Svg svg, Optional<Day> found, Function<Day, @Nullable Double> value, int away) {
		found.ifPresent((day) -> {
			Double celsius = value.apply(day);
			if (celsius != null) {
				double x = this.plot.percent(day.date());
				String words = "%s, %s".formatted(this.formats.wholeTemperature(celsius),
						this.formats.dayOfYear(day.date()));
				double half = Lanes.width(words) / 2;
				svg.element("text", words, "class", "point-date", "x", this.plot.x(day.date()), "y",
						this.plot.y(celsius) + away, "text-anchor",
						(x < half) ? null : (x > 100 - half) ? "end" : "middle");
			}
		});
	}

	private String description() {
		StringBuilder text = new StringBuilder();
		if (coldest().isEmpty()) {
			text.append("No day of this year has been observed. ");
		}
		coldest().ifPresent((day) -> text
			.append("The coldest day so far was %s with %s. ".formatted(this.formats.dayOfYear(day.date()),
					(day.low() != null) ? this.formats.wholeTemperature(day.low()) : "")));
		warmest()
			.ifPresent((day) -> text.append("The warmest was %s with %s. ".formatted(this.formats.dayOfYear(day.date()),
					(day.high() != null) ? this.formats.wholeTemperature(day.high()) : "")));
		return text.append("The table below has the months.").toString();
	}

}
