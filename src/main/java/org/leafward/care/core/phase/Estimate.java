package org.leafward.care.core.phase;

import java.util.List;
import org.leafward.care.core.rule.Anchor;
import org.leafward.care.core.rule.Concern;
import org.leafward.care.core.rule.Source;

/**
 * When a phase is expected.
 *
 * @param concern the plants it is for
 * @param at the day; may hang on another phase, but never in a circle
 * @param sources where it comes from, at least one
 */
public record Estimate(Concern concern, Anchor at, List<Source> sources) {

	public Estimate {
		sources = List.copyOf(sources);
	}

}
