package org.leafward.amounts.limits;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A file of limits as written. Components are named like the entries of the schema
 * watering-1.json, which says what they mean.
 */
record WateringFile(String title, List<Entry> limits) {

	/** A limit as written. */
	record Entry(String county, List<String> days, @Nullable Clock hours, String concerns, String source,
			@Nullable String address) {
	}

	/** Hours as written. */
	record Clock(String from, String to) {
	}

}
