package org.leafward.care;

import java.time.LocalDate;
import org.leafward.accounts.PersonId;

/**
 * A task as far as one must know it to remind of it.
 *
 * @param id the task
 * @param person whose site it is
 * @param kind what is asked for
 * @param from first day
 * @param to last day
 * @param firstOfRamp whether it is the first day of a ramp
 * @param held whether it is a day of a ramp on which the plants wait for weather
 * @param night whether it is about one night that needs a cover
 * @param state where it stands
 */
public record Beginning(TaskId id, PersonId person, TaskKind kind, LocalDate from, LocalDate to, boolean firstOfRamp,
		boolean held, boolean night, TaskState state) {
}
