package org.leafward.workdays.effort;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A file of efforts as written. Components are named like the entries of the schema
 * effort-1.json, which says what they mean.
 */
record EffortFile(String title, List<Entry> works) {

	/** A kind of work as written. */
	record Entry(String work, int start, double plant, @Nullable Double squareMetre, @Nullable List<String> skills,
			@Nullable List<String> tools, String source) {
	}

}
