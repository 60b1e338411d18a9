package org.leafward.care;

import java.util.List;
import java.util.Map;

/**
 * What publishing a draft would do to the tasks.
 *
 * @param sites sites that were planned
 * @param whole whether these are all sites of the register
 * @param outOfTime whether it stopped because the time was up
 * @param touched sites with a change
 * @param total over all counties
 * @param counties by county; without those where nothing changes
 * @param samples some of the changes, from as many counties as there is room for
 */
public record RulePreview(int sites, boolean whole, boolean outOfTime, int touched, Counts total,
		Map<String, Counts> counties, List<PreviewedChange> samples) {

	public RulePreview {
		samples = List.copyOf(samples);
	}

	/**
	 * Numbers of tasks.
	 *
	 * @param added new ones, or such as come back
	 * @param changed with other days or words
	 * @param withdrawn no longer needed
	 */
	public record Counts(int added, int changed, int withdrawn) {

		/** None. */
		public static final Counts NONE = new Counts(0, 0, 0);

		Counts plus(Counts other) {
			return new Counts(this.added + other.added, this.changed + other.changed, this.withdrawn + other.withdrawn);
		}

		/** Whether there is any. */
		public boolean any() {
			return this.added + this.changed + this.withdrawn > 0;
		}

	}

}
