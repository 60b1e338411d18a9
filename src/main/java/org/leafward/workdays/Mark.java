package org.leafward.workdays;

import java.time.Instant;
import java.util.UUID;
import org.leafward.accounts.PersonId;
import org.leafward.care.TaskId;

/**
 * Somebody ticked a task on the day, or took the tick away.
 *
 * @param key made by whoever ticked, so that the same tick counts once however often it
 * comes
 * @param workday on which
 * @param task which
 * @param person who
 * @param done whether it is done
 * @param at when, by the clock of the phone
 */
public record Mark(UUID key, WorkdayId workday, TaskId task, PersonId person, boolean done, Instant at) {
}
