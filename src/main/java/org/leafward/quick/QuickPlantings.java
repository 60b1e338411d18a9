package org.leafward.quick;

import java.time.LocalDate;
import java.time.Month;
import java.util.List;
import java.util.function.IntFunction;
import org.leafward.climate.LocalClimate;
import org.leafward.climate.MarkerKey;
import org.leafward.climate.MarkerKind;
import org.leafward.climate.PlaceMarkers;
import org.leafward.climate.TemperatureThreshold;
import org.leafward.climate.Place;
import org.leafward.climate.SeasonMarker;
import org.leafward.measure.BadInput;
import org.leafward.measure.GeoPoint;
import org.leafward.measure.Hemisphere;
import org.leafward.plants.Catalogue;
import org.leafward.plants.Species;
import org.leafward.plants.SpeciesId;
import org.leafward.quick.core.PlantedWhen;
import org.leafward.quick.core.SpringFreezes;
import org.leafward.register.NewPlanting;
import org.leafward.register.Placement;
import org.springframework.stereotype.Component;

/** Makes plantings of what somebody ticked, by the climate of the place. */
@Component
public class QuickPlantings {

	private static final int USUAL = 50;

	private static final int SAFE = 10;

	/** Days around which the last freezes are taken where no station tells. */
	private static final int UNTOLD_USUAL = 1;

	private static final int UNTOLD_SAFE = 15;

	private static final List<String> IN_POTS_INDOORS = List.of("houseplant", "orchid", "succulent", "citrus");

	private final LocalClimate climate;

	private final Catalogue catalogue;

	QuickPlantings(LocalClimate climate, Catalogue catalogue) {
		this.climate = climate;
		this.catalogue = catalogue;
	}

	/**
	 * How dates of planting are told at a place.
	 * @param point the place
	 * @param today its day
	 * @return by the last freezes there
	 */
	public PlantedWhen at(GeoPoint point, LocalDate today) {
		Hemisphere hemisphere = point.hemisphere();
		IntFunction<SpringFreezes> freezes = (season) -> this.climate.answer(Place.of(point),
				(markers) -> new SpringFreezes(
						lastFreeze(markers, USUAL, season, untold(season, hemisphere, UNTOLD_USUAL)),
						lastFreeze(markers, SAFE, season, untold(season, hemisphere, UNTOLD_SAFE))));
		return new PlantedWhen(today, hemisphere, freezes);
	}

	private static LocalDate lastFreeze(PlaceMarkers markers, int probability, int season, LocalDate untold) {
		return markers
			.on(new MarkerKey(MarkerKind.LAST_SPRING_FREEZE, TemperatureThreshold.parse("32F"), probability), season)
			.map(SeasonMarker::date)
			.orElse(untold);
	}

	private static LocalDate untold(int season, Hemisphere hemisphere, int day) {
		return LocalDate.of(season, (hemisphere == Hemisphere.NORTH) ? Month.MAY : Month.NOVEMBER, day);
	}

	List<NewPlanting> of(NewQuickCalendar wanted, PlantedWhen when) {
		return wanted.species().stream().map((id) -> planting(id, wanted.young().contains(id), when)).toList();
	}

	/**
	 * A planting of a species.
	 * @param id the species
	 * @param young whether it was planted within the last two years
	 * @param when how dates are told at the place
	 * @return in the ground, or in a pot that winters indoors
	 * @throws BadInput when the species is not in the catalogue
	 */
	public NewPlanting planting(SpeciesId id, boolean young, PlantedWhen when) {
		Species species = this.catalogue.find(id)
			.orElseThrow(() -> new BadInput("species '%s' is not in the catalogue".formatted(id.value()), "search",
					"look it up by its name"));
		boolean indoors = indoors(species);
		return new NewPlanting(id, species.commonName(), 1, when.of(species, young),
				indoors ? Placement.CONTAINER : Placement.GROUND, indoors, false);
	}

	/**
	 * Whether a species is grown in pots that winter indoors.
	 * @param species the species
	 * @return true for houseplants and citrus
	 */
	public static boolean indoors(Species species) {
		return species.groups().stream().anyMatch(IN_POTS_INDOORS::contains);
	}

}
