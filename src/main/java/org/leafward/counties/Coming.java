package org.leafward.counties;

import org.leafward.measure.DayWindow;

/**
 * An entry to come.
 *
 * @param window its days
 * @param words its summary, in the language of the calendar
 */
public record Coming(DayWindow window, String words) {
}
