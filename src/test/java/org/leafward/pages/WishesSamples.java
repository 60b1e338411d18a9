package org.leafward.pages;

import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import static org.leafward.pages.PageSamples.choices;
import static org.leafward.pages.PageSamples.model;

/** A model for the page on which people choose how to be told. */
final class WishesSamples {

	private WishesSamples() {
	}

	record Way(String code, String words, boolean open, String href, List<Row> topics) {
	}

	record Row(String field, String words, List<Choice> choices, String ahead) {
	}

	record Left(String channel, String series, String words) {
	}

	record Refused(String reason, String since) {
	}

	record NextRow(Instant at, String when, String by, List<Line> lines) {
	}

	record Line(String words, String where, String href) {
	}

	static Map<String, Map<String, Object>> all() {
		Map<String, String> form = new LinkedHashMap<>(
				Map.of("morning", "5", "pausedUntil", "2027-02-01", "quietFrom", "22:00", "quietTo", "06:00",
						"urgentAnyway", "true", "outlookDay", "monday", "language", "es", "units", "both"));
		List<Way> ways = List.of(way("mail", "E-mail", null, form),
				way("push", "Push messages", "/reminders/push", form),
				new Way("webhook", "Webhook", false, "/reminders/webhook", List.of()));
		Map<String, Object> model = model("section", "reminders", "saved", true, "address", "nora@example.org",
				"confirmed", true, "zone", "America/Chicago", "refused",
				new Refused("550 5.1.1 no such mailbox", "Thu 12 Nov 2026"), "paused", "Mon 1 Feb 2027", "left",
				List.of(new Left("mail", "outlook", "E-mail: the weekly outlook")), "noFrost", true, "later", "06:00",
				"form", form, "errors",
				Map.of("morning", "'5' is no time of day: write hours and minutes, such as 07:00.", "push-to-do-ahead",
						"99 days ahead is not 0 to 14: give 0 to be told on the day itself."),
				"ways", ways, "days", choices("monday", "Monday"), "languages",
				choices("en", "English", "es", "español"), "systems", choices("both", "both", "us", "US"), "next",
				List.of(new NextRow(Instant.parse("2026-11-16T13:00:00Z"), "Mon 16 Nov, 07:00", "E-mail",
						List.of(new Line("Water deeply before the ground freezes",
								"hedge by the gate (common boxwood), Alder Street schoolyard", "/tasks/1"),
								new Line("The weekly outlook", "", null)))));
		Map<String, Map<String, Object>> all = new LinkedHashMap<>();
		all.put("reminders/wishes", model);
		return all;
	}

	private static Way way(String code, String words, String href, Map<String, String> form) {
		List<Choice> manners = choices("off", "no", "weekly", "in the weekly outlook", "morning",
				"together, in the morning");
		form.putAll(Map.of(code + "-to-do", "morning", code + "-tonight", "off", code + "-to-do-ahead", "99"));
		return new Way(code, words, true, href,
				List.of(new Row(code + "-to-do", "What is to be done", manners, code + "-to-do-ahead"),
						new Row(code + "-tonight", "Frost tonight", choices("off", "no", "single", "at once"), null)));
	}

}
