package org.leafward.pages;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.leafward.care.PreviewedChange;
import org.leafward.care.RulePreview;
import org.leafward.care.RulePreview.Counts;
import org.leafward.care.core.diff.LineDiff;
import org.leafward.measure.DayWindow;

import static org.leafward.pages.PageSamples.choices;
import static org.leafward.pages.PageSamples.model;

/** Models for the pages about rules, all of it invented. */
final class WorkshopSamples {

	private static final List<LineDiff.Line> LINES = LineDiff.between("id: a\nkind: do\n", "id: a\nkind: watch\n");

	private WorkshopSamples() {
	}

	record Filter(String q, String season, String group, String work, String grade) {
	}

	record Listed(String reference, Mark mark, String title, String work, String whom, String when, String about,
			String sources, String trust) {
	}

	record Fact(String label, String words) {
	}

	record SourceLine(String title, String publisher, String address, String trust) {
	}

	record Clash(String other, String words) {
	}

	record Changed(int version, String words, List<LineDiff.Line> lines) {
	}

	record PackLine(String id, String title, String more) {
	}

	record VersionLine(int version, String words, int changed) {
	}

	record Typed(int base, String rule, String text, String note) {
	}

	record Failed(UUID site, String name, String reason, String next) {
	}

	static void addTo(Map<String, Map<String, Object>> all) {
		all.put("care/rules", model("section", "rules", "filter", new Filter("hedge", "fall", "", "prune", null), "all",
				230, "count", 1, "rules",
				List.of(new Listed("hedges/trim", Mark.DO, "Trim the hedge", "pruning", "Boxwood; outdoors all year",
						"From bud break to 14 days after bud break", "12 Apr – 26 Apr", "Hedges", "common practice")),
				"page", 0, "hasNext", true, "here", "/rules?q=hedge", "place", "Westchester, New York", "mayChange",
				true, "seasons", choices("", "any season", "fall", "fall"), "groups", choices("", "any plants"),
				"works", choices("", "any work", "prune", "pruning"), "grades", choices("", "any source")));
		all.put("care/rule", model("section", "rules", "pack", "hedges", "packTitle", "Hedges", "region",
				"Cool gardens.", "version", 2, "rule", "trim", "mark", Mark.HOLD_OFF, "heading", "Leave hedges alone",
				"work", "pruning", "what", "Keep the shears away.", "caution", "Mind the ladder.", "facts",
				List.of(new Fact("When", "From bud break to 14 days after bud break.")), "regions",
				List.of(new Fact("US-MI", "Left out there.")), "bySpecies", List.of(new Fact("boxwood", "a hand")),
				"sources", List.of(new SourceLine("Hedges", "Elm County", "https://example.org/hedges", "Read in it.")),
				"clashes", List.of(new Clash("hedges/other", "It goes before this rule.")), "history",
				List.of(new Changed(2, "12 Nov, Nora Field: later", LINES), new Changed(1, "a file", List.of())),
				"mayChange", true));
		all.put("care/workshop",
				model("section", "rules", "packs", List.of(new PackLine("hedges", "Hedges", "version 2, 3 rules")),
						"unusable", List.of("hedges: no"), "operator", true, "problems",
						List.of(new Fact("Line 3", "'doo' is not a kind."))));
		all.put("care/workshop-pack",
				model("section", "rules", "pack", "hedges", "heading", "Hedges", "version", 2, "published", 2,
						"fileWords", "The file of this server has version 1.", "rules",
						List.of(new PackLine("trim", "Trim the hedge", "last changed in version 2")), "versions",
						List.of(new VersionLine(2, "12 Nov, Nora Field: later", 1)), "page", 0, "hasNext", true));
		all.put("care/workshop-version",
				model("section", "rules", "pack", "hedges", "version", 1, "words", "12 Nov, Nora Field: later",
						"changed", List.of("trim", "wait"), "lines", LINES, "newest", 2, "note", "", "problem",
						"the note is missing"));
		Counts counts = new Counts(1, 2, 3);
		DayWindow days = new DayWindow(LocalDate.of(2026, 11, 9), LocalDate.of(2026, 11, 24));
		all.put("care/workshop-edit",
				model("section", "rules", "pack", "hedges", "typed", new Typed(1, "trim", "  - id: trim\n", "later"),
						"problems", List.of(new Fact("Line 3", "'doo' is not a kind.")), "clashes", List.of("a and b"),
						"changed", List.of("trim"), "conflictLines", LINES, "conflict", "Ada published version 2",
						"noteProblem", "the note is missing", "rows", 12, "preview",
						new RulePreview(6, false, true, 2, counts, Map.of("Elm County", counts),
								List.of(new PreviewedChange("Home", "Elm County", "hedge", "Trim", days, days),
										new PreviewedChange("Home", "Elm County", "hedge", "Trim", null, days),
										new PreviewedChange("Home", "Elm County", "hedge", "Trim", days, null),
										new PreviewedChange("Home", "Elm County", "hedge", "Trim", days,
												new DayWindow(days.from().plusDays(2), days.to()))))));
		all.put("care/replanning",
				model("section", "rules", "waiting", 3L, "oldest", "Thu 12 Nov, 10:00 UTC, 4 minutes ago", "derived",
						12L, "failing", 1L, "failures",
						List.of(new Failed(UUID.randomUUID(), "Home", "no zone", "10:10, after 2 failures")), "now",
						"Thu 12 Nov, 10:04 UTC"));
	}

}
