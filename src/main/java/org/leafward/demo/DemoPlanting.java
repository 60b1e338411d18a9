package org.leafward.demo;

import java.time.LocalDate;
import org.leafward.plants.SpeciesId;
import org.leafward.register.NewPlanting;
import org.leafward.register.Placement;
import org.leafward.register.PlantingSize;
import org.leafward.register.Raised;

/** Short ways to write down an invented planting. */
final class DemoPlanting {

	private DemoPlanting() {
	}

	static NewPlanting ground(String species, String label, int count, String plantedOn) {
		return new NewPlanting(new SpeciesId(species), label, count, LocalDate.parse(plantedOn), Placement.GROUND,
				false, false);
	}

	static NewPlanting besideTheRoad(String species, String label, int count, String plantedOn) {
		return new NewPlanting(new SpeciesId(species), label, count, LocalDate.parse(plantedOn), Placement.GROUND,
				false, true);
	}

	static NewPlanting pot(String species, String label, int count, String plantedOn) {
		return new NewPlanting(new SpeciesId(species), label, count, LocalDate.parse(plantedOn), Placement.CONTAINER,
				true, false);
	}

	static NewPlanting seedlings(String species, String label, int count, LocalDate setOut, Raised raised) {
		return new NewPlanting(new SpeciesId(species), label, count, setOut, Placement.GROUND, false, false,
				PlantingSize.UNKNOWN, raised);
	}

	static NewPlanting area(double squareMetres, NewPlanting planting) {
		return sized(planting, new PlantingSize(squareMetres, null, null));
	}

	static NewPlanting trunk(double millimetres, NewPlanting planting) {
		return sized(planting, new PlantingSize(null, millimetres, null));
	}

	static NewPlanting potOf(double litres, NewPlanting planting) {
		return sized(planting, new PlantingSize(null, null, litres));
	}

	private static NewPlanting sized(NewPlanting one, PlantingSize size) {
		return new NewPlanting(one.species(), one.label(), one.count(), one.plantedOn(), one.placement(),
				one.wintersIndoors(), one.saltExposed(), size, one.raised(), one.bed());
	}

}
