package org.leafward.workdays.web;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leafward.measure.BadInput;
import org.leafward.measure.DayWindow;
import org.leafward.measure.Given;

/** Pages and spans of days that programs ask for. */
final class Slices {

	private static final int USUAL_DAYS = 200;

	private static final int MOST_DAYS = 800;

	private Slices() {
	}

	/** A page of what is bounded already: members, sites, workdays of some days. */
	static <T> List<T> of(List<T> all, int page, int size) {
		int many = Given.size(size);
		return all.stream().skip((long) Given.page(page) * many).limit(many).toList();
	}

	/** The days asked for. */
	static DayWindow days(@Nullable String from, @Nullable String to, LocalDate today) {
		LocalDate first = (from != null) ? Given.date("from", from) : today;
		LocalDate last = (to != null) ? Given.date("to", to) : first.plusDays(USUAL_DAYS);
		if (last.isBefore(first) || last.isAfter(first.plusDays(MOST_DAYS))) {
			throw new BadInput("%s to %s is no span of at most %d days".formatted(first, last, MOST_DAYS), "to",
					"end on a later day, at most %d days on".formatted(MOST_DAYS));
		}
		return new DayWindow(first, last);
	}

}
