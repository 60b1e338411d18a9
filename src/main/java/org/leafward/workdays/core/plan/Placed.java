package org.leafward.workdays.core.plan;

/**
 * A task that has its day.
 *
 * @param task identifier
 * @param why a sentence
 */
public record Placed(String task, String why) {
}
