package org.leafward.advisories.core.cases;

import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.leafward.advisories.NearCase;

/**
 * Finds cases with the same likely cause near each other. A key never is certain, so it
 * takes several; the numbers are our choice.
 */
public final class CaseClusters {

	/** Fewest cases. */
	public static final int FEWEST = 3;

	/** A case belongs to others within so many kilometres. */
	public static final double KILOMETRES = 30;

	/** Older cases don't count, days. */
	public static final int DAYS = 30;

	private CaseClusters() {
	}

	/**
	 * Cases that belong together.
	 *
	 * @param cases at least {@value #FEWEST}, of one cause, by day
	 */
	public record Cluster(List<NearCase> cases) {

		public Cluster {
			cases = List.copyOf(cases);
		}

		/**
		 * The cause.
		 * @return its code
		 */
		public String cause() {
			return this.cases.get(0).cause();
		}

	}

	/**
	 * Finds the clusters.
	 * @param cases cases of any cause; one that is there twice counts once
	 * @param today cases after it don't count
	 * @return by cause, then by their first case
	 */
	public static List<Cluster> of(Collection<NearCase> cases, LocalDate today) {
		Map<String, NearCase> once = new LinkedHashMap<>();
		cases.stream()
			.filter((one) -> !one.seenOn().isAfter(today) && !one.seenOn().isBefore(today.minusDays(DAYS)))
			.sorted(Comparator.comparing(NearCase::seenOn).thenComparing(NearCase::id))
			.forEach((one) -> once.putIfAbsent(one.id(), one));
		Map<String, List<NearCase>> byCause = once.values()
			.stream()
			.collect(Collectors.groupingBy(NearCase::cause, TreeMap::new, Collectors.toList()));
		List<Cluster> clusters = new ArrayList<>();
		byCause.values().forEach((of) -> clusters(new ArrayList<>(of), clusters));
		return clusters;
	}

	private static void clusters(List<NearCase> left, List<Cluster> clusters) {
		while (!left.isEmpty()) {
			List<NearCase> together = new ArrayList<>();
			Deque<NearCase> next = new ArrayDeque<>(List.of(left.remove(0)));
			while (!next.isEmpty()) {
				NearCase one = next.remove();
				together.add(one);
				List<NearCase> near = left.stream()
					.filter((other) -> one.at().distanceKilometres(other.at()) <= KILOMETRES)
					.toList();
				left.removeAll(near);
				next.addAll(near);
			}
			if (together.size() >= FEWEST) {
				together.sort(Comparator.comparing(NearCase::seenOn).thenComparing(NearCase::id));
				clusters.add(new Cluster(together));
			}
		}
	}

}
