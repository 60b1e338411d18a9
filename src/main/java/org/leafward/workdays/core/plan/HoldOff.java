package org.leafward.workdays.core.plan;

import org.leafward.measure.DayWindow;

/**
 * Days on which a task must not be done.
 *
 * @param window the days
 * @param because why, in a few words without a full stop, for example "oaks are open to
 * wilt"
 */
public record HoldOff(DayWindow window, String because) {
}
