package org.leafward.lookalikes.core;

import org.jspecify.annotations.Nullable;
import org.leafward.care.core.rule.Work;

/**
 * Something to do, or to leave alone, once a cause is likely.
 *
 * @param id unique within its cause, lower case with hyphens
 * @param title a few words
 * @param work the kind of work, for the care log; a hold-off forbids it
 * @param text what to do and why, for the gardener; never names a pesticide
 * @param holdOff whether it says what to leave alone for that time
 * @param span when
 * @param rule {@code pack/rule} of the care rule that asks for the same each year; null
 * when there is none
 * @param caution where the work can hurt someone, what to mind; null when it can't
 */
public record Remedy(String id, String title, Work work, String text, boolean holdOff, Span span, @Nullable String rule,
		@Nullable String caution) {
}
