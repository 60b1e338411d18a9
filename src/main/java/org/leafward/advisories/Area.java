package org.leafward.advisories;

import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.leafward.measure.BadInput;
import org.leafward.measure.GeoPoint;
import org.leafward.regions.core.Position;
import org.leafward.regions.core.Ring;

/**
 * Where an advisory holds: in some counties, or in that part of them that lies in one of
 * the rings.
 *
 * @param counties codes of counties ({@code regions.County.code}), at least one
 * @param rings closed lines; none for the counties as a whole
 */
public record Area(Set<String> counties, List<Ring> rings) {

	/** A bound against files that were meant for something else. */
	public static final int MOST_RINGS = 10;

	/** Corners of one ring. */
	public static final int MOST_CORNERS = 200;

	/**
	 * Checks the area.
	 * @throws BadInput when there is no county, or too many rings
	 */
	public Area {
		counties = Set.copyOf(counties);
		rings = List.copyOf(rings);
		if (counties.isEmpty()) {
			throw new BadInput("no county is chosen", "counties", "choose those in which people are to be told");
		}
		if (rings.size() > MOST_RINGS || rings.stream().anyMatch((ring) -> ring.positions().size() > MOST_CORNERS)) {
			throw new BadInput("the outline is too long", "polygon",
					"give at most %d outlines of at most %d corners each".formatted(MOST_RINGS, MOST_CORNERS));
		}
	}

	/**
	 * Counties as a whole.
	 * @param counties codes of counties, at least one
	 * @return the area
	 */
	public static Area of(Collection<String> counties) {
		return new Area(new TreeSet<>(counties), List.of());
	}

	/**
	 * Whether a place lies in it.
	 * @param county code of its county
	 * @param point the place
	 * @return on an outline either answer
	 */
	public boolean holds(String county, GeoPoint point) {
		return this.counties.contains(county) && (this.rings.isEmpty() || this.rings.stream()
			.anyMatch((ring) -> ring.contains(new Position(point.longitude(), point.latitude()))));
	}

}
