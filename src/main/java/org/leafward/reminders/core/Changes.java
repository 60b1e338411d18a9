package org.leafward.reminders.core;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.leafward.care.TaskId;
import org.leafward.reminders.ReminderState;

/**
 * What to do to the reminders on record so that they match the plan. A task that was
 * reminded of is not reminded of again unless its first day moved by more than
 * {@link #SAME_DAYS} days: less than that, the person already knows.
 *
 * @param add reminders to make
 * @param set pending or withdrawn rows that become pending with new dates
 * @param withdraw pending rows whose task went away
 * @param expire pending rows that came too late
 */
public record Changes(List<Wanted> add, Map<UUID, Wanted> set, List<UUID> withdraw, List<UUID> expire) {

	/** How far, in days, a task may move and still be the one that was reminded of. */
	public static final int SAME_DAYS = 3;

	/** States in which the person was told, is being told or can't be told. */
	private static final Set<ReminderState> SPOKEN = EnumSet.of(ReminderState.CLAIMED, ReminderState.SENT,
			ReminderState.KEPT, ReminderState.FAILED);

	/**
	 * Compares the plan with the record.
	 * @param wanted reminders that the plan and the wishes of one person call for
	 * @param known the person's rows: all pending ones, and all with a first day within
	 * {@link #SAME_DAYS} days of a wanted one
	 * @param planned tasks that are still to be done; what the person asked to be told
	 * again stands as long as its task is among them
	 * @param today the day where the person is
	 * @return nothing to do when they match
	 */
	public static Changes between(List<Wanted> wanted, List<Known> known, Set<TaskId> planned, LocalDate today) {
		Changes changes = new Changes(new ArrayList<>(), new LinkedHashMap<>(), new ArrayList<>(), new ArrayList<>());
		Map<String, List<Known>> byLine = known.stream()
			.filter((row) -> !row.advisory() && !(row.later() && row.task().filter(planned::contains).isPresent()))
			.collect(Collectors.groupingBy(Known::line));
		for (Wanted one : wanted) {
			List<Known> rows = byLine.remove(one.line());
			changes.match(one, (rows != null) ? rows : List.of());
		}
		LocalDate oldest = DueTasks.firstDays(today).from();
		byLine.values().stream().flatMap(List::stream).filter(Changes::pending).forEach((row) -> {
			List<UUID> end = row.firstDay().isBefore(oldest) ? changes.expire : changes.withdraw;
			end.add(row.id());
		});
		return changes;
	}

	/**
	 * Whether the person was told.
	 * @param state where a reminder stands
	 * @return true when it was sent, or is kept to be read
	 */
	public static boolean told(ReminderState state) {
		return state == ReminderState.SENT || state == ReminderState.KEPT;
	}

	/**
	 * Whether the record matches the plan.
	 * @return true when there is nothing to do
	 */
	public boolean none() {
		return this.add.isEmpty() && this.set.isEmpty() && this.withdraw.isEmpty() && this.expire.isEmpty();
	}

	private void match(Wanted one, List<Known> rows) {
		List<Known> pending = rows.stream().filter(Changes::pending).toList();
		if (rows.stream().anyMatch((row) -> SPOKEN.contains(row.state()) && near(row, one))) {
			pending.forEach((row) -> this.withdraw.add(row.id()));
			return;
		}
		// A row for this very day keeps its key, so it is the one to use again.
		Known use = rows.stream()
			.filter((row) -> row.firstDay().equals(one.firstDay()))
			.findFirst()
			.or(() -> pending.stream().findFirst())
			.orElse(null);
		pending.stream().filter((row) -> row != use).forEach((row) -> this.withdraw.add(row.id()));
		if (use == null) {
			this.add.add(one);
		}
		else if (use.state() == ReminderState.WITHDRAWN || (pending(use) && differs(use, one))) {
			this.set.put(use.id(), one);
		}
	}

	private static boolean pending(Known row) {
		return row.state() == ReminderState.PENDING;
	}

	private static boolean near(Known row, Wanted one) {
		return Math.abs(ChronoUnit.DAYS.between(row.firstDay(), one.firstDay())) <= SAME_DAYS;
	}

	private static boolean differs(Known row, Wanted one) {
		// A change is due the morning after it came; it doesn't move on.
		boolean due = !row.change() && (!row.dueAt().equals(one.dueAt()) || !row.bundle().equals(one.bundle()));
		return !row.firstDay().equals(one.firstDay()) || due;
	}

}
