package org.leafward.demo;

import java.time.LocalDate;
import java.util.List;
import org.leafward.register.NewSoilTest;
import org.leafward.register.Planting;
import org.leafward.register.PlantingId;
import org.leafward.register.SoilDrainage;
import org.leafward.register.SoilExtract;
import org.leafward.register.SoilFigures;

/** Soil tests of the invented region; all of them are made up. */
final class DemoSoilTests {

	/** A laboratory takes about two weeks. */
	private static final int DAYS_AGO = 16;

	private DemoSoilTests() {
	}

	/**
	 * The soil tests of a site: a bed that salted steps made sodic, and a normal one.
	 * @param site its name
	 * @param plantings what grows there
	 * @param today the day; samples were taken some days before
	 * @return none for most sites
	 */
	static List<NewSoilTest> of(String site, List<Planting> plantings, LocalDate today) {
		LocalDate day = today.minusDays(DAYS_AGO);
		return switch (site) {
			case "Quill Harbor promenade" -> List.of(new NewSoilTest(bed("wintercreeper at the steps", plantings), day,
					new SoilFigures(8.9, 2.4, SoilExtract.SATURATED_PASTE, 40.0, null, 18.0), 15, SoilDrainage.GOOD,
					"topsoil was brought in; the steps are salted all winter"));
			case "Larkmoor demonstration garden" -> List
				.of(new NewSoilTest(null, day, new SoilFigures(6.9, 0.8, SoilExtract.SATURATED_PASTE, 2.0, null, 22.0),
						15, SoilDrainage.UNTESTED, "ten cores from all over the garden"));
			default -> List.of();
		};
	}

	private static PlantingId bed(String label, List<Planting> plantings) {
		return plantings.stream().filter((one) -> one.label().equals(label)).findFirst().orElseThrow().id();
	}

}
