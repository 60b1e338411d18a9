package org.leafward.reminders;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * How much waits.
 *
 * @param due reminders whose time has come and that no node has taken
 * @param claimed reminders that a node is sending
 * @param waiting reminders that failed and wait for their next try
 * @param ahead reminders whose time is to come
 * @param oldest since when the oldest of those due, claimed and waiting ought to have
 * left; null when there is none
 */
public record QueueDepth(long due, long claimed, long waiting, long ahead, @Nullable Instant oldest) {
}
