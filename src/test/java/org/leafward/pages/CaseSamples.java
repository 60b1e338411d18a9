package org.leafward.pages;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import org.leafward.accounts.PersonId;
import org.leafward.care.core.rule.Work;
import org.leafward.lookalikes.CaseId;
import org.leafward.lookalikes.CasePhoto;
import org.leafward.lookalikes.CaseState;
import org.leafward.lookalikes.Laboratory;
import org.leafward.lookalikes.PlantCase;
import org.leafward.lookalikes.core.Answers;
import org.leafward.lookalikes.core.Remedy;
import org.leafward.lookalikes.core.Sample;
import org.leafward.lookalikes.core.Span;
import org.leafward.lookalikes.draw.Drawings;
import org.leafward.pages.print.Paper;
import org.leafward.plants.SpeciesId;
import org.leafward.register.Placement;
import org.leafward.register.Planting;
import org.leafward.register.PlantingId;
import org.leafward.register.Site;
import org.leafward.register.SiteId;

import static org.leafward.pages.PageSamples.choices;
import static org.leafward.pages.PageSamples.model;

/** Models for the pages of cases. */
final class CaseSamples {

	private static final UUID ID = UUID.fromString("6f8d0a52-6b1e-5c0e-9d57-0d6e7d1f2a34");

	private CaseSamples() {
	}

	record Listed(String name, String more, String where, String href) {
	}

	record Stranger(String plant, String county, String seen) {
	}

	record Option(String id, String words, String help, String drawing, boolean ticked) {
	}

	record Ask(String id, String text, String help, boolean several, List<Option> options, String none, String where,
			String error, boolean answered) {
	}

	record Seen(boolean owner, boolean desk, boolean specialist) {

	}

	record Why(String words, String strength, String from) {
	}

	record Shown(String id, String title, String how, int percent, String tells, List<Why> reasonsFor,
			List<Why> against, List<String> settle, String outlook, boolean regulated, List<String> sources) {
	}

	record Split(String one, String other, String split) {
	}

	record Answered(String id, String text, List<String> answers, boolean before) {
	}

	record Line(String id, String words, String from, boolean struck) {
	}

	record ToSend(String cause, String title, Sample sample, boolean inSeason) {
	}

	record Coming(Mark mark, String days, String title, String what, String caution) {
	}

	record Written(String who, String when, String words, boolean fromDesk) {
	}

	record Waiting(String plant, String more, String thought, String href) {
	}

	record Found(String cause, int all, String where) {
	}

	static Map<String, Map<String, Object>> all(Site site) {
		Planting planting = new Planting(new PlantingId(ID), site.id(), new SpeciesId("buxus-sempervirens"),
				"hedge by the gate", 12, LocalDate.of(2019, 5, 1), Placement.GROUND, false, false);
		Map<String, Map<String, Object>> all = new LinkedHashMap<>();
		List<Listed> listed = List.of(new Listed("hedge by the gate (common boxwood)",
				"first seen Sat 14 Mar 2026, open", "Farrow house", "/cases/" + ID));
		all.put("lookalikes/cases",
				model("section", "cases", "cases", listed, "page", 0, "hasNext", true, "desk", true));
		all.put("lookalikes/new", model("section", "cases", "plantings", listed, "q", "hedge", "page", 0, "hasNext",
				true, "counties", choices("", "I’d rather not say", "us-ia-alder-county", "Alder County"), "typed",
				new Stranger("", "", "2026-11-12"), "errors", Map.of("plant", "plant is missing: write a name.")));
		all.put("lookalikes/since",
				model("section", "cases", "planting", planting, "species", "common boxwood", "site", site, "seen",
						"2026-11-12", "errors", Map.of("seen", "2027-01-01 is still to come."), "earlier", listed));
		all.put("lookalikes/ask", model("section", "cases", "live", true, "case", plantCase(), "known", true, "ask",
				new Ask("where-in-leaf", "What does a hurt leaf look like?", "Pick three leaves.", true,
						List.of(new Option("leaf-edge-inward", "Brown from the edge inward",
								"The middle stays green longest.", Drawings.of("leaf-edge-inward").orElseThrow(), true),
								new Option("leaf-spots", "Separate spots", "", null, false)),
						"None of these", "Question 3 of at most 12.", "nothing is ticked: tick what you see.", true)));
		all.put("lookalikes/case", theCase());
		all.put("lookalikes/desk", model("section", "cases", "lead", "One case waits.", "cases",
				List.of(new Waiting("hollies (American holly)", "Tobias in Merrow County, first seen Thu 2 Apr 2026",
						"By the answers so far: Salt spray", "/cases/" + ID)),
				"closed", false, "page", 0, "hasNext", true, "found",
				List.of(new Found("Salt spray", 2, "Merrow County 1, Sable County 1")), "map", null, "counties",
				new TreeSet<>(Set.of("Merrow County")), "months", 12));
		return all;
	}

	private static Map<String, Object> theCase() {
		Remedy remedy = new Remedy("water", "Water deeply", Work.WATER, "Soak the roots.", false,
				new Span(Span.Anchor.FINDING, 0, 14), null, "Mind the hose.");
		Sample sample = new Sample("Ten leaves.", "From August on.", List.of(), "Dry, in paper.");
		Map<String, Object> model = model("section", "cases", "case", plantCase(), "seen", new Seen(true, true, true),
				"former", plantCase(), "formerSeen", "Sun 3 Aug 2025", "lead", "This is likely: winter desiccation.",
				"known", true, "next", true, "shown",
				List.of(new Shown("winter-desiccation", "Winter desiccation", "likely", 80, "Green below the snow.",
						List.of(new Why("only above the snow line", "strongly", null),
								new Why("It was sheared late.", "slightly", "Care log, Sat 12 Sep 2026")),
						List.of(new Why("one branch first", "fairly", null)), List.of("Cut the buds."),
						"Good if buds are alive.", true, List.of("A leaflet, an extension (read in the source)"))),
				"splits", List.of(new Split("Winter desiccation", "Salt spray", "Look toward the road.")), "answered",
				List.of(new Answered("when", "When did you first see it?", List.of("In fall"), true)), "record",
				List.of(new Line("a", "It was sheared inside a hold-off.", "Care log, Sat 12 Sep 2026", false),
						new Line("b", "It was dry.", "Weather", true)),
				"samples", List.of(new ToSend("oak-wilt", "Suspected: Oak wilt", sample, false)), "laboratory",
				new Laboratory("Clinic", List.of("Clinic", "4 Lantern Street"), "555 0100", "clinic@clinic.example",
						null, "Samples from Tuesday on."));
		model.putAll(model("papers", Paper.values(), "siteName", "Farrow house", "firstSeen", "Sat 14 Mar 2026",
				"chosen", "winter-desiccation", "causes", choices("winter-desiccation", "Winter desiccation"),
				"allCauses",
				choices("", "Something else, as written below", "winter-desiccation", "Winter desiccation"), "coming",
				List.of(new Coming(Mark.DO, "12 Nov – 3 Dec", "Water deeply", "Soak the roots.", "Mind the hose.")),
				"onCalendar", List.of("Mulch"), "undated", List.of("Screen"), "remedies", List.of(remedy),
				"chosenTitle", "Winter desiccation", "photos",
				List.of(new CasePhoto(ID, 1600, 1200, "lower branch", Instant.EPOCH)), "mostPhotos", 8, "notes",
				List.of(new Written("Odile", "Mon 16 Mar 2026", "Cut a few buds.", true)), "owner", "Ines", "assigned",
				"Odile", "helpers", choices("", "Nobody yet"), "today", "2026-11-12", "errors",
				Map.of("photo", "the file is neither a JPEG nor a PNG.", "words", "words is missing.", "result",
						"nothing says what was found.")));
		return model;
	}

	private static PlantCase plantCase() {
		return new PlantCase(new CaseId(ID), new PersonId(ID), new SiteId(ID), new PlantingId(ID), null,
				"hedge by the gate (common boxwood)", "Alder County", ZoneId.of("America/Chicago"),
				LocalDate.of(2026, 3, 14), CaseState.OPEN, Answers.EMPTY, Set.of(), null, null, null, "", null,
				Instant.EPOCH, null, null, Instant.EPOCH, Instant.EPOCH, null);
	}

}
