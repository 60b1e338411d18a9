package org.leafward.pages;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The look-alike key in the workshop, as its controller fills it. */
final class KeySamples {

	private KeySamples() {
	}

	record Line(String label, String words) {
	}

	record Typed(int base, String text, String note) {
	}

	static void addTo(Map<String, Map<String, Object>> all) {
		Map<String, Object> files = new HashMap<>();
		files.put("section", "rules");
		files.put("lead", "23 causes, 18 questions with 70 answers, and 21 pairs.");
		files.put("unusable", "lookalikes/pairs.yaml:4:1: no");
		files.put("files", List.of(new Line("pairs.yaml", "version 2; Thu 12 Nov 2026, Nora Field: plainer")));
		all.put("lookalikes/key", files);
		Map<String, Object> file = new HashMap<>();
		file.put("section", "rules");
		file.put("file", "pairs.yaml");
		file.put("published", 2);
		file.put("typed", new Typed(2, "title: Pairs\n", "plainer"));
		file.put("rows", 12);
		file.put("problems", List.of(new Line("pairs.yaml, line 4", "there is no cause 'salt-spry'")));
		file.put("preview", "It was tried on 3 recorded cases; the first three causes would differ in 1.");
		file.put("moved", List.of(new Line("an oak", "Oak wilt, Anthracnose → Anthracnose, Oak wilt")));
		file.put("noteProblem", "the note is missing: say in a sentence or two what you changed and why.");
		file.put("versions", List.of(new Line("2", "Thu 12 Nov 2026, Nora Field: plainer")));
		file.put("page", 1);
		file.put("hasNext", true);
		all.put("lookalikes/key-file", file);
	}

}
