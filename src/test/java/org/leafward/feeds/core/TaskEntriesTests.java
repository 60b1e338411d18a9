package org.leafward.feeds.core;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leafward.calendars.PlainText;
import org.leafward.care.CareTask;
import org.leafward.care.TaskKind;
import org.leafward.care.TaskState;
import org.leafward.care.TaskText;

import static org.assertj.core.api.Assertions.assertThat;
import static org.leafward.feeds.core.CareTaskFixture.ENTRIES;
import static org.leafward.feeds.core.CareTaskFixture.CHANGED;
import static org.leafward.feeds.core.CareTaskFixture.aTask;

class TaskEntriesTests {

	@ParameterizedTest
	@CsvSource(delimiter = '|',
			textBlock = """
					DO       | Water deeply                  | hedge by the gate (common boxwood) | Water deeply: hedge by the gate (common boxwood)
					HOLD_OFF | Leave unpruned                | hedge by the gate                  | Leave unpruned: hedge by the gate
					HOLD_OFF | No pruning                    | hedge by the gate                  | No pruning: hedge by the gate
					HOLD_OFF | Pruning                       | hedge by the gate                  | Hold off: Pruning – hedge by the gate
					HOLD_OFF | Notch the bark                | pear                               | Hold off: Notch the bark – pear
					RAMP_DAY | Hardening-off day 3 of 14     | tomatoes                           | Hardening-off day 3 of 14: tomatoes
					RAMP_DAY | Hardening-off day 3 of 14: 2 h | tomatoes                          | Hardening-off day 3 of 14: 2 h – tomatoes
					WATCH    | Look under the leaves         | hedge                              | Look under the leaves: hedge
					DO       | Water deeply before the ground freezes | hedge by the gate (common boxwood) | Water deeply before the ground freezes: hedge by the gate
					""")
	void saysWhatAndWhich(TaskKind kind, String title, String plant, String summary) {
		assertThat(entry(aTask().of(kind).titled(title).forPlant(plant).build()).summary()).isEqualTo(summary);
	}

	@Test
	void keepsSummariesShortAndNamesThePlantAllTheSame() {
		String summary = entry(aTask().titled("x".repeat(60)).forPlant("y".repeat(80)).build()).summary();
		assertThat(PlainText.length(summary)).isEqualTo(60);
		assertThat(summary).endsWith("x…: yyyyyyyyyyy…");
	}

	@Test
	void explainsInTheOrderOfReading() {
		CareTask task = aTask()
			.saying(new TaskText("Cut back", "Cut above\r\na bud.", "one third", "It flowers on new wood.",
					"Bare stems.", "Wear gloves."))
			.build();
		assertThat(entry(task).description()).isEqualTo("""
				Cut above
				a bud.
				Amount: one third
				Why: It flowers on new wood.
				Caution: Wear gloves.
				Site: Allotment 7
				Why this date: https://leafward.example/tasks/""" + task.id());
	}

	@Test
	void carriesIdentityAndStampsOfTheTask() {
		CareTask task = aTask().build();
		FeedEntry entry = entry(task);
		assertThat(entry.uid()).isEqualTo("5a5a5a5a-0000-4000-8000-000000000003@leafward");
		assertThat(entry.sequence()).isEqualTo(3);
		assertThat(entry.created()).isEqualTo(task.createdAt());
		assertThat(entry.changed()).isEqualTo(task.changedAt());
		assertThat(entry.window()).isEqualTo(task.window());
		assertThat(entry.url()).hasToString("https://leafward.example/tasks/" + task.id());
		assertThat(entry.cancelled()).isFalse();
	}

	@Test
	void saysWhyATaskIsNoLongerNeeded() {
		FeedEntry entry = entry(aTask().withdrawn("31 mm of rain fell.", CHANGED).build());
		assertThat(entry.cancelled()).isTrue();
		assertThat(entry.summary()).isEqualTo("No longer needed: Water deeply – hedge by the gate");
		assertThat(entry.description()).startsWith("No longer needed: 31 mm of rain fell.\nWater slowly");
	}

	/**
	 * Common calendar clients hide an event with STATUS:CANCELLED or show it as any
	 * other, so what was done stays confirmed and its summary says it.
	 */
	@Test
	void whatWasDoneOrLeftOutStaysAndSaysSo() {
		FeedEntry done = entry(aTask().in(TaskState.DONE, null).build());
		assertThat(done.cancelled()).isFalse();
		assertThat(done.summary()).isEqualTo("Done: Water deeply – hedge by the gate (common boxwood)");
		assertThat(done.description()).startsWith("Water slowly");
		FeedEntry skipped = entry(aTask().in(TaskState.SKIPPED, "The hose is broken.").build());
		assertThat(skipped.cancelled()).isFalse();
		assertThat(skipped.summary()).startsWith("Left out: Water deeply – hedge");
		assertThat(skipped.description()).startsWith("Left out: The hose is broken.\nWater slowly");
	}

	@Test
	void neverDropsCautionSiteAndLinkFromALongDescription() {
		String words = "Ünder the leaves. ".repeat(600);
		CareTask task = aTask().saying(new TaskText("Spray", words, words, words, null, "Read the label."))
			.at("A".repeat(300))
			.build();
		String description = entry(task).description();
		assertThat(description.getBytes(StandardCharsets.UTF_8)).hasSizeBetween(980, 1000);
		assertThat(description).contains("\nCaution: Read the label.\nSite: AAA")
			.endsWith("\nWhy this date: https://leafward.example/tasks/" + task.id());
	}

	@Test
	void sortsByFirstDay() {
		List<CareTask> tasks = List.of(aTask().numbered(1).on("2026-06-01", "2026-06-02").build(),
				aTask().numbered(2).on("2026-05-01", "2026-07-02").build());
		assertThat(ENTRIES.of(tasks, new FeedWindow(LocalDate.of(2026, 5, 1), 180, 400)))
			.extracting((entry) -> entry.window().from())
			.containsExactly(LocalDate.of(2026, 5, 1), LocalDate.of(2026, 6, 1));
	}

	@Test
	void noCategoryHoldsAComma() {
		for (TaskKind kind : TaskKind.values()) {
			assertThat(entry(aTask().of(kind).build()).categories()).hasSize(2).noneMatch((word) -> word.contains(","));
		}
	}

	@Test
	void theNoticeOfAnEmptyCalendarNeverMoves() {
		UUID feed = new UUID(1, 2);
		Instant since = Instant.parse("2026-02-03T23:59:59.9Z");
		FeedEntry notice = ENTRIES.nothingPlanned(feed, since);
		assertThat(notice).isEqualTo(ENTRIES.nothingPlanned(feed, since));
		assertThat(notice.summary()).isEqualTo("Nothing planned yet");
		assertThat(notice.window().days()).isEqualTo(1);
		assertThat(notice.window().from()).isEqualTo("2026-02-03");
		assertThat(notice.changed()).isEqualTo("2026-02-03T23:59:59Z");
	}

	private static FeedEntry entry(CareTask task) {
		return ENTRIES.of(task);
	}

}
