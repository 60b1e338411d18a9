package org.leafward.care.core.check;

import org.jspecify.annotations.Nullable;
import org.leafward.plants.SpeciesId;

/**
 * A task that falls into a hold-off from the same work.
 *
 * @param task the do or ramp, as {@code pack/rule}
 * @param holdOff the hold-off, as {@code pack/rule}
 * @param example a species that both are for; null when they are about a site as a whole
 * @param place the reference climate where most days are shared
 * @param shared days of the task there that lie inside the hold-off, 1 or more
 * @param left days that remain when the task is cut to its longer side outside
 * @param settled whether the task names the hold-off under {@code despite}
 * @param never whether nothing is ever left of the task, on any reference climate, for
 * the plantings of that species
 */
public record Contradiction(String task, String holdOff, @Nullable SpeciesId example, String place, int shared,
		int left, boolean settled, boolean never) {

	/**
	 * The contradiction for specialists.
	 * @return one sentence or two
	 */
	public String words() {
		String what = "%s shares %d days with the hold-off %s (%s, %s). ".formatted(this.task, this.shared,
				this.holdOff, (this.example != null) ? this.example.value() : "the site as a whole", this.place);
		if (this.settled) {
			return what + "It goes before the hold-off.";
		}
		return what + "The hold-off goes before: " + ((this.left > 0)
				? "the task is cut to %d days.".formatted(this.left) : "nothing is left of the task there.");
	}

}
