package org.leafward.pages;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.jspecify.annotations.Nullable;

import org.leafward.pages.YearStrip.Row;
import org.leafward.pages.YearStrip.Span;

/**
 * Spans of one kind and label that follow each other closely: one entry of a strip, with
 * one link and one label.
 *
 * @param spans at least one, by first day
 */
record Repeats(List<Span> spans) {

	/** Alike spans further apart than this are entries of their own, days. */
	private static final int NEAR = 55;

	Repeats {
		spans = List.copyOf(spans);
	}

	/** The entries of a row on the days that the strip shows, by first day. */
	static List<Repeats> of(Row row, YearStrip strip) {
		List<List<Span>> groups = new ArrayList<>();
		Map<String, List<Span>> last = new HashMap<>();
		row.spans()
			.stream()
			.filter((span) -> !span.to().isBefore(strip.from()) && !span.from().isAfter(strip.to()))
			.sorted(Comparator.comparing(Span::from))
			.forEach((span) -> {
				String key = span.mark() + " " + span.label();
				List<Span> group = last.get(key);
				if (group == null || ChronoUnit.DAYS.between(group.get(group.size() - 1).to(), span.from()) > NEAR) {
					group = new ArrayList<>();
					groups.add(group);
					last.put(key, group);
				}
				group.add(span);
			});
		return groups.stream().map(Repeats::new).toList();
	}

	Mark mark() {
		return this.spans.get(0).mark();
	}

	String label() {
		return this.spans.get(0).label();
	}

	/** The page of the first span that is not over, or of the last. */
	@Nullable String href(@Nullable LocalDate today) {
		return this.spans.stream()
			.filter((span) -> today == null || !span.to().isBefore(today))
			.findFirst()
			.orElse(this.spans.get(this.spans.size() - 1))
			.href();
	}

	String when(Formats formats) {
		String window = formats.window(this.spans.get(0).from(), this.spans.get(this.spans.size() - 1).to());
		return (this.spans.size() == 1) ? window : "%s, %d times".formatted(window, this.spans.size());
	}

}
