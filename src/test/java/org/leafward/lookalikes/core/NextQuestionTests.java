package org.leafward.lookalikes.core;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.leafward.lookalikes.core.Key.Scale;
import org.leafward.lookalikes.key.ConfiguredKey;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * The question that parts best comes first; no more than twelve; nothing is asked that is
 * known.
 */
class NextQuestionTests {

	private static final Key KEY = ConfiguredKey.get();

	private static Cause cause(String id, Map<String, Double> chances) {
		return new Cause(id, id, Kind.WEATHER, false, false, 1, "", "look at " + id, null, List.of(), "", Hosts.ANY,
				chances, List.of());
	}

	private static Question question(String id, String one, String other) {
		return new Question(id, id, "", false, false, 1,
				List.of(new Answer(one, one, "", one, 0.5), new Answer(other, other, "", other, 0.5)));
	}

	/**
	 * By hand: of four causes alike, one question halves them for certain (1 bit), the
	 * other tells nothing (0 bits). Shannon 1948: the entropy of four is 2 bits, of two
	 * 1.
	 */
	@Test
	void isWorthWhatShannonSays() {
		Map<String, Double> left = Map.of("a", 0.999999, "b", 0.000001, "c", 0.5, "d", 0.5);
		Map<String, Double> right = Map.of("a", 0.000001, "b", 0.999999, "c", 0.5, "d", 0.5);
		Key key = new Key("test", List.of(cause("1", left), cause("2", left), cause("3", right), cause("4", right)),
				List.of(question("dull", "c", "d"), question("sharp", "a", "b")), List.of(),
				new Scale(0.8, 0.3, 0.02, 0, 1, 1));
		List<NextQuestion.Worth> worth = NextQuestion.worth(key, Answers.EMPTY, List.of());
		assertThat(worth.get(0).question().id()).isEqualTo("sharp");
		assertThat(worth.get(0).bits()).isBetween(0.999, 1.001);
		assertThat(worth.get(1).bits()).isLessThan(1e-9);
		assertThat(NextQuestion.after(key, Answers.EMPTY.with("sharp", Set.of("a")), List.of())).isEmpty();
	}

	/**
	 * By hand: Bayes with one evidence, 0.8 against 0.2, from even shares; 4 % of doubt
	 * spread over two.
	 */
	@Test
	void ranksByBayes() {
		Key key = new Key("test",
				List.of(cause("one", Map.of("a", 0.8, "b", 0.2)), cause("other", Map.of("a", 0.2, "b", 0.8))),
				List.of(question("q", "a", "b")), List.of(new Pair("one", "other", "Cut it open.", false)),
				new Scale(0.8, 0.3, 0.02, 0, 1, 1));
		Ranking ranking = Differential.rank(key, Answers.EMPTY.with("q", Set.of("a")), List.of());
		assertThat(ranking.first().share()).isBetween(0.7879, 0.7881);
		assertThat(ranking.first().reasonsFor()).singleElement()
			.satisfies((one) -> assertThat(one.times()).isBetween(3.999, 4.001));
		assertThat(ranking.first().settle()).containsExactly("Cut it open.", "look at one");
		assertThat(ranking.first().how()).isEqualTo(Sureness.LIKELY);
	}

	@Test
	void neverAsksMoreThanTwelveAndCannotTellCounts() {
		Answers answers = Answers.EMPTY;
		Optional<Question> next = NextQuestion.after(KEY, answers, List.of());
		while (next.isPresent()) {
			assertThat(answers.has(next.get().id())).isFalse();
			answers = answers.with(next.get().id(), Set.of(Answers.CANNOT_TELL));
			next = NextQuestion.after(KEY, answers, List.of());
		}
		assertThat(answers.given()).hasSize(NextQuestion.MOST);
		assertThat(Differential.rank(KEY, answers, List.of()).known()).as("nothing is known").isFalse();
	}

	@Test
	void doesNotAskForTheSpeciesThatTheRegisterKnows() {
		List<RecordLine> record = RecordEvidence.of(KEY,
				new RecordFacts(LocalDate.of(2027, 7, 1), false,
						new RecordFacts.Plant("Quercus", Set.of("oak"), Set.of(), List.of(), null, null), null,
						List.of(), RecordFacts.Hardening.NONE, List.of(), null, null, null));
		assertThat(NextQuestion.worth(KEY, Answers.EMPTY, record)).extracting((one) -> one.question().id())
			.doesNotContain("plant")
			.hasSize(KEY.questions().size() - 1);
	}

	@Test
	void aChangedAnswerCountsLikeAFirstOne() {
		Answers first = Answers.EMPTY.with("when", Set.of("seen-late-winter")).with("when", Set.of("seen-high-summer"));
		Answers straight = Answers.EMPTY.with("when", Set.of("seen-high-summer"));
		assertThat(Differential.rank(KEY, first, List.of())).isEqualTo(Differential.rank(KEY, straight, List.of()));
		assertThat(first.without("when")).isEqualTo(Answers.EMPTY);
	}

	/** Whatever is answered, no share reaches certainty. */
	@Test
	void nothingIsEverCertain() {
		Answers all = Answers.EMPTY;
		Cause cause = KEY.cause("boxwood-blight").orElseThrow();
		for (Question question : KEY.questions()) {
			Answer best = question.answers()
				.stream()
				.max(java.util.Comparator.comparingDouble((one) -> Chances.seen(cause, one)))
				.orElseThrow();
			all = all.with(question.id(), Set.of(best.id()));
		}
		assertThat(Differential.rank(KEY, all, List.of()).first().share()).isLessThan(0.97);
	}

	/**
	 * By hand: two causes alike; the first has both signs for certain, the other neither,
	 * so ticking parts them for certain: 1 bit. Every way to tick has its chance.
	 */
	@Test
	void everyWayToTickIsWeighed() {
		Key key = new Key("test",
				List.of(cause("1", Map.of("a", 0.999999, "b", 0.999999)),
						cause("2", Map.of("a", 0.000001, "b", 0.000001))),
				List.of(new Question("q", "q", "", true, false, 1,
						List.of(new Answer("a", "a", "", "a", 0.5), new Answer("b", "b", "", "b", 0.5)))),
				List.of(), new Scale(0.8, 0.3, 0.02, 0, 1, 1));
		assertThat(NextQuestion.worth(key, Answers.EMPTY, List.of()).get(0).bits()).isBetween(0.999, 1.001);
		for (Question question : KEY.questions()) {
			if (question.several()) {
				List<Outcome> ways = Outcome.ofTicks(KEY, question);
				for (int cause = 0; cause < KEY.causes().size(); cause++) {
					int place = cause;
					assertThat(ways.stream().mapToDouble((one) -> Math.exp(one.chance()[place])).sum())
						.as(question.id())
						.isBetween(1 - 1e-9, 1 + 1e-9);
				}
			}
		}
	}

	/** A season on, what is of this year or nobody could tell is asked anew. */
	@Test
	void whatStillStandsAYearOn() {
		Answers answers = Answers.EMPTY.with("when", Set.of("seen-high-summer"))
			.with("border", Set.of("border-yellow"))
			.with("wood", Set.of(Answers.NONE))
			.with("buds", Set.of(Answers.CANNOT_TELL))
			.with("again", Set.of("every-year-and-more"))
			.with("gone", Set.of("x"))
			.with("which-leaves", Set.of("no-such-answer"));
		assertThat(answers.lasting(KEY).given()).containsOnlyKeys("border", "wood");
	}

	@Test
	void answersThatTheKeyDoesNotKnowArePassedOver() {
		Answers old = Answers.EMPTY.with("gone", Set.of("whatever")).with("when", Set.of("no-such-answer"));
		assertThat(Differential.rank(KEY, old, List.of()).known()).isFalse();
	}

	@Test
	void comparisonNamesWhatMovesAndWhatFalls() {
		Key other = new Key("other", KEY.causes(), KEY.questions(), KEY.pairs(),
				new Scale(0.8, 0.35, 0.02, 0.05, 0.6, 0.05));
		Answers oak = VignetteTests.Vignette.answers(List.of("seen-early-summer", "crown-top-down-fast", "plant-oak"));
		List<RecordedCase> cases = List.of(new RecordedCase("an oak", oak, List.of(), "oak-wilt"),
				new RecordedCase("the same, open", oak, List.of(), null));
		KeyComparison comparison = KeyComparison.of(KEY, other, cases);
		assertThat(comparison.cases()).isEqualTo(2);
		assertThat(comparison.settled()).isOne();
		assertThat(comparison.rightBefore()).isOne();
		assertThat(comparison.rightAfter()).isZero();
		assertThat(comparison.moved().get(0).worse()).isTrue();
		assertThat(KeyComparison.of(KEY, KEY, cases).moved()).isEmpty();
	}

}
