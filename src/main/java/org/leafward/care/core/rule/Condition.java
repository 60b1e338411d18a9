package org.leafward.care.core.rule;

import org.jspecify.annotations.Nullable;

/**
 * A state of the weather that a rule asks about.
 *
 * @param state its code, as in the rule pack schema
 * @param bound the bound as written, for example {@code 34F}, {@code 3in} or {@code D1};
 * null when the state needs none
 * @param days the number of days, 0 when the state needs none
 */
public record Condition(String state, @Nullable String bound, int days) {
}
