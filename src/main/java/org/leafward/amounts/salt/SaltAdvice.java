package org.leafward.amounts.salt;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.leafward.measure.Explanation;

/** What helps beside water, by exposure and product. */
public final class SaltAdvice {

	private SaltAdvice() {
	}

	/**
	 * What to do before winter.
	 * @param exposures how salt reaches the plants, may be empty
	 * @param product what is spread
	 * @return a step each, the label in words
	 */
	public static List<Explanation> beforeWinter(Collection<Exposure> exposures, DeIcer product) {
		List<Explanation> steps = new ArrayList<>();
		exposures.forEach((one) -> steps
			.add(Explanation.of("Plants " + one.words(), one.before()).withSource(one.sourceBefore())));
		steps.add(Explanation.of((product == DeIcer.UNKNOWN) ? "The product" : "On " + product.words(), product.said())
			.withSource(product.source()));
		return steps;
	}

	/**
	 * What to do after the thaw.
	 * @param exposures how salt reaches the plants, may be empty
	 * @param product what was spread
	 * @return a step each, the label in words
	 */
	public static List<Explanation> afterThaw(Collection<Exposure> exposures, DeIcer product) {
		List<Explanation> steps = new ArrayList<>();
		exposures.forEach(
				(one) -> steps.add(Explanation.of("Plants " + one.words(), one.after()).withSource(one.sourceAfter())));
		if (product.sodium()) {
			steps.add(Explanation
				.of("Sodium",
						"Have the soil tested for sodium (SAR or ESP): where there is much, "
								+ "water alone seals it, and gypsum comes first.")
				.withSource("common practice, from memory"));
		}
		return steps;
	}

}
