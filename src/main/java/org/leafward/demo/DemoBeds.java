package org.leafward.demo;

import java.util.List;
import org.leafward.register.NewBed;
import org.leafward.register.Sun;
import org.leafward.register.Wind;

/** The invented beds. */
final class DemoBeds {

	private DemoBeds() {
	}

	/**
	 * A bed and what stands in it.
	 *
	 * @param bed the bed
	 * @param labels labels of its plantings
	 */
	record DemoBed(NewBed bed, List<String> labels) {
	}

	static List<DemoBed> of(String site) {
		if (!site.equals("Quill Harbor promenade")) {
			return List.of();
		}
		return List.of(
				new DemoBed(new NewBed("road side", null, Wind.EXPOSED, null),
						List.of("junipers along the road", "rugosa roses")),
				new DemoBed(new NewBed("lee of the wall", Sun.PART_SHADE, Wind.SHELTERED, 12.0),
						List.of("wintercreeper at the steps", "rose of Sharon")));
	}

}
