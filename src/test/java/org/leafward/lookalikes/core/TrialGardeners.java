package org.leafward.lookalikes.core;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import org.leafward.plants.Catalogue;
import org.leafward.plants.CatalogueFixture;
import org.leafward.plants.Species;

/**
 * Invented gardeners with a known cause answer the questions that the key chooses, with
 * mistakes: seeded, so that every run has the same ones. Causes come up equally often, so
 * that rare ones count as much as frequent ones.
 * <p>
 * The noise is an assumption, no source: we found no published rate of mistaken answers
 * of gardeners to such questions. It is taken harsher than what the ranking believes in:
 * one answer in ten is drawn from thin air, of what would be ticked a tenth is
 * overlooked, and "can't tell" is a third more frequent than the key expects. What
 * gardeners with a cause see is drawn from the key's own chances, so this measures
 * whether the key can be used with mistakes, not whether its table is right; for that
 * there are the vignettes.
 */
final class TrialGardeners {

	static final double MISTAKEN = 0.1;

	static final double OVERLOOKED = 0.1;

	static final double CANNOT_TELL = 4.0 / 3;

	private static final Catalogue CATALOGUE = CatalogueFixture.configured();

	private TrialGardeners() {
	}

	/** A gardener whose plant suffers from something. */
	private static final class Gardener {

		private final Random random;

		private final Cause cause;

		Gardener(long seed, Cause cause) {
			this.random = new Random(seed);
			this.cause = cause;
		}

		Set<String> answer(Question question) {
			if (this.random.nextDouble() < CANNOT_TELL * (1 - question.ease())) {
				return Set.of(Answers.CANNOT_TELL);
			}
			if (!question.several()) {
				return Set.of(choose(question).id());
			}
			Set<String> ticked = new LinkedHashSet<>();
			for (Answer answer : question.answers()) {
				boolean there = this.random.nextDouble() < Chances.seen(this.cause, answer);
				boolean told = (this.random.nextDouble() < MISTAKEN) ? this.random.nextDouble() < answer.usual()
						: there && this.random.nextDouble() >= OVERLOOKED;
				if (told) {
					ticked.add(answer.id());
				}
			}
			return ticked.isEmpty() ? Set.of(Answers.NONE) : ticked;
		}

		private Answer choose(Question question) {
			boolean mistaken = this.random.nextDouble() < MISTAKEN;
			double left = this.random.nextDouble();
			double sum = question.answers().stream().mapToDouble(Answer::usual).sum();
			double seen = question.answers().stream().mapToDouble((one) -> Chances.seen(this.cause, one)).sum();
			for (Answer answer : question.answers()) {
				left -= mistaken ? answer.usual() / sum : Chances.seen(this.cause, answer) / seen;
				if (left <= 0) {
					return answer;
				}
			}
			return question.answers().get(question.answers().size() - 1);
		}

	}

	/** What came of one word of sureness. */
	static final class Band {

		int said;

		int right;

		double shares;

	}

	/**
	 * What came of all cases.
	 *
	 * @param cases how many
	 * @param first how often the true cause was the first
	 * @param three how often it was among the first three
	 * @param questions how many questions were asked in all
	 * @param bands by word
	 * @param missed how often each cause was not among the first three
	 */
	record Outcome(int cases, int first, int three, int questions, Map<Sureness, Band> bands,
			Map<String, Integer> missed) {
	}

	/**
	 * Asks gardeners.
	 * @param key the key
	 * @param seed the first seed; the next gardeners have the next ones
	 * @param cases how many
	 * @param register whether the register knows a species that gets the cause
	 * @return what came of it
	 */
	static Outcome ask(Key key, long seed, int cases, boolean register) {
		int first = 0;
		int three = 0;
		int questions = 0;
		Map<Sureness, Band> bands = new EnumMap<>(Sureness.class);
		for (Sureness one : Sureness.values()) {
			bands.put(one, new Band());
		}
		Map<String, Integer> missed = new TreeMap<>();
		for (int i = 0; i < cases; i++) {
			Cause cause = key.causes().get(i % key.causes().size());
			List<RecordLine> record = register ? species(key, cause, new Random(seed + i)) : List.of();
			Answers answers = asked(key, new Gardener(seed + i, cause), record);
			questions += answers.given().size();
			Ranking ranking = Differential.rank(key, answers, record);
			int rank = ranking.rank(cause.id());
			first += (rank == 1) ? 1 : 0;
			three += (rank <= 3) ? 1 : 0;
			if (rank > 3) {
				missed.merge(cause.id(), 1, Integer::sum);
			}
			for (Finding finding : ranking.findings()) {
				Band band = bands.get(finding.how());
				band.said++;
				band.shares += finding.share();
				band.right += finding.cause().id().equals(cause.id()) ? 1 : 0;
			}
		}
		return new Outcome(cases, first, three, questions, bands, missed);
	}

	private static Answers asked(Key key, Gardener gardener, List<RecordLine> record) {
		Answers answers = Answers.EMPTY;
		Optional<Question> next = NextQuestion.after(key, answers, record);
		while (next.isPresent()) {
			answers = answers.with(next.get().id(), gardener.answer(next.get()));
			next = NextQuestion.after(key, answers, record);
		}
		return answers;
	}

	/** A species that suffers from the cause, or where none is named, one that may. */
	private static List<RecordLine> species(Key key, Cause cause, Random random) {
		List<Species> named = CATALOGUE.all()
			.stream()
			.filter((one) -> one.habits().troubles().contains(cause.hosts().trouble()))
			.toList();
		List<Species> may = named.isEmpty() ? CATALOGUE.all()
			.stream()
			.filter((one) -> cause.hosts().only().isEmpty()
					|| one.groups().stream().anyMatch(cause.hosts().only()::contains))
			.toList() : named;
		Species species = may.get(random.nextInt(may.size()));
		RecordFacts.Plant plant = new RecordFacts.Plant(species.botanicalName().split(" ")[0],
				Set.copyOf(species.groups()), species.traits(), species.habits().troubles(), null, null);
		return HostEvidence.of(key, plant);
	}

	/**
	 * Wilson's interval for a share, 95 % (E. B. Wilson, J. Am. Stat. Assoc. 22, 1927;
	 * from memory).
	 * @param right how many
	 * @param of of how many, above 0
	 * @return lower and upper bound, 0 to 1
	 */
	static double[] interval(int right, int of) {
		double z = 1.96;
		double share = (double) right / of;
		double middle = (share + z * z / (2 * of)) / (1 + z * z / of);
		double half = z * Math.sqrt(share * (1 - share) / of + z * z / (4.0 * of * of)) / (1 + z * z / of);
		return new double[] { middle - half, middle + half };
	}

	static String table(String title, Outcome outcome) {
		List<String> lines = new ArrayList<>();
		double[] three = interval(outcome.three(), outcome.cases());
		double[] first = interval(outcome.first(), outcome.cases());
		lines.add(title);
		lines.add(
				"%d seeded cases, %.1f questions each: first %.1f %% (95 %%: %.1f to %.1f), first three %.1f %% (95 %%: %.1f to %.1f)"
					.formatted(outcome.cases(), (double) outcome.questions() / outcome.cases(),
							100.0 * outcome.first() / outcome.cases(), 100 * first[0], 100 * first[1],
							100.0 * outcome.three() / outcome.cases(), 100 * three[0], 100 * three[1]));
		lines.add("not among the first three: " + outcome.missed());
		lines.add("%-32s %6s %12s %8s".formatted("word", "said", "mean share", "right"));
		outcome.bands()
			.forEach((word, band) -> lines.add("%-32s %6d %11.1f%% %7.1f%%".formatted(word.words(), band.said,
					100 * band.shares / Math.max(1, band.said), 100.0 * band.right / Math.max(1, band.said))));
		return String.join("\n", lines) + "\n";
	}

}
