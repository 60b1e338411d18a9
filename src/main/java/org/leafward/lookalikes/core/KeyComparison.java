package org.leafward.lookalikes.core;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What another key would have said of recorded cases.
 *
 * @param moved cases whose first three causes would differ, those whose settled cause
 * falls first
 * @param cases how many were compared
 * @param settled of these those with a settled cause
 * @param rightBefore of the settled ones those that the key in force ranks first
 * @param rightAfter of the settled ones those that the other key ranks first
 */
public record KeyComparison(List<Moved> moved, int cases, int settled, int rightBefore, int rightAfter) {

	private static final int SHOWN = 3;

	/**
	 * A case that would be ranked otherwise.
	 *
	 * @param recorded the case
	 * @param before its first three causes by the key in force
	 * @param after by the other key
	 * @param rankBefore rank of the settled cause; 0 when there is none or the key does
	 * not know it
	 * @param rankAfter likewise by the other key
	 */
	public record Moved(RecordedCase recorded, List<Finding> before, List<Finding> after, int rankBefore,
			int rankAfter) {

		/**
		 * Whether the settled cause would fall.
		 * @return false without a settled cause
		 */
		public boolean worse() {
			return this.rankBefore > 0 && (this.rankAfter == 0 || this.rankAfter > this.rankBefore);
		}

	}

	public KeyComparison {
		moved = List.copyOf(moved);
	}

	/**
	 * Compares two keys.
	 * @param now the key in force
	 * @param other the other key
	 * @param cases the cases
	 * @return what would differ
	 */
	public static KeyComparison of(Key now, Key other, List<RecordedCase> cases) {
		List<Moved> moved = new ArrayList<>();
		int settled = 0;
		int rightBefore = 0;
		int rightAfter = 0;
		for (RecordedCase one : cases) {
			Ranking before = Differential.rank(now, one.answers(), one.record());
			Ranking after = Differential.rank(other, one.answers(), one.record());
			int rankBefore = rank(before, one.settled());
			int rankAfter = rank(after, one.settled());
			settled += (one.settled() != null) ? 1 : 0;
			rightBefore += (rankBefore == 1) ? 1 : 0;
			rightAfter += (rankAfter == 1) ? 1 : 0;
			if (!names(before).equals(names(after))) {
				moved.add(new Moved(one, top(before), top(after), rankBefore, rankAfter));
			}
		}
		moved.sort((one, two) -> Boolean.compare(two.worse(), one.worse()));
		return new KeyComparison(moved, cases.size(), settled, rightBefore, rightAfter);
	}

	private static int rank(Ranking ranking, @Nullable String cause) {
		return (cause != null) ? ranking.rank(cause) : 0;
	}

	private static List<Finding> top(Ranking ranking) {
		return ranking.findings().stream().limit(SHOWN).toList();
	}

	private static List<String> names(Ranking ranking) {
		return top(ranking).stream().map((one) -> one.cause().id()).toList();
	}

}
