package org.leafward.lookalikes.key;

import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.leafward.knowledge.KnowledgeFiles;
import org.leafward.knowledge.KnowledgeReader;
import org.leafward.language.Language;
import org.leafward.language.Phrasebook;
import org.leafward.language.Phrasebooks;
import org.leafward.lookalikes.core.Answer;
import org.leafward.lookalikes.core.Cause;
import org.leafward.lookalikes.core.Key;
import org.leafward.lookalikes.core.Kind;
import org.leafward.lookalikes.core.Question;
import org.leafward.lookalikes.core.Reason;
import org.leafward.lookalikes.core.RecordEvidence;
import org.leafward.lookalikes.core.RecordFacts;
import org.leafward.lookalikes.core.RecordLine;
import org.leafward.lookalikes.core.Sureness;
import org.leafward.lookalikes.core.Trust;

import static org.assertj.core.api.Assertions.assertThat;

/** Everything of the key that gardeners read can be said in Spanish. */
class SpokenKeyTests {

	private static final Key KEY = ConfiguredKey.get();

	private static final Phrasebook SPANISH = new Phrasebooks(new KnowledgeFiles(""), new KnowledgeReader(), List.of())
		.ofPages(Language.SPANISH);

	@Test
	void everySentenceOfTheKey() {
		Set<String> texts = new LinkedHashSet<>();
		for (Question question : KEY.questions()) {
			texts.add(question.text());
			texts.add(question.help());
			for (Answer answer : question.answers()) {
				texts.addAll(List.of(answer.words(), answer.help(), answer.brief(), "not so: " + answer.brief()));
			}
		}
		for (Cause cause : KEY.causes()) {
			texts.addAll(List.of(cause.title(), cause.name(), cause.tells(), cause.confirm(), cause.outlook()));
			if (cause.sample() != null) {
				texts.addAll(List.of(cause.sample().what(), cause.sample().when(), cause.sample().packing()));
			}
			cause.remedies().forEach((remedy) -> {
				texts.addAll(List.of(remedy.title(), remedy.text()));
				texts.add((remedy.caution() != null) ? remedy.caution() : "");
			});
		}
		KEY.pairs().forEach((pair) -> texts.add(pair.split()));
		for (Sureness one : Sureness.values()) {
			texts.add(one.words());
		}
		for (Kind one : Kind.values()) {
			texts.add(one.words());
		}
		for (Trust one : Trust.values()) {
			texts.add(one.words());
		}
		for (Reason.Strength one : Reason.Strength.values()) {
			texts.add(one.words());
		}
		assertThat(texts).hasSizeGreaterThan(500);
		assertThat(texts.stream().filter((one) -> !one.isEmpty() && SPANISH.find(one).isEmpty())).isEmpty();
	}

	@Test
	void whatTheRecordSays() {
		LocalDate seen = LocalDate.of(2027, 5, 2);
		RecordFacts.Plant plant = new RecordFacts.Plant("Quercus", Set.of("oak", "woody"), Set.of("shade-loving"),
				List.of("oak-wilt"), "low", "high");
		List<RecordFacts.Day> days = IntStream.rangeClosed(0, 200)
			.mapToObj((back) -> new RecordFacts.Day(seen.minusDays(200L - back), (back == 198) ? -3.0 : 20.0, 34.0, 0.0,
					6.0, back < 60))
			.toList();
		RecordFacts facts = new RecordFacts(seen, false, plant,
				new RecordFacts.Stand(seen.minusDays(9), true, true, true),
				List.of(new RecordFacts.Work("feed", seen.minusDays(3), false),
						new RecordFacts.Work("feed", seen.minusDays(20), false),
						new RecordFacts.Work("prune", LocalDate.of(2026, 9, 20), true),
						new RecordFacts.Work("prune", LocalDate.of(2026, 6, 20), false)),
				RecordFacts.Hardening.NONE, days, new RecordFacts.Drought(seen, 2),
				new RecordFacts.Soil(seen.minusDays(90), 7.9, 5.2, true), null);
		List<RecordLine> lines = RecordEvidence.of(KEY, facts);
		assertThat(lines).hasSizeGreaterThan(15);
		assertThat(lines).extracting(RecordLine::words).filteredOn((one) -> SPANISH.find(one).isEmpty()).isEmpty();
		assertThat(lines).extracting(RecordLine::from).filteredOn((one) -> SPANISH.find(one).isEmpty()).isEmpty();
		assertThat(SPANISH.find("It was pruned on Sun 20 Sep 2026, when the calendar said to hold off"))
			.hasValue("Se podó el dom 20 sep 2026, cuando el calendario decía que no");
	}

}
