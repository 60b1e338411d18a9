package org.leafward.workdays;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeMap;
import org.leafward.workdays.core.plan.CrewDate;
import org.leafward.workdays.core.plan.CrewMember;
import org.leafward.workdays.core.plan.CrewProblem;
import org.leafward.workdays.core.plan.CrewSite;
import org.leafward.workdays.core.plan.CrewTask;
import org.leafward.workdays.core.plan.PlanCosts;

/**
 * What a plan is worth and whether it can be carried out, worked out anew from the words
 * of the problem: people's minutes are dealt out to tasks one by one (maximum flow by
 * augmenting paths), ways are tried in every order. Shares no code with the planner but
 * the split of a crew into teams, which is given.
 */
public final class NaiveWorth {

	private final CrewProblem problem;

	private final Map<String, CrewSite> sites = new TreeMap<>();

	private final Map<LocalDate, CrewDate> dates = new TreeMap<>();

	/** Worth of plans of one problem. */
	public NaiveWorth(CrewProblem problem) {
		this.problem = problem;
		problem.sites().forEach((site) -> this.sites.put(site.id(), site));
		problem.dates().forEach((date) -> this.dates.put(date.day(), date));
	}

	/** A team and what it does. */
	public record Outing(LocalDate day, List<CrewMember> team, List<CrewTask> tasks) {
	}

	/** Points of the plan; empty when it can't be carried out. */
	public OptionalLong points(List<Outing> outings) {
		PlanCosts costs = this.problem.rules().costs();
		long points = 0;
		Map<String, LocalDate> placed = new TreeMap<>();
		Set<LocalDate> called = new HashSet<>();
		this.dates.values().stream().filter(CrewDate::locked).forEach((date) -> called.add(date.day()));
		int locked = called.size();
		Map<String, Integer> toolTeams = new TreeMap<>();
		for (Outing outing : outings) {
			if (outing.tasks().isEmpty()) {
				continue;
			}
			Optional<String> broken = broken(outing);
			if (broken.isPresent()) {
				return OptionalLong.empty();
			}
			if (called.add(outing.day())) {
				points -= costs.workday()
						+ (this.problem.before().isEmpty() || this.problem.before().containsValue(outing.day()) ? 0
								: costs.newDay());
			}
			points -= costs.team() + (long) costs.travelMinute() * way(outing);
			Set<String> tools = new HashSet<>();
			for (CrewTask task : outing.tasks()) {
				points += 10L * task.importance();
				placed.put(task.id(), outing.day());
				tools.addAll(task.tools());
			}
			for (String tool : tools) {
				int teams = toolTeams.merge(outing.day() + tool, 1, Integer::sum);
				if (teams > this.problem.rules().tools().getOrDefault(tool, 99)) {
					return OptionalLong.empty();
				}
			}
		}
		if (called.size() > Math.max(locked, this.problem.rules().mostWorkdays())) {
			return OptionalLong.empty();
		}
		for (CrewTask task : this.problem.tasks()) {
			LocalDate before = this.problem.before().get(task.id());
			points -= (before != null && this.dates.containsKey(before) && !before.equals(placed.get(task.id())))
					? costs.moved() : 0;
		}
		return OptionalLong.of(points);
	}

	/** What a team can't or mustn't do; empty when all is well. */
	public Optional<String> broken(Outing outing) {
		CrewDate date = this.dates.get(outing.day());
		for (CrewTask task : outing.tasks()) {
			if (!task.window().contains(outing.day())) {
				return Optional.of("%s outside its window on %s".formatted(task.title(), outing.day()));
			}
			if (task.holdOffs().stream().anyMatch((held) -> held.window().contains(outing.day()))) {
				return Optional.of("%s in a hold-off on %s".formatted(task.title(), outing.day()));
			}
			if (task.notOn().contains(outing.day()) || (task.pinned() != null && !task.pinned().equals(outing.day()))) {
				return Optional.of("%s against a wish on %s".formatted(task.title(), outing.day()));
			}
			if (this.sites.get(task.site()).closed().contains(outing.day())) {
				return Optional.of("%s at a closed site on %s".formatted(task.title(), outing.day()));
			}
			if (task.tools().stream().anyMatch((tool) -> this.problem.rules().tools().getOrDefault(tool, 1) < 1)) {
				return Optional.of("%s without its tools".formatted(task.title()));
			}
		}
		if (sitesOf(outing).size() > this.problem.rules().mostSites()) {
			return Optional.of("too many sites on " + outing.day());
		}
		for (String skill : this.problem.rules().everyTeam()) {
			if (outing.team().stream().noneMatch((one) -> one.skills().contains(skill))) {
				return Optional.of("a team without %s on %s".formatted(skill, outing.day()));
			}
		}
		LocalTime from = this.problem.rules().begins();
		LocalTime to = from.plusMinutes(this.problem.rules().minutes());
		from = from.isBefore(date.sunrise()) ? date.sunrise() : from;
		to = to.isAfter(date.sunset()) ? date.sunset() : to;
		int minutes = (int) Duration.between(from, to).toMinutes() - way(outing);
		return (minutes > 0 && dealt(outing, minutes)) ? Optional.empty()
				: Optional.of("too few minutes on %s".formatted(outing.day()));
	}

	private List<CrewSite> sitesOf(Outing outing) {
		return outing.tasks().stream().map(CrewTask::site).distinct().map(this.sites::get).toList();
	}

	private int way(Outing outing) {
		return shortest(null, sitesOf(outing));
	}

	private int shortest(CrewSite from, List<CrewSite> left) {
		int best = left.isEmpty() ? 0 : Integer.MAX_VALUE;
		for (CrewSite next : left) {
			List<CrewSite> rest = new ArrayList<>(left);
			rest.remove(next);
			int leg = (from == null) ? 0 : this.problem.rules().travel().minutes(from.at(), next.at());
			best = Math.min(best, leg + shortest(next, rest));
		}
		return best;
	}

	/** Whether each task finds its minutes with people who have all of its skills. */
	private static boolean dealt(Outing outing, int minutes) {
		int people = outing.team().size();
		int tasks = outing.tasks().size();
		int sink = people + tasks + 1;
		int[][] room = new int[sink + 1][sink + 1];
		int wanted = 0;
		for (int p = 0; p < people; p++) {
			room[0][p + 1] = minutes;
			for (int t = 0; t < tasks; t++) {
				room[p + 1][people + 1 + t] = outing.team().get(p).skills().containsAll(outing.tasks().get(t).skills())
						? minutes : 0;
			}
		}
		for (int t = 0; t < tasks; t++) {
			room[people + 1 + t][sink] = outing.tasks().get(t).personMinutes();
			wanted += outing.tasks().get(t).personMinutes();
		}
		int flow = 0;
		int more = push(room, 0, sink, Integer.MAX_VALUE, new boolean[sink + 1]);
		while (more > 0) {
			flow += more;
			more = push(room, 0, sink, Integer.MAX_VALUE, new boolean[sink + 1]);
		}
		return flow == wanted;
	}

	private static int push(int[][] room, int at, int sink, int most, boolean[] seen) {
		if (at == sink) {
			return most;
		}
		seen[at] = true;
		for (int next = 0; next < room.length; next++) {
			if (!seen[next] && room[at][next] > 0) {
				int through = push(room, next, sink, Math.min(most, room[at][next]), seen);
				if (through > 0) {
					room[at][next] -= through;
					room[next][at] += through;
					return through;
				}
			}
		}
		return 0;
	}

}
