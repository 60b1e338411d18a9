package org.leafward.pages;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.leafward.register.Site;

import static org.leafward.pages.PageSamples.choices;
import static org.leafward.pages.PageSamples.model;

/** Models for the pages that add a list of plantings. */
final class ListSamples {

	private ListSamples() {
	}

	record Row(int line, String written, boolean left, String name, List<Choice> species, String chosen, String found,
			String count, String label, String planted, String placement, String area, String bed,
			Map<String, String> errors, List<String> remarks) {

		public boolean open() {
			return !this.left && !this.errors.isEmpty();
		}

	}

	static Map<String, Map<String, Object>> all(Site site) {
		Map<String, Map<String, Object>> all = new LinkedHashMap<>();
		all.put("register/several",
				model("section", "sites", "site", site, "text", "rose\n", "usual", "soon", "most", 400, "errors",
						Map.of("text", "the list has 10,000 lines: add up to 400 at a time.", "file",
								"the file is no plain text: save it from your spreadsheet as CSV.", "usual",
								"“soon” can’t be read as a date: write it like 2019-05-01, May 2019, or 2019.")));
		String which = "“rose” can be several plants: choose yours.";
		String day = "“3/4/2021” is Thu 4 Mar 2021 or Sat 3 Apr 2021: say above whether the month or the day comes first, or write it like 2021-03-04.";
		all.put("register/several-check",
				model("section", "sites", "site", site, "key", "1", "text",
						"12 lilac, <b>front</b>\nrose, 3/4/2021\nfrumious", "usual", "", "order", "", "orders",
						choices("", "Nobody said yet", "month-first", "The month: 3/4/2021 is 4 March 2021"), "asked",
						true, "header", true, "unused", List.of("Price", "Shop"), "areas", true, "bedded", true,
						"wanted", 2L, "open", Map.of("species-2", "Line 2: " + which), "further", 3, "errors",
						Map.of("lines", "Some lines can’t be added yet: mend them, or leave them out."), "placements",
						choices("ground", "in the ground", "container", "in a container"), "rows",
						List.of(new Row(1, "12 lilac, <b>front</b>", false, "lilac", List.of(), "syringa-vulgaris",
								"common lilac, Syringa vulgaris", "12", "<b>front</b>", "2019", "ground", "130 sq ft",
								"front bed", Map.of(), List.of("Only the year is told: Wed 1 May 2019 is taken.")),
								new Row(2, "rose, 3/4/2021", false, "rose",
										List.of(new Choice("rosa-hybrid-tea", "hybrid tea rose, Rosa hybrid tea"),
												new Choice("rosa-rugosa", "rugosa rose, Rosa rugosa")),
										"", "", "1", "rose", "3/4/2021", "container", "", "",
										Map.of("species-2", which, "planted-2", day), List.of()),
								new Row(3, "frumious", true, "frumious", List.of(), "", "", "1", "frumious", "",
										"ground", "", "", Map.of(), List.of("Not taken over: “more”.")))));
		return all;
	}

}
