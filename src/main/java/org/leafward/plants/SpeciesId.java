package org.leafward.plants;

import java.util.regex.Pattern;
import org.leafward.measure.BadInput;

/**
 * Identifier of a species in the catalogue: its botanical name in lower case with
 * hyphens.
 *
 * @param value for example {@code buxus-sempervirens}
 */
public record SpeciesId(String value) {

	private static final Pattern SHAPE = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");

	public SpeciesId {
		if (value.length() > 80 || !SHAPE.matcher(value).matches()) {
			throw new BadInput("species '%s' is not a catalogue id".formatted(value), "species",
					"use lower-case words joined by hyphens, for example buxus-sempervirens");
		}
	}

}
