package org.leafward.care.core.check;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.leafward.climate.MarkerKey;
import org.leafward.climate.MarkerKind;
import org.leafward.climate.TemperatureThreshold;
import org.leafward.support.SharedData;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * The reference climates against the published normals that they are made of, and against
 * those that they are not made of (other thresholds, the 10 % dates).
 */
class ReferenceClimateTests {

	private static ReferenceClimate climate(String name) {
		return ReferenceClimate.ALL.stream().filter((one) -> one.name().equals(name)).findFirst().orElseThrow();
	}

	private static int day(String monthDay) {
		return LocalDate.parse("2001-" + monthDay).getDayOfYear();
	}

	private static int date(String[] row, int probability) {
		MarkerKind kind = row[1].equals("last") ? MarkerKind.LAST_SPRING_FREEZE : MarkerKind.FIRST_FALL_FREEZE;
		return climate(row[0]).date(new MarkerKey(kind, TemperatureThreshold.parse(row[2] + "F"), probability))
			.orElseThrow();
	}

	@Test
	void middleDatesAndSpreadsAtFreezingAreThePublishedOnes() {
		List<String[]> rows = SharedData.table("climate/reference-climates.csv")
			.stream()
			.filter((row) -> row[2].equals("32"))
			.toList();
		assertThat(rows).hasSize(6).allSatisfy((row) -> {
			assertThat(date(row, 50)).as("%s %s", row[0], row[1]).isEqualTo(day(row[4]));
			assertThat(date(row, 90)).as("%s %s", row[0], row[1]).isEqualTo(day(row[5]));
		});
	}

	@Test
	void otherThresholdsAndCautiousDatesComeWithinADozenDaysOfThePublishedOnes() {
		List<Integer> misses = new ArrayList<>();
		for (String[] row : SharedData.table("climate/reference-climates.csv")) {
			if (!row[3].isEmpty()) {
				misses.add(Math.abs(date(row, 10) - day(row[3])));
				misses.add(Math.abs(date(row, 50) - day(row[4])));
				misses.add(Math.abs(date(row, 90) - day(row[5])));
			}
		}
		assertThat(misses).hasSize(48).allMatch((days) -> days <= 12);
		assertThat(misses.stream().mapToInt(Integer::intValue).average().orElseThrow()).isLessThan(4);
	}

	@Test
	void curvesHaveThePublishedSeasonalMeans() {
		for (String[] row : SharedData.table("climate/reference-temperatures.csv")) {
			YearCurve curve = row[1].equals("min") ? climate(row[0]).low() : climate(row[0]).high();
			for (int season = 0; season < 4; season++) {
				double sum = 0;
				int first = -30 + 91 * season;
				for (int day = first; day < first + 91; day++) {
					sum += curve.on(day);
				}
				// One wave has three figures to meet four means.
				assertThat(sum / 91).as("%s %s, season %d", row[0], row[1], season)
					.isBetween(Double.parseDouble(row[2 + season]) - 1.5, Double.parseDouble(row[2 + season]) + 1.5);
			}
		}
	}

	@Test
	void warmPlacesHaveNoFrozenGround() {
		MarkerKey frozen = new MarkerKey(MarkerKind.GROUND_FREEZE, null, 50);
		assertThat(climate("Lebanon NH").date(frozen)).isPresent();
		assertThat(climate("Central Park NY").date(frozen)).isEmpty();
	}

}
