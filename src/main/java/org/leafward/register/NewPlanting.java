package org.leafward.register;

import java.time.LocalDate;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.leafward.measure.BadInput;
import org.leafward.measure.Findings;
import org.leafward.plants.SpeciesId;

/**
 * A planting to be added to a site.
 *
 * @param species species of the catalogue
 * @param label what its people call it, 1 to 100 characters
 * @param count number of plants, 1 to 100,000
 * @param plantedOn day it was or will be planted, 1700 to 2199
 * @param placement in the ground or in a container
 * @param wintersIndoors whether it is kept indoors in winter
 * @param saltExposed whether de-icing salt reaches it
 * @param size how large it is, as far as anyone told
 * @param raised where it stands before it goes out; null when nobody told
 * @param bed the bed of the site in which it stands; null for none
 */
public record NewPlanting(SpeciesId species, String label, int count, LocalDate plantedOn, Placement placement,
		boolean wintersIndoors, boolean saltExposed, PlantingSize size, @Nullable Raised raised, @Nullable BedId bed) {

	/**
	 * A planting of which no more is known.
	 * @param species species of the catalogue
	 * @param label what its people call it, 1 to 100 characters
	 * @param count number of plants, 1 to 100,000
	 * @param plantedOn day it was or will be planted, 1700 to 2199
	 * @param placement in the ground or in a container
	 * @param wintersIndoors whether it is kept indoors in winter
	 * @param saltExposed whether de-icing salt reaches it
	 */
	public NewPlanting(SpeciesId species, String label, int count, LocalDate plantedOn, Placement placement,
			boolean wintersIndoors, boolean saltExposed) {
		this(species, label, count, plantedOn, placement, wintersIndoors, saltExposed, PlantingSize.UNKNOWN, null,
				null);
	}

	/**
	 * A planting that stands in no bed.
	 * @param species species of the catalogue
	 * @param label what its people call it, 1 to 100 characters
	 * @param count number of plants, 1 to 100,000
	 * @param plantedOn day it was or will be planted, 1700 to 2199
	 * @param placement in the ground or in a container
	 * @param wintersIndoors whether it is kept indoors in winter
	 * @param saltExposed whether de-icing salt reaches it
	 * @param size how large it is, as far as anyone told
	 * @param raised where it stands before it goes out; null when nobody told
	 */
	public NewPlanting(SpeciesId species, String label, int count, LocalDate plantedOn, Placement placement,
			boolean wintersIndoors, boolean saltExposed, PlantingSize size, @Nullable Raised raised) {
		this(species, label, count, plantedOn, placement, wintersIndoors, saltExposed, size, raised, null);
	}

	/**
	 * The same in a bed.
	 * @param chosen a bed of the site, or null
	 * @return the planting
	 */
	public NewPlanting in(@Nullable BedId chosen) {
		return new NewPlanting(this.species, this.label, this.count, this.plantedOn, this.placement,
				this.wintersIndoors, this.saltExposed, this.size, this.raised, chosen);
	}

	public NewPlanting {
		Findings all = new Findings();
		String called = label;
		int number = count;
		LocalDate day = plantedOn;
		Supplier<String> line = all.read(() -> Words.line("label", called, 1, 100));
		all.check(() -> checkCount(number));
		all.check(() -> checkDay(day));
		label = all.give(line);
	}

	private static void checkCount(int count) {
		if (count < 1 || count > 100_000) {
			throw new BadInput("count %d is outside 1 to 100,000".formatted(count), "count",
					"give the number of plants");
		}
	}

	static void checkDay(LocalDate plantedOn) {
		if (plantedOn.getYear() < 1700 || plantedOn.getYear() > 2199) {
			throw new BadInput("planting date %s is outside 1700 to 2199".formatted(plantedOn), "plantedOn",
					"write the date as year-month-day, for example 2026-05-12");
		}
	}

}
