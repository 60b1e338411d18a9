package org.leafward.climate;

import org.jspecify.annotations.Nullable;
import org.leafward.measure.Explanation;

/**
 * A state of the weather at a place on a day, that care waits for or is put off by.
 *
 * @param code name of the state, or the question as it was asked
 * @param question what was asked
 * @param holds whether it holds; null when the figures for it are not known, which is
 * never taken for a no
 * @param explanation the figures and the thresholds that led to the answer
 */
public record WeatherState(String code, StateQuestion question, @Nullable Boolean holds, Explanation explanation) {
}
