package org.leafward.reminders.core;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.care.TaskId;
import org.leafward.reminders.ReminderState;

/**
 * A reminder that is already on record.
 *
 * @param id its row
 * @param about the task; null for an outlook
 * @param dedupKey what it was made for, see {@link Wanted#dedupKey()}
 * @param bundle what it goes out with
 * @param firstDay first day of the task when the reminder was made
 * @param dueAt when it is or was due
 * @param state where it stands
 */
public record Known(UUID id, @Nullable UUID about, String dedupKey, String bundle, LocalDate firstDay, Instant dueAt,
		ReminderState state) {

	/** Marks, in a line, what a person asked to be told again. */
	public static final String LATER = ":later:";

	/** Marks, in a line, what tells of a change. */
	public static final String CHANGE = ":change:";

	/** Marks, in a line, what tells of an advisory. */
	public static final String ADVISORY = ":advisory:";

	/**
	 * Whether it tells of an advisory.
	 * @return true for rows that no plan calls for
	 */
	public boolean advisory() {
		return this.dedupKey.contains(ADVISORY);
	}

	/**
	 * Whether a person asked to be told again.
	 * @return true for rows that no plan calls for
	 */
	public boolean later() {
		return this.dedupKey.contains(LATER);
	}

	/**
	 * Whether it tells of a change.
	 * @return true for those
	 */
	public boolean change() {
		return this.dedupKey.contains(CHANGE);
	}

	/**
	 * The channel it goes through.
	 * @return its code
	 */
	public String channel() {
		return this.dedupKey.substring(0, this.dedupKey.indexOf(':'));
	}

	/**
	 * The task it tells.
	 * @return empty when it tells of none or of a change
	 */
	public Optional<TaskId> task() {
		return (this.about == null || change()) ? Optional.empty() : Optional.of(new TaskId(this.about));
	}

	/**
	 * What has one reminder at a time.
	 * @return as {@link Wanted#line()}
	 */
	public String line() {
		return this.dedupKey.substring(0, this.dedupKey.lastIndexOf('@'));
	}

}
