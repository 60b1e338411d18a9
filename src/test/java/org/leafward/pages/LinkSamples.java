package org.leafward.pages;

import java.time.Instant;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.leafward.accounts.PersonId;
import org.leafward.care.CareTask;
import org.leafward.care.TaskId;
import org.leafward.care.TaskKind;
import org.leafward.care.TaskState;
import org.leafward.care.TaskText;
import org.leafward.measure.DayWindow;
import org.leafward.measure.DayWords;
import org.leafward.register.PlantingId;
import org.leafward.register.SiteId;

import static org.leafward.pages.PageSamples.choices;
import static org.leafward.pages.PageSamples.model;

/** Models for the pages behind the links of messages. */
final class LinkSamples {

	private static final UUID ID = UUID.fromString("6f8d0a52-6b1e-5c0e-9d57-0d6e7d1f2a34");

	private LinkSamples() {
	}

	record Words(String language) {

		public String say(String english) {
			return english;
		}

		public String days(DayWindow window) {
			return DayWords.of(window);
		}

	}

	static Map<String, Map<String, Object>> all() {
		Map<String, Map<String, Object>> all = new LinkedHashMap<>();
		Words words = new Words("en");
		all.put("reminders/act", model("section", "", "words", words, "token", "A".repeat(44), "task", task(), "plants",
				List.of("hedge by the gate (common boxwood)", "two by the door (common boxwood)"), "standing",
				"Due today, until Tue 24 Nov 2026.", "later", "You will be told again on Sun 15 Nov 2026.", "said",
				"It can be noted as done from Mon 9 Nov 2026 on.", "done", false, "buttons",
				choices("done", "I did it today", "later", "Tell me again in three days", "skip", "Not this year"),
				"undo", true, "leave", "A".repeat(50)));
		all.put("reminders/leave",
				model("section", "", "words", words, "token", "A".repeat(50), "there", true, "left", false, "series",
						"Warnings of a night that needs covers", "channel", "E-mail", "caution",
						"Without them nobody warns you of a night that can kill what isn't covered.", "said",
						"You are back. These messages go out to you again."));
		all.put("reminders/link-ended", model("section", ""));
		return all;
	}

	private static CareTask task() {
		return new CareTask(new TaskId(ID), new PlantingId(ID), "hedge by the gate (common boxwood)", new SiteId(ID),
				"Alder Street schoolyard", new PersonId(ID), "broadleaf-evergreens/late-water", 2026, 0, TaskKind.DO,
				new DayWindow(LocalDate.of(2026, 11, 9), LocalDate.of(2026, 11, 24)),
				new TaskText("Water until the ground freezes", "Let the hose trickle.", null, "Leaves lose water.",
						null, "Drain and disconnect the hose before a freeze."),
				TaskState.PLANNED, null, 0, Instant.EPOCH, Instant.EPOCH);
	}

}
