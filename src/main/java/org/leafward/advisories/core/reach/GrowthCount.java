package org.leafward.advisories.core.reach;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.advisories.Growth;
import org.leafward.advisories.PlantChoice;
import org.leafward.plants.Species;

/** Counts sites as they come by. Not for use by several threads. */
public final class GrowthCount {

	private final boolean everything;

	/**
	 * Numbers of the groups of each concerned species by its code; null for the others.
	 */
	private final int[] @Nullable [] groupsOf;

	private final List<String> groups = new ArrayList<>();

	private final long[] groupSites;

	private final long[] groupPlantings;

	private final Map<String, OfCounty> counties = new LinkedHashMap<>();

	private final Set<UUID> people = new HashSet<>();

	private final BitSet seen = new BitSet();

	private long sites;

	private long plantings;

	/** Counts of a county. */
	private static final class OfCounty {

		private final Set<UUID> people = new HashSet<>();

		private long sites;

		private long plantings;

	}

	/**
	 * Begins to count.
	 * @param counties codes of the counties, in the order of the answer
	 * @param choice which plants
	 * @param species species of the catalogue by the codes of the register; a species
	 * that the catalogue no longer has counts where everything is chosen
	 */
	public GrowthCount(Collection<String> counties, PlantChoice choice, Map<Short, Species> species) {
		this.everything = choice.everything();
		counties.forEach((one) -> this.counties.put(one, new OfCounty()));
		int most = species.keySet().stream().mapToInt(Short::intValue).max().orElse(0);
		this.groupsOf = new int[most + 1][];
		Map<String, Integer> numbers = new LinkedHashMap<>();
		species.forEach((code, one) -> {
			if (choice.concerns(one)) {
				this.groupsOf[code] = one.groups()
					.stream()
					.mapToInt((group) -> numbers.computeIfAbsent(group, (name) -> numbers.size()))
					.toArray();
			}
		});
		this.groups.addAll(numbers.keySet());
		this.groupSites = new long[this.groups.size()];
		this.groupPlantings = new long[this.groups.size()];
	}

	/**
	 * Counts a site.
	 * @param owner whose it is
	 * @param county code of its county
	 * @param plants codes of its plantings
	 */
	public void site(UUID owner, String county, short[] plants) {
		int concerned = 0;
		this.seen.clear();
		for (short plant : plants) {
			int[] of = (plant < this.groupsOf.length) ? this.groupsOf[plant] : null;
			if (of != null || this.everything) {
				concerned++;
			}
			if (of != null) {
				for (int group : of) {
					this.groupPlantings[group]++;
					this.seen.set(group);
				}
			}
		}
		if (concerned == 0 && !this.everything) {
			return;
		}
		for (int group = this.seen.nextSetBit(0); group >= 0; group = this.seen.nextSetBit(group + 1)) {
			this.groupSites[group]++;
		}
		this.sites++;
		this.plantings += concerned;
		this.people.add(owner);
		OfCounty of = this.counties.computeIfAbsent(county, (code) -> new OfCounty());
		of.sites++;
		of.plantings += concerned;
		of.people.add(owner);
	}

	/**
	 * What was counted.
	 * @return groups that grow somewhere, most plantings first
	 */
	public Growth growth() {
		Integer[] order = new Integer[this.groups.size()];
		Arrays.setAll(order, (at) -> at);
		Arrays.sort(order,
				(a, b) -> (this.groupPlantings[a] != this.groupPlantings[b])
						? Long.compare(this.groupPlantings[b], this.groupPlantings[a])
						: this.groups.get(a).compareTo(this.groups.get(b)));
		return new Growth(this.people.size(), this.sites, this.plantings,
				Arrays.stream(order)
					.filter((at) -> this.groupPlantings[at] > 0)
					.map((at) -> new Growth.OfGroup(this.groups.get(at), this.groupSites[at], this.groupPlantings[at]))
					.toList(),
				this.counties.entrySet()
					.stream()
					.map((one) -> new Growth.OfCounty(one.getKey(), one.getValue().people.size(), one.getValue().sites,
							one.getValue().plantings))
					.toList());
	}

}
