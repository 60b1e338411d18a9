package org.leafward.lookalikes.core;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.leafward.lookalikes.key.ConfiguredKey;
import org.leafward.plants.Catalogue;
import org.leafward.plants.CatalogueFixture;
import org.leafward.plants.Species;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * Invented gardeners with a known cause answer the questions that the key chooses, with
 * mistakes: seeded, so that every run has the same ones.
 * <p>
 * The noise is harsher than what the ranking believes in: one answer in ten is drawn from
 * thin air, of what would be ticked a tenth is overlooked, and "can't tell" is a third
 * more frequent than the key expects. Each has a species of the catalogue that suffers
 * from the cause, which the register knows; a second run leaves that out.
 */
class DifferentialCalibrationTests {

	private static final Key KEY = ConfiguredKey.get();

	private static final Catalogue CATALOGUE = CatalogueFixture.configured();

	private static final int CASES = 200;

	private static final long SEED = 20260401L;

	private static final double MISTAKEN = 0.1;

	private static final double OVERLOOKED = 0.1;

	private static final double CANNOT_TELL = 4.0 / 3;

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

	private static Answers asked(Gardener gardener, List<RecordLine> record) {
		Answers answers = Answers.EMPTY;
		Optional<Question> next = NextQuestion.after(KEY, answers, record);
		while (next.isPresent()) {
			answers = answers.with(next.get().id(), gardener.answer(next.get()));
			next = NextQuestion.after(KEY, answers, record);
		}
		return answers;
	}

	/** A species that suffers from the cause, or where none is named, one that may. */
	private static List<RecordLine> species(Cause cause, Random random) {
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
		return HostEvidence.of(KEY, plant);
	}

	/** What came of one word of sureness. */
	private static final class Band {

		private int said;

		private int right;

		private double shares;

	}

	@Test
	void theTrueCauseIsAmongTheFirstThreeAndTheWordsMeanWhatTheySay() throws IOException {
		Outcome outcome = run(true);
		Outcome alone = run(false);
		String table = "With the species from the register: " + outcome.table() + "\nWithout the species: "
				+ alone.table();
		Files.createDirectories(Path.of("target"));
		Files.writeString(Path.of("target/lookalikes-calibration.txt"), table);
		System.out.println(table);
		assertThat(outcome.three()).as(table).isGreaterThanOrEqualTo(CASES * 9 / 10);
		assertThat(alone.three()).as(table).isGreaterThanOrEqualTo(CASES * 85 / 100);
		calibrated(outcome);
		calibrated(alone);
	}

	/**
	 * What came of all cases.
	 *
	 * @param three how often the true cause was among the first three
	 * @param bands by word
	 * @param table for readers
	 */
	private record Outcome(int three, Map<Sureness, Band> bands, String table) {
	}

	private static Outcome run(boolean register) {
		int first = 0;
		int three = 0;
		int questions = 0;
		Map<Sureness, Band> bands = new EnumMap<>(Sureness.class);
		for (Sureness one : Sureness.values()) {
			bands.put(one, new Band());
		}
		List<String> missed = new ArrayList<>();
		for (int i = 0; i < CASES; i++) {
			Cause cause = KEY.causes().get(i % KEY.causes().size());
			List<RecordLine> record = register ? species(cause, new Random(SEED + i)) : List.of();
			Answers answers = asked(new Gardener(SEED + i, cause), record);
			assertThat(answers.given()).hasSizeLessThanOrEqualTo(NextQuestion.MOST);
			questions += answers.given().size();
			Ranking ranking = Differential.rank(KEY, answers, record);
			int rank = ranking.rank(cause.id());
			first += (rank == 1) ? 1 : 0;
			three += (rank <= 3) ? 1 : 0;
			if (rank > 3) {
				missed.add("%s %d".formatted(cause.id(), rank));
			}
			for (Finding finding : ranking.findings()) {
				Band band = bands.get(finding.how());
				band.said++;
				band.shares += finding.share();
				band.right += finding.cause().id().equals(cause.id()) ? 1 : 0;
			}
		}
		return new Outcome(three, bands, table(first, three, questions, missed, bands));
	}

	private static void calibrated(Outcome outcome) {
		Sureness above = null;
		for (Sureness one : Sureness.values()) {
			Band band = outcome.bands().get(one);
			double upper = (above != null) ? above.least() : 1;
			above = one;
			if (band.said < 15) {
				continue;
			}
			double right = (double) band.right / band.said;
			// Two standard errors around the bounds of the word.
			double error = 2 * Math.sqrt(Math.max(right * (1 - right), 0.01) / band.said);
			assertThat(right).as("'%s' in%n%s", one.words(), outcome.table())
				.isBetween(one.least() - error, upper + error);
		}
	}

	private static String table(int first, int three, int questions, List<String> missed, Map<Sureness, Band> bands) {
		StringBuilder table = new StringBuilder(
				"%d seeded cases, %.1f questions each: first %.1f %%, first three %.1f %%%n".formatted(CASES,
						(double) questions / CASES, 100.0 * first / CASES, 100.0 * three / CASES));
		table.append("missed: ").append(missed).append('\n');
		table.append("%-32s %6s %12s %8s%n".formatted("word", "said", "mean share", "right"));
		bands.forEach((word, band) -> table.append("%-32s %6d %11.1f%% %7.1f%%%n".formatted(word.words(), band.said,
				100 * band.shares / Math.max(1, band.said), 100.0 * band.right / Math.max(1, band.said))));
		return table.toString();
	}

}
