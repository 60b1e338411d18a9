package org.leafward.workdays.core.list;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * What is to be done at a site on a workday: in walking order, with what is to be brought
 * and what can hurt somebody said once at the top.
 *
 * @param site identifier of the site
 * @param name what it is called
 * @param where where it is, as its owner lets it be told
 * @param team which team works there
 * @param lines what is done, in walking order
 * @param tools what is brought, by name
 * @param cautions what can hurt somebody, each once
 * @param sketch where things stand; null where nobody drew it
 */
public record Checklist(String site, String name, String where, int team, List<Line> lines, List<String> tools,
		List<String> cautions, @Nullable Sketch sketch) {

	public Checklist {
		lines = List.copyOf(lines);
		tools = List.copyOf(tools);
		cautions = List.copyOf(cautions);
	}

	/**
	 * A thing to do.
	 *
	 * @param number its number on the list and on the sketch, from 1; things at one plant
	 * share the square, not the number
	 * @param task identifier of the task
	 * @param plant what it is done to
	 * @param title what is done
	 * @param how how it is done
	 * @param amount how much; null where nothing is measured
	 * @param minutes effort in person-minutes
	 * @param skills what those who do it need, in words
	 * @param done whether it is done
	 */
	public record Line(int number, String task, String plant, String title, String how, @Nullable String amount,
			int minutes, List<String> skills, boolean done) {

		public Line {
			skills = List.copyOf(skills);
		}

	}

	/**
	 * A thing to do, before it has its place.
	 *
	 * @param task identifier of the task
	 * @param plant what it is done to
	 * @param place where it comes when one walks through the site; null where nobody said
	 * @param square in which square of the sketch it stands; null where nobody said
	 * @param title what is done
	 * @param how how it is done
	 * @param amount how much
	 * @param minutes effort in person-minutes
	 * @param skills what those who do it need
	 * @param tools what is brought for it
	 * @param caution what can hurt somebody; null for nothing
	 * @param done whether it is done
	 */
	public record Thing(String task, String plant, @Nullable Integer place, @Nullable Integer square, String title,
			String how, @Nullable String amount, int minutes, List<String> skills, List<String> tools,
			@Nullable String caution, boolean done) {
	}

	/**
	 * Makes a list.
	 * @param site identifier of the site
	 * @param name what it is called
	 * @param where where it is
	 * @param team which team works there
	 * @param things what is to be done; what has no place in the walk comes last, by
	 * plant
	 * @return the list
	 */
	public static Checklist of(String site, String name, String where, int team, List<Thing> things) {
		List<Thing> walk = things.stream()
			.sorted(Comparator.comparing((Thing one) -> (one.place() != null) ? one.place() : Integer.MAX_VALUE)
				.thenComparing(Thing::plant)
				.thenComparing(Thing::title)
				.thenComparing(Thing::task))
			.toList();
		List<Line> lines = new ArrayList<>();
		Set<String> cautions = new LinkedHashSet<>();
		Set<String> tools = new TreeSet<>();
		Map<Integer, List<Integer>> squares = new TreeMap<>();
		for (Thing one : walk) {
			int number = lines.size() + 1;
			lines.add(new Line(number, one.task(), one.plant(), one.title(), one.how(), one.amount(), one.minutes(),
					one.skills(), one.done()));
			tools.addAll(one.tools());
			if (one.caution() != null) {
				cautions.add(one.caution());
			}
			if (one.square() != null) {
				squares.computeIfAbsent(one.square(), (square) -> new ArrayList<>()).add(number);
			}
		}
		return new Checklist(site, name, where, team, lines, List.copyOf(tools), List.copyOf(cautions),
				squares.isEmpty() ? null : new Sketch(squares));
	}

	/**
	 * Effort of all that is not done.
	 * @return person-minutes
	 */
	public int minutes() {
		return this.lines.stream().filter((one) -> !one.done()).mapToInt(Line::minutes).sum();
	}

	public long done() {
		return this.lines.stream().filter(Line::done).count();
	}

}
