package org.leafward.care.web;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.leafward.care.CareTask;
import org.leafward.care.TaskId;
import org.leafward.care.TaskNews.News;
import org.leafward.measure.DayWindow;
import org.leafward.pages.TaskLine;
import org.leafward.register.PlantingId;
import org.leafward.reminders.TaskFixture;

import static org.assertj.core.api.Assertions.assertThat;

class WhatChangedTests {

	private static final ZoneId ZONE = ZoneId.of("America/Chicago");

	private static final LocalDate TODAY = LocalDate.of(2026, 4, 8);

	private static final DayWindow WAS = new DayWindow(LocalDate.of(2026, 4, 4), LocalDate.of(2026, 4, 13));

	private static CareTask of(CareTask task, String plant) {
		return new CareTask(task.id(), new PlantingId(UUID.randomUUID()), plant, task.site(), task.siteName(),
				task.person(), task.rule(), task.season(), task.occurrence(), task.kind(), task.window(), task.text(),
				task.state(), task.withdrawnBecause(), task.sequence(), task.createdAt(), task.changedAt());
	}

	private static List<TaskLine> lines(List<News> news) {
		return WhatChanged.lines(news, 6, WhatChangedTests::why, ZONE, TODAY);
	}

	private static Map<TaskId, String> why(Collection<TaskId> tasks) {
		Map<TaskId, String> why = new HashMap<>();
		tasks.forEach((task) -> why.put(task, "Soil of 50 °F: now Tue 14 Apr 2026, before Sat 4 Apr 2026."));
		return why;
	}

	@Test
	void whatMovedSaysFromWhenToWhenAndWhy() {
		CareTask task = TaskFixture.task("sow", LocalDate.of(2026, 4, 14));
		TaskLine line = lines(List.of(new News(task, WAS, null))).get(0);
		assertThat(line.note()).isEqualTo("Now 14 Apr – 23 Apr, was 4 Apr – 13 Apr. "
				+ "Soil of 50 °F: now Tue 14 Apr 2026, before Sat 4 Apr 2026.");
		assertThat(line.href()).isEqualTo("/tasks/" + task.id());
		assertThat(line.withdrawn()).isFalse();
	}

	@Test
	void whatFellAwayAndWhatCameBackSayWhy() {
		CareTask task = TaskFixture.task("water", LocalDate.of(2026, 4, 14));
		TaskLine gone = lines(List.of(new News(TaskFixture.withdrawn(task), null, null))).get(0);
		assertThat(gone.withdrawn()).isTrue();
		assertThat(gone.note()).isEqualTo("enough rain fell");
		// 03:00 UTC on the 8th is the evening before in Chicago.
		assertThat(lines(List.of(new News(task, null, Instant.parse("2026-04-08T03:00:00Z")))).get(0).note())
			.isEqualTo("It was withdrawn, and is called for again since Tue 7 Apr.");
	}

	@Test
	void whatIsAlikeIsToldTogetherAndOfARepeatTheFirst() {
		CareTask task = TaskFixture.task("sow", LocalDate.of(2026, 4, 14));
		CareTask later = TaskFixture.task("sow later", LocalDate.of(2026, 4, 20));
		List<TaskLine> lines = lines(List.of(new News(of(task, "beans"), WAS, null),
				new News(of(task, "peas"), WAS, null), new News(task, WAS, null), new News(later, WAS, null)));
		assertThat(lines).hasSize(1);
		assertThat(lines.get(0).plant()).isEqualTo("beans; hedge by the gate (common boxwood); peas");
	}

}
