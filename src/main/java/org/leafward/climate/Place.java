package org.leafward.climate;

import org.leafward.measure.GeoPoint;

/**
 * A place whose climate is asked for. Its daily minimum is a station's, less the lapse
 * rate times the difference in height, plus the offset of its microclimate.
 *
 * @param point coordinates and height
 * @param microclimate what its nights are like
 */
public record Place(GeoPoint point, Microclimate microclimate) {

	/**
	 * Open, level ground at a point.
	 * @param point coordinates and height
	 * @return the place
	 */
	public static Place of(GeoPoint point) {
		return new Place(point, Microclimate.NONE);
	}

}
