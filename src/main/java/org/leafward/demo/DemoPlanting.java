package org.leafward.demo;

import java.time.LocalDate;
import org.leafward.plants.SpeciesId;
import org.leafward.register.NewPlanting;
import org.leafward.register.Placement;

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

	static NewPlanting seedlings(String species, String label, int count, LocalDate setOut) {
		return new NewPlanting(new SpeciesId(species), label, count, setOut, Placement.GROUND, false, false);
	}

}
