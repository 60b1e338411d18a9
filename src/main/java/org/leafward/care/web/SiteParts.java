package org.leafward.care.web;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.leafward.measure.NumberWords;
import org.leafward.register.Bed;
import org.leafward.register.BedId;
import org.leafward.register.Planting;
import org.leafward.register.SiteBeds;

/** What grows at a site, bed by bed. */
final class SiteParts {

	private SiteParts() {
	}

	/**
	 * A bed with what stands in it.
	 *
	 * @param id identifier; null for what stands in no bed
	 * @param name what its people call it; null where the site has no beds at all
	 * @param own what it has of its own, in words; may be empty
	 * @param plantings what stands in it
	 */
	record Part(@Nullable UUID id, @Nullable String name, List<String> own, List<SitePage.Listed> plantings) {
	}

	/**
	 * The order of a site: bed by bed, then what stands in none.
	 * @param ground the beds
	 * @param plantings in the order of the register
	 * @return the same in the order of the page
	 */
	static List<Planting> inOrder(SiteBeds ground, List<Planting> plantings) {
		Map<BedId, Integer> places = new HashMap<>();
		ground.beds().forEach((bed) -> places.put(bed.id(), places.size()));
		return plantings.stream()
			.sorted(Comparator.comparing(
					(Planting one) -> ground.of(one).map((bed) -> places.get(bed.id())).orElse(Integer.MAX_VALUE)))
			.toList();
	}

	/**
	 * The beds with what stands in them.
	 * @param ground the beds
	 * @param plantings those to show
	 * @param all whether these are all that the site has, and empty beds are to be seen
	 * @param listed how one is shown
	 */
	static List<Part> of(SiteBeds ground, List<Planting> plantings, boolean all,
			Function<Planting, SitePage.Listed> listed) {
		Map<BedId, List<SitePage.Listed>> byBed = new HashMap<>();
		List<SitePage.Listed> rest = new ArrayList<>();
		for (Planting planting : plantings) {
			ground.of(planting)
				.map((bed) -> byBed.computeIfAbsent(bed.id(), (bedId) -> new ArrayList<>()))
				.orElse(rest)
				.add(listed.apply(planting));
		}
		List<Part> parts = new ArrayList<>();
		for (Bed bed : ground.beds()) {
			List<SitePage.Listed> inIt = byBed.getOrDefault(bed.id(), List.of());
			if (all || !inIt.isEmpty()) {
				parts.add(new Part(bed.id().value(), bed.name(), own(bed), inIt));
			}
		}
		if (!rest.isEmpty()) {
			parts.add(new Part(null, null, List.of(), rest));
		}
		return parts;
	}

	private static List<String> own(Bed bed) {
		List<String> own = new ArrayList<>();
		if (bed.sun() != null) {
			own.add(bed.sun().words());
		}
		if (bed.wind() != null) {
			own.add("wind: " + bed.wind().words());
		}
		if (bed.litresPerMinute() != null) {
			own.add("hose or line: %s l a minute".formatted(NumberWords.fixed(bed.litresPerMinute(), 1)));
		}
		return own;
	}

}
