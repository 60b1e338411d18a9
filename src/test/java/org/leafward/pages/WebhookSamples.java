package org.leafward.pages;

import java.util.Map;

/** Models of the page of a webhook, invented. */
final class WebhookSamples {

	private WebhookSamples() {
	}

	record Lines(boolean on, String because, String made, String last, String lastOk, String former) {
	}

	static Map<String, Object> webhook() {
		return PageSamples.model("section", "reminders", "address", "http://example.org/garden", "errors",
				Map.of("address",
						"the address does not begin with https://: write it like https://example.org/leafward.",
						"trial", "you have sent 5 trials within an hour: wait an hour for the next one."),
				"fresh", "whsec_" + "A".repeat(43) + "=", "webhook",
				new Lines(false, "its server took nothing for 5 days; the last time: nobody answered at this address",
						"Thu 12 Nov 2026, 07:00", "Fri 20 Nov 2026, 07:02: nobody answered at this address",
						"Sat 14 Nov 2026, 07:00", "Sat 21 Nov 2026, 08:15"));
	}

}
