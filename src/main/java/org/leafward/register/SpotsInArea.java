package org.leafward.register;

import java.util.Collection;
import java.util.List;
import org.leafward.measure.GeoPoint;
import org.leafward.plants.SpeciesId;
import org.leafward.register.store.SpotTable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Sites within a part of the map, for those who tell people what concerns them. */
@Service
public class SpotsInArea {

	/** Sites of one answer. */
	public static final int MOST = 200_000;

	private final SpotTable spots;

	SpotsInArea(SpotTable spots) {
		this.spots = spots;
	}

	/**
	 * Sites in a box, without the server's own.
	 * @param southWest one corner; heights don't matter
	 * @param northEast the other; the box doesn't cross the 180th meridian
	 * @return with all of their plantings, at most {@value #MOST}
	 */
	@Transactional(readOnly = true)
	public List<SpotInArea> in(GeoPoint southWest, GeoPoint northEast) {
		return this.spots.in(southWest, northEast, null);
	}

	/**
	 * Sites in a box where some plants grow, without the server's own.
	 * @param southWest one corner; heights don't matter
	 * @param northEast the other; the box doesn't cross the 180th meridian
	 * @param species the plants
	 * @return with their plantings of these, at most {@value #MOST}
	 */
	@Transactional(readOnly = true)
	public List<SpotInArea> growing(GeoPoint southWest, GeoPoint northEast, Collection<SpeciesId> species) {
		return species.isEmpty() ? List.of()
				: this.spots.in(southWest, northEast, species.stream().map(SpeciesId::value).toArray(String[]::new));
	}

}
