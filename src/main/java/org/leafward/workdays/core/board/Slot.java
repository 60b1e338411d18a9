package org.leafward.workdays.core.board;

import java.util.List;
import org.leafward.workdays.core.plan.CrewMember;

/**
 * A team on a day: what tasks are put into.
 *
 * @param number its place on the board
 * @param date number of its date
 * @param team 0 and up on its date
 * @param members who is in it
 * @param minutes how long each of them works and travels
 * @param shared who can share which work
 */
public record Slot(int number, int date, int team, List<CrewMember> members, int minutes, SkillMinutes shared) {

	/**
	 * Heads.
	 * @return one at least
	 */
	public int people() {
		return this.members.size();
	}

	/**
	 * By how many person-minutes a load is too much.
	 * @param load effort by kind, person-minutes
	 * @param travel minutes on the way
	 * @return 0 when all of it can be done
	 */
	public int overload(int[] load, int travel) {
		int over = Math.max(0, travel - this.minutes);
		int left = Math.max(0, this.minutes - travel);
		for (int i = 0; i < this.shared.kinds().length; i++) {
			int effort = 0;
			for (int set = this.shared.kinds()[i]; set != 0; set &= set - 1) {
				effort += load[Integer.numberOfTrailingZeros(set)];
			}
			over = Math.max(over, effort - this.shared.people()[i] * left);
		}
		return over;
	}

}
