package org.leafward.lookalikes.lab;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A file of laboratories as written. Components are named like the entries of the schema
 * laboratories-1.json, which says what they mean.
 */
record LaboratoryFile(String title, @Nullable Boolean invented, List<Entry> laboratories) {

	/** A laboratory as written. */
	record Entry(String name, @Nullable List<String> counties, @Nullable List<String> regions, List<String> address,
			@Nullable String telephone, @Nullable String mail, @Nullable String page, String takes) {
	}

}
