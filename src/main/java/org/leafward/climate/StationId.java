package org.leafward.climate;

import java.util.regex.Pattern;
import org.leafward.measure.BadInput;

/**
 * Identifier of a weather station, 11 characters as in GHCN-Daily: country, network,
 * number.
 *
 * @param value for example {@code USW00094728}
 */
public record StationId(String value) {

	private static final Pattern SHAPE = Pattern.compile("[A-Z0-9_-]{11}");

	public StationId {
		if (!SHAPE.matcher(value).matches()) {
			throw new BadInput("station id '%s' is not 11 capital letters and digits".formatted(value), "id",
					"use the GHCN-Daily identifier, for example USW00094728");
		}
	}

}
