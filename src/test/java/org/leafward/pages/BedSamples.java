package org.leafward.pages;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.leafward.register.Bed;
import org.leafward.register.BedId;
import org.leafward.register.Site;
import org.leafward.register.Sun;

/** What the pages of beds show. */
final class BedSamples {

	private static final UUID ID = UUID.fromString("6f1c1e2a-0000-4000-8000-000000000037");

	private BedSamples() {
	}

	record Part(UUID id, String name, List<String> own, List<?> plantings) {
	}

	record Form(String name, String sun, String wind, String flow) {
	}

	/** A bed, an empty one, and what stands in none. */
	static List<Part> parts(Object first, Object second) {
		return List.of(
				new Part(ID, "bed along the fence", List.of("part shade", "hose or line: 4.0 l a minute"),
						List.of(first)),
				new Part(ID, "new bed", List.of(), List.of()), new Part(null, null, List.of(), List.of(second)));
	}

	static Map<String, Map<String, Object>> all(Site site) {
		Map<String, Object> model = new HashMap<>(Map.of("section", "sites", "site", site, "bed",
				new Bed(new BedId(ID), site.id(), "bed along the fence", Sun.PART_SHADE, null, 4.0), "form",
				new Form("bed along the fence", "part-shade", "", "x"), "ticked", List.of(ID.toString()), "plantings",
				List.of(new Choice(ID.toString(), "hedge by the gate")), "suns",
				List.of(new Choice("", "as at the whole site"), new Choice("part-shade", "part shade")), "winds",
				List.of(new Choice("", "as at the whole site"), new Choice("exposed", "exposed")), "errors",
				Map.of("flow", "flow 'x' can't be read: write it in litres a minute")));
		return Map.of("register/bed-form", model);
	}

}
