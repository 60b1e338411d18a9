package org.leafward.workdays;

import java.util.List;
import java.util.Map;
import org.leafward.accounts.PersonId;
import org.leafward.accounts.PersonalData;
import org.leafward.workdays.store.GroupTable;
import org.leafward.workdays.store.GroupTable.GroupRow;
import org.springframework.stereotype.Component;

/**
 * Gives the places of somebody whose account is deleted to those who wait, before what is
 * kept about them goes. It keeps nothing itself.
 */
@Component
class FreedPlaces implements PersonalData {

	/** Before the rows of the module go. */
	private static final int BEFORE_THE_ROWS = 19;

	private final GroupTable groups;

	private final SignUps signUps;

	FreedPlaces(GroupTable groups, SignUps signUps) {
		this.groups = groups;
		this.signUps = signUps;
	}

	@Override
	public int order() {
		return BEFORE_THE_ROWS;
	}

	@Override
	public Map<String, List<Map<String, Object>>> of(PersonId person) {
		return Map.of();
	}

	@Override
	public void forget(PersonId person) {
		for (GroupRow group : this.groups.ofPerson(person)) {
			this.signUps.withdraw(group.id(), person);
		}
	}

	@Override
	public void handOver(PersonId from, PersonId into) {
		// The rows are handed over where they are kept.
	}

}
