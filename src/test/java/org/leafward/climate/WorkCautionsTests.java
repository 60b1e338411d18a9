package org.leafward.climate;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leafward.climate.core.comfort.HeatBand;

import static org.assertj.core.api.Assertions.assertThat;

class WorkCautionsTests {

	private static final LocalDate DAY = LocalDate.of(2026, 7, 14);

	/** Bounds of the National Weather Service's table of effects, read in copies. */
	@ParameterizedTest
	@CsvSource({ "79.9,", "80, caution", "89.9, caution", "90, extreme caution", "103, danger", "124.9, danger",
			"125, extreme danger" })
	void bandsOfTheWeatherService(double index, String words) {
		assertThat(HeatBand.of(index).map(HeatBand::words).orElse(null)).isEqualTo(words);
	}

	/** OSHA's bands meet at 91, 103 and 115 °F (second hand). */
	@ParameterizedTest
	@CsvSource({ "90.9, below 91", "91, 91 °F (33 °C) to 103", "103, 103 °F (39 °C) to 115",
			"115, 103 °F (39 °C) to 115", "115.1, above 115" })
	void bandsOfOsha(double index, String words) {
		assertThat(HeatBand.work(index)).contains(words);
	}

	/** 96 °F and 65 % have 121 °F on the chart of the National Weather Service. */
	@Test
	void heat() {
		List<WorkCautions.Caution> found = WorkCautions.of(List.of(day(200, 356, 30, 65)), DAY, 0);
		assertThat(found).hasSize(1);
		assertThat(found.get(0).words()).contains("Heat index 121 °F", "danger", "above 115 °F");
		assertThat(WorkCautions.of(List.of(day(200, 356, 30, null)), DAY, 0).get(0).words()).contains("no humidity");
		assertThat(WorkCautions.of(List.of(day(100, 200, 30, 65)), DAY, 0)).isEmpty();
		assertThat(WorkCautions.of(List.of(day(200, 356, 30, 65)), DAY.plusDays(1), 0)).as("yesterday").isEmpty();
	}

	/**
	 * 0 °F and 15 mph have −19 °F on the same Service's chart, where skin freezes in half
	 * an hour.
	 */
	@Test
	void cold() {
		assertThat(WorkCautions.of(List.of(day(-178, -50, 67, 60)), DAY, 0).get(0).words())
			.contains("Wind chill −19 °F", "within 30 minutes");
		assertThat(WorkCautions.of(List.of(day(-178, -50, null, 60)), DAY, 0)).as("no wind, no wind chill").isEmpty();
		assertThat(WorkCautions.of(List.of(day(-100, -50, 30, 60)), DAY, 0)).isEmpty();
	}

	private static ForecastDay day(Integer low, Integer high, Integer wind, Integer humidity) {
		return new ForecastDay(DAY, low, high, null, null, wind, humidity);
	}

}
