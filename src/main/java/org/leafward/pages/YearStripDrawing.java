package org.leafward.pages;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import org.jspecify.annotations.Nullable;

import org.leafward.pages.YearStrip.Row;
import org.leafward.pages.YearStrip.Span;

/** Draws a {@link YearStrip}. Lengths are px, positions along the year percent. */
final class YearStripDrawing {

	private static final int BAR = 9;

	private static final int LANE = 17;

	private static final int ROW_LINE = 18;

	private static final int ROW_FOOT = 6;

	/** A single day would be a hair; drawn at least this wide, days. */
	private static final int SHOWN_DAYS = 4;

	/** Letters of a row's label that fit beside each other on a phone. */
	private static final int ROW_LETTERS = 40;

	/** Between two bars in a lane, percent. */
	private static final double GAP = 1;

	/** Width from which the style sheet shows words that need it, px. */
	private static final double WIDE = 680;

	private final YearStrip strip;

	private final DateAxis axis;

	private final Formats formats;

	YearStripDrawing(YearStrip strip) {
		this.strip = strip;
		this.axis = new DateAxis(strip.from(), strip.to());
		this.formats = strip.formats();
	}

	String draw() {
		List<PlacedRow> rows = this.strip.rows().stream().map(this::place).toList();
		List<DateLine> today = (this.strip.today() != null) ? List.of(new DateLine("Today", this.strip.today()))
				: List.of();
		double body = rows.stream().mapToDouble(PlacedRow::height).sum();

		// The labels' height is known only after they are placed, and lines under bars
		// come first: so they are placed once for the height and once for good.
		double head = dates(new Svg(), today, 0);
		double top = head + Pictures.LINE + 6;
		double bottom = top + body;
		double height = bottom + Pictures.LINE + 4;

		String id = this.strip.id();
		Svg svg = new Svg();
		svg.open("svg", "class", "picture year-strip", "role", "group", "width", "100%", "height", height,
				"aria-labelledby", id + "-title", "aria-describedby", id + "-desc");
		svg.element("title", this.strip.title(), "id", id + "-title");
		svg.element("desc", description(), "id", id + "-desc");
		Pictures.patterns(svg, id);
		Pictures.months(svg, this.axis, head + 13, head + 2, bottom);
		this.axis.months().forEach((month) -> Pictures.monthName(svg, this.axis, month, bottom + 14));
		dates(svg, today, bottom);
		double y = top;
		for (PlacedRow row : rows) {
			draw(svg, row, y);
			y += row.height();
		}
		svg.empty("line", "class", "axis-line", "x1", "0", "x2", "100%", "y1", bottom, "y2", bottom);
		return svg.close().toString();
	}

	private double dates(Svg svg, List<DateLine> today, double bottom) {
		double head = Pictures.dateLines(svg, this.axis, today, "today", 0, bottom);
		return head + Pictures.dateLines(svg, this.axis, this.strip.markers(), "marker", head, bottom);
	}

	private String description() {
		return ("From %s to %s, month by month, a row for each planting. Solid bars are work to do, hatched bars are "
				+ "times to hold off, bars that grow lighter are hardening off, dotted bars are times to watch, hollow bars with a tick are done.")
			.formatted(new Formats(0).day(this.strip.from()), new Formats(0).day(this.strip.to()));
	}

	private PlacedRow place(Row row) {
		Lanes lanes = new Lanes();
		List<PlacedEntry> bars = new ArrayList<>();
		// Long ones first, so that short ones fill up what is left beside them.
		Repeats.of(row, this.strip)
			.stream()
			.sorted(Comparator.comparingDouble((Repeats entry) -> start(entry) - end(entry)))
			.forEach((entry) -> bars.add(new PlacedEntry(entry, lanes.place(start(entry), end(entry) + GAP), null)));
		bars.sort(Comparator.comparingDouble((PlacedEntry placed) -> start(placed.entry())));
		List<PlacedEntry> entries = bars.stream().map((placed) -> labelled(placed, lanes)).toList();
		List<String> label = wrapped(row.label());
		return new PlacedRow(row, label, entries, label.size() * ROW_LINE + 6 + lanes.count() * LANE + ROW_FOOT);
	}

	/**
	 * Puts an entry's words to the right of its bars, else to the left, else into a long
	 * light bar, else nowhere.
	 */
	private PlacedEntry labelled(PlacedEntry placed, Lanes lanes) {
		Repeats entry = placed.entry();
		double after = lanes.roomAfter(placed.lane(), end(entry));
		double before = lanes.roomBefore(placed.lane(), start(entry));
		for (double picture : new double[] { Lanes.NARROWEST, WIDE }) {
			double width = Lanes.width(entry.label(), picture) + 100 * 6 / picture;
			boolean leftward = width > after;
			if (width <= after || width <= before) {
				double at = leftward ? start(entry) : end(entry);
				lanes.take(placed.lane(), leftward ? at - width : at, leftward ? at : at + width);
				return new PlacedEntry(entry, placed.lane(), new Label(at, leftward, picture == WIDE, false));
			}
		}
		// A long hatched or dotted bar carries its words itself; on a solid one they
		// drown.
		boolean light = entry.mark() == Mark.HOLD_OFF || entry.mark() == Mark.WATCH || entry.mark() == Mark.DONE;
		for (double picture : new double[] { Lanes.NARROWEST, WIDE }) {
			if (light && Lanes.width(entry.label(), picture) + 100 * 20 / picture <= end(entry) - start(entry)) {
				return new PlacedEntry(entry, placed.lane(), new Label(start(entry), false, picture == WIDE, true));
			}
		}
		return placed;
	}

	private static List<String> wrapped(String label) {
		List<String> lines = new ArrayList<>();
		StringBuilder line = new StringBuilder();
		for (String word : label.split(" ")) {
			if (!line.isEmpty() && line.length() + 1 + word.length() > ROW_LETTERS) {
				lines.add(line.toString());
				line.setLength(0);
			}
			line.append(line.isEmpty() ? "" : " ").append(word);
		}
		lines.add(line.toString());
		return lines;
	}

	private double start(Repeats entry) {
		return entry.spans().stream().mapToDouble(this::start).min().orElse(0);
	}

	private double end(Repeats entry) {
		return entry.spans().stream().mapToDouble(this::end).max().orElse(100);
	}

	private double start(Span span) {
		return Math.min(this.axis.start(span.from()), 100 - 100.0 * SHOWN_DAYS / this.axis.days());
	}

	private double end(Span span) {
		return Math.max(this.axis.end(span.to()), start(span) + 100.0 * SHOWN_DAYS / this.axis.days());
	}

	private void draw(Svg svg, PlacedRow placed, double top) {
		svg.open("g", "class", "row");
		svg.empty("line", "class", "bed-line", "x1", "0", "x2", "100%", "y1", top, "y2", top);
		double y = top;
		for (String line : placed.label()) {
			svg.element("text", line, "class", "row-label", "translate", "no", "x", "0", "y", y + 16);
			y += ROW_LINE;
		}
		double bars = y + 6;
		placed.entries().forEach((entry) -> draw(svg, placed.row(), entry, bars + entry.lane() * LANE));
		svg.close();
	}

	private void draw(Svg svg, Row row, PlacedEntry placed, double y) {
		Repeats entry = placed.entry();
		String href = entry.href(this.strip.today());
		String words = "%s: %s, %s, %s".formatted(entry.mark().word(), entry.label(), row.label(),
				entry.when(this.formats));
		// A link is named by its title (SVG-AAM); a label beside that would have to
		// repeat the words drawn inside it.
		boolean link = href != null;
		svg.open(link ? "a" : "g", "class", "span", "href", href, "aria-label", link ? null : words, "role",
				link ? null : "img");
		svg.element("title", words);
		svg.empty("rect", "class", "hit", "x", Pictures.percent(start(entry)), "width",
				Pictures.percent(end(entry) - start(entry)), "y", y - (LANE - BAR) / 2.0, "height", LANE);
		for (Span span : entry.spans()) {
			svg.empty("rect", "class", span.mark().css(), "fill", fill(span.mark()), "x", Pictures.percent(start(span)),
					"width", Pictures.percent(end(span) - start(span)), "y", (span.mark() == Mark.WEATHER) ? y + 3 : y,
					"height", (span.mark() == Mark.WEATHER) ? 3 : BAR);
			if (span.mark() == Mark.DONE) {
				tick(svg, start(span), y);
			}
		}
		svg.close();
		// Beside the link, not in it: its name says all of this and more.
		Label label = placed.label();
		if (label != null) {
			svg.element("text", entry.label(), "class", label.wide() ? "span-label wide-only" : "span-label", "x",
					Pictures.percent(label.at()), "dx", label.shift(), "y", y + BAR, "text-anchor",
					label.leftward() ? "end" : null, "aria-hidden", "true");
		}
	}

	/**
	 * Positions are percent and px, so the tick is a picture of its own at the bar's
	 * start.
	 */
	private static void tick(Svg svg, double start, double y) {
		svg.open("svg", "x", Pictures.percent(start), "y", y, "width", BAR, "height", BAR, "viewBox", "0 0 9 9");
		svg.empty("path", "class", "tick", "d", "M1.5 4.8 3.6 7 7.5 2");
		svg.close();
	}

	private @Nullable String fill(Mark mark) {
		return switch (mark) {
			case DO, DONE, WEATHER -> null;
			case HOLD_OFF -> "url(#" + this.strip.id() + "-hold-off)";
			case RAMP -> "url(#" + this.strip.id() + "-ramp)";
			case WATCH -> "url(#" + this.strip.id() + "-watch)";
		};
	}

	private record PlacedRow(Row row, List<String> label, List<PlacedEntry> entries, double height) {
	}

	private record PlacedEntry(Repeats entry, int lane, @Nullable Label label) {
	}

	/** Words beside a bar or inside it; wide ones are for wide pictures only. */
	private record Label(double at, boolean leftward, boolean wide, boolean inside) {

		/** Inside, the beginning of the bar stays in sight. */
		int shift() {
			return this.leftward ? -5 : this.inside ? 14 : 5;
		}
	}

}
