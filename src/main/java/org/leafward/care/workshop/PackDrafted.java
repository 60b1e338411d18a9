package org.leafward.care.workshop;

import java.util.List;
import org.leafward.care.RulePacks;
import org.leafward.care.core.check.Contradiction;

/**
 * A draft that can be used.
 *
 * @param pack id of the pack
 * @param version the version that it would get
 * @param content the pack as it would be stored
 * @param packs all packs as they would be
 * @param changed rules that it adds, changes or takes out
 * @param contradictions tasks that would newly fall into hold-offs
 */
public record PackDrafted(String pack, int version, String content, RulePacks packs, List<String> changed,
		List<Contradiction> contradictions) {

	public PackDrafted {
		changed = List.copyOf(changed);
		contradictions = List.copyOf(contradictions);
	}

}
