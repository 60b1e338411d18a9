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
import org.leafward.register.Site;

/** Models of the pages that keep a calculator's answer, invented. */
final class KeptSamples {

	private static final UUID ID = UUID.fromString("6f8d0a52-6b1e-5c0e-9d57-0d6e7d1f2a34");

	private KeptSamples() {
	}

	record Listed(String label, String species, String site, String href) {
	}

	record Change(String what, String now, String before, boolean same) {
	}

	record Row(UUID id, String title, String words, String day, String by, String href) {
	}

	static Map<String, Map<String, Object>> all(Site site) {
		Planting planting = new Planting(new PlantingId(ID), site.id(), new SpeciesId("buxus-sempervirens"),
				"hedge by the gate", 12, LocalDate.of(2019, 4, 2), Placement.GROUND, false, false);
		Map<String, Object> choose = answer();
		choose.putAll(Map.of("plantings",
				List.of(new Listed("hedge by the gate", "common boxwood", site.name(),
						"/plantings/1/keep/water?what=bed")),
				"q", "gate", "page", 0, "hasNext", true, "here", "/keep/water?what=bed&q=gate"));
		Map<String, Object> keep = answer();
		keep.putAll(Map.of("planting", planting, "site", site, "changes",
				List.of(new Change("Area of its bed", "20 m² (220 sq ft)", "12 m² (130 sq ft)", false),
						new Change("The hose here gives", "12 litres (3.2 gal) a minute", null, true)),
				"notes", List.of("The soil of the site stays silt loam; its tasks go by that and not by clay."), "fits",
				true, "tested", true, "day", "soon", "errors",
				Map.of("day", "day 'soon' is not a date: write year-month-day."), "unfit",
				List.of("area 0.0 is outside 0.01 to 100000.0: give it in square metres.")));
		keep.put("choose", "/keep/water?what=bed");
		Map<String, Object> amounts = new HashMap<>(
				Map.of("section", "sites", "planting", planting, "site", site, "tasks", Samples.todo(), "calculators",
						List.of(new Choice("/calculators/water?what=bed&for=" + ID, "Water")), "kept",
						List.of(new Row(ID, "Water", "About 250 litres (66 gal).", "Thu 12 Nov", "Nora Field",
								"/calculators/water?what=bed")),
						"page", 0, "hasNext", true, "here", "/plantings/1/amounts"));
		amounts.put("remarks", List.of("It is kept, and the tasks below go by it."));
		return Map.of("care/keep-choose", choose, "care/keep", keep, "care/amounts", amounts);
	}

	private static Map<String, Object> answer() {
		return new HashMap<>(Map.of("section", "calculators", "title", "Water", "calculator", "water", "words",
				"About 250 litres (66 gal).", "inputs", Map.of("what", "bed", "area", "130 sq ft"), "back",
				"/calculators/water?what=bed"));
	}

}
