package org.leafward.pages;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.leafward.plants.SpeciesId;
import org.leafward.register.Placement;
import org.leafward.register.Planting;
import org.leafward.register.PlantingId;
import org.leafward.register.SiteId;

/** What the page of a planting's photos shows. */
final class PhotoSamples {

	private PhotoSamples() {
	}

	record Shown(UUID id, int width, int height, String words, String day) {
	}

	static Map<String, Map<String, Object>> all() {
		Planting planting = new Planting(new PlantingId(new UUID(0, 1)), new SiteId(new UUID(0, 2)),
				new SpeciesId("buxus-sempervirens"), "hedge by the gate", 12, LocalDate.of(2019, 4, 20),
				Placement.GROUND, false, false);
		return Map.of("register/photos",
				new HashMap<>(Map.of("section", "sites", "planting", planting, "photos",
						List.of(new Shown(new UUID(0, 3), 1600, 1200, "lower branch bare", "Mon 3 Aug")), "full", false,
						"words", "", "day", "2026-08-03", "errors",
						Map.of("words", "nothing says what is seen on it: write a few words, such as “buds swell, "
								+ "lower branch bare”."))));
	}

}
