package org.leafward.lookalikes.core;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * How likely an answer is where something is the cause.
 * <p>
 * Of a question with one answer the chances of its answers are scaled so that they add up
 * to 1. Where several can be ticked each answer stands for itself (Bernoulli); an answer
 * that was not ticked counts by {@link Key.Scale#unticked}, since people overlook things,
 * and fully when they said "none of these" or "no". An evidence that a cause does not
 * name is as likely as {@link Answer#usual}; so is every evidence in the part of the
 * answers that are mistaken ({@link Key.Scale#mistaken}).
 */
final class Chances {

	private final Key key;

	Chances(Key key) {
		this.key = key;
	}

	/**
	 * The chance that an evidence is seen where that is the cause.
	 * @param cause the cause
	 * @param answer the evidence
	 * @return above 0, below 1
	 */
	static double seen(Cause cause, Answer answer) {
		return cause.chances().getOrDefault(answer.id(), answer.usual());
	}

	/**
	 * The chance that an evidence is told where that is the cause.
	 * @param cause the cause
	 * @param answer the evidence
	 * @return above 0, below 1; mistakes included
	 */
	double of(Cause cause, Answer answer) {
		double mistaken = this.key.scale().mistaken();
		return (1 - mistaken) * seen(cause, answer) + mistaken * answer.usual();
	}

	/**
	 * The chance of an answer of a question with one answer.
	 * @param cause the cause
	 * @param question the question
	 * @param answer one of its answers
	 * @return above 0, below 1
	 */
	double among(Cause cause, Question question, Answer answer) {
		double mistaken = this.key.scale().mistaken();
		double seen = question.answers().stream().mapToDouble((one) -> seen(cause, one)).sum();
		double usual = question.answers().stream().mapToDouble(Answer::usual).sum();
		return (1 - mistaken) * seen(cause, answer) / seen + mistaken * answer.usual() / usual;
	}

	/**
	 * The chances of what people may answer, "can't tell" left out. Where several can be
	 * ticked, it is taken that one is, or none, since more than 1,000 ways for ten
	 * answers would tell little more.
	 * @param cause the cause
	 * @param question the question
	 * @return by answer, {@link Answers#NONE} among them where it is one; they add up to
	 * 1
	 */
	Map<String, Double> outcomes(Cause cause, Question question) {
		Map<String, Double> outcomes = new LinkedHashMap<>();
		if (!question.several()) {
			question.answers().forEach((one) -> outcomes.put(one.id(), among(cause, question, one)));
			return outcomes;
		}
		double none = 1;
		for (Answer one : question.answers()) {
			none *= not(cause, one, question.yesOrNo() ? 1 : this.key.scale().unticked());
		}
		outcomes.put(Answers.NONE, none);
		double sum = none;
		for (Answer one : question.answers()) {
			double chance = of(cause, one);
			double alone = none / not(cause, one, question.yesOrNo() ? 1 : this.key.scale().unticked()) * chance;
			outcomes.put(one.id(), alone);
			sum += alone;
		}
		double all = sum;
		outcomes.replaceAll((answer, chance) -> chance / all);
		return outcomes;
	}

	double not(Cause cause, Answer answer, double weight) {
		return Math.pow(1 - of(cause, answer), weight);
	}

	/**
	 * Turns logarithms into shares that add up to 1.
	 * @param logarithms natural logarithms, any constant added
	 * @return shares
	 */
	static double[] shares(double[] logarithms) {
		double most = Double.NEGATIVE_INFINITY;
		for (double one : logarithms) {
			most = Math.max(most, one);
		}
		double[] shares = new double[logarithms.length];
		double sum = 0;
		for (int i = 0; i < shares.length; i++) {
			shares[i] = Math.exp(logarithms[i] - most);
			sum += shares[i];
		}
		for (int i = 0; i < shares.length; i++) {
			shares[i] /= sum;
		}
		return shares;
	}

	/**
	 * The evidence of a key's answers, in the order of the questions.
	 * @param question the question
	 * @param ticked what was ticked of it
	 * @return answers that the key knows
	 */
	static List<Answer> known(Question question, Iterable<String> ticked) {
		List<Answer> known = new ArrayList<>();
		for (String one : ticked) {
			question.answer(one).ifPresent(known::add);
		}
		return known;
	}

}
