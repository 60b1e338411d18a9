package org.leafward.pages;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.jspecify.annotations.Nullable;

import org.leafward.pages.YearStrip.Row;
import org.leafward.pages.YearStrip.Span;

/** Draws a {@link YearStrip}. Lengths are px, positions along the year percent. */
final class YearStripDrawing {

	private static final int BAR = 11;

	private static final int LANE = 31;

	private static final int ROW_HEAD = 26;

	private static final int ROW_FOOT = 9;

	/** A single day would be a hair; drawn at least this wide, days. */
	private static final int SHOWN_DAYS = 4;

	private static final int LONGEST = 40;

	/** Alike spans less far apart than this share a label, percent. */
	private static final int NEAR = 15;

	private final YearStrip strip;

	private final DateAxis axis;

	private final Formats formats;

	YearStripDrawing(YearStrip strip) {
		this.strip = strip;
		this.axis = new DateAxis(strip.from(), strip.to());
		this.formats = new Formats(strip.to().getYear());
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
				+ "times to hold off, bars that grow lighter are hardening off, dotted bars are times to watch.")
			.formatted(new Formats(0).day(this.strip.from()), new Formats(0).day(this.strip.to()));
	}

	private PlacedRow place(Row row) {
		Lanes lanes = new Lanes();
		List<PlacedSpan> spans = new ArrayList<>();
		for (List<Span> group : alike(row)) {
			double start = group.stream().mapToDouble(this::start).min().orElse(0);
			double end = group.stream().mapToDouble(this::end).max().orElse(100);
			double width = Lanes.width(cut(group.get(0).label()));
			boolean leftward = start + width > 100;
			double room = Math.max(0, leftward ? Math.min(start, end - width) : start);
			int lane = lanes.place(room, leftward ? end : Math.max(end, start + width));
			for (Span span : group) {
				spans.add(new PlacedSpan(span, lane, span == group.get(0), leftward ? end : start, leftward));
			}
		}
		return new PlacedRow(row, spans, ROW_HEAD + lanes.count() * LANE + ROW_FOOT);
	}

	/**
	 * Spans on the axis by first day, those of one kind and label that are near together.
	 */
	private List<List<Span>> alike(Row row) {
		List<List<Span>> groups = new ArrayList<>();
		Map<String, List<Span>> last = new HashMap<>();
		row.spans()
			.stream()
			.filter((span) -> !span.to().isBefore(this.axis.from()) && !span.from().isAfter(this.axis.to()))
			.sorted(Comparator.comparing(Span::from))
			.forEach((span) -> {
				String key = span.mark() + " " + span.label();
				List<Span> group = last.get(key);
				if (group == null || start(span) - end(group.get(group.size() - 1)) > NEAR) {
					group = new ArrayList<>();
					groups.add(group);
					last.put(key, group);
				}
				group.add(span);
			});
		return groups;
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
		svg.element("text", placed.row().label(), "class", "row-label", "x", "0", "y", top + 18);
		placed.spans().forEach((span) -> draw(svg, placed.row(), span, top + ROW_HEAD + span.lane() * LANE));
		svg.close();
	}

	private void draw(Svg svg, Row row, PlacedSpan placed, double y) {
		Span span = placed.span();
		String x = Pictures.percent(start(span));
		String width = Pictures.percent(end(span) - start(span));
		String words = "%s: %s, %s, %s".formatted(span.mark().word(), span.label(), row.label(),
				this.formats.window(span.from(), span.to()));
		svg.open((span.href() != null) ? "a" : "g", "class", "span", "href", span.href(), "aria-label", words, "role",
				(span.href() != null) ? null : "img");
		svg.element("title", words);
		svg.empty("rect", "class", "hit", "x", x, "width", width, "y", y - 1, "height", LANE - 3);
		svg.empty("rect", "class", span.mark().css(), "fill", fill(span.mark()), "x", x, "width", width, "y",
				(span.mark() == Mark.WEATHER) ? y + 4 : y, "height", (span.mark() == Mark.WEATHER) ? 4 : BAR);
		if (placed.labelled()) {
			svg.element("text", cut(span.label()), "class", "span-label", "x", Pictures.percent(placed.labelAt()), "y",
					y + BAR + 13, "text-anchor", placed.leftward() ? "end" : null);
		}
		svg.close();
	}

	private static String cut(String label) {
		return (label.length() > LONGEST) ? label.substring(0, LONGEST - 1).strip() + "…" : label;
	}

	private @Nullable String fill(Mark mark) {
		return switch (mark) {
			case DO, WEATHER -> null;
			case HOLD_OFF -> "url(#" + this.strip.id() + "-hold-off)";
			case RAMP -> "url(#" + this.strip.id() + "-ramp)";
			case WATCH -> "url(#" + this.strip.id() + "-watch)";
		};
	}

	private record PlacedRow(Row row, List<PlacedSpan> spans, double height) {
	}

	private record PlacedSpan(Span span, int lane, boolean labelled, double labelAt, boolean leftward) {
	}

}
