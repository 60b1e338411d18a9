package org.leafward.reminders.core;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.Test;
import org.leafward.care.CareTask;
import org.leafward.care.TaskKind;
import org.leafward.care.TaskText;
import org.leafward.language.Language;
import org.leafward.language.Speech;
import org.leafward.language.Units;
import org.leafward.reminders.MessageText;
import org.leafward.reminders.Series;
import org.leafward.reminders.TaskFixture;
import org.leafward.reminders.Topic;
import org.leafward.reminders.words.FakeLinks;
import org.leafward.reminders.words.SampleMessages;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.leafward.reminders.TaskFixture.moved;
import static org.leafward.reminders.TaskFixture.saying;
import static org.leafward.reminders.TaskFixture.task;
import static org.leafward.reminders.TaskFixture.withdrawn;

/** The words are ours; the weekday of 12 November 2026 is from a calendar. */
class MessageWriterTests {

	private static final LocalDate DAY = LocalDate.parse("2026-11-12");

	private static final String BASE = FakeLinks.BASE;

	private static MessageText write(Series series, ReminderItem... items) {
		return SampleMessages.WORDS.write(SampleMessages.content(series, List.of(items), null), Speech.USUAL,
				new FakeLinks());
	}

	private static MessageText of(CareTask... tasks) {
		return write(Series.MORNING, Stream.of(tasks).map(MessageWriterTests::item).toArray(ReminderItem[]::new));
	}

	private static ReminderItem item(CareTask task) {
		return SampleMessages.item(SampleMessages.topic(task), task);
	}

	private static ReminderItem change(CareTask task, LocalDate told) {
		return new ReminderItem(TaskFixture.id("r"), Topic.CHANGE, task, 0, told);
	}

	private static CareTask mulch(String name, LocalDate day) {
		return saying(task(name, day), new TaskText("Mulch", "Spread it.", null, "Moisture.", null, null));
	}

	@Test
	void saysWhatWhenWhereHowMuchAndWhy() {
		CareTask task = task("one", DAY);
		MessageText mail = of(task);
		assertThat(mail.subject())
			.isEqualTo("Thu 12 Nov 2026: Water deeply before the ground freezes: hedge by the gate (common boxwood)");
		String reminder = TaskFixture.id("reminder of " + task.id()).toString();
		assertThat(mail.text()).isEqualTo("""
				To do: Thu 12 Nov 2026 to Sat 21 Nov 2026

				* Water deeply before the ground freezes: hedge by the gate (common
				  boxwood)
				  When: Thu 12 Nov 2026 to Sat 21 Nov 2026
				  Where: Elm Street
				  What: Soak the root zone slowly until the top 30 cm are moist.
				  Amount: 40 L
				  Why: Broadleaf evergreens lose water all winter.
				  Otherwise: Leaves scorch brown in spring.
				  Details: BASE/tasks/%s
				  Done: BASE/r/done-%s
				  Tell me again in three days:
				    BASE/r/later-%s
				  Not this year:
				    BASE/r/skip-%s

				--\s
				You get this because you look after plants here: Elm Street.
				What you are told, and when: BASE/reminders
				No more morning messages: BASE/u/mail-morning
				Sent by Leafward: BASE
				Green Group, 12 Elm Street, Springfield; help@example.org
				""".formatted(task.id(), reminder, reminder, reminder)
			.replace("BASE", BASE)
			.replace("Details: ", "Details:\n    ")
			.replace("Done: ", "Done:\n    "));
		assertThat(mail.brief()).isEqualTo(mail.subject() + " – Elm Street");
		assertThat(mail.link()).isEqualTo(BASE + "/tasks/" + task.id());
	}

	@Test
	void listsAllTasksOfOneMorning() {
		MessageText mail = of(task("b", DAY.plusDays(1)), task("a", DAY));
		assertThat(mail.subject()).startsWith("Thu 12 Nov 2026: 2 tasks, first Water deeply");
		assertThat(mail.text()).startsWith("2 tasks, with first days from Thu 12 Nov 2026 to Fri 13 Nov 2026.")
			.containsSubsequence("/tasks/" + task("a", DAY).id(), "/tasks/" + task("b", DAY).id());
		assertThat(mail.link()).isEqualTo(BASE);
		assertThat(of(mulch("b", DAY), task("a", DAY)).text()).startsWith("2 tasks, from Thu 12 Nov 2026 on.");
	}

	@Test
	void tellsTheSameWorkOnSeveralPlantingsOnce() {
		MessageText mail = of(task("b", DAY), task("a", DAY));
		assertThat(mail.subject()).isEqualTo("Thu 12 Nov 2026: Water deeply before the ground freezes: 2 plantings");
		assertThat(mail.text()).startsWith("To do: Thu 12 Nov 2026 to Sat 21 Nov 2026")
			.contains("Plants: hedge by the gate (common boxwood); hedge by the gate (common")
			.containsOnlyOnce("Details:")
			.containsOnlyOnce("Amount: 40 L");
	}

	/** As the other side acts on all of them, they may not be told apart. */
	@Test
	void tellsAmountsThatDifferBesideTheirPlantings() {
		TaskText words = TaskFixture.words();
		CareTask other = saying(task("b", DAY),
				new TaskText(words.title(), words.what(), "90 L", words.why(), words.otherwise(), words.caution()));
		assertThat(of(task("a", DAY), other).text()).containsOnlyOnce("Details:")
			.contains("Amount: hedge by the gate (common boxwood): 40 L")
			.contains("Amount: hedge by the gate (common boxwood): 90 L");
	}

	@Test
	void isTheSameForTheSameTasksInAnyOrder() {
		assertThat(of(task("b", DAY), task("a", DAY))).isEqualTo(of(task("a", DAY), task("b", DAY)));
	}

	@Test
	void tellsHowLongARampIs() {
		CareTask task = task("day 1", TaskKind.RAMP_DAY, 1, DAY);
		assertThat(write(Series.SINGLE, new ReminderItem(TaskFixture.id("r"), Topic.RAMP, task, 14, null)).text())
			.startsWith("Hardening off: Thu 12 Nov 2026")
			.contains("Ramp: day 1 of 14; your calendar feed has each day", "Place: 40 L");
		assertThat(write(Series.SINGLE, new ReminderItem(TaskFixture.id("r"), Topic.RAMP, task, 1, null)).text())
			.contains("Ramp: one day only");
	}

	@Test
	void callsAHoldOffByItsName() {
		MessageText mail = of(task("hold", TaskKind.HOLD_OFF, 0, DAY));
		assertThat(mail.subject()).contains(": Hold off: Water deeply");
		assertThat(mail.text()).startsWith("To leave alone: ").contains("Hold off: Soak");
		CareTask leave = saying(task("hold", TaskKind.HOLD_OFF, 0, DAY),
				new TaskText("Don't prune oaks", "Wait.", null, "Beetles.", null, null));
		assertThat(of(leave).subject())
			.isEqualTo("Thu 12 Nov 2026: Don't prune oaks: hedge by the gate (common boxwood)");
	}

	@Test
	void offersWhatMakesSense() {
		assertThat(acts(item(task("do", DAY)))).containsExactly("done", "later", "skip");
		// Over before the three days are.
		assertThat(acts(item(task("day", TaskKind.DO, 0, DAY)))).containsExactly("done", "skip");
		assertThat(acts(item(task("watch", TaskKind.WATCH, 0, DAY)))).containsExactly("skip");
		assertThat(acts(item(task("hold", TaskKind.HOLD_OFF, 0, DAY)))).isEmpty();
		assertThat(acts(item(task("ramp", TaskKind.RAMP_DAY, 3, DAY)))).containsExactly("done");
		assertThat(acts(SampleMessages.item(Topic.TONIGHT, task("cover", DAY)))).containsExactly("done");
		assertThat(acts(change(task("moved", DAY), DAY.minusDays(5)))).containsExactly("done", "skip");
		assertThat(acts(change(withdrawn(task("gone", DAY)), DAY))).isEmpty();
		assertThat(of(task("again", TaskKind.DO, 2, DAY)).text()).contains("Not this time").doesNotContain("this year");
	}

	private static List<String> acts(ReminderItem item) {
		return Jsoup.parse(write(Series.MORNING, item).html())
			.select("a[href*=/r/]")
			.eachAttr("href")
			.stream()
			.map((address) -> address.replaceAll(".*/r/([a-z]+)-.*", "$1"))
			.toList();
	}

	@Test
	void tellsWhatMovedAndWhatFellAway() {
		MessageText mail = write(Series.SINGLE, change(moved(task("a", DAY), DAY.plusDays(7)), DAY));
		assertThat(mail.subject()).startsWith("Moved to Thu 19 Nov 2026: Water deeply");
		assertThat(mail.text()).startsWith("One change to what you were told.\n")
			.contains("Moved to: Thu 19 Nov 2026 to Sat 28 Nov 2026", "You were told: Thu 12 Nov 2026");
		MessageText gone = write(Series.SINGLE, change(withdrawn(task("a", DAY)), DAY));
		assertThat(gone.subject()).startsWith("Not needed any more on Thu 12 Nov 2026: Water deeply");
		assertThat(gone.text()).contains("Not needed any more: enough rain fell");
	}

	@Test
	void keepsChangesInAPartOfTheirOwn() {
		MessageText mail = write(Series.MORNING, item(mulch("new", DAY)),
				change(moved(task("a", DAY), DAY.plusDays(7)), DAY), change(withdrawn(task("b", DAY)), DAY));
		assertThat(mail.subject()).isEqualTo("Thu 12 Nov 2026: Mulch: hedge by the gate (common boxwood)");
		assertThat(mail.text())
			.startsWith("To do: Thu 12 Nov 2026 to Sat 21 Nov 2026. 2 changes to what you were\ntold.\n")
			.containsSubsequence("* Mulch", "\nWhat changed since you were told\n", "Not needed any more: enough",
					"Moved to: ");
		assertThat(write(Series.MORNING, change(moved(task("a", DAY), DAY.plusDays(7)), DAY),
				change(withdrawn(mulch("b", DAY)), DAY))
			.subject()).isEqualTo("Thu 12 Nov 2026: 2 changes, first Mulch: hedge by the gate (common boxwood)");
	}

	@Test
	void warnsOfANight() {
		TaskText words = new TaskText("Cover for a night near frost", "Spread cloth.", null, "It holds warmth.", null,
				"No lamps under cloth.");
		List<ReminderItem> items = Stream.of("a", "b")
			.map((name) -> SampleMessages.item(Topic.TONIGHT, saying(task(name, DAY), words)))
			.toList();
		MessageText mail = write(Series.TONIGHT, items.toArray(ReminderItem[]::new));
		assertThat(mail.subject()).isEqualTo("Night of Thu 12 Nov 2026: cover 2 plantings");
		assertThat(mail.text()).startsWith("""
				The night from Thu 12 Nov 2026 to Fri 13 Nov 2026 can hurt 2 plantings.
				Cover them before sunset.

				What to cover

				* Elm Street: hedge by the gate (common boxwood); hedge by the gate
				  (common boxwood)

				Cautions

				* No lamps under cloth.

				How

				* Cover for a night near frost: 2 plantings
				""").containsOnlyOnce("No lamps").contains("/u/mail-tonight");
		assertThat(mail.brief()).startsWith(mail.subject() + " – Elm Street: hedge by the gate");
	}

	@Test
	void beginsAnOutlookWithWhatIsDueNow() {
		CareTask now = task("now", DAY);
		Outlook outlook = new Outlook(DAY, List.of(mulch("this", DAY.plusDays(2))),
				List.of(mulch("next", DAY.plusDays(9))), List.of(task("open", DAY.minusDays(3))),
				List.of(task("hold", TaskKind.HOLD_OFF, 0, DAY)), List.of(withdrawn(mulch("gone", DAY))));
		MessageText mail = SampleMessages.WORDS
			.write(SampleMessages.content(Series.OUTLOOK, List.of(item(now)), outlook), Speech.USUAL, new FakeLinks());
		assertThat(mail.subject()).isEqualTo("Outlook from Thu 12 Nov 2026: 2 tasks this week");
		assertThat(mail.text()).startsWith("What is ahead: Thu 12 Nov 2026 to Wed 25 Nov 2026\n\nToday's reminders\n")
			.containsOnlyOnce("/tasks/" + now.id())
			.containsSubsequence("These seven days", "* Sat 14 Nov 2026 to Mon 23 Nov 2026: Mulch: hedge",
					"The seven days after", "* Sat 21 Nov 2026 to", "Still open", "* Until Wed 18 Nov 2026: Water",
					"To leave alone", "Hold off: Water", "Not needed any more", "enough rain\n  fell",
					"No more weekly outlooks");
	}

	@Test
	void boundsEachListAndTellsHowMuchIsLeftOff() {
		List<CareTask> many = IntStream.range(0, 75).mapToObj((at) -> mulch("m" + at, DAY.plusDays(at))).toList();
		Outlook outlook = new Outlook(DAY, many, many.subList(0, 31), List.of(), List.of(), List.of());
		MessageText mail = SampleMessages.WORDS.write(SampleMessages.content(Series.OUTLOOK, List.of(), outlook),
				Speech.USUAL, new FakeLinks());
		assertThat(Jsoup.parse(mail.html()).select("h2 + ul").eachText()).hasSize(2)
			.satisfiesExactly((list) -> assertThat(list).endsWith("45 more"),
					(list) -> assertThat(list).endsWith("1 more"));
		assertThat(Jsoup.parse(mail.html()).select("ul").get(0).select("li")).hasSize(31);
		assertThat(mail.text()).contains("* 45 more\n  " + BASE + "\n");
		assertThat(mail.content().length()).isLessThanOrEqualTo(MessageText.LONGEST_CONTENT);
		List<ReminderItem> items = new ArrayList<>(many.stream().map(MessageWriterTests::item).toList());
		MessageText morning = write(Series.MORNING, items.toArray(ReminderItem[]::new));
		assertThat(morning.text()).contains("45 more: " + BASE);
		assertThat(morning.html().length()).isLessThan(100_000);
	}

	@Test
	void carriesTheCautionInBothParts() {
		MessageText mail = of(saying(task("one", DAY), new TaskText("Thin the crown", "Take out crossing wood.", null,
				"Light.", null, "Keep off ladders near power lines.")));
		assertThat(mail.text()).contains("Caution: Keep off ladders near power lines.").doesNotContain("Amount");
		assertThat(Jsoup.parse(mail.html()).select("p.care").text())
			.isEqualTo("Caution: Keep off ladders near power lines.");
	}

	/** The date is as the Unicode CLDR writes it for es-US, without the dots. */
	@Test
	void speaksSpanish() {
		MessageText mail = SampleMessages.WORDS.write(
				SampleMessages.content(Series.MORNING, List.of(item(task("a", DAY))), null),
				new Speech(Language.SPANISH, Units.METRIC), new FakeLinks());
		assertThat(mail.subject()).startsWith("jue 12 nov 2026: ").endsWith(": hedge by the gate (boj común)");
		assertThat(mail.text()).startsWith("Por hacer: jue 12 nov 2026 a sáb 21 nov 2026\n")
			.contains("Dónde: Elm Street", "Recibe este mensaje porque cuida plantas aquí: Elm Street.");
	}

	@Test
	void refusesToWriteAboutNothing() {
		assertThatIllegalArgumentException().isThrownBy(() -> write(Series.MORNING)).withMessageContaining("nothing");
		assertThatIllegalArgumentException().isThrownBy(() -> write(Series.OUTLOOK)).withMessageContaining("nothing");
	}

	/** RFC 5322 section 2.1.1: lines should have at most 78 characters. */
	@Test
	void keepsLinesShort() {
		String words = "a word or two ".repeat(60);
		MessageText mail = of(saying(task("one", DAY), new TaskText(words, words, words, words, words, words)));
		assertThat(mail.text().lines()).allMatch((line) -> line.length() <= 78 || line.contains(BASE));
		assertThat(mail.subject().length()).isLessThanOrEqualTo(120);
		assertThat(mail.brief().length()).isLessThanOrEqualTo(MessageText.LONGEST_BRIEF);
	}

}
