package org.leafward.lookalikes.core;

import org.jspecify.annotations.Nullable;

/**
 * One thing that speaks for or against a cause.
 *
 * @param words what it is, a few words or the record's sentence
 * @param evidence the evidence; null when a record line speaks for causes directly
 * @param times how many times as likely it makes the cause beside all the others
 * together; above 1 speaks for, below 1 against
 * @param strength how much that is, in words
 * @param line the line of the record that says so; null when the gardener did
 */
public record Reason(String words, @Nullable String evidence, double times, Strength strength,
		@Nullable RecordLine line) {

	/** How much a reason weighs. */
	public enum Strength {

		/** At least threefold. */
		STRONG("strongly"),

		/** At least by half. */
		FAIR("fairly"),

		/** Less. */
		SLIGHT("slightly");

		private final String words;

		Strength(String words) {
			this.words = words;
		}

		public String words() {
			return this.words;
		}

		static Strength of(double times) {
			double much = (times >= 1) ? times : 1 / times;
			return (much >= 3) ? STRONG : (much >= 1.5) ? FAIR : SLIGHT;
		}

	}

}
