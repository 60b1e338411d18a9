package org.leafward.pages;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/** Models of the calculators of salt and soil tests, invented. */
final class CalculatorSamples {

	private CalculatorSamples() {
	}

	record SaltForm(String area, String rootDepth, String cause, String ec, String extract, String soil, String wanted,
			String drainage, String waterEc, String product, Boolean walk, Boolean road, Boolean spray) {
	}

	record SoilForm(String ph, String ec, String extract, String soil, String sar, String esp, String cec, String area,
			String depth, String espWanted, String purity, String drainage) {
	}

	record NewTreeForm(String calliper, String planted, String count, String flow) {
	}

	record Stage(int fromWeek, int toWeek, LocalDate from, LocalDate to, String often) {
	}

	record Week(int number, List<LocalDate> days) {
	}

	private static final UUID ID = UUID.fromString("6f8d0a52-6b1e-5c0e-9d57-0d6e7d1f2a34");

	/** What stands beside an answer for those who are signed in. */
	static final KeepLink KEEP = new KeepLink("/plantings/" + ID + "/keep/salt?area=100+sq+ft", ID,
			"hedge by the gate");

	static Map<String, Object> newTree() {
		LocalDate day = LocalDate.of(2027, 5, 3);
		return new HashMap<>(Map.of("section", "calculators", "form", new NewTreeForm("2 in", "soon", "1", "12"),
				"errors", Map.of("planted", "planted 'soon' is not a date: write year-month-day."), "lead",
				"About 7.6 to 11 litres (2 to 3 gal) for each watering: daily for two weeks.", "stages",
				List.of(new Stage(1, 2, day, day.plusDays(13), "daily"),
						new Stage(3, 12, day.plusDays(14), day.plusDays(83), "every two to three days")),
				"weeks", List.of(new Week(1, List.of(day, day.plusDays(1))), new Week(2, List.of(day.plusDays(7)))),
				"explanation", Samples.explanation(), "keep", KEEP));
	}

	static Map<String, Map<String, Object>> all() {
		List<Choice> few = List.of(new Choice("loam", "loam"), new Choice("clay", "clay"));
		return Map.of("amounts/new-tree", newTree(), "amounts/calculators",
				new HashMap<>(Map.of("section", "calculators", "calculators",
						List.of(new Choice("/calculators/salt", "Salt in a bed")))),
				"amounts/salt",
				form("form",
						new SaltForm("100 sq ft", "12 in", "de-icing", "8", "saturated-paste", "loam", "2", "good",
								null, "unknown", true, null, null),
						"lead", "About 1,400 litres (370 gal) of clear water.", "explanation", Samples.explanation(),
						"afterThaw", List.of(Samples.explanation()), "beforeWinter", List.of(Samples.explanation()),
						"keep", KEEP, "causes", few, "products", few, "errors",
						Map.of("ec", "ec 'much' can't be read: write it")),
				"amounts/soil-test",
				form("form", new SoilForm("8.8", "2", null, "loam", "13", null, null, "10", "15 cm", "10", "90", null),
						"lead", "The soil is sodic. Spread about 12 kg (26 lb) of gypsum.", "retest", "Next spring.",
						"explanation", Samples.explanation(), "errors", Map.of()));
	}

	private static Map<String, Object> form(Object... content) {
		Map<String, Object> model = new HashMap<>();
		List<Choice> few = List.of(new Choice("loam", "loam"), new Choice("clay", "clay"));
		model.putAll(Map.of("section", "calculators", "extracts", few, "soils", few, "drainages", few));
		for (int i = 0; i < content.length; i += 2) {
			model.put((String) content[i], content[i + 1]);
		}
		return model;
	}

}
