package org.leafward.care.core.rule;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What holds where practice or law differs.
 *
 * @param where the places
 * @param from first day there; null is as elsewhere
 * @param to last day there; null is as elsewhere
 * @param leaveOut whether there is no such task there
 * @param why what the difference rests on
 * @param sources where it comes from; may be empty
 */
public record Variant(Where where, @Nullable Anchor from, @Nullable Anchor to, boolean leaveOut, String why,
		List<Source> sources) {

	public Variant {
		sources = List.copyOf(sources);
		if (leaveOut == (from != null || to != null)) {
			throw new IllegalArgumentException("a variant gives other ends, or leaves the task out");
		}
	}

}
