package org.leafward.regions.core;

import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leafward.measure.BadInput;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

class AreaTests {

	/** RFC 7946, appendix A.3, the polygon with a hole. */
	private static final Area WITH_HOLE = new Area(
			List.of(new Area.Polygon(ring(100.0, 0.0, 101.0, 0.0, 101.0, 1.0, 100.0, 1.0, 100.0, 0.0),
					List.of(ring(100.8, 0.8, 100.8, 0.2, 100.2, 0.2, 100.2, 0.8, 100.8, 0.8)))));

	/** RFC 7946, appendix A.6: two polygons, the second with a hole. */
	private static final Area TWO = new Area(
			List.of(new Area.Polygon(ring(102.0, 2.0, 103.0, 2.0, 103.0, 3.0, 102.0, 3.0, 102.0, 2.0), List.of()),
					new Area.Polygon(ring(100.0, 0.0, 101.0, 0.0, 101.0, 1.0, 100.0, 1.0, 100.0, 0.0),
							List.of(ring(100.2, 0.2, 100.2, 0.8, 100.8, 0.8, 100.8, 0.2, 100.2, 0.2)))));

	static Ring ring(double... coordinates) {
		List<Position> positions = new ArrayList<>();
		for (int i = 0; i < coordinates.length; i += 2) {
			positions.add(new Position(coordinates[i], coordinates[i + 1]));
		}
		return new Ring(positions);
	}

	/** Read off the shapes of RFC 7946, appendix A. */
	@ParameterizedTest
	@CsvSource({ "100.1, 0.5, true, true", "100.5, 0.5, false, false", "100.5, 0.1, true, true",
			"100.9, 0.9, true, true", "101.1, 0.5, false, false", "100.5, 1.1, false, false", "102.5, 2.5, false, true",
			"102.5, 0.5, false, false", "-100.1, 0.5, false, false" })
	void pointsOfTheStandardsShapes(double longitude, double latitude, boolean first, boolean second) {
		Position point = new Position(longitude, latitude);
		assertThat(WITH_HOLE.contains(point)).isEqualTo(first);
		assertThat(TWO.contains(point)).isEqualTo(second);
	}

	/** The JDK's java.awt.geom.Path2D with the even-odd rule is the reference. */
	@Test
	void agreesWithAnotherImplementationOnAStarThatFoldsBack() {
		Random random = new Random(7946);
		for (int shape = 0; shape < 40; shape++) {
			List<Position> line = new ArrayList<>();
			Path2D path = new Path2D.Double(Path2D.WIND_EVEN_ODD);
			for (int i = 0; i < 17; i++) {
				Position one = new Position(-92 + random.nextDouble(), 42 + random.nextDouble());
				line.add(one);
				if (i == 0) {
					path.moveTo(one.longitude(), one.latitude());
				}
				else {
					path.lineTo(one.longitude(), one.latitude());
				}
			}
			line.add(line.get(0));
			path.closePath();
			Ring ring = new Ring(line);
			for (int i = 0; i < 500; i++) {
				Position point = new Position(-92.2 + 1.4 * random.nextDouble(), 41.8 + 1.4 * random.nextDouble());
				assertThat(ring.contains(point)).as("%s in %s", point, line)
					.isEqualTo(path.contains(point.longitude(), point.latitude()));
			}
		}
	}

	@Test
	void neighboursNeitherShareNorLeaveOutAPointOfTheirLine() {
		Ring west = ring(0, 0, 2, 0, 1.3, 1.7, 2, 3, 0, 3, 0, 0);
		Ring east = ring(2, 0, 4, 0, 4, 3, 2, 3, 1.3, 1.7, 2, 0);
		for (int i = 1; i < 300; i++) {
			double latitude = 3.0 * i / 300;
			double longitude = (latitude <= 1.7) ? 2 - 0.7 * latitude / 1.7 : 1.3 + 0.7 * (latitude - 1.7) / 1.3;
			Position onTheLine = new Position(longitude, latitude);
			assertThat(west.contains(onTheLine) ^ east.contains(onTheLine)).as("%s", onTheLine).isTrue();
		}
	}

	/** A square of one degree; RFC 7946, section 3.1.6: counter-clockwise is outside. */
	@Test
	void theDirectionOfARingShowsInItsArea() {
		assertThat(WITH_HOLE.polygons().get(0).outer().signedArea()).isCloseTo(1, within(1e-9));
		assertThat(WITH_HOLE.polygons().get(0).holes().get(0).signedArea()).isCloseTo(-0.36, within(1e-9));
	}

	@Test
	void aPointInsideIsInsideEvenBesideAHoleAndInABow() {
		Area bow = new Area(
				List.of(new Area.Polygon(ring(0, 0, 5, 0, 5, 5, 4, 5, 4, 1, 1, 1, 1, 5, 0, 5, 0, 0), List.of())));
		for (Area area : List.of(WITH_HOLE, TWO, bow)) {
			assertThat(area.contains(area.inside())).isTrue();
		}
	}

	@Test
	void whatIsNoRingIsRefusedWithAWayToMendIt() {
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> ring(0, 0, 1, 0, 0, 0))
			.withMessageContaining("3 positions");
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> ring(0, 0, 1, 0, 1, 1, 0, 1))
			.withMessageContaining("not closed")
			.satisfies((ex) -> assertThat(ex.mend()).contains("[0.0, 0.0]"));
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> ring(0, 0, 1, 1, 2, 2, 0, 0))
			.withMessageContaining("no area");
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> ring(179, 0, -179, 0, -179, 1, 179, 1, 179, 0))
			.withMessageContaining("180th");
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> new Position(42.1, -91.6))
			.satisfies((ex) -> assertThat(ex.mend()).contains("longitude").contains("before latitude"));
	}

}
