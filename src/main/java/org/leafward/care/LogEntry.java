package org.leafward.care;

import java.time.Instant;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.care.core.rule.Work;
import org.leafward.register.PlantingId;
import org.leafward.register.SiteId;

/**
 * Work that somebody did.
 *
 * @param id identifier; a watering that entered the water balance has the same one there
 * @param site where
 * @param planting what it was done for; null for the site as a whole
 * @param task the task that it was done for; null when it was done on one's own account
 * @param work the kind of work
 * @param day on which, in the time zone of the site
 * @param by who logged it; null when an operator did
 * @param amount how much; null when nobody measured
 * @param unit what the amount is in; null without an amount
 * @param note may be empty
 * @param enteredAt when it was logged
 * @param insideHoldOff the hold-off that asked for none of this work on that day; null
 * when none did
 * @param holdOff title of that hold-off
 */
public record LogEntry(LogId id, SiteId site, @Nullable PlantingId planting, @Nullable TaskId task, Work work,
		LocalDate day, @Nullable PersonId by, @Nullable Double amount, @Nullable AmountUnit unit, String note,
		Instant enteredAt, @Nullable TaskId insideHoldOff, @Nullable String holdOff) {
}
