package org.leafward.pages;

import java.time.LocalDate;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;

import org.leafward.pages.DegreeDayCurve.Band;
import org.leafward.pages.DegreeDayCurve.Goal;
import org.leafward.pages.DegreeDayCurve.Sum;

/** Draws a {@link DegreeDayCurve}. */
final class DegreeDayDrawing {

	private static final int PLOT = 250;

	private static final double LABEL_HEIGHT = 15;

	/** Room for a goal's label between the band and its own, px. */
	private static final double UNDER = 42;

	private final DegreeDayCurve curve;

	private final Plot plot;

	private final Formats formats;

	private final double step;

	DegreeDayDrawing(DegreeDayCurve curve) {
		this.curve = curve;
		LocalDate from = curve.normal().isEmpty() ? curve.observed().get(0).day() : curve.normal().get(0).day();
		LocalDate to = curve.normal().isEmpty() ? curve.observed().get(curve.observed().size() - 1).day()
				: curve.normal().get(curve.normal().size() - 1).day();
		double most = DoubleStream.concat(curve.normal().stream().mapToDouble(Band::high), DoubleStream.concat(
				curve.observed().stream().mapToDouble(Sum::value), curve.projected().stream().mapToDouble(Sum::value)))
			.max()
			.orElse(1);
		this.step = (most > 2500) ? 1000 : (most > 1000) ? 500 : (most > 250) ? 100 : 50;
		double high = Math.max(this.step, Math.ceil(most * 1.06 / this.step * 2) * this.step / 2);
		this.plot = new Plot(new DateAxis(from, to), Pictures.LINE + 8, PLOT, 0, high);
		this.formats = new Formats(from.getYear());
	}

	String draw() {
		String id = this.curve.id();
		Svg svg = new Svg();
		svg.open("svg", "class", "picture degree-days", "role", "img", "width", "100%", "height",
				this.plot.bottom() + Pictures.LINE + 6, "aria-labelledby", id + "-title " + id + "-desc");
		svg.element("title", "Degree-days above %s, this season and past years".formatted(this.curve.base()), "id",
				id + "-title");
		svg.element("desc", description(), "id", id + "-desc");
		double bottom = this.plot.bottom();
		this.plot.open(svg);
		this.plot.area(svg, "normal-band", band(Band::high), band(Band::low));
		svg.close();
		this.plot.grid(svg, this.step);
		this.plot.figures(svg, this.step, (value) -> this.formats.number(value, 0));
		Pictures.months(svg, this.plot.axis(), bottom + 14, this.plot.top(), bottom + 4);
		Pictures.dateLines(svg, this.plot.axis(), List.of(new DateLine("Today", this.curve.today())), "today", 0,
				bottom);
		this.plot.open(svg);
		this.plot.line(svg, "normal-line", band(Band::middle));
		this.plot.line(svg, "projected-line", sums(this.curve.projected()));
		this.plot.line(svg, "observed-line", sums(this.curve.observed()));
		svg.close();
		bandLabel(svg);
		goals(svg);
		latest(svg);
		return svg.close().toString();
	}

	private List<Plot.At> band(ToDoubleFunction<Band> value) {
		return this.curve.normal().stream().map((one) -> new Plot.At(one.day(), value.applyAsDouble(one))).toList();
	}

	private static List<Plot.At> sums(List<Sum> sums) {
		return sums.stream().map((one) -> new Plot.At(one.day(), one.value())).toList();
	}

	/** Under the band's end, where a rising curve leaves room. */
	private void bandLabel(Svg svg) {
		if (!this.curve.normal().isEmpty()) {
			Band last = this.curve.normal().get(this.curve.normal().size() - 1);
			double y = this.plot.y(last.low()) + UNDER;
			svg.element("text", "band: 8 years in 10", "class", "point-word", "x", "100%", "dx", -4, "y", y,
					"text-anchor", "end");
			svg.element("text", "thin line: half of years", "class", "point-word", "x", "100%", "dx", -4, "y", y + 15,
					"text-anchor", "end");
		}
	}

	private void goals(Svg svg) {
		double above = this.plot.bottom() + LABEL_HEIGHT;
		for (Goal goal : this.curve.goals()) {
			double y = this.plot.y(goal.sum());
			if (!this.plot.axis().contains(goal.date()) || above - y < LABEL_HEIGHT || y < this.plot.top()
					|| Math.abs(under(y) - taken()) < LABEL_HEIGHT) {
				continue;
			}
			above = y;
			double x = this.plot.percent(goal.date());
			String words = "%s on %s".formatted(this.formats.number(goal.sum(), 0),
					this.formats.dayOfYear(goal.date()));
			boolean leftward = x + Lanes.width(words) > 100;
			svg.open("g", "class", "goal");
			svg.empty("circle", "class", "curve-point", "cx", Pictures.percent(x), "cy", y, "r", 3.5);
			svg.element("text", words, "class", "point-date", "x", Pictures.percent(x), "dx", leftward ? -9 : 9, "y",
					leftward ? y - 6 : under(y), "text-anchor", leftward ? "end" : null);
			svg.close();
		}
	}

	/** Above the band; early in the season, when there is no room, under the curve. */
	private void latest(Svg svg) {
		if (this.curve.observed().isEmpty()) {
			return;
		}
		Sum last = this.curve.observed().get(this.curve.observed().size() - 1);
		double x = this.plot.percent(last.day());
		double y = this.plot.y(last.value());
		boolean rightward = x < Lanes.width(words(last));
		svg.open("g", "class", "latest");
		svg.empty("circle", "class", "latest-point", "cx", Pictures.percent(x), "cy", y, "r", 4.5);
		svg.element("text", words(last), "class", "point-date", "x", Pictures.percent(x), "dx", rightward ? 9 : -7, "y",
				rightward ? under(y) : Math.min(y, highest(last)) - 8, "text-anchor", rightward ? null : "end");
		svg.close();
	}

	private String words(Sum sum) {
		return "%s by %s".formatted(this.formats.number(sum.value(), 0), this.formats.dayOfYear(sum.day()));
	}

	private double under(double y) {
		return Math.min(y + 14, this.plot.bottom() - 4);
	}

	/** Where the latest sum has its label under the curve, no goal may have one. */
	private double taken() {
		if (!this.curve.observed().isEmpty()) {
			Sum last = this.curve.observed().get(this.curve.observed().size() - 1);
			if (this.plot.percent(last.day()) < Lanes.width(words(last))) {
				return under(this.plot.y(last.value()));
			}
		}
		return Double.NEGATIVE_INFINITY;
	}

	/** The upper edge of the band on a day, px. */
	private double highest(Sum sum) {
		return this.curve.normal()
			.stream()
			.filter((one) -> one.day().equals(sum.day()))
			.mapToDouble((one) -> this.plot.y(one.high()))
			.findFirst()
			.orElse(this.plot.bottom());
	}

	private String description() {
		StringBuilder text = new StringBuilder();
		if (this.curve.observed().isEmpty()) {
			text.append("No day of this season has been observed yet. ");
		}
		else {
			Sum last = this.curve.observed().get(this.curve.observed().size() - 1);
			text.append("%s degree-days have come by %s".formatted(this.formats.number(last.value(), 0),
					this.formats.dayOfYear(last.day())));
			this.curve.normal()
				.stream()
				.filter((one) -> one.day().equals(last.day()))
				.findFirst()
				.ifPresent((one) -> text
					.append("; half of past years had %s by then".formatted(this.formats.number(one.middle(), 0))));
			text.append(". ");
		}
		for (Goal goal : this.curve.goals()) {
			text.append(
					"%s on %s. ".formatted(this.formats.number(goal.sum(), 0), this.formats.dayOfYear(goal.date())));
		}
		return text.append("The table below has the figures.").toString();
	}

}
