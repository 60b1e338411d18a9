package org.leafward.care.core.rule;

import java.util.List;
import org.leafward.care.TaskKind;
import org.leafward.care.TaskText;

/**
 * One rule of a pack.
 *
 * @param id unique in its pack, lower case with hyphens
 * @param kind what is asked for; {@link TaskKind#RAMP_DAY} exactly when the timing is a
 * {@link Ramp}
 * @param concern which plantings it is for
 * @param timing when
 * @param text the words
 * @param sources where it comes from, at least one
 */
public record Rule(String id, TaskKind kind, Concern concern, Timing timing, TaskText text, List<Source> sources) {

	public Rule {
		sources = List.copyOf(sources);
		if ((kind == TaskKind.RAMP_DAY) != (timing instanceof Ramp)) {
			throw new IllegalArgumentException("rule %s: a ramp, and only a ramp, has steps".formatted(id));
		}
		if (sources.isEmpty()) {
			throw new IllegalArgumentException("rule %s has no source".formatted(id));
		}
	}

	public String title() {
		return this.text.title();
	}

}
