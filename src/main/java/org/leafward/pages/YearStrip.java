package org.leafward.pages;

import java.time.LocalDate;
import java.util.List;

import org.jspecify.annotations.Nullable;

/**
 * A year of care as a strip: months from left to right, a row for each planting, a bar
 * for each span. Work to do is solid, a hold-off hatched, a ramp a gradient of light, a
 * watch dotted; season markers are thin lines.
 *
 * @param id unique among the pictures of a page, a word of letters, digits and hyphens
 * @param title what the picture shows
 * @param from first day shown
 * @param to last day shown, at most three years later
 * @param today the day to mark; null for none
 * @param rows the plantings
 * @param markers dated events that get a line
 */
public record YearStrip(String id, String title, LocalDate from, LocalDate to, @Nullable LocalDate today,
		List<Row> rows, List<DateLine> markers) {

	public YearStrip {
		Pictures.checkId(id);
		if (to.isBefore(from) || to.isAfter(from.plusYears(3))) {
			throw new IllegalArgumentException("strip from %s to %s is not within three years".formatted(from, to));
		}
		rows = List.copyOf(rows);
		markers = List.copyOf(markers);
	}

	/**
	 * The picture. It takes the width it is given and is as tall as its bars need; those
	 * that do not overlap share a line, and words stand beside a bar where there is room.
	 * Spans outside the days shown are left out.
	 * @return inline SVG, with a link for each entry that has an address
	 */
	public String svg() {
		return new YearStripDrawing(this).draw();
	}

	/**
	 * The same in words, for a table beside the picture.
	 * @return a line for each entry of the picture, row by row, by first day
	 */
	public List<Line> lines() {
		Formats formats = formats();
		return this.rows.stream()
			.flatMap((row) -> Repeats.of(row, this)
				.stream()
				.map((entry) -> new Line(row.label(), entry.mark(), entry.label(), entry.when(formats),
						entry.href(this.today))))
			.toList();
	}

	/** Dates of today's year go without the year. */
	Formats formats() {
		return new Formats(((this.today != null) ? this.today : this.to).getYear());
	}

	/**
	 * An entry of the picture in words.
	 *
	 * @param row label of its row
	 * @param mark what kind of entry it is
	 * @param label its words, whole
	 * @param when its days, and how often it comes when it is repeated
	 * @param href address of its page; null when there is none
	 */
	public record Line(String row, Mark mark, String label, String when, @Nullable String href) {
	}

	/**
	 * A row of the strip.
	 *
	 * @param label what readers call the planting, or several with the same care
	 * @param spans its bars; spans of the same kind and label that follow each other
	 * closely are one entry
	 */
	public record Row(String label, List<Span> spans) {

		public Row {
			spans = List.copyOf(spans);
		}

	}

	/**
	 * A bar.
	 *
	 * @param mark how it is drawn
	 * @param from first day
	 * @param to last day
	 * @param label a few words
	 * @param href address of its page, from the root; null when there is none
	 */
	public record Span(Mark mark, LocalDate from, LocalDate to, String label, @Nullable String href) {

		public Span {
			if (to.isBefore(from)) {
				throw new IllegalArgumentException("span ends on %s, before it begins on %s".formatted(to, from));
			}
		}

	}

}
