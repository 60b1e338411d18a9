package org.leafward.care;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * How far replanning is, over all nodes.
 *
 * @param waiting sites that wait to be derived
 * @param oldest since when the longest has been waiting; null when none waits
 * @param failing how many of those that wait failed before
 * @param lastError what went wrong with one of these; null when none failed
 * @param since from when on derived sites are counted
 * @param derived sites derived since then, each counted once
 */
public record ReplanProgress(long waiting, @Nullable Instant oldest, long failing, @Nullable String lastError,
		Instant since, long derived) {
}
