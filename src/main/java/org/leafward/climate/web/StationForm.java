package org.leafward.climate.web;

import org.jspecify.annotations.Nullable;
import org.leafward.climate.Station;
import org.leafward.climate.StationId;
import org.leafward.measure.BadInput;
import org.leafward.measure.GeoPoint;

/**
 * A station as the API takes and gives it.
 *
 * @param id GHCN-Daily identifier, 11 characters
 * @param name the station's name
 * @param latitude degrees north
 * @param longitude degrees east
 * @param elevationMetres metres above sea level
 * @param invented whether its record was made up; ignored when given
 */
public record StationForm(@Nullable String id, @Nullable String name, @Nullable Double latitude,
		@Nullable Double longitude, @Nullable Double elevationMetres, @Nullable Boolean invented) {

	static StationForm of(Station station) {
		GeoPoint point = station.point();
		return new StationForm(station.id().value(), station.name(), point.latitude(), point.longitude(),
				point.elevationMetres(), station.invented());
	}

	Station station() {
		GeoPoint point = new GeoPoint(given(this.latitude, "latitude"), given(this.longitude, "longitude"),
				given(this.elevationMetres, "elevationMetres"));
		return new Station(new StationId(given(this.id, "id")), given(this.name, "name").strip(), point, false);
	}

	private static <T> T given(@Nullable T value, String field) {
		if (value == null) {
			throw new BadInput("%s is missing".formatted(field), field, "add it");
		}
		return value;
	}

}
