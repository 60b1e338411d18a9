package org.leafward.care;

import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.register.PlantingId;
import org.leafward.register.SiteId;

/**
 * A calculator's answer that somebody kept for a planting.
 *
 * @param id identifier
 * @param site where the planting grows
 * @param planting for which it was kept
 * @param by who kept it; null when an operator did
 * @param calculator its name in addresses
 * @param inputs what it was asked, as it stands in an address, at most 2,000 characters
 * @param words the answer of then, at most 1,000 characters
 * @param day on which it was kept, in the time zone of the site
 * @param keptAt when
 */
public record KeptCalculation(UUID id, SiteId site, PlantingId planting, @Nullable PersonId by, String calculator,
		String inputs, String words, LocalDate day, Instant keptAt) {

	/** Length of the inputs. */
	public static final int LONGEST_INPUTS = 2000;

	/** Length of the answer. */
	public static final int LONGEST_WORDS = 1000;

}
