package org.leafward.regions.core;

import org.leafward.measure.BadInput;

/**
 * A position of GeoJSON (RFC 7946, section 3.1.1), without its height.
 *
 * @param longitude degrees east, -180 to 180
 * @param latitude degrees north, -90 to 90
 */
public record Position(double longitude, double latitude) {

	/**
	 * Checks the bounds.
	 * @throws BadInput when a coordinate lies outside
	 */
	public Position {
		if (!(longitude >= -180 && longitude <= 180) || !(latitude >= -90 && latitude <= 90)) {
			throw new BadInput("the position %s, %s is not on the earth".formatted(longitude, latitude), "coordinates",
					"write longitude (-180 to 180) before latitude (-90 to 90), in degrees");
		}
	}

}
