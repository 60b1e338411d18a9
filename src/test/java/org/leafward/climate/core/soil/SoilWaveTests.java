package org.leafward.climate.core.soil;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.leafward.support.SharedData;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

class SoilWaveTests {

	private static final SoilWave DAILY = new SoilWave(20, 7, SoilWave.DAY, 0.5e-6);

	private static final SoilWave YEARLY = new SoilWave(12, 12, SoilWave.YEAR, 0.5e-6);

	/** The table's head names the source. */
	@Test
	void dampingAgreesWithThePublishedValues() {
		Map<String, Double> computed = Map.of("depth", DAILY.dampingDepth() * 100, "amplitude", DAILY.amplitudeAt(0.1),
				"ratio", YEARLY.dampingDepth() / DAILY.dampingDepth());
		assertThat(SharedData.table("soil/damping.csv")).hasSize(3)
			.allSatisfy((row) -> assertThat(computed.get(row[0])).as(row[0])
				.isCloseTo(Double.parseDouble(row[2]), within(Double.parseDouble(row[3]))));
	}

	/** The heat equation itself: dT/dt = diffusivity · d²T/dz², by differences. */
	@Test
	void solvesTheHeatEquation() {
		double step = 1e-3;
		for (double depth = 0.05; depth < 2; depth += 0.35) {
			for (double day = 3; day < 365; day += 31) {
				double time = day * SoilWave.DAY;
				double change = (YEARLY.celsius(depth, time + 60) - YEARLY.celsius(depth, time - 60)) / 120;
				double bend = (YEARLY.celsius(depth + step, time) - 2 * YEARLY.celsius(depth, time)
						+ YEARLY.celsius(depth - step, time)) / (step * step);
				assertThat(change).isCloseTo(0.5e-6 * bend, within(1e-9));
			}
		}
	}

	@Test
	void surfaceSwingsByTheAmplitudeAndTheLagGrowsWithDepth() {
		assertThat(DAILY.celsius(0, SoilWave.DAY / 4)).isCloseTo(27, within(1e-9));
		assertThat(DAILY.celsius(0.3, SoilWave.DAY / 4 + DAILY.lagAt(0.3))).isCloseTo(20 + DAILY.amplitudeAt(0.3),
				within(1e-9));
		assertThat(YEARLY.lagAt(0.2)).isCloseTo(2 * YEARLY.lagAt(0.1), within(1e-6));
	}

	@Test
	void refusesWhatIsNoSoil() {
		assertThatIllegalArgumentException().isThrownBy(() -> new SoilWave(10, 5, SoilWave.DAY, 0));
		assertThatIllegalArgumentException().isThrownBy(() -> new SoilWave(10, -1, SoilWave.DAY, 1e-6));
	}

}
