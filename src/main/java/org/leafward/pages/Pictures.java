package org.leafward.pages;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** What the pictures have in common: patterns, months, labelled dates. */
final class Pictures {

	/** Height of a line of small words, px. */
	static final int LINE = 16;

	private static final Pattern ID = Pattern.compile("[a-zA-Z][a-zA-Z0-9-]{0,79}");

	private static final DateTimeFormatter MONTH = DateTimeFormatter.ofPattern("MMM", Locale.ENGLISH);

	private Pictures() {
	}

	static void checkId(String id) {
		if (!ID.matcher(id).matches()) {
			throw new IllegalArgumentException("picture id '%s' is not a word".formatted(id));
		}
	}

	/** The hatch, the dots and the gradient, under ids that begin with the picture's. */
	static void patterns(Svg svg, String id) {
		svg.open("defs");
		svg.open("pattern", "id", id + "-hold-off", "patternUnits", "userSpaceOnUse", "width", 6, "height", 6,
				"patternTransform", "rotate(45)");
		svg.empty("rect", "class", "hatch-ground", "width", 6, "height", 6);
		svg.empty("line", "class", "hatch-line", "x1", 3, "y1", 0, "x2", 3, "y2", 6);
		svg.close();
		svg.open("pattern", "id", id + "-watch", "patternUnits", "userSpaceOnUse", "width", 6, "height", 5);
		svg.empty("rect", "class", "dots-ground", "width", 6, "height", 5);
		svg.empty("circle", "class", "dot", "cx", 3, "cy", 2.5, "r", 1.5);
		svg.close();
		svg.open("linearGradient", "id", id + "-ramp");
		svg.empty("stop", "class", "light-dim", "offset", "0");
		svg.empty("stop", "class", "light-lit", "offset", "1");
		svg.close();
		svg.close();
	}

	/** Names of the months along a line, and a thin line down from each. */
	static void months(Svg svg, DateAxis axis, double baseline, double top, double bottom) {
		for (LocalDate month : axis.months()) {
			svg.empty("line", "class", "grid-line", "x1", percent(axis.start(month)), "x2", percent(axis.start(month)),
					"y1", top, "y2", bottom);
			// A month that ends right away has no room for its name.
			if (axis.end(month.plusMonths(1).minusDays(1)) - axis.start(month) > 5) {
				monthName(svg, axis, month, baseline);
			}
		}
	}

	static void monthName(Svg svg, DateAxis axis, LocalDate month, double baseline) {
		svg.element("text", MONTH.format(month), "class", "month", "x", percent(axis.start(month)), "dx", 3, "y",
				baseline);
	}

	/**
	 * Labelled upright lines, their labels stacked where they would touch.
	 * @param top where the labels begin, px
	 * @param bottom where the lines end, px
	 * @return height that the labels take, px
	 */
	static double dateLines(Svg svg, DateAxis axis, List<DateLine> dates, String css, double top, double bottom) {
		Lanes lanes = new Lanes();
		for (DateLine line : dates) {
			if (!axis.contains(line.date())) {
				continue;
			}
			String words = line.label() + " " + new Formats(line.date().getYear()).dayOfYear(line.date());
			double x = axis.start(line.date());
			double width = Lanes.width(words);
			boolean leftward = x + width > 100 && x - width >= 0;
			int lane = leftward ? lanes.place(x - width, x) : lanes.place(x, x + width);
			double y = top + lane * LINE;
			svg.open("g", "class", "date-line");
			svg.empty("line", "class", css + "-line", "x1", percent(x), "x2", percent(x), "y1", y + 2, "y2", bottom);
			svg.element("text", words, "class", css + "-label", "x", percent(x), "dx", leftward ? -4 : 4, "y", y + 12,
					"text-anchor", leftward ? "end" : null);
			svg.close();
		}
		return lanes.count() * LINE;
	}

	static String percent(double value) {
		return Svg.number(value) + "%";
	}

}
