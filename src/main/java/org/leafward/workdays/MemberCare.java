package org.leafward.workdays;

import java.util.Map;
import org.leafward.accounts.PersonId;
import org.leafward.workdays.store.GroupTable;
import org.springframework.stereotype.Service;

/**
 * Whom to call when something happens to a member: for those who lead, and for the member
 * themselves. Who asks is checked by the caller.
 */
@Service
public class MemberCare {

	private final GroupTable table;

	MemberCare(GroupTable table) {
		this.table = table;
	}

	/**
	 * Whom to call, as far as members told.
	 * @param group which group
	 * @return words by member
	 */
	public Map<PersonId, String> emergencies(GroupId group) {
		return this.table.emergencies(group);
	}

}
