package org.leafward.care.web;

import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.leafward.measure.NumberWords;
import org.leafward.register.Bed;
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

	static List<Part> of(SiteBeds ground, List<Planting> plantings, Function<Planting, SitePage.Listed> listed) {
		List<Part> parts = new ArrayList<>();
		for (Bed bed : ground.beds()) {
			parts.add(new Part(bed.id().value(), bed.name(), own(bed),
					plantings.stream().filter((one) -> bed.id().equals(one.bed())).map(listed).toList()));
		}
		List<SitePage.Listed> rest = plantings.stream().filter((one) -> ground.of(one).isEmpty()).map(listed).toList();
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
