package org.leafward.workdays.core.words;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.leafward.care.core.rule.Work;
import org.leafward.knowledge.KnowledgeFiles;
import org.leafward.knowledge.KnowledgeReader;
import org.leafward.language.Language;
import org.leafward.language.Phrasebook;
import org.leafward.language.Phrasebooks;
import org.leafward.language.Units;
import org.leafward.measure.DayWindow;
import org.leafward.workdays.core.weather.DayJudge;
import org.leafward.workdays.core.weather.DayOutlook;
import org.leafward.workdays.core.weather.WeatherJudgement;
import org.leafward.workdays.core.words.MailWords.Words;

import static org.assertj.core.api.Assertions.assertThat;

/** Every sentence that a mail about a workday can have is known in Spanish. */
class SpokenMailsTests {

	private static final LocalDate DAY = LocalDate.of(2026, 12, 5);

	private static final Phrasebook SPANISH = new Phrasebooks(new KnowledgeFiles(""), new KnowledgeReader(), List.of())
		.ofPages(Language.SPANISH);

	/** Groups are called as people like. */
	private static final List<String> NAMES = List.of("Millrace Green Crew", "A: on Sat 5 Dec, 09:00 to 12:00",
			"Amigos del Molino (norte). ¡Vamos!", "x".repeat(100));

	private static MailWords mail(Phrasebook book, Units units, String group) {
		return new MailWords(new Voice(book, units), group, DAY, LocalTime.of(9, 0), LocalTime.of(12, 30), "the shed",
				IntStream.range(0, 33).mapToObj((i) -> "Park: Mulch, hedge " + i).toList(),
				"https://plants.example.org/w/0", "https://plants.example.org/workdays/1");
	}

	private static List<Words> all(MailWords mail, List<String> warnings) {
		List<Words> all = new ArrayList<>(List.of(mail.invited(), mail.changed(DayText.moved(DAY.minusDays(1), DAY)),
				mail.changed(DayText.moved(DAY, DAY)), mail.placeFree(),
				mail.calledOff("The weather doesn’t allow it."), mail.left(), mail.thanks(150, 4), mail.thanks(120, 1),
				mail.thanks(45, 0), mail.thanks(0, 2)));
		for (String instead : List.of("It can take place, with care.",
				"Better on its rain date, Sun 6 Dec 2026: one button on its page moves it and tells everybody.",
				"Better on another day; it has no rain date.")) {
			all.add(mail.weather(warnings, instead));
		}
		return all;
	}

	/** What the weather can have to say, each sentence at least once. */
	private static List<String> warnings() {
		List<WeatherJudgement> judged = new ArrayList<>();
		for (double high : new double[] { 27, 33, 38, 45, 52 }) {
			judged.add(DayJudge.judge(new DayOutlook(DAY, 4.4, null, 20.0, high, 50, null, null), Set.of(Work.PRUNE)));
			judged.add(DayJudge.judge(new DayOutlook(DAY, 15.0, null, 20.0, high, null, null, null), Set.of()));
		}
		for (double low : new double[] { -9, -35 }) {
			judged.add(DayJudge.judge(new DayOutlook(DAY, null, 20.0, low, 0.0, null, 6.0, null), Set.of()));
			judged.add(DayJudge.judge(new DayOutlook(DAY, null, 80.0, low, 0.0, null, 6.0, null), Set.of()));
		}
		Set<Work> digging = EnumSet.noneOf(Work.class);
		for (Work work : Work.values()) {
			digging.add(work);
			judged.add(DayJudge.judge(new DayOutlook(DAY, null, null, null, null, null, null, true), digging));
			judged.add(DayJudge.judge(new DayOutlook(DAY, null, null, null, null, null, null, true), Set.of(work)));
		}
		List<String> words = new ArrayList<>();
		judged.forEach((one) -> {
			one.findings().forEach((finding) -> words.add(finding.words()));
			words.addAll(one.reminders());
		});
		return words.stream().distinct().toList();
	}

	@Test
	void everySentenceIsKnown() {
		List<String> warnings = warnings();
		assertThat(warnings).hasSizeGreaterThan(20)
			.allSatisfy((one) -> assertThat(SPANISH.knows(one)).as(one).isTrue());
		for (String name : NAMES) {
			Unknown book = new Unknown(SPANISH, new ArrayList<>());
			List<Words> said = all(mail(book, Units.BOTH, name), warnings);
			assertThat(book.unknown()).isEmpty();
			assertThat(said).allSatisfy((one) -> assertThat(one.subject() + one.body()).contains(name, "5 dic 2026"));
		}
	}

	@Test
	void aMailIsWrittenInTheWordsOfItsReader() {
		Words invited = mail(SPANISH, Units.BOTH, "Millrace Green Crew").invited();
		assertThat(invited.subject()).isEqualTo("Jornada del sáb 5 dic 2026: Millrace Green Crew");
		assertThat(invited.body())
			.startsWith("Millrace Green Crew trabaja el\n\nsáb 5 dic 2026, de 09:00 a 12:30\n\n"
					+ "Punto de encuentro: the shed\n\nQué queremos hacer:\n\n- Park: Mulch, hedge 0\n")
			.contains("- y 3 más\n", "\n\nhttps://plants.example.org/w/0\n\n")
			.endsWith("\n\nhttps://plants.example.org/workdays/1\n");
		assertThat(mail(Phrasebooks.english(), Units.BOTH, "Crew").invited().subject())
			.isEqualTo("Workday on Sat 5 Dec 2026: Crew");
	}

	/**
	 * 98 °F with 40 % is 105 °F on the heat index chart of the US National Weather
	 * Service.
	 */
	@Test
	void theWeatherIsToldInTheUnitsOfItsReader() {
		List<String> warnings = DayJudge
			.judge(new DayOutlook(DAY, 15.0, null, 20.0, 36.7, 40, null, null), Set.of(Work.PRUNE))
			.findings()
			.stream()
			.map(WeatherJudgement.Finding::words)
			.toList();
		String metric = mail(SPANISH, Units.METRIC, "Crew").weather(warnings, "It can take place, with care.").body();
		assertThat(metric).contains("15 mm de lluvia", "Índice de calor de 41 °C").doesNotContain("°F", "pulg");
		String us = mail(Phrasebooks.english(), Units.US, "Crew").weather(warnings, "It can take place, with care.")
			.body();
		assertThat(us).contains("0.6 in of rain", "Heat index 105 °F in the afternoon").doesNotContain("°C", "mm");
	}

	/** Writes down what the book can't say. */
	private record Unknown(Phrasebook book, List<String> unknown) implements Phrasebook {

		@Override
		public Language language() {
			return this.book.language();
		}

		@Override
		public String say(String english) {
			if (!this.book.knows(english)) {
				this.unknown.add(english);
			}
			return this.book.say(english);
		}

		@Override
		public Optional<String> find(String english) {
			return this.book.find(english);
		}

		@Override
		public boolean knows(String english) {
			return this.book.knows(english);
		}

		@Override
		public String day(LocalDate day) {
			return this.book.day(day);
		}

		@Override
		public String days(DayWindow window) {
			return this.book.days(window);
		}

	}

}
