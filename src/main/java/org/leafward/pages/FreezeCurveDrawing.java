package org.leafward.pages;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import org.jspecify.annotations.Nullable;

import org.leafward.pages.FreezeCurve.Chance;

/** Draws a {@link FreezeCurve}. Lengths are px, dates percent of the width. */
final class FreezeCurveDrawing {

	private static final int PLOT = 230;

	private static final int HEAD = 20;

	/** Share of the axis that the labels of a curve's points need on a phone. */
	private static final double LABEL = 0.29;

	private final FreezeCurve curve;

	private final DateAxis axis;

	private final boolean fallOutside;

	FreezeCurveDrawing(FreezeCurve curve) {
		this.curve = curve;
		List<LocalDate> dates = new ArrayList<>();
		curve.spring().forEach((chance) -> dates.add(chance.date()));
		curve.fall().forEach((chance) -> dates.add(chance.date()));
		LocalDate first = dates.stream().min(Comparator.naturalOrder()).orElseThrow();
		LocalDate last = dates.stream().max(Comparator.naturalOrder()).orElseThrow();
		long air = Math.max(20, ChronoUnit.DAYS.between(first, last) * 14 / 100);
		DateAxis plain = new DateAxis(first.minusDays(air), last.plusDays(air / 2));
		LocalDate springSafe = FreezeCurve.at(curve.spring(), 10);
		LocalDate fallEarly = FreezeCurve.at(curve.fall(), 10);
		LocalDate fallMedian = FreezeCurve.at(curve.fall(), 50);
		this.fallOutside = springSafe != null && fallEarly != null && fallMedian != null
				&& plain.start(fallEarly) - plain.start(springSafe) < 2 * 100 * LABEL;
		this.axis = widened(plain, last, fallMedian);
	}

	private DateAxis widened(DateAxis plain, LocalDate last, @Nullable LocalDate fallMedian) {
		LocalDate lastPoint = (this.fallOutside && fallMedian != null) ? fallMedian : null;
		if (lastPoint == null && this.curve.fall().isEmpty()) {
			lastPoint = last;
		}
		if (lastPoint == null) {
			return plain;
		}
		long before = ChronoUnit.DAYS.between(plain.from(), lastPoint);
		LocalDate needed = lastPoint.plusDays((long) Math.ceil(before * LABEL / (1 - LABEL)));
		return new DateAxis(plain.from(), needed.isAfter(plain.to()) ? needed : plain.to());
	}

	String draw() {
		double labels = Pictures.dateLines(new Svg(), this.axis, this.curve.lines(), "site", 0, 0);
		double top = HEAD + labels + 24;
		double bottom = top + PLOT;
		String id = this.curve.id();
		Svg svg = new Svg();
		svg.open("svg", "class", "picture freeze-curve", "role", "img", "width", "100%", "height",
				bottom + Pictures.LINE + 6, "aria-labelledby", id + "-title " + id + "-desc");
		svg.element("title", "Chance of a minimum at or below %s".formatted(this.curve.threshold()), "id",
				id + "-title");
		svg.element("desc", description(), "id", id + "-desc");
		if (!this.curve.spring().isEmpty()) {
			svg.element("text", "Spring: still to come", "class", "small", "x", "0", "y", 13);
		}
		if (!this.curve.fall().isEmpty()) {
			svg.element("text", "Fall: has come already", "class", "small", "x", "100%", "y", 13, "text-anchor", "end");
		}
		chances(svg, top);
		Pictures.months(svg, this.axis, bottom + 14, top, bottom + 4);
		svg.empty("line", "class", "axis-line", "x1", "0", "x2", "100%", "y1", bottom, "y2", bottom);
		Pictures.dateLines(svg, this.axis, this.curve.lines(), "site", HEAD, bottom);
		paths(svg, top);
		points(svg, this.curve.spring(), top, "point spring", false, false);
		points(svg, this.curve.fall(), top, "point fall", !this.fallOutside, this.fallOutside);
		return svg.close().toString();
	}

	private void chances(Svg svg, double top) {
		for (int percent : new int[] { 100, 50, 10 }) {
			double y = y(percent, top);
			svg.empty("line", "class", "grid-line", "x1", "0", "x2", "100%", "y1", y, "y2", y);
			svg.element("text", percent + " %", "class", "small", "x", "0", "y", y - 4);
		}
	}

	/** The curves stand in a box that stretches; strokes keep their width. */
	private void paths(Svg svg, double top) {
		svg.open("svg", "x", "0", "y", top, "width", "100%", "height", PLOT, "viewBox",
				"0 0 %s 100".formatted(Svg.number(this.axis.days())), "preserveAspectRatio", "none");
		path(svg, this.curve.spring(), "curve spring", true);
		path(svg, this.curve.fall(), "curve fall", false);
		svg.close();
	}

	private void path(Svg svg, List<Chance> chances, String css, boolean falling) {
		if (chances.size() < 2) {
			return;
		}
		StringBuilder points = new StringBuilder();
		chances.stream()
			.sorted(Comparator.comparing(Chance::date)
				.thenComparingInt((chance) -> falling ? -chance.percent() : chance.percent()))
			.forEach((chance) -> points.append((points.length() == 0) ? "" : " ")
				.append(ChronoUnit.DAYS.between(this.axis.from(), chance.date()))
				.append(',')
				.append(100 - chance.percent()));
		svg.empty("polyline", "class", css, "points", points, "vector-effect", "non-scaling-stroke");
	}

	private void points(Svg svg, List<Chance> chances, double top, String css, boolean leftward, boolean below) {
		for (int percent : new int[] { 50, 10 }) {
			LocalDate date = FreezeCurve.at(chances, percent);
			if (date == null) {
				continue;
			}
			String x = Pictures.percent(this.axis.start(date));
			double y = y(percent, top);
			double base = below ? y + 1 : y - 9;
			String anchor = leftward ? "end" : null;
			int away = leftward ? -9 : 9;
			svg.open("g", "class", css);
			svg.empty("circle", "class", "curve-point", "cx", x, "cy", y, "r", 3.5);
			svg.element("text", new Formats(date.getYear()).dayOfYear(date), "class", "point-date", "x", x, "dx", away,
					"y", base, "text-anchor", anchor);
			svg.element("text", (percent == 50) ? "half of years" : "1 year in 10", "class", "point-word", "x", x, "dx",
					away, "y", base + 14, "text-anchor", anchor);
			svg.close();
		}
	}

	private String description() {
		StringBuilder text = new StringBuilder();
		sentence(text, "In spring, the last such day falls on or after %s in half of the years%s.",
				this.curve.spring());
		sentence(text, "In fall, the first such day falls on or before %s in half of the years%s.", this.curve.fall());
		return text.append("The table below has the dates.").toString();
	}

	private static void sentence(StringBuilder text, String words, List<Chance> chances) {
		LocalDate median = FreezeCurve.at(chances, 50);
		LocalDate tenth = FreezeCurve.at(chances, 10);
		if (median != null) {
			Formats formats = new Formats(median.getYear());
			text.append(words.formatted(formats.dayOfYear(median),
					(tenth != null) ? ", and %s in one year in ten".formatted(formats.dayOfYear(tenth)) : ""))
				.append(' ');
		}
	}

	private static double y(int percent, double top) {
		return top + PLOT * (100 - percent) / 100.0;
	}

}
