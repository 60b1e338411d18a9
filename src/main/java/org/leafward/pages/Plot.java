package org.leafward.pages;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.DoubleFunction;

/**
 * A frame of values over days. Lines and areas stand in a box that stretches with the
 * width, strokes keep theirs; words and points are put by percent and px.
 *
 * @param axis the days
 * @param top px
 * @param height px
 * @param low value at the bottom
 * @param high value at the top
 */
record Plot(DateAxis axis, double top, double height, double low, double high) {

	/** A value in the middle of a day. */
	record At(LocalDate day, double value) {
	}

	double bottom() {
		return this.top + this.height;
	}

	double y(double value) {
		return this.top + inside(value);
	}

	String x(LocalDate day) {
		return Pictures.percent(percent(day));
	}

	double percent(LocalDate day) {
		return (this.axis.start(day) + this.axis.end(day)) / 2;
	}

	/** Begins the box that stretches; x counts days, y px. */
	void open(Svg svg) {
		svg.open("svg", "x", "0", "y", this.top, "width", "100%", "height", this.height, "viewBox",
				"0 0 %s %s".formatted(Svg.number(this.axis.days()), Svg.number(this.height)), "preserveAspectRatio",
				"none");
	}

	void line(Svg svg, String css, List<At> series) {
		if (series.size() > 1) {
			svg.empty("polyline", "class", css, "points", points(series), "vector-effect", "non-scaling-stroke");
		}
	}

	void area(Svg svg, String css, List<At> upper, List<At> lower) {
		if (upper.size() > 1) {
			List<At> back = new ArrayList<>(lower);
			Collections.reverse(back);
			svg.empty("polygon", "class", css, "points", points(upper) + " " + points(back), "vector-effect",
					"non-scaling-stroke");
		}
	}

	/** A bar over the middle part of a day. */
	void bar(StringBuilder path, LocalDate day, double from, double to, double part) {
		double x = days(day) + (1 - part) / 2;
		path.append("M%s %sV%sH%sV%sZ".formatted(Svg.number(x), Svg.number(inside(from)), Svg.number(inside(to)),
				Svg.number(x + part), Svg.number(inside(from))));
	}

	private String points(List<At> series) {
		StringBuilder points = new StringBuilder();
		for (At one : series) {
			points.append((points.length() == 0) ? "" : " ")
				.append(Svg.number(days(one.day()) + 0.5))
				.append(',')
				.append(Svg.number(inside(one.value())));
		}
		return points.toString();
	}

	private double days(LocalDate day) {
		return ChronoUnit.DAYS.between(this.axis.from(), day);
	}

	private double inside(double value) {
		return this.height * (this.high - value) / (this.high - this.low);
	}

	/** Thin lines across. */
	void grid(Svg svg, double step) {
		for (double value = Math.ceil(this.low / step) * step; value <= this.high; value += step) {
			svg.empty("line", "class", "grid-line", "x1", "0", "x2", "100%", "y1", y(value), "y2", y(value));
		}
	}

	/** The figures over the thin lines; an empty text leaves one out. */
	void figures(Svg svg, double step, DoubleFunction<String> words) {
		for (double value = Math.ceil(this.low / step) * step; value <= this.high; value += step) {
			String text = words.apply(value);
			if (!text.isEmpty()) {
				svg.element("text", text, "class", "small", "x", "0", "y", y(value) - 4);
			}
		}
	}

}
