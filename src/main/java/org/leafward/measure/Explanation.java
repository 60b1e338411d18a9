package org.leafward.measure;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One step of how a date or an amount came about, with the steps below it. Every computed
 * date carries one.
 *
 * @param label what the step is, in a few words
 * @param value what came out, with its unit
 * @param detail a sentence more, where one helps
 * @param source where the figure or the method comes from
 * @param steps the steps that led to this one
 */
public record Explanation(String label, String value, @Nullable String detail, @Nullable String source,
		List<Explanation> steps) {

	public Explanation {
		steps = List.copyOf(steps);
	}

	/**
	 * A step without steps below it.
	 * @param label what the step is
	 * @param value what came out
	 * @return the step
	 */
	public static Explanation of(String label, String value) {
		return new Explanation(label, value, null, null, List.of());
	}

	public Explanation withDetail(String text) {
		return new Explanation(this.label, this.value, text, this.source, this.steps);
	}

	public Explanation withSource(@Nullable String text) {
		return new Explanation(this.label, this.value, this.detail, text, this.steps);
	}

	public Explanation withSteps(List<Explanation> below) {
		return new Explanation(this.label, this.value, this.detail, this.source, below);
	}

}
