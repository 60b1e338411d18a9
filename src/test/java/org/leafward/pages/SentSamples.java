package org.leafward.pages;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import org.leafward.advisories.AdvisoryText;
import org.leafward.advisories.Deliveries.Delivered;
import org.leafward.advisories.MessagePreview.Shown;
import org.leafward.advisories.core.chain.MessageType;
import org.leafward.advisories.desk.Draft;
import org.leafward.advisories.desk.DraftFields;
import org.leafward.advisories.desk.Preview;
import org.leafward.advisories.desk.ReachPreview;
import org.leafward.advisories.shelf.Counts;
import org.leafward.advisories.share.ShareText;
import org.leafward.care.WorkShares;
import org.leafward.language.Language;
import org.leafward.pages.print.Paper;

import static org.leafward.pages.PageSamples.model;

/** Models for the pages of advisories, all of it invented. */
final class SentSamples {

	private static final UUID ID = new UUID(0, 9);

	private static final AdvisoryText ENGLISH = new AdvisoryText("Freeze tonight: cover what blooms",
			"27 °F (−3 °C) before sunrise.\nClear sky.", "Alder County.", "From 02:00 to 09:00.",
			"Open blossoms are lost.", "Cover before sunset.");

	private static final AdvisoryText SPANISH = new AdvisoryText("Helada esta noche: cubra lo que florece",
			"−3 °C (27 °F) antes del amanecer.", "Alder County.", "De 02:00 a 09:00.",
			"Se pierden las flores abiertas.", "Cubra antes de la puesta del sol.");

	private static final String SVG = "<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" aria-label=\"Map\"></svg>";

	private SentSamples() {
	}

	record View(String path, String event, String state, boolean current, String when, String sent,
			List<String> counties, String facts, AdvisoryText words, String language, AdvisoryText other,
			String otherLanguage) {
	}

	record CountyLine(String name, String href, long number) {
	}

	record MessageLine(String what, String sent, String reason, String cap) {
	}

	record Ways(String atom, String calendar, String json, String embed, String snippet) {
	}

	record DateRow(String name, String href, String early, String date, String late, String missing, String use) {
	}

	record MarkerLine(String title, String href) {
	}

	record Place(String name, String code, double elevationMetres) {
	}

	record DraftLine(String href, String title, String state, String changed, String trouble) {
	}

	record LogLine(String href, String sent, String event, String headline, String counties, int messages, String state,
			Long people, Long mails, Long waiting, Long failed, Long questions) {
	}

	record Tick(String value, String words, boolean chosen) {
	}

	/** The form of an advisory. */
	public record Form(List<Tick> counties, List<Tick> groups, List<Tick> traits, List<Tick> works,
			List<Choice> categories, List<Tick> responses, List<Choice> urgencies, List<Choice> severities,
			List<Choice> certainties, String zone) {

		public String text(String name) {
			return name;
		}

		public String species() {
			return "buxus-sempervirens";
		}

		public boolean more() {
			return true;
		}

	}

	private static View view() {
		return new View("/advisories/" + ID, "Late freeze", "It is in force now.", true,
				"From Tue 20 Apr 2027, 02:00 to Tue 20 Apr 2027, 09:00.", "Mon 19 Apr 2027, 15:00",
				List.of("Alder County"), "clear damage; more likely than not; act in the days to come", ENGLISH, "en",
				SPANISH, "es");
	}

	static void addTo(Map<String, Map<String, Object>> all) {
		Ways ways = new Ways("https://garden.example/advisories/feed.atom",
				"https://garden.example/advisories/us-ia-alder-county/advisories.ics",
				"https://garden.example/advisories/current.json", "https://garden.example/advisories/embed",
				"<iframe src=\"https://garden.example/advisories/embed\"></iframe>");
		Place alder = new Place("Alder County", "us-ia-alder-county", 225);
		all.put("advisories/all",
				model("section", "public-advisories", "current", List.of(view()), "counties",
						List.of(new CountyLine("Alder County", "/advisories/us-ia-alder-county", 1),
								new CountyLine("Sable County", "/advisories/us-ia-sable-county", 0)),
						"map", SVG, "ways", ways, "writes", true));
		all.put("advisories/county", model("section", "public-advisories", "county", alder, "current", List.of(view()),
				"past", List.of(view()), "ways", ways, "writes", false));
		all.put("advisories/advisory",
				model("section", "public-advisories", "advisory", view(), "map", SVG, "part", true, "messages", List.of(
						new MessageLine("Changed", "Mon 19 Apr 2027, 18:00", "The clouds left late.",
								"/advisories/messages/1.cap.xml"),
						new MessageLine("Sent", "Mon 19 Apr 2027, 15:00", null, "/advisories/messages/0.cap.xml")),
						"countyLines", List.of(new CountyLine("Alder County", "/advisories/us-ia-alder-county", 0)),
						"senderName", "Basin extension", "contact", "https://garden.example", "serves", true, "remarks",
						List.of("It was sent.")));
		List<ShareText> texts = List.of(
				new ShareText("en", "Freeze tonight. https://garden.example", "Freeze\n\ntonight."),
				new ShareText("es", "Helada esta noche. https://garden.example", "Helada\n\nesta noche."));
		all.put("advisories/share", model("section", "public-advisories", "heading", ENGLISH.headline(), "back",
				"/advisories/" + ID, "texts", texts, "alt", "Map: Alder County is dark.", "altSpanish",
				"Mapa: Alder County está oscuro.", "pictures", "/advisories/" + ID + "/pictures/", "stamp", "?v=2"));
		List<DateRow> rows = List.of(
				new DateRow("Last freeze in spring, 32 °F (0 °C)", "/season-dates/last-freeze", "21 Apr", "5 May",
						"19 May", null, "Tender plants go out once it is behind you."),
				new DateRow("The ground freezes", "/season-dates/frozen-ground", null, null, null,
						"no station near knows the soil", "Water evergreens well before it."));
		all.put("advisories/dates", model("section", "public-advisories", "counties", List.of(alder), "markers",
				List.of(new MarkerLine("Last freeze in spring, 32 °F (0 °C)", "/season-dates/last-freeze"))));
		all.put("advisories/date",
				model("section", "public-advisories", "marker", "Last freeze in spring, 32 °F (0 °C)", "use",
						"Tender plants go out once it is behind you.", "rows", rows, "sources",
						List.of("Ferrow Mill", "Tamsin Ridge"), "texts", texts, "alt", "Map by date.", "altSpanish",
						"Mapa por fecha.", "pictures", "/season-dates/last-freeze/pictures/"));
		all.put("advisories/county-dates", model("section", "public-advisories", "county", alder, "rows", rows,
				"sources", List.of("Ferrow Mill"), "papers", Paper.values()));
		desk(all, alder);
	}

	private static void desk(Map<String, Map<String, Object>> all, Place alder) {
		all.put("advisories/desk", model("section", "advisories", "counties", List.of(alder), "drafts",
				List.of(new DraftLine("/advisories/compose/" + ID, "Freeze tonight", "New advisory, being written",
						"Tue 20 Apr 2027, 15:00, by Odile Marsh", "It ends within the hour.")),
				"current", List.of(view()), "twoPeople", true, "year", 2027, "operator", false));
		List<Tick> ticks = List.of(new Tick("a", "oaks", true), new Tick("b", "elms", false));
		List<Choice> choices = List.of(new Choice("Moderate", "Moderate: clear damage"));
		Draft draft = new Draft(ID, ID, MessageType.UPDATE, null, "late-freeze", Set.of("us-ia-alder-county"),
				new DraftFields(Map.of()), Draft.State.WRITING, null, ID, null, 3,
				Instant.parse("2027-04-19T20:00:00Z"), "it ends within the hour: choose a later end", null);
		all.put("advisories/compose", model("section", "advisories", "draft", draft, "heading", "Change of an advisory",
				"cancels", false, "updates", true, "closed", false, "sendAtWords", "Tue 20 Apr 2027, 15:00", "form",
				new Form(ticks, ticks, ticks, ticks, choices, ticks, choices, choices, choices, "America/Chicago"),
				"twoPeople", true, "maySend", true, "reach",
				new ReachPreview.Reach(12, 14, 80, List.of(new ReachPreview.InCounty("Alder County", 12, 14, 80)),
						List.of(new ReachPreview.OfGroup("oaks", 9, 40)),
						List.of("3 people have a site in these counties and none of these plants.")),
				"preview",
				new Preview.Seen(
						List.of(new Shown(Language.ENGLISH, "Changed: Freeze tonight", "Freeze\n\ntonight.", "Freeze"),
								new Shown(Language.SPANISH, "Cambió: helada", "Helada\n\nesta noche.", "Helada")),
						"Freeze tonight", "Tue 20 Apr 2027", ENGLISH, SPANISH, "<alert xmlns=\"x\"/>"),
				"ready", true, "errors",
				Map.of("headline", "5 characters are given: write 10 to 140.", "counties",
						"no county is chosen: choose those in which people are to be told.", "onset",
						"the time is missing: give day and time.", "send",
						"this server wants two people for each message: ask for a second person.")));
		all.put("advisories/after", model("section", "advisories", "advisory", view(), "year", 2027, "after", after()));
		all.put("advisories/season",
				model("section", "advisories", "year", 2027, "lines",
						List.of(new LogLine("/advisories/compose/after/" + ID, "Tue 20 Apr 2027, 15:00", "Late freeze",
								"Freeze tonight", "Alder County", 2, "over", 12L, null, null, null, 3L)),
						"full", true, "people", 12L, "before", 2026, "next", 2028));
	}

	record After(List<String> messages, Counts reach, Map<String, Delivered> told, boolean making,
			WorkShares.Share tasks, Long questions) {
	}

	private static After after() {
		return new After(List.of("one", "two"), new Counts(12, 14, 80),
				new TreeMap<>(Map.of("E-mail", new Delivered(10, 2, 1), "Webhook", new Delivered(1, 0, 0))), true,
				new WorkShares.Share(8, 2, 10), 3L);
	}

}
