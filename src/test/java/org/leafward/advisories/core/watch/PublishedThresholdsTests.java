package org.leafward.advisories.core.watch;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leafward.advisories.conditions.ConfiguredConditions;
import org.leafward.climate.core.GroundSearch;
import org.leafward.support.SharedData;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

/** Thresholds of the conditions against what is published. */
class PublishedThresholdsTests {

	private static final Stages STAGES = ConfiguredConditions.get("late-freeze").stages();

	private static Stages.Crop crop(String name) {
		return STAGES.crops().stream().filter((one) -> one.words().english().equals(name)).findFirst().orElseThrow();
	}

	/** Penn State and Michigan State extensions: the table's head. */
	@Test
	void temperaturesThatKillBuds() {
		Set<String> told = new HashSet<>();
		List<String[]> rows = SharedData.table("frost/critical-bud-temperatures.csv");
		assertThat(rows).hasSize(48);
		for (String[] row : rows) {
			Stages.Stage stage = crop(row[0]).stages()
				.stream()
				.filter((one) -> one.words().english().equals(row[4]))
				.findFirst()
				.orElseThrow();
			assertThat(stage.killsTenth()).as(row[0] + " " + row[1]).isEqualTo(Double.parseDouble(row[2]));
			assertThat(stage.killsNine()).as(row[0] + " " + row[1]).isEqualTo(Double.parseDouble(row[3]));
			told.add(row[0] + "/" + row[4]);
		}
		STAGES.crops()
			.forEach((crop) -> crop.stages()
				.stream()
				.filter((stage) -> !stage.over())
				.forEach((stage) -> assertThat(told).contains(crop.words().english() + "/" + stage.words().english())));
	}

	/**
	 * UMass Extension: green tip of McIntosh at 120 degree-days above 43 °F from March.
	 */
	@Test
	void greenTipOfApple() {
		assertThat(STAGES.base().code()).isEqualTo("43F");
		assertThat(crop("apple").at(120).orElseThrow().words().english()).isEqualTo("green tip");
		assertThat(crop("apple").at(119).orElseThrow().words().english()).isEqualTo("silver tip");
		assertThat(crop("apple").at(10)).isEmpty();
		assertThat(crop("apple").at(900)).as("fruit").isEmpty();
	}

	/** 28 °F kills one open apple blossom in ten; records have it as −2.2 °C. */
	@ParameterizedTest
	@CsvSource({ "400, -2.2, 0.0", "400, -1.1, 1.1", "130, -2.2, 5.6", "400, -3.9, -1.7" })
	void marginOfANight(double sum, double low, double margin) {
		BudRisk apple = BudRisk.of(new Stages(STAGES.base(), STAGES.start(), List.of(crop("apple"))), sum, low).get(0);
		assertThat(apple.margin()).isCloseTo(margin, within(0.051));
		assertThat(apple.killsMost()).as("90 %% at 25 °F").isEqualTo(sum == 400 && low <= -3.9);
	}

	/**
	 * The ground counts as frozen after five days at or below 32 °F at 4 inches, as open
	 * after as many above 34 °F: the notes on horticulture timing that care rules use.
	 */
	@Test
	void frozenGround() {
		assertThat(GroundSearch.FROZEN).isEqualTo(0);
		assertThat(GroundSearch.THAWED).isEqualTo(1.1);
		assertThat(GroundSearch.DAYS).isEqualTo(5);
	}

	/** In the words of their sources, each named in the file beside the value. */
	@ParameterizedTest
	@CsvSource({ "first-fall-freeze, low, 36, °F", "weed-barrier, warm, 50, °F",
			"weed-barrier, heat, 250, degree-days (°F)", "weed-barrier, late, 500, degree-days (°F)",
			"thaw-watering, high, 40, °F", "thaw-watering, rain, 1, in" })
	void usualValues(String condition, String name, double value, String unit) {
		Threshold threshold = ConfiguredConditions.get(condition).threshold(name);
		assertThat(threshold.value()).isEqualTo(value);
		assertThat(threshold.unit().words()).isEqualTo(unit);
		assertThat(threshold.source()).containsPattern("University|National Weather Service");
	}

	/** Whole °F as records have them: 28 °F is −2.2 °C, 36 °F is 2.2 °C. */
	@ParameterizedTest
	@CsvSource({ "FAHRENHEIT, 28, -2.2", "FAHRENHEIT, 36, 2.2", "FAHRENHEIT, 32, 0", "INCHES, 1, 25.4",
			"MILES_PER_HOUR, 15, 6.7056", "FAHRENHEIT_STEPS, 9, 5" })
	void units(ThresholdUnit unit, double number, double counted) {
		assertThat(unit.counted(number)).isCloseTo(counted, within(1e-9));
	}

}
