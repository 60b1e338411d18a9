package org.leafward.pages;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;

/**
 * Days along the width of a picture, in percent of the width, so that a picture needs no
 * width of its own.
 *
 * @param from first day
 * @param to last day, not before {@code from}
 */
record DateAxis(LocalDate from, LocalDate to) {

	DateAxis {
		if (to.isBefore(from)) {
			throw new IllegalArgumentException("axis ends on %s, before it begins on %s".formatted(to, from));
		}
	}

	long days() {
		return ChronoUnit.DAYS.between(this.from, this.to) + 1;
	}

	/** Where a day begins, percent; days outside are put at the edge. */
	double start(LocalDate day) {
		double percent = 100.0 * ChronoUnit.DAYS.between(this.from, day) / days();
		return Math.max(0, Math.min(100, percent));
	}

	/** Where a day ends, percent. */
	double end(LocalDate day) {
		return start(day.plusDays(1));
	}

	boolean contains(LocalDate day) {
		return !day.isBefore(this.from) && !day.isAfter(this.to);
	}

	/** The first days of the months that begin on the axis. */
	List<LocalDate> months() {
		List<LocalDate> months = new ArrayList<>();
		LocalDate month = this.from.withDayOfMonth(1);
		for (LocalDate day = month; !day.isAfter(this.to); day = day.plusMonths(1)) {
			if (contains(day)) {
				months.add(day);
			}
		}
		return months;
	}

}
