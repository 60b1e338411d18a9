package org.leafward.register;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.leafward.plants.SpeciesId;

/**
 * One or more plants of one species at a site.
 *
 * @param id identifier
 * @param site where it grows
 * @param species species of the catalogue
 * @param label what its people call it, for example "hedge by the gate"
 * @param count number of plants, 1 or more
 * @param plantedOn day it was or will be planted (for seedlings: set out)
 * @param placement in the ground or in a container
 * @param wintersIndoors whether it is kept indoors in winter
 * @param saltExposed whether de-icing salt reaches it
 * @param size how large it is, as far as anyone told
 * @param raised where it stands before it goes out; null when nobody told
 * @param bed the bed of its site in which it stands; null for none
 */
public record Planting(PlantingId id, SiteId site, SpeciesId species, String label, int count, LocalDate plantedOn,
		Placement placement, boolean wintersIndoors, boolean saltExposed, PlantingSize size, @Nullable Raised raised,
		@Nullable BedId bed) {

	/**
	 * A planting of which no more is known.
	 * @param id identifier
	 * @param site where it grows
	 * @param species species of the catalogue
	 * @param label what its people call it
	 * @param count number of plants, 1 or more
	 * @param plantedOn day it was or will be planted
	 * @param placement in the ground or in a container
	 * @param wintersIndoors whether it is kept indoors in winter
	 * @param saltExposed whether de-icing salt reaches it
	 */
	public Planting(PlantingId id, SiteId site, SpeciesId species, String label, int count, LocalDate plantedOn,
			Placement placement, boolean wintersIndoors, boolean saltExposed) {
		this(id, site, species, label, count, plantedOn, placement, wintersIndoors, saltExposed, PlantingSize.UNKNOWN,
				null, null);
	}

	/**
	 * A planting that stands in no bed.
	 * @param id identifier
	 * @param site where it grows
	 * @param species species of the catalogue
	 * @param label what its people call it
	 * @param count number of plants, 1 or more
	 * @param plantedOn day it was or will be planted
	 * @param placement in the ground or in a container
	 * @param wintersIndoors whether it is kept indoors in winter
	 * @param saltExposed whether de-icing salt reaches it
	 * @param size how large it is, as far as anyone told
	 * @param raised where it stands before it goes out; null when nobody told
	 */
	public Planting(PlantingId id, SiteId site, SpeciesId species, String label, int count, LocalDate plantedOn,
			Placement placement, boolean wintersIndoors, boolean saltExposed, PlantingSize size,
			@Nullable Raised raised) {
		this(id, site, species, label, count, plantedOn, placement, wintersIndoors, saltExposed, size, raised, null);
	}

}
