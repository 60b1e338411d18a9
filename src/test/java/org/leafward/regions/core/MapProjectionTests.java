package org.leafward.regions.core;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.leafward.measure.GeoPoint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

class MapProjectionTests {

	private static final Extent BASIN = new Extent(-91.9, 41.7, -90.7, 42.5);

	@Test
	void thereAndBackIsTheSame() {
		MapProjection on = new MapProjection(BASIN, 344, 6);
		Random random = new Random(1859);
		for (int i = 0; i < 1000; i++) {
			Position point = new Position(-91.9 + 1.2 * random.nextDouble(), 41.7 + 0.8 * random.nextDouble());
			Position back = on.at(on.x(point.longitude()), on.y(point.latitude())).orElseThrow();
			assertThat(back.longitude()).isCloseTo(point.longitude(), within(1e-9));
			assertThat(back.latitude()).isCloseTo(point.latitude(), within(1e-9));
		}
	}

	/**
	 * The scale along both axes against great circles by the haversine formula
	 * (measure.GeoPoint): within half a percent in the middle of a map of 90 km.
	 */
	@Test
	void kilometresAreTheSameInAllDirections() {
		MapProjection on = new MapProjection(BASIN, 560, 0);
		GeoPoint middle = new GeoPoint(42.1, -91.3, 0);
		GeoPoint north = new GeoPoint(42.3, -91.3, 0);
		GeoPoint east = new GeoPoint(42.1, -91.1, 0);
		double up = on.y(42.1) - on.y(42.3);
		double right = on.x(-91.1) - on.x(-91.3);
		assertThat(up / middle.distanceKilometres(north) / on.pixelsPerKilometre()).isCloseTo(1, within(0.005));
		assertThat(right / middle.distanceKilometres(east) / on.pixelsPerKilometre()).isCloseTo(1, within(0.005));
	}

	/** At 60 degrees a degree of longitude is half as long, cos 60° = 1/2. */
	@Test
	void aSquareOfDegreesIsHalfAsWideInTheFarNorth() {
		MapProjection on = new MapProjection(new Extent(10, 59.5, 12, 60.5), 200, 0);
		assertThat(on.height()).isEqualTo(200);
		assertThat(on.x(10)).isCloseTo(0, within(1e-9));
		assertThat(on.y(60.5)).isCloseTo(0, within(1e-9));
		assertThat(on.x(11)).isCloseTo(100, within(1e-9));
	}

	@Test
	void offThePaperLiesNothing() {
		MapProjection on = new MapProjection(BASIN, 344, 6);
		assertThat(on.at(-1, 10)).isEmpty();
		assertThat(on.at(10, on.height() + 1)).isEmpty();
		assertThat(new MapProjection(new Extent(-180, -90, 180, 90), 400, 40).at(2, 2)).isEmpty();
	}

}
