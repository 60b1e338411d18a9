package org.leafward.quick;

import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.leafward.language.Speech;
import org.leafward.measure.BadInput;
import org.leafward.plants.SpeciesId;
import org.leafward.register.NewSite;

/**
 * A calendar to be made.
 *
 * @param key of the form that asks for it; asked for twice with the same key, the second
 * calendar takes the place of the first
 * @param site the place
 * @param species what grows there, 1 to 40 species
 * @param young those that were planted within the last two years
 * @param speech language and units of the calendar
 */
public record NewQuickCalendar(UUID key, NewSite site, List<SpeciesId> species, Set<SpeciesId> young, Speech speech) {

	/** Species in a quick calendar; who has more needs a register. */
	public static final int MOST = 40;

	/**
	 * Checks the number of species.
	 * @throws BadInput when there are none or too many
	 */
	public NewQuickCalendar {
		species = species.stream().distinct().toList();
		young = Set.copyOf(young);
		checkCount(species.size());
	}

	/**
	 * Checks a number of species.
	 * @param count how many
	 * @throws BadInput when there are none or too many
	 */
	public static void checkCount(int count) {
		if (count == 0) {
			throw new BadInput("no plant is on your list yet", "search", "add at least one");
		}
		if (count > MOST) {
			throw new BadInput("%,d plants are on your list".formatted(count), "search",
					"keep up to %d; make another calendar for the others".formatted(MOST));
		}
	}

}
