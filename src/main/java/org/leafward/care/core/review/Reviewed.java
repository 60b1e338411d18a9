package org.leafward.care.core.review;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.leafward.care.CareTask;

/**
 * A task and what became of it.
 *
 * @param task the task
 * @param outcome what became of it; null for what asks for nothing: hold-offs, watches
 * that nobody noted, and tasks that were planned when their days were over
 * @param doneOn the day on which it was done; null unless it was
 */
public record Reviewed(CareTask task, @Nullable Outcome outcome, @Nullable LocalDate doneOn) {
}
