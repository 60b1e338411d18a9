package org.leafward.workdays.core.plan;

import java.util.Set;

/**
 * Somebody who is expected on a day.
 *
 * @param id the same person on every day; a helper without a name has an identifier of
 * their own too, as a crew is counted by them
 * @param skills what they may do that not everybody may, for example "saw"
 */
public record CrewMember(String id, Set<String> skills) {

	public CrewMember {
		skills = Set.copyOf(skills);
	}

}
