package org.leafward.plants;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Names of plants in another language, as written.
 *
 * @param species by id
 * @param groups words by id
 */
record PlantWordsFile(Map<String, Names> species, @Nullable Map<String, String> groups) {

	/**
	 * The names of a species.
	 *
	 * @param common the usual one
	 * @param alsoCalled further ones
	 */
	record Names(String common, @Nullable List<String> alsoCalled) {
	}

}
