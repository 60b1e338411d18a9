package org.leafward.pages;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

import org.leafward.pages.WaterBalancePicture.Day;

/** Draws a {@link WaterBalancePicture}. */
final class WaterBalanceDrawing {

	private static final int HEAD = 20;

	private static final int BARS = 74;

	private static final int BETWEEN = 30;

	private static final int SOIL = 180;

	/** The scale of the bars isn't finer than this, mm, so that a drizzle stays small. */
	private static final double LEAST_SCALE = 20;

	private static final double MOST_OF_DAY = 0.9;

	/** Width of a watering, px, even. */
	private static final int WATERING = 6;

	private final WaterBalancePicture picture;

	private final Plot bars;

	private final Plot soil;

	private final Formats formats;

	WaterBalanceDrawing(WaterBalancePicture picture) {
		this.picture = picture;
		List<Day> days = picture.days();
		LocalDate from = days.get(0).date();
		DateAxis axis = new DateAxis(from, days.get(days.size() - 1).date());
		double most = days.stream().mapToDouble((day) -> day.rain() + day.watering()).max().orElse(0);
		this.bars = new Plot(axis, HEAD, BARS, 0, Math.max(LEAST_SCALE, most * 1.25));
		this.soil = new Plot(axis, this.bars.bottom() + BETWEEN, SOIL, 0, picture.available());
		this.formats = new Formats(days.get(days.size() - 1).date().getYear());
	}

	String draw() {
		String id = this.picture.id();
		Svg svg = new Svg();
		svg.open("svg", "class", "picture water-balance", "role", "img", "width", "100%", "height",
				this.soil.bottom() + 2 * Pictures.LINE + 8, "aria-labelledby", id + "-title " + id + "-desc");
		svg.element("title", "Rain, watering and the water left in the soil", "id", id + "-title");
		svg.element("desc", description(), "id", id + "-desc");
		Pictures.months(svg, this.soil.axis(), this.soil.bottom() + 14 + Pictures.LINE, this.bars.top(),
				this.soil.bottom() + 4);
		svg.element("text", "Rain and watering, mm a day", "class", "row-label", "x", "0", "y", 13);
		bars(svg, "rain-bar", 0, Day::rain);
		waterings(svg);
		level(svg, this.bars.bottom());
		heaviest(svg);
		svg.element("text", "Water left for plants", "class", "row-label", "x", "0", "y", this.soil.top() - 7);
		svg.element("text", "full: " + millimetres(this.picture.available()), "class", "small", "x", "100%", "y",
				this.soil.top() - 7, "text-anchor", "end");
		soil(svg);
		return svg.close().toString();
	}

	private void bars(Svg svg, String css, double from, ToDoubleFunction<Day> amount) {
		StringBuilder path = new StringBuilder();
		for (Day day : this.picture.days()) {
			if (amount.applyAsDouble(day) > 0) {
				this.bars.bar(path, day.date(), from, amount.applyAsDouble(day), MOST_OF_DAY);
			}
		}
		this.bars.open(svg);
		svg.empty("path", "class", css, "d", path, "vector-effect", "non-scaling-stroke");
		svg.close();
	}

	/**
	 * Waterings stand on the rain of their day, hollow and of one width however narrow
	 * the picture, so that they differ from rain by more than colour.
	 */
	private void waterings(Svg svg) {
		List<Day> watered = this.picture.days().stream().filter((day) -> day.watering() > 0).toList();
		for (Day day : watered) {
			double top = this.bars.y(day.rain() + day.watering());
			svg.empty("rect", "class", "watering-bar", "x", this.bars.x(day.date()), "y", top, "width", WATERING,
					"height", this.bars.y(day.rain()) - top, "transform", "translate(%d 0)".formatted(-WATERING / 2));
		}
		// The latest ones are named first, the others where there is room.
		Lanes lanes = new Lanes();
		for (int at = watered.size() - 1; at >= 0; at--) {
			Day day = watered.get(at);
			String words = "watered %s on %s".formatted(millimetres(day.watering()),
					this.formats.dayOfYear(day.date()));
			double middle = this.bars.percent(day.date());
			double width = Lanes.width(words);
			double start = Math.max(0, Math.min(100 - width, middle - width / 2));
			if (lanes.place(start, start + width) == 0) {
				label(svg, day, words, this.bars.y(day.rain() + day.watering()) - 5);
			}
		}
	}

	/** A diamond where the water left crosses the dashes, named where there is room. */
	private void due(Svg svg) {
		Lanes lanes = new Lanes();
		Day last = this.picture.days().get(this.picture.days().size() - 1);
		double lastY = this.soil.y(Math.max(0, this.picture.available() - last.depletion()));
		double lastStart = 100 - Lanes.width("000 mm on 00 Mmm");
		for (Day day : this.picture.days()) {
			if (day.due()) {
				double y = this.soil.y(Math.max(0, this.picture.available() - day.readily()));
				double x = this.soil.percent(day.date());
				String words = "due " + this.formats.dayOfYear(day.date());
				svg.open("svg", "x", this.soil.x(day.date()), "y", y, "width", "1", "height", "1", "overflow",
						"visible");
				svg.empty("path", "class", "due-point", "d", "M0 -6L6 0L0 6L-6 0Z");
				svg.close();
				boolean besideLast = x + Lanes.width(words) > lastStart && Math.abs(y - lastY) < Pictures.LINE + 2;
				if (!besideLast && x + Lanes.width(words) <= 100 && lanes.place(x, x + Lanes.width(words)) == 0) {
					svg.element("text", words, "class", "point-word due-word", "x", this.soil.x(day.date()), "dx", 6,
							"y", y - 9);
				}
			}
		}
	}

	private void heaviest(Svg svg) {
		this.picture.days()
			.stream()
			.max(Comparator.comparingDouble(Day::rain))
			.filter((day) -> day.rain() > 0)
			.filter((day) -> this.picture.days().stream().noneMatch((one) -> one.watering() > 0))
			.ifPresent((day) -> label(svg, day,
					"%s on %s".formatted(millimetres(day.rain()), this.formats.dayOfYear(day.date())),
					this.bars.y(day.rain()) - 5));
	}

	private void label(Svg svg, Day day, String words, double y) {
		double x = this.bars.percent(day.date());
		double half = Lanes.width(words) / 2;
		svg.element("text", words, "class", "point-word", "x", this.bars.x(day.date()), "y", y, "text-anchor",
				(x < half) ? null : (x > 100 - half) ? "end" : "middle");
	}

	private void level(Svg svg, double y) {
		svg.empty("line", "class", "axis-line", "x1", "0", "x2", "100%", "y1", y, "y2", y);
	}

	private void soil(Svg svg) {
		List<Plot.At> left = this.picture.days()
			.stream()
			.map((day) -> new Plot.At(day.date(), Math.max(0, this.picture.available() - day.depletion())))
			.toList();
		List<Plot.At> nothing = left.stream().map((one) -> new Plot.At(one.day(), 0)).toList();
		List<Plot.At> stress = this.picture.days()
			.stream()
			.map((day) -> new Plot.At(day.date(), this.picture.available() - day.readily()))
			.toList();
		this.soil.open(svg);
		this.soil.area(svg, "water-left", left, nothing);
		this.soil.line(svg, "water-line", left);
		this.soil.line(svg, "stress-line", stress);
		svg.close();
		level(svg, this.soil.top());
		level(svg, this.soil.bottom());
		boolean atEnd = clearance(left, stress, true) > clearance(left, stress, false);
		Plot.At beside = stress.get(atEnd ? stress.size() - 1 : 0);
		svg.element("text", "plants feel drought below the dashes", "class", "stress-label", "x", atEnd ? "100%" : "0",
				"dx", atEnd ? -4 : 4, "y", this.soil.y(beside.value()) + 18, "text-anchor", atEnd ? "end" : null);
		due(svg);
		svg.element("text", "nothing left", "class", "small", "x", "0", "y", this.soil.bottom() + 13);
		Plot.At last = left.get(left.size() - 1);
		double y = this.soil.y(last.value());
		svg.empty("circle", "class", "latest-point", "cx", this.soil.x(last.day()), "cy", y, "r", 4.5);
		svg.element("text", "%s on %s".formatted(millimetres(last.value()), this.formats.dayOfYear(last.day())),
				"class", "point-date", "x", "100%", "dx", -4, "y", (y - this.soil.top() < 22) ? y + 22 : y - 10,
				"text-anchor", "end");
	}

	/** How near the two lines come in the part of the picture where a label may stand. */
	private static double clearance(List<Plot.At> left, List<Plot.At> stress, boolean atEnd) {
		int half = Math.max(1, left.size() / 2);
		return IntStream.range(atEnd ? left.size() - half : 0, atEnd ? left.size() : half)
			.mapToDouble((at) -> Math.abs(left.get(at).value() - stress.get(at).value()))
			.min()
			.orElse(0);
	}

	private String millimetres(double amount) {
		return this.formats.number(amount, 0) + " mm";
	}

	private String description() {
		List<Day> days = this.picture.days();
		Day last = days.get(days.size() - 1);
		long stressed = days.stream().filter(Day::stressed).count();
		long waterings = days.stream().filter((day) -> day.watering() > 0).count();
		long due = days.stream().filter(Day::due).count();
		return "On %s %s of %s are left for plants. %s of rain fell in %d days, %s of water were given on %s. "
			.formatted(this.formats.dayOfYear(last.date()),
					millimetres(Math.max(0, this.picture.available() - last.depletion())),
					millimetres(this.picture.available()), millimetres(days.stream().mapToDouble(Day::rain).sum()),
					days.size(), millimetres(days.stream().mapToDouble(Day::watering).sum()),
					this.formats.count(waterings, "day", "days"))
				+ "On %s the plants felt drought; watering became due on %s. The table below has the weeks.".formatted(
						this.formats.count(stressed, "evening", "evenings"), this.formats.count(due, "day", "days"));
	}

}
