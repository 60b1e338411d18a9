package org.leafward.workdays.core.board;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.leafward.workdays.core.plan.CrewMember;

/**
 * How many people of a team can share which work. Tasks are told apart by what they need
 * ("kinds": distinct sets of skills, numbered). Minutes of people can be dealt out to the
 * tasks of a day exactly when for each set of kinds the effort of these is at most the
 * minutes of all who can do any of them: the theorem of Hall for a flow from people to
 * kinds (maximum flow equals minimum cut). Of the sets only those are kept to which no
 * kind can be added without another person.
 *
 * @param kinds sets of kinds as bits
 * @param people how many can do any of them, in the same order
 */
public record SkillMinutes(int[] kinds, int[] people) {

	/** Most kinds that are told apart. */
	public static final int KINDS = 12;

	/**
	 * The sets of a team.
	 * @param team its members
	 * @param needs what each kind needs, {@link #KINDS} at most
	 * @return the sets, that of all kinds that somebody can do among them
	 */
	static SkillMinutes of(List<CrewMember> team, List<Set<String>> needs) {
		int[] can = new int[team.size()];
		int possible = 0;
		for (int person = 0; person < can.length; person++) {
			for (int kind = 0; kind < needs.size(); kind++) {
				can[person] |= team.get(person).skills().containsAll(needs.get(kind)) ? 1 << kind : 0;
			}
			possible |= can[person];
		}
		List<int[]> kept = new ArrayList<>();
		for (int set = 1; set < 1 << needs.size(); set++) {
			if ((set & ~possible) == 0 && set == closure(set, can, possible)) {
				kept.add(new int[] { set, able(set, can) });
			}
		}
		return new SkillMinutes(kept.stream().mapToInt((one) -> one[0]).toArray(),
				kept.stream().mapToInt((one) -> one[1]).toArray());
	}

	private static int able(int set, int[] can) {
		int able = 0;
		for (int one : can) {
			able += ((one & set) != 0) ? 1 : 0;
		}
		return able;
	}

	/** All kinds that only people do who can do one of the set. */
	private static int closure(int set, int[] can, int possible) {
		int closed = possible;
		for (int one : can) {
			closed &= ((one & set) != 0) ? -1 : ~one;
		}
		return closed;
	}

	/**
	 * Whether anybody can do a kind.
	 * @param kind number of the kind
	 * @return whether a set has it
	 */
	boolean knows(int kind) {
		for (int set : this.kinds) {
			if ((set >> kind & 1) != 0) {
				return true;
			}
		}
		return false;
	}

	/**
	 * How many people can do a kind.
	 * @param kind number of the kind
	 * @return people of the smallest set with it; 0 when there is none
	 */
	int ableFor(int kind) {
		int fewest = Integer.MAX_VALUE;
		for (int i = 0; i < this.kinds.length; i++) {
			fewest = ((this.kinds[i] >> kind & 1) != 0) ? Math.min(fewest, this.people[i]) : fewest;
		}
		return (fewest == Integer.MAX_VALUE) ? 0 : fewest;
	}

}
