package org.leafward.care.core.plan;

import java.time.LocalDate;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.leafward.measure.Explanation;

/**
 * What became of an anchor in a season.
 *
 * @param date the date, or null
 * @param missing why there is no date; null when there is one, and when nothing was
 * logged or tested that the anchor could hang on
 * @param basis a number that changes when the words would
 * @param words the steps that led to the date, under the label given
 */
record AnchorDate(@Nullable LocalDate date, @Nullable String missing, long basis, Function<String, Explanation> words) {

	/** Nobody logged the event; no task, and nothing is missing. */
	static final AnchorDate NOT_LOGGED = new AnchorDate(null, null, 0, (label) -> Explanation.of(label, "not logged"));

	static AnchorDate missing(String why) {
		return new AnchorDate(null, why, why.hashCode(), (label) -> Explanation.of(label, "no date").withDetail(why));
	}

}
