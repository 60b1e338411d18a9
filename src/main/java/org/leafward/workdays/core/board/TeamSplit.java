package org.leafward.workdays.core.board;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.leafward.workdays.core.plan.CrewDate;
import org.leafward.workdays.core.plan.CrewMember;

/**
 * Splits the crew of a day into teams. Skills are spread first, then heads. A team has
 * three people at least, so that one can stay with somebody who is hurt while the third
 * gets help (common practice, no source); a crew of one or two is a team of its own.
 */
public final class TeamSplit {

	private static final int SMALLEST = 3;

	private TeamSplit() {
	}

	/**
	 * The teams of a day.
	 * @param date the day
	 * @param everyTeam skills that each team has to have
	 * @return as many as there can be, up to those that are wanted; none when nobody has
	 * a skill that each team needs
	 */
	public static List<List<CrewMember>> of(CrewDate date, Set<String> everyTeam) {
		int most = Math.min(date.teams(), Math.max(1, date.crew().size() / SMALLEST));
		for (int teams = date.crew().isEmpty() ? 0 : most; teams > 0; teams--) {
			List<List<CrewMember>> split = deal(date.crew(), teams, everyTeam);
			if (split.stream().allMatch((team) -> everyTeam.stream().allMatch((skill) -> holders(team, skill) > 0))) {
				return split;
			}
		}
		return List.of();
	}

	private static List<List<CrewMember>> deal(List<CrewMember> crew, int teams, Set<String> everyTeam) {
		List<List<CrewMember>> split = new ArrayList<>();
		for (int i = 0; i < teams; i++) {
			split.add(new ArrayList<>());
		}
		List<CrewMember> order = new ArrayList<>(crew);
		order.sort(Comparator.<CrewMember>comparingInt((one) -> -needed(one, everyTeam))
			.thenComparingInt((one) -> -one.skills().size())
			.thenComparing(CrewMember::id));
		int largest = (crew.size() + teams - 1) / teams;
		for (CrewMember one : order) {
			split.stream()
				.filter((team) -> team.size() < largest)
				.min(Comparator.<List<CrewMember>>comparingInt((team) -> has(team, one, everyTeam))
					.thenComparingInt((team) -> has(team, one, one.skills()))
					.thenComparingInt(List::size))
				.orElseThrow()
				.add(one);
		}
		split.forEach((team) -> team.sort(Comparator.comparing(CrewMember::id)));
		return split;
	}

	private static int needed(CrewMember one, Set<String> everyTeam) {
		return (int) everyTeam.stream().filter(one.skills()::contains).count();
	}

	/** How much a team already has of the skills that somebody brings. */
	private static int has(List<CrewMember> team, CrewMember one, Set<String> counted) {
		Set<String> brought = new HashSet<>(one.skills());
		brought.retainAll(counted);
		return brought.stream().mapToInt((skill) -> holders(team, skill)).sum();
	}

	private static int holders(List<CrewMember> team, String skill) {
		return (int) team.stream().filter((one) -> one.skills().contains(skill)).count();
	}

}
