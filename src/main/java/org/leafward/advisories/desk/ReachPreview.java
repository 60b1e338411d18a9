package org.leafward.advisories.desk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import java.util.stream.Collectors;
import org.leafward.accounts.PersonId;
import org.leafward.advisories.Area;
import org.leafward.advisories.Growers;
import org.leafward.advisories.Growth;
import org.leafward.advisories.PlantChoice;
import org.leafward.advisories.shelf.Concerned;
import org.leafward.plants.Catalogue;
import org.leafward.regions.Regions;
import org.leafward.register.SpotInArea;
import org.springframework.stereotype.Component;

/** Whom a message would reach, before it is sent. */
@Component
public class ReachPreview {

	/** Rows of the list of groups. */
	private static final int MOST_GROUPS = 25;

	private final Growers growers;

	private final Concerned concerned;

	private final Catalogue catalogue;

	private final Regions regions;

	ReachPreview(Growers growers, Concerned concerned, Catalogue catalogue, Regions regions) {
		this.growers = growers;
		this.concerned = concerned;
		this.catalogue = catalogue;
		this.regions = regions;
	}

	/**
	 * Whom a message would reach.
	 *
	 * @param people how many people
	 * @param sites how many sites
	 * @param plantings how many plantings of the plants concerned
	 * @param counties by county
	 * @param groups by plant group, most plantings first
	 * @param leftOut who has a site in the counties and is left out, and why
	 */
	public record Reach(long people, long sites, long plantings, List<InCounty> counties, List<OfGroup> groups,
			List<String> leftOut) {

		public Reach {
			counties = List.copyOf(counties);
			groups = List.copyOf(groups);
			leftOut = List.copyOf(leftOut);
		}

	}

	/**
	 * What it reaches in a county.
	 *
	 * @param name name of the county
	 * @param people how many people
	 * @param sites how many sites
	 * @param plantings how many plantings
	 */
	public record InCounty(String name, long people, long sites, long plantings) {
	}

	/**
	 * What it reaches of a plant group.
	 *
	 * @param words the group in words
	 * @param sites how many sites
	 * @param plantings how many plantings
	 */
	public record OfGroup(String words, long sites, long plantings) {
	}

	/**
	 * Counts.
	 * @param area where
	 * @param plants whose
	 * @return the counts of this moment
	 */
	public Reach of(Area area, PlantChoice plants) {
		Growth growth = this.growers.count(area.counties(), plants);
		Growth everybody = plants.everything() ? growth : this.growers.count(area.counties(), PlantChoice.EVERYTHING);
		List<String> leftOut = new ArrayList<>();
		long others = everybody.people() - growth.people();
		if (others > 0) {
			leftOut.add("%,d %s a site in these counties and none of these plants.".formatted(others,
					(others == 1) ? "person has" : "people have"));
		}
		if (area.rings().isEmpty()) {
			return new Reach(growth.people(), growth.sites(), growth.plantings(), counties(growth), groups(growth),
					leftOut);
		}
		return within(area, plants, growth, leftOut);
	}

	private List<InCounty> counties(Growth growth) {
		return growth.counties()
			.stream()
			.map((one) -> new InCounty(name(one.county()), one.people(), one.sites(), one.plantings()))
			.toList();
	}

	private String name(String code) {
		return this.regions.find(code).map((one) -> one.name()).orElse(code);
	}

	private List<OfGroup> groups(Growth growth) {
		Map<String, String> words = this.catalogue.groups();
		return growth.groups()
			.stream()
			.sorted(Comparator.comparingLong(Growth.OfGroup::plantings).reversed())
			.limit(MOST_GROUPS)
			.map((one) -> new OfGroup(words.getOrDefault(one.group(), one.group()), one.sites(), one.plantings()))
			.toList();
	}

	private Reach within(Area area, PlantChoice plants, Growth counties, List<String> leftOut) {
		List<SpotInArea> spots = this.concerned.inside(new Concerned.Aim(area, plants));
		Set<PersonId> people = spots.stream()
			.map(SpotInArea::owner)
			.collect(Collectors.toCollection(() -> new TreeSet<>(Concerned.ORDER)));
		long outside = counties.people() - people.size();
		if (outside > 0) {
			leftOut.add("%,d %s these plants in the counties, but outside of the outline.".formatted(outside,
					(outside == 1) ? "person grows" : "people grow"));
		}
		Map<String, List<SpotInArea>> byCounty = spots.stream()
			.collect(Collectors.groupingBy((one) -> this.concerned.county(one.county(), one.region()),
					LinkedHashMap::new, Collectors.toList()));
		List<InCounty> rows = byCounty.entrySet()
			.stream()
			.map((one) -> new InCounty(name(one.getKey()), count(one.getValue()), one.getValue().size(),
					plantings(one.getValue())))
			.sorted(Comparator.comparing(InCounty::name))
			.toList();
		return new Reach(people.size(), spots.size(), plantings(spots), rows, List.of(), leftOut);
	}

	private static long count(List<SpotInArea> spots) {
		return spots.stream().map((one) -> one.owner().value()).map(UUID::toString).distinct().count();
	}

	private static long plantings(List<SpotInArea> spots) {
		return spots.stream().mapToLong(SpotInArea::plantings).sum();
	}

}
