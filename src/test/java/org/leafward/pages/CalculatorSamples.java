package org.leafward.pages;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

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

	static Map<String, Map<String, Object>> all() {
		List<Choice> few = List.of(new Choice("loam", "loam"), new Choice("clay", "clay"));
		return Map.of("amounts/calculators",
				new HashMap<>(Map.of("section", "calculators", "calculators",
						List.of(new Choice("/calculators/salt", "Salt in a bed")))),
				"amounts/salt",
				form("form",
						new SaltForm("100 sq ft", "12 in", "de-icing", "8", "saturated-paste", "loam", "2", "good",
								null, "unknown", true, null, null),
						"lead", "About 1,400 litres (370 gal) of clear water.", "explanation", Samples.explanation(),
						"afterThaw", List.of(Samples.explanation()), "beforeWinter", List.of(Samples.explanation()),
						"causes", few, "products", few, "errors", Map.of("ec", "ec 'much' can't be read: write it")),
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
