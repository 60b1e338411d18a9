package org.leafward.workdays.core.board;

import java.time.LocalDate;
import org.leafward.measure.DayWords;
import org.leafward.workdays.core.plan.CrewTask;
import org.leafward.workdays.core.plan.Unplaced;
import org.leafward.workdays.core.plan.Unplaced.Cause;

/** Why a task has no day: the smallest thing that would have to change. */
final class WhyNot {

	private final Standing standing;

	private final Board board;

	WhyNot(Standing standing) {
		this.standing = standing;
		this.board = standing.board();
	}

	Unplaced of(int task) {
		Admission admission = this.board.admission(task);
		Cause cause = admission.cause();
		return (cause != null) ? never(task, admission, cause) : crowded(task, admission);
	}

	private Unplaced never(int task, Admission admission, Cause cause) {
		CrewTask one = this.board.task(task);
		String window = DayWords.of(one.window());
		LocalDate day = admission.day();
		String on = (day != null) ? DayWords.of(day) : "any day";
		String pinned = (one.pinned() != null) ? "It is pinned to %s, but ".formatted(DayWords.of(one.pinned())) : "";
		String why = switch (cause) {
			case NO_DATE -> (one.pinned() != null) ? "its window is %s.".formatted(window)
					: "no candidate date lies in its window (%s).%s".formatted(window, nearest(one));
			case HELD_OFF -> "a hold-off covers %s: %s.".formatted(on, admission.detail());
			case WISHES -> (one.pinned() != null) ? "that is no candidate date, or was ruled out."
					: "%s was ruled out for it, and its window (%s) has no other day.".formatted(on, window);
			case CLOSED -> "the site is closed on %s.".formatted(on);
			case NO_CREW ->
				"no team can go out on %s: too few people are expected, or there is no light.".formatted(on);
			case SKILL -> "nobody who is expected on %s has what it needs: %s.".formatted(on, admission.detail());
			case TOOL -> "the group has no %s.".formatted(admission.detail());
			case TOO_LARGE -> "it takes %d person-minutes, and the largest team on %s has %s. Divide it."
				.formatted(one.personMinutes(), on, admission.detail());
			default -> throw new IllegalStateException("not a cause of one task alone: " + cause);
		};
		return new Unplaced(one.id(), cause, pinned.isEmpty() ? upper(why) : pinned + why);
	}

	private String nearest(CrewTask task) {
		LocalDate best = null;
		for (int date = 0; date < this.board.dates(); date++) {
			LocalDate day = this.board.date(date).day();
			if (best == null || away(task, day) < away(task, best)) {
				best = day;
			}
		}
		return (best == null) ? "" : " The nearest is %s.".formatted(DayWords.of(best));
	}

	private static long away(CrewTask task, LocalDate day) {
		return Math.max(task.window().from().toEpochDay() - day.toEpochDay(),
				day.toEpochDay() - task.window().to().toEpochDay());
	}

	/** A task that some day admits, when it is alone. */
	private Unplaced crowded(int task, Admission admission) {
		CrewTask one = this.board.task(task);
		long over = this.standing.overload();
		int fits = -1;
		int uncalled = -1;
		int freest = -1;
		for (int slot : admission.slots()) {
			int date = this.board.slots().get(slot).date();
			boolean called = this.standing.teamsOut(date) > 0 || this.board.date(date).locked();
			this.standing.put(task, slot);
			boolean room = this.standing.overload() <= over;
			this.standing.put(task, -1);
			fits = (called && room && fits < 0) ? slot : fits;
			uncalled = (!called && uncalled < 0) ? slot : uncalled;
			freest = (called && (freest < 0 || free(slot) > free(freest))) ? slot : freest;
		}
		if (fits >= 0) {
			return new Unplaced(one.id(), Cause.NOT_WORTH_A_DAY,
					"It would fit on %s, but the way there or a further team costs more than it counts."
						.formatted(day(fits)));
		}
		if (uncalled >= 0 && this.standing.called() >= this.board.mostDates()) {
			return new Unplaced(one.id(), Cause.ENOUGH_DAYS,
					"It could be done on %s, but no more than %d days may be called.".formatted(day(uncalled),
							this.board.mostDates()));
		}
		if (uncalled >= 0) {
			return new Unplaced(one.id(), Cause.NOT_WORTH_A_DAY,
					"It could be done on %s, but there is too little other work to call that day.%s"
						.formatted(day(uncalled), full(one, freest)));
		}
		return new Unplaced(one.id(), Cause.FULL,
				"The days in its window are full of work that counts for more or fits better together.%s"
					.formatted(full(one, freest)));
	}

	private String full(CrewTask task, int freest) {
		if (freest < 0) {
			return "";
		}
		return " It takes %d person-minutes; the freest team, on %s, has %d left, before the way."
			.formatted(task.personMinutes(), day(freest), Math.max(0, free(freest)));
	}

	private int free(int slot) {
		Slot team = this.board.slots().get(slot);
		return team.people() * (team.minutes() - this.standing.travel(slot)) - this.standing.effort(slot);
	}

	private String day(int slot) {
		return DayWords.of(this.board.date(this.board.slots().get(slot).date()).day());
	}

	private static String upper(String sentence) {
		return Character.toUpperCase(sentence.charAt(0)) + sentence.substring(1);
	}

}
