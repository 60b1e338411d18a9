package org.leafward.pages;

import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.leafward.advisories.DraftText;

import static org.leafward.pages.PageSamples.choices;
import static org.leafward.pages.PageSamples.model;

/** Models for the pages of the watch, all of it invented. */
final class AdvisorySamples {

	private static final DraftText ENGLISH = new DraftText("Leaves may scorch, Thu 12 Nov 2026",
			"Highs of 35 °C (95 °F) are forecast in Alder County.", "Alder County.", "On Thu 12 Nov 2026.",
			"Leaves scorch from the edge inwards.", "Water in the early morning.");

	private static final DraftText SPANISH = new DraftText("Las hojas pueden quemarse, jue 12 nov 2026",
			"Se pronostican máximas de 35 °C (95 °F) en Alder County.", "Alder County.", "El jue 12 nov 2026.",
			"Las hojas se queman desde el borde.", "Riegue temprano por la mañana.");

	private AdvisorySamples() {
	}

	record Line(UUID id, String title, String more, boolean open) {
	}

	record CountyLine(String code, String name, String days, List<String> reasons, String growth, String standing) {
	}

	record GroupLine(String name, String sites, String plantings) {
	}

	record Listed(String code, String title, String why) {
	}

	record LimitLine(String label, String usual, String bounds, String source, List<String> others) {
	}

	static void addTo(Map<String, Map<String, Object>> all) {
		UUID id = new UUID(0, 7);
		all.put("advisories/proposals", model("section", "advisories", "lead",
				"One proposal waits for a decision for Alder County.", "proposals", List.of(new Line(id, "Hot dry wind",
						"Alder County. Thu 12 Nov. 3 plantings at 2 sites of 2 people.", true)),
				"all", false, "page", 0, "hasNext", true, "here", "/advisories/proposals"));
		CountyLine alder = new CountyLine("us-ia-alder-county", "Alder County", "Thu 12 Nov",
				List.of("Highest temperature on Thu 12 Nov 2026: 35 °C (95 °F), at least 32 °C (90 °F)."),
				"3 plantings, 2 sites.", "Waits for a decision.");
		all.put("advisories/proposal",
				model("section", "advisories", "id", id, "heading", "Hot dry wind", "lead", ENGLISH.headline() + ".",
						"days", "Thu 12 Nov", "grows", "3 plantings at 2 sites of 2 people.", "counties",
						List.of(alder), "groups", List.of(new GroupLine("Hydrangeas", "2", "3")), "map",
						"<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" aria-label=\"Map\"></svg>", "english",
						ENGLISH, "spanish", SPANISH, "open", List.of(alder), "made", "Wed 11 Nov", "errors",
						Map.of("county", "no county is ticked: tick one at least."), "why", "It rained."));
		all.put("advisories/conditions", model("section", "advisories", "conditions",
				List.of(new Listed("hot-dry-wind", "Hot dry wind", "Heat takes water from leaves."))));
		all.put("advisories/condition",
				model("section", "advisories", "code", "hot-dry-wind", "heading", "Hot dry wind", "lead",
						"Heat takes water from leaves.", "limits",
						List.of(new LimitLine("High of the day at least", "90 °F", "80 °F to 110 °F",
								"common practice, no source", List.of("Alder County: 88 °F"))),
						"sources", List.of("Common practice"), "changes",
						List.of("Thu 12 Nov 2026, Odile Marsh: High is 88 °F for Alder County."), "thresholds",
						choices("high", "High of the day at least (°F)"), "scopes",
						choices("us-ia-alder-county", "Alder County"), "form",
						Map.of("threshold", "high", "scope", "us-ia-alder-county", "value", "888", "note", ""),
						"errors", Map.of("value", "888 °F is outside 80 to 110: give a value between the two.")));
	}

}
