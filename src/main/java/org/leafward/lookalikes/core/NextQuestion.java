package org.leafward.lookalikes.core;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Chooses what to ask next: the question whose answer is expected to leave the least
 * doubt about the remaining causes (Shannon's entropy, bits), weighed by how many people
 * can answer it.
 */
public final class NextQuestion {

	/** More questions than that are not asked. */
	public static final int MOST = 12;

	/** Bits; a question that is expected to tell less is not asked. */
	private static final double WORTH_ASKING = 0.02;

	/** 2 to the power of this are the ways to tick that are weighed one by one. */
	private static final int MOST_TICKED = 10;

	private NextQuestion() {
	}

	/**
	 * A question and what it is expected to tell.
	 *
	 * @param question the question
	 * @param bits by how many bits its answer is expected to lessen the doubt, weighed by
	 * how many people can answer it; 0 and above
	 */
	public record Worth(Question question, double bits) {
	}

	/**
	 * The question that parts the remaining causes best.
	 * @param key the key
	 * @param answers what was answered, "can't tell" included
	 * @param record what the record says, without struck lines
	 * @return empty when {@value #MOST} were answered, none is left, or none would change
	 * anything any more
	 */
	public static Optional<Question> after(Key key, Answers answers, List<RecordLine> record) {
		return worth(key, answers, record).stream()
			.findFirst()
			.filter((one) -> one.bits() >= WORTH_ASKING)
			.map(Worth::question);
	}

	/**
	 * What each open question is worth.
	 * @param key the key
	 * @param answers what was answered, "can't tell" included
	 * @param record what the record says, without struck lines
	 * @return the best first; empty when {@value #MOST} were answered or none is left
	 */
	public static List<Worth> worth(Key key, Answers answers, List<RecordLine> record) {
		if (answers.given().size() >= MOST) {
			return List.of();
		}
		double[] now = Differential.shares(key, Item.of(key, answers, record));
		Set<String> told = told(key, record);
		return key.questions()
			.stream()
			.filter((one) -> !answers.has(one.id()) && !told.contains(one.id()))
			.map((one) -> new Worth(one, one.ease() * gain(key, one, now)))
			.sorted((one, other) -> Double.compare(other.bits(), one.bits()))
			.toList();
	}

	/** What the record has answered whole: the species, and choices of one. */
	private static Set<String> told(Key key, List<RecordLine> record) {
		Set<String> told = new HashSet<>();
		for (RecordLine line : record) {
			if (line.evidence() != null && line.present()) {
				key.questionOf(line.evidence())
					.filter((one) -> !one.several() || one.yesOrNo() || line.kind() == RecordLine.Kind.SPECIES)
					.ifPresent((one) -> told.add(one.id()));
			}
		}
		return told;
	}

	private static double gain(Key key, Question question, double[] now) {
		double damping = key.scale().damping();
		double[] damped = Arrays.stream(now).map(Math::log).toArray();
		List<Outcome> outcomes = (question.several() && question.answers().size() <= MOST_TICKED)
				? Outcome.ofTicks(key, question) : Outcome.ofChoices(key, question);
		double expected = 0;
		for (Outcome outcome : outcomes) {
			double chance = 0;
			double[] logarithms = new double[now.length];
			for (int i = 0; i < now.length; i++) {
				chance += now[i] * Math.exp(outcome.chance()[i]);
				logarithms[i] = damped[i] + damping * outcome.counts()[i];
			}
			expected += chance * entropy(Chances.shares(logarithms));
		}
		return Math.max(0, entropy(now) - expected);
	}

	private static double entropy(double[] shares) {
		double sum = 0;
		for (double one : shares) {
			if (one > 0) {
				sum -= one * Math.log(one);
			}
		}
		return sum / Math.log(2);
	}

}
