package org.leafward.care.core.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.leafward.care.core.rule.Ramp;
import org.leafward.measure.DayWindow;
import org.leafward.measure.Explanation;

/**
 * The first and last day of a rule in a season, before the planting date and hold-offs
 * are looked at.
 *
 * @param window the days; null when there are none
 * @param missing why an end has no date; null when both have one, or when there is
 * nothing to say
 * @param basis a number that changes when the steps would
 * @param steps how the ends came about
 */
record Ends(@Nullable DayWindow window, @Nullable String missing, long basis, Supplier<List<Explanation>> steps) {

	/** More turns than two years with one every four days have. */
	private static final int MOST_TURNS = 200;

	static Ends between(AnchorDate from, AnchorDate to) {
		LocalDate first = from.date();
		LocalDate last = to.date();
		if (first == null || last == null) {
			return none((first == null) ? from : to);
		}
		return new Ends(last.isBefore(first) ? null : new DayWindow(first, last), null,
				Basis.mix(from.basis(), to.basis()),
				() -> List.of(from.words().apply("Begins"), to.words().apply("Ends")));
	}

	static Ends of(Ramp ramp, AnchorDate anchor) {
		LocalDate day = anchor.date();
		if (day == null) {
			return none(anchor);
		}
		int days = ramp.days();
		LocalDate first = ramp.endsAtAnchor() ? day.minusDays(days - 1L) : day;
		return new Ends(new DayWindow(first, first.plusDays(days - 1L)), null, anchor.basis(), () -> List
			.of(anchor.words().apply("Hangs on"), Explanation.of("Length of the ramp", days + " days")
				.withDetail(
						ramp.endsAtAnchor() ? "Its last day is the day above." : "Its first day is the day above.")));
	}

	private static Ends none(AnchorDate undated) {
		return new Ends(null, undated.missing(), undated.basis(), List::of);
	}

	/**
	 * Cuts days into turns without gap or overlap.
	 * @param whole the days
	 * @param everyDays length of a turn
	 * @return a last turn of less than half the length joins the one before, since it
	 * would ask again right after it
	 */
	static List<DayWindow> turns(DayWindow whole, int everyDays) {
		List<DayWindow> turns = new ArrayList<>();
		LocalDate last = whole.to();
		for (LocalDate day = whole.from(); !day.isAfter(last) && turns.size() < MOST_TURNS;) {
			LocalDate end = day.plusDays(everyDays - 1L);
			if (!end.plusDays(everyDays / 2).isBefore(last)) {
				end = last;
			}
			turns.add(new DayWindow(day, end));
			day = end.plusDays(1);
		}
		return turns;
	}

}
