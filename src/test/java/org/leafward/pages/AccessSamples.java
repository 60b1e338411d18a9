package org.leafward.pages;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/** Models of the pages about who may look, invented. */
final class AccessSamples {

	private AccessSamples() {
	}

	record TokenForm(String name, String days) {

		public boolean has(String code) {
			return code.equals("read");
		}

	}

	record TokenRow(UUID id, String name, String may, String more, boolean works) {
	}

	record PushForm(String label) {
	}

	record PushRow(UUID id, String label, String more, String print) {
	}

	static Map<String, Object> push() {
		Map<String, Object> model = new HashMap<>();
		model.put("section", "reminders");
		model.put("form", new PushForm("phone in the greenhouse with a name that is much longer than sixty letters"));
		model.put("errors", Map.of("label", "label has more than 60 characters: shorten it."));
		model.put("tried", "A trial message is on its way.");
		model.put("key", "B" + "A".repeat(86));
		model.put("most", 10);
		model.put("rows", List.of(
				new PushRow(UUID.randomUUID(), "phone", "added Thu 12 Nov 2026, last message Fri 13 Nov 2026",
						"0".repeat(64)),
				new PushRow(UUID.randomUUID(), "laptop in the shed",
						"added Thu 12 Nov 2026, no message yet, could not be reached the last time", "1".repeat(64))));
		return model;
	}

	static Map<String, Object> tokens() {
		Map<String, Object> model = new HashMap<>();
		model.put("section", "me");
		model.put("form", new TokenForm("", "365"));
		model.put("errors", Map.of("name", "name is missing: fill it in"));
		model.put("fresh", "leafward_" + "a".repeat(43));
		model.put("scopes", List.of(new Choice("read", "look at your things"), new Choice("write", "change them")));
		model.put("times", List.of(new Choice("365", "a year")));
		model.put("rows",
				List.of(new TokenRow(UUID.randomUUID(), "scales in the shed", "look at your things",
						"made Thu 12 Nov 2026, not used yet, works until Fri 12 Nov 2027", true),
						new TokenRow(UUID.randomUUID(), "old telephone", "look at your things, change your things",
								"made Thu 12 Nov 2026, not used yet, revoked Fri 13 Nov 2026", false)));
		model.put("page", 0);
		model.put("hasNext", true);
		return model;
	}

}
