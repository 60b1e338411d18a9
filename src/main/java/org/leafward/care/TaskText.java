package org.leafward.care;

import org.jspecify.annotations.Nullable;

/**
 * The words of a task, plain text.
 *
 * @param title what to do or leave, without the plant's name: at most 60 characters, 85
 * for ramp days, which begin with the number of the day
 * @param what how to do it, in a sentence or two
 * @param amount how much, where the rule says
 * @param why the reason, one sentence
 * @param otherwise what goes wrong without it
 * @param caution what can hurt someone, where something can
 */
public record TaskText(String title, String what, @Nullable String amount, String why, @Nullable String otherwise,
		@Nullable String caution) {
}
