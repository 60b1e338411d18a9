package org.leafward.workdays;

import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;

/**
 * A published workday as one member has it.
 *
 * @param person who
 * @param workday the workday
 * @param state how they stand to it; null when they never answered
 * @param invited whether an invitation went to them by mail, so that their calendar shows
 * it already
 */
public record PersonWorkday(PersonId person, Workday workday, @Nullable SignUpState state, boolean invited) {
}
