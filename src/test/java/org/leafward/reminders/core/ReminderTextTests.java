package org.leafward.reminders.core;

import java.time.LocalDate;
import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.leafward.care.CareTask;
import org.leafward.care.TaskKind;
import org.leafward.care.TaskText;
import org.leafward.reminders.MessageText;
import org.leafward.reminders.TaskFixture;
import org.leafward.reminders.Topic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.leafward.reminders.TaskFixture.saying;
import static org.leafward.reminders.TaskFixture.task;

/** The words are ours; the weekday of 12 November 2026 is from a calendar. */
class ReminderTextTests {

	private static final LocalDate DAY = LocalDate.parse("2026-11-12");

	private static final String BASE = "https://plants.example.org";

	private static MessageText of(CareTask... tasks) {
		return ReminderText.of(List.of(tasks)
			.stream()
			.map((task) -> new ReminderItem(TaskFixture.id("row"), Topic.TO_DO, task, 0, null))
			.toList(), BASE);
	}

	@Test
	void saysWhatWhenWhereHowMuchAndWhy() {
		CareTask task = task("one", DAY);
		MessageText mail = of(task);
		assertThat(mail.subject())
			.isEqualTo("Thu 12 Nov: Water deeply before the ground freezes: hedge by the gate (common boxwood)");
		assertThat(mail.text()).isEqualTo("""
				One task, from Thu 12 Nov on.

				* Water deeply before the ground freezes: hedge by the gate (common
				  boxwood)
				  When: Thu 12 Nov 2026 to Sat 21 Nov 2026
				  Where: Elm Street
				  What: Soak the root zone slowly until the top 30 cm are moist.
				  Amount: 40 L
				  Why: Broadleaf evergreens lose water all winter.
				  Otherwise: Leaves scorch brown in spring.
				  More: https://plants.example.org/tasks/%s

				--\s
				You get this because you look after plants here: Elm Street.
				Each task is mailed once, on the morning of its first day. Leafward,
				https://plants.example.org
				""".formatted(task.id()));
	}

	@Test
	void listsAllTasksOfOneMorning() {
		MessageText mail = of(task("b", DAY.plusDays(1)), task("a", DAY));
		assertThat(mail.subject()).startsWith("Thu 12 Nov: 2 tasks, first Water deeply");
		assertThat(mail.text()).startsWith("2 tasks, with first days from Thu 12 Nov to Fri 13 Nov.")
			.containsSubsequence("/tasks/" + task("a", DAY).id(), "/tasks/" + task("b", DAY).id());
		CareTask other = saying(task("b", DAY), new TaskText("Mulch", "Spread it.", null, "Moisture.", null, null));
		assertThat(of(other, task("a", DAY)).text()).startsWith("2 tasks, from Thu 12 Nov on.");
	}

	@Test
	void tellsTheSameWorkOnSeveralPlantingsOnce() {
		MessageText mail = of(task("b", DAY), task("a", DAY));
		assertThat(mail.subject()).isEqualTo("Thu 12 Nov: Water deeply before the ground freezes: 2 plantings");
		assertThat(mail.text()).startsWith("One task, from Thu 12 Nov on.")
			.contains("Plants: hedge by the gate (common boxwood); hedge by the gate (common")
			.containsOnlyOnce("More: ");
	}

	@Test
	void isTheSameForTheSameTasksInAnyOrder() {
		assertThat(of(task("b", DAY), task("a", DAY))).isEqualTo(of(task("a", DAY), task("b", DAY)));
	}

	@Test
	void tellsHowLongARampIs() {
		ReminderItem item = new ReminderItem(TaskFixture.id("row"), Topic.RAMP,
				task("day 1", TaskKind.RAMP_DAY, 1, DAY), 14, null);
		assertThat(ReminderText.of(List.of(item), BASE).text())
			.contains("Ramp: day 1 of 14; your calendar feed has each day");
	}

	@Test
	void callsAHoldOffByItsName() {
		assertThat(of(task("hold", TaskKind.HOLD_OFF, 0, DAY)).text()).contains("Hold off: Soak");
	}

	@Test
	void carriesTheCautionInBothParts() {
		MessageText mail = of(saying(task("one", DAY), new TaskText("Thin the crown", "Take out crossing wood.", null,
				"Light.", null, "Keep off ladders near power lines.")));
		assertThat(mail.text()).contains("Caution: Keep off ladders near power lines.").doesNotContain("Amount");
		assertThat(Jsoup.parse(mail.html()).select("dt:contains(Caution) + dd").text())
			.isEqualTo("Keep off ladders near power lines.");
	}

	@Test
	void saysTheSameInHtml() {
		MessageText mail = of(task("a", DAY), task("b", DAY.plusDays(1)));
		Document html = Jsoup.parse(mail.html());
		assertThat(html.selectFirst("html").attr("lang")).isEqualTo("en");
		assertThat(html.selectFirst("html").attr("dir")).isEqualTo("ltr");
		String flat = mail.text().replaceAll("\\s+", " ");
		assertThat(html.select("h1, h2, dd")).hasSize(1 + 2 * 7).extracting(Element::text).allMatch(flat::contains);
		assertThat(html.select("a[href]").eachAttr("href"))
			.containsExactlyInAnyOrder(BASE + "/tasks/" + task("a", DAY).id(), BASE + "/tasks/" + task("b", DAY).id());
		assertThat(html.select("style, script, img, [style]")).isEmpty();
	}

	@Test
	void letsNobodyWriteMarkupOrLines() {
		MessageText mail = of(saying(task("one", DAY), new TaskText("<b>\"Bold\" & 'new'\r\nBcc: x@example.org",
				"What\r\n.\r\nQUIT", null, "<script>alert(1)</script>", null, null)));
		assertThat(mail.subject()).doesNotContain("\r", "\n");
		assertThat(mail.text()).contains("What . QUIT");
		Document html = Jsoup.parse(mail.html());
		assertThat(html.select("b, script")).isEmpty();
		assertThat(html.selectFirst("h2").text()).startsWith("<b>\"Bold\" & 'new' Bcc: x@example.org: hedge");
	}

	/** RFC 5322 section 2.1.1: lines should have at most 78 characters. */
	@Test
	void keepsLinesShort() {
		String words = "a word or two ".repeat(60);
		MessageText mail = of(saying(task("one", DAY), new TaskText(words, words, words, words, words, words)));
		assertThat(mail.text().lines()).allMatch((line) -> line.length() <= 78);
		assertThat(mail.subject().length()).isLessThanOrEqualTo(120);
	}

}
