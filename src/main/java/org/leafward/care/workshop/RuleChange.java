package org.leafward.care.workshop;

import java.util.List;
import org.leafward.care.PackVersion;
import org.leafward.care.core.diff.LineDiff;

/**
 * A version in which a rule changed.
 *
 * @param version the version
 * @param lines what changed in the rule; empty in the first version that is known
 */
public record RuleChange(PackVersion version, List<LineDiff.Line> lines) {

	public RuleChange {
		lines = List.copyOf(lines);
	}

}
