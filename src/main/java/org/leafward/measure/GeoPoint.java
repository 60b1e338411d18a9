package org.leafward.measure;

/**
 * A point on the earth with its height.
 *
 * @param latitude degrees north, -90 to 90
 * @param longitude degrees east, -180 to 180
 * @param elevationMetres metres above mean sea level, -430 (Dead Sea shore) to 8850
 */
public record GeoPoint(double latitude, double longitude, double elevationMetres) {

	/** Mean earth radius, km. IUGG mean radius R1 of the WGS 84 ellipsoid. */
	private static final double EARTH_RADIUS_KM = 6371.0088;

	public GeoPoint {
		Findings all = new Findings();
		double north = latitude;
		double east = longitude;
		double height = elevationMetres;
		all.check(() -> check("latitude", "latitude", north, -90, 90, "degrees north"));
		all.check(() -> check("longitude", "longitude", east, -180, 180, "degrees east"));
		all.check(() -> check("elevationMetres", "elevation", height, -430, 8850, "metres above sea level"));
		all.end();
	}

	private static void check(String field, String what, double value, double low, double high, String unit) {
		if (!(value >= low && value <= high)) {
			throw new BadInput("%s %s is outside %s to %s".formatted(what, value, low, high), field,
					"give %s in %s".formatted(what, unit));
		}
	}

	/**
	 * Great-circle distance by the haversine formula.
	 * @param other the other point; heights are ignored
	 * @return kilometres, 0 to about 20016
	 */
	public double distanceKilometres(GeoPoint other) {
		double phi1 = Math.toRadians(this.latitude);
		double phi2 = Math.toRadians(other.latitude);
		double sinHalfPhi = Math.sin((phi2 - phi1) / 2);
		double sinHalfLambda = Math.sin(Math.toRadians(other.longitude - this.longitude) / 2);
		double h = sinHalfPhi * sinHalfPhi + Math.cos(phi1) * Math.cos(phi2) * sinHalfLambda * sinHalfLambda;
		return 2 * EARTH_RADIUS_KM * Math.asin(Math.min(1, Math.sqrt(h)));
	}

	/**
	 * The hemisphere whose seasons apply here.
	 * @return north on the equator and above
	 */
	public Hemisphere hemisphere() {
		return (this.latitude >= 0) ? Hemisphere.NORTH : Hemisphere.SOUTH;
	}

}
