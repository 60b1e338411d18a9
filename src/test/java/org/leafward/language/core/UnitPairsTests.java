package org.leafward.language.core;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeout;

/** Ways in which rules and calculators write their amounts, in both languages. */
class UnitPairsTests {

	@ParameterizedTest
	@CsvSource(delimiter = '|', value = { "About 25 mm (1 in) a week. | About 25 mm a week. | About 1 in a week.",
			"15 to 20 litres (4 to 5 gal) | 15 to 20 litres | 4 to 5 gal",
			"1 to 2 m (3 to 6.5 ft) off | 1 to 2 m off | 3 to 6.5 ft off",
			"5 to 15 g of nitrogen per square metre of root area (1 to 3 lb per 1,000 sq ft), once | 5 to 15 g of nitrogen per square metre of root area, once | 1 to 3 lb of nitrogen per 1,000 sq ft of root area, once",
			"3.7 to 4.9 g of nitrogen per square metre (0.75 to 1 lb per 1000 sq ft) | 3.7 to 4.9 g of nitrogen per square metre | 0.75 to 1 lb of nitrogen per 1000 sq ft",
			"4.9 g de nitrógeno por metro cuadrado (1 lb por cada 1000 pies²) | 4.9 g de nitrógeno por metro cuadrado | 1 lb de nitrógeno por cada 1000 pies²",
			"25 litros por metro cuadrado (0.6 gal por pie²) | 25 litros por metro cuadrado | 0.6 gal por pie²",
			"10 litres on each square metre (25 gal on 100 sq ft) in 2 rounds | 10 litres on each square metre in 2 rounds | 25 gal on 100 sq ft in 2 rounds",
			"200 to 400 to the square metre (20 to 40 to the square foot) | 200 to 400 to the square metre | 20 to 40 to the square foot",
			"10 a 13 cañas por metro de hilera (3 a 4 por pie) | 10 a 13 cañas por metro de hilera | 3 a 4 cañas por pie de hilera",
			"20 g/m² (0.6 oz per square yard) | 20 g/m² | 0.6 oz per square yard",
			"For each square metre (11 sq ft): about 0.66 kg (1.5 lb) | For each square metre: about 0.66 kg | For each 11 sq ft: about 1.5 lb",
			"250 ml (8 fl oz), every | 250 ml, every | 8 fl oz, every", "12 mm (1/2 in) of | 12 mm of | 1/2 in of",
			"−9 to −7 °C (15 to 20 °F) | −9 to −7 °C | 15 to 20 °F",
			"a minimum of 28 °F (−2.2 °C) or less | a minimum of −2.2 °C or less | a minimum of 28 °F or less",
			"10 mph (4.5 m/s) | 4.5 m/s | 10 mph",
			"una pantalla 0.3 m (1 pie) más alta | una pantalla 0.3 m más alta | una pantalla 1 pie más alta" })
	void aPairIsReadInEitherUnits(String text, String metric, String us) {
		assertThat(UnitPairs.metric(text)).isEqualTo(metric);
		assertThat(UnitPairs.us(text)).isEqualTo(us);
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', value = { "Prune (after bloom) by 5 July.", "Day 2 of 14: Harden off (3 plants)",
			"Two weeks (14 days) later", "the red maple (1) by the door", "6 mm of mulch", "pH 6 (in water)" })
	void whatIsNoPairStays(String text) {
		assertThat(UnitPairs.metric(text)).isEqualTo(text);
		assertThat(UnitPairs.us(text)).isEqualTo(text);
	}

	@Test
	void severalPairsOfATextAreReadEachByItself() {
		assertThat(UnitPairs.us("About 12 litres (3.2 gal): 25 mm (1 in) deep, above 4 °C (40 °F)."))
			.isEqualTo("About 3.2 gal: 1 in deep, above 40 °F.");
	}

	@Test
	void hostileTextTakesNoTime() {
		String[] texts = { "1".repeat(10_000), "5 mm ".repeat(2_500), "5 mm per metre of ".repeat(600),
				"1,".repeat(5_000), "1 to ".repeat(2_500), "5 g of a per square metre (1 lb".repeat(400) };
		for (String text : texts) {
			assertTimeout(Duration.ofSeconds(1), () -> {
				UnitPairs.us(text);
				UnitPairs.metric(text);
			});
		}
	}

}
