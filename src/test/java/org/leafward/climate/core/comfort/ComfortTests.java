package org.leafward.climate.core.comfort;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleBinaryOperator;
import org.junit.jupiter.api.Test;
import org.leafward.support.SharedData;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

/** Heat index and wind chill against the tables in shared/comfort. */
class ComfortTests {

	/** Cells of a chart: left column, head of the column, value. */
	private static List<double[]> chart(String name) throws Exception {
		String head = Files.readAllLines(Path.of("shared", name))
			.stream()
			.filter((line) -> !line.startsWith("#"))
			.findFirst()
			.orElseThrow();
		String[] heads = head.split(",");
		List<double[]> cells = new ArrayList<>();
		for (String[] row : SharedData.table(name)) {
			for (int column = 1; column < row.length; column++) {
				if (!row[column].isEmpty()) {
					cells.add(new double[] { Double.parseDouble(row[0]), Double.parseDouble(heads[column]),
							Double.parseDouble(row[column]) });
				}
			}
		}
		return cells;
	}

	private static List<String> missed(List<double[]> cells, DoubleBinaryOperator formula) {
		return cells.stream()
			.filter((cell) -> Math.abs(formula.applyAsDouble(cell[0], cell[1]) - cell[2]) > 0.5)
			.map((cell) -> "%.0f/%.0f".formatted(cell[0], cell[1]))
			.toList();
	}

	/** The two known misses are named in the table's head. */
	@Test
	void regressionAgreesWithTheChart() throws Exception {
		List<double[]> cells = chart("comfort/heat-index-chart.csv");
		assertThat(cells).hasSize(135);
		assertThat(missed(cells, HeatIndex::regression)).containsExactly("90/45", "90/70");
	}

	/** The ten known misses are named in the table's head; none is off by over 2.3. */
	@Test
	void heatIndexAgreesWithTheChartButForTheHumidityAdjustment() throws Exception {
		List<double[]> cells = chart("comfort/heat-index-chart.csv");
		assertThat(missed(cells, HeatIndex::fahrenheit)).containsExactlyInAnyOrder("90/45", "90/70", "82/90", "80/95",
				"82/95", "84/95", "86/95", "80/100", "82/100", "84/100");
		assertThat(cells)
			.allSatisfy((cell) -> assertThat(HeatIndex.fahrenheit(cell[0], cell[1])).isCloseTo(cell[2], within(2.3)));
	}

	@Test
	void heatIndexOfSinglePairs() {
		List<String[]> rows = SharedData.table("comfort/heat-index-values.csv");
		assertThat(rows).hasSize(12);
		for (String[] row : rows) {
			double temperature = Double.parseDouble(row[1]);
			double humidity = Double.parseDouble(row[2]);
			assertThat("F".equals(row[0]) ? HeatIndex.fahrenheit(temperature, humidity)
					: HeatIndex.celsius(temperature, humidity))
				.as(String.join(",", row))
				.isCloseTo(Double.parseDouble(row[3]), within(Double.parseDouble(row[4])));
		}
	}

	/** By hand from the page: (13 - 5) / 4 · sqrt((17 - 5) / 17) = 1.680 at 100 °F. */
	@Test
	void dryAirTakesSomethingOff() {
		assertThat(HeatIndex.regression(100, 5) - HeatIndex.fahrenheit(100, 5)).isCloseTo(1.680, within(0.001));
	}

	/** By hand: 0.5 · (70 + 61 + 2.4 + 4.7) = 69.05. */
	@Test
	void mildAirHasTheSimpleFormula() {
		assertThat(HeatIndex.fahrenheit(70, 50)).isCloseTo(69.05, within(1e-9));
	}

	@Test
	void heatIndexRefusesWhatIsNoHumidity() {
		assertThatIllegalArgumentException().isThrownBy(() -> HeatIndex.fahrenheit(90, 101));
		assertThatIllegalArgumentException().isThrownBy(() -> HeatIndex.fahrenheit(Double.NaN, 50));
	}

	/** The known miss, a misprint of the copy, is named in the table's head. */
	@Test
	void windChillAgreesWithTheChart() throws Exception {
		List<double[]> cells = chart("comfort/wind-chill-chart.csv");
		assertThat(cells).hasSize(204);
		assertThat(missed(cells, (wind, temperature) -> WindChill.fahrenheit(temperature, wind).getAsDouble()))
			.containsExactly("50/-30");
	}

	@Test
	void windChillOfSinglePairs() {
		List<String[]> rows = SharedData.table("comfort/wind-chill-values.csv");
		assertThat(rows).hasSize(6);
		for (String[] row : rows) {
			double temperature = Double.parseDouble(row[1]);
			double wind = Double.parseDouble(row[2]);
			assertThat(("us".equals(row[0]) ? WindChill.fahrenheit(temperature, wind)
					: WindChill.celsius(temperature, wind))
				.getAsDouble()).as(String.join(",", row))
				.isCloseTo(Double.parseDouble(row[3]), within(Double.parseDouble(row[4])));
		}
	}

	@Test
	void bothFormsOfWindChillAgree() {
		for (int temperature = -45; temperature <= 50; temperature += 5) {
			for (int wind = 3; wind <= 60; wind += 3) {
				double metric = WindChill.celsius((temperature - 32) / 1.8, wind * 1.609344).getAsDouble();
				assertThat(WindChill.fahrenheit(temperature, wind).getAsDouble()).isCloseTo(metric * 1.8 + 32,
						within(0.1));
			}
		}
	}

	@Test
	void windChillIsUndefinedInWarmthAndCalm() {
		assertThat(WindChill.fahrenheit(51, 20)).isEmpty();
		assertThat(WindChill.fahrenheit(30, 2)).isEmpty();
		assertThat(WindChill.celsius(10.5, 30)).isEmpty();
		assertThat(WindChill.celsius(0, 4)).isEmpty();
		assertThat(WindChill.celsius(0, Double.NaN)).isEmpty();
	}

}
