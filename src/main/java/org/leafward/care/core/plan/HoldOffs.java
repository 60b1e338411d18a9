package org.leafward.care.core.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leafward.care.TaskKind;
import org.leafward.care.core.rule.Rule;
import org.leafward.care.core.rule.Span;
import org.leafward.measure.DayWindow;
import org.leafward.measure.DayWords;
import org.leafward.measure.Explanation;

/** The hold-offs of one subject. They go before what asks for the same work. */
final class HoldOffs {

	private static final Comparator<Draft> ORDER = Comparator.comparing((Draft draft) -> draft.window().from())
		.thenComparing((draft) -> draft.rule().number());

	private final List<Draft> all = new ArrayList<>();

	private long works;

	HoldOffs(List<Draft> drafts) {
		for (Draft draft : drafts) {
			if (draft.rule().rule().kind() == TaskKind.HOLD_OFF) {
				this.all.add(draft);
				this.works |= bit(draft);
			}
		}
		this.all.sort(ORDER);
	}

	private static long bit(Draft draft) {
		return 1L << draft.rule().rule().work().ordinal();
	}

	/**
	 * What is left of a do.
	 * @param draft any draft
	 * @return the draft itself when no hold-off reaches it; without days when nothing is
	 * left, with the hold-off that took the last
	 */
	Left leave(Draft draft) {
		Rule rule = draft.rule().rule();
		if (rule.kind() != TaskKind.DO || (this.works & bit(draft)) == 0) {
			return new Left(draft, null);
		}
		Draft left = draft;
		for (Draft hold : this.all) {
			if (hold.rule().rule().work() != rule.work() || !hold.window().overlaps(left.window())) {
				continue;
			}
			if (rule.despite().contains(hold.rule().reference())) {
				left = left.with(left.window(), hold.basis(), () -> step("Goes before a hold-off", hold,
						"This is an exception from it that the rule names."));
				continue;
			}
			DayWindow rest = rest(left.window(), hold.window());
			if (rest == null || (rule.timing() instanceof Span span && rest.days() < span.shortestDays())) {
				return new Left(null, hold);
			}
			left = left.with(rest, hold.basis(),
					() -> step("Kept out of a hold-off", hold, "The longer part of the days outside it is left."));
		}
		return new Left(left, null);
	}

	/** Whether a single day of a do lies in a hold-off that goes before it. */
	boolean forbid(Draft draft, LocalDate day) {
		Rule rule = draft.rule().rule();
		return this.all.stream()
			.anyMatch((hold) -> hold.rule().rule().work() == rule.work() && hold.window().contains(day)
					&& !rule.despite().contains(hold.rule().reference()));
	}

	private static Explanation step(String label, Draft hold, String detail) {
		return Explanation.of(label, DayWords.of(hold.window()))
			.withDetail("%s (%s) asks for no %s in these days. %s".formatted(hold.rule().rule().title(),
					hold.rule().reference(), hold.rule().rule().work().words(), detail));
	}

	private static @Nullable DayWindow rest(DayWindow window, DayWindow hold) {
		DayWindow before = window.from().isBefore(hold.from()) ? new DayWindow(window.from(), hold.from().minusDays(1))
				: null;
		DayWindow after = window.to().isAfter(hold.to()) ? new DayWindow(hold.to().plusDays(1), window.to()) : null;
		if (before == null || after == null) {
			return (before != null) ? before : after;
		}
		return (after.days() > before.days()) ? after : before;
	}

	/**
	 * What is left of a draft.
	 *
	 * @param draft the draft with the days that are left; null when there are none
	 * @param hold the hold-off that took the last of them
	 */
	record Left(@Nullable Draft draft, @Nullable Draft hold) {

		String why() {
			Draft taken = this.hold;
			return (taken == null) ? "" : "The hold-off “%s” (%s) leaves no day for it, from %s."
				.formatted(taken.rule().rule().title(), taken.rule().reference(), DayWords.of(taken.window()));
		}

	}

}
