package org.leafward.lookalikes.core;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * One way to answer a question.
 *
 * @param chance natural logarithm of its chance under each cause, in the key's order
 * @param counts natural logarithm of the likelihood that the ranking gives it, in the
 * key's order; other than the chance where what was not ticked counts for less
 */
record Outcome(double[] chance, double[] counts) {

	/**
	 * Every way to tick the answers of a question.
	 * @param key the key
	 * @param question one of which several answers can be ticked
	 * @return 2 to the power of the number of answers; their chances add up to 1
	 */
	static List<Outcome> ofTicks(Key key, Question question) {
		int causes = key.causes().size();
		int answers = question.answers().size();
		Chances chances = new Chances(key);
		double[][] ticked = new double[answers][causes];
		double[][] left = new double[answers][causes];
		for (int answer = 0; answer < answers; answer++) {
			for (int cause = 0; cause < causes; cause++) {
				double chance = chances.of(key.causes().get(cause), question.answers().get(answer));
				ticked[answer][cause] = Math.log(chance);
				left[answer][cause] = Math.log(1 - chance);
			}
		}
		List<Outcome> outcomes = new ArrayList<>(1 << answers);
		for (int ticks = 0; ticks < 1 << answers; ticks++) {
			// Nothing ticked is "none of these", which counts fully.
			double weight = (ticks == 0 || question.yesOrNo()) ? 1 : key.scale().unticked();
			double[] chance = new double[causes];
			double[] counts = new double[causes];
			for (int answer = 0; answer < answers; answer++) {
				boolean tick = (ticks & (1 << answer)) != 0;
				double[] own = tick ? ticked[answer] : left[answer];
				for (int cause = 0; cause < causes; cause++) {
					chance[cause] += own[cause];
					counts[cause] += tick ? own[cause] : weight * own[cause];
				}
			}
			outcomes.add(new Outcome(chance, counts));
		}
		return outcomes;
	}

	/**
	 * The answers one by one, "can't tell" left out. Where several can be ticked, it is
	 * taken that one is, or none.
	 * @param key the key
	 * @param question the question
	 * @return their chances add up to 1
	 */
	static List<Outcome> ofChoices(Key key, Question question) {
		Chances chances = new Chances(key);
		int causes = key.causes().size();
		Map<String, double[]> likely = new LinkedHashMap<>();
		for (int i = 0; i < causes; i++) {
			int place = i;
			chances.outcomes(key.causes().get(i), question)
				.forEach((answer, chance) -> likely.computeIfAbsent(answer, (any) -> new double[causes])[place] = Math
					.log(chance));
		}
		return likely.values().stream().map((one) -> new Outcome(one, one)).toList();
	}

}
