package org.leafward.amounts.cover;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.leafward.amounts.Degrees;
import org.leafward.amounts.cover.CoverTonight.Verdict;
import org.leafward.measure.BadInput;
import org.leafward.support.SharedData;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

/** Against published gains and what gardeners cover from; sources in the files' heads. */
class CoverTonightTests {

	private static final Set<Cover> ALL = EnumSet.allOf(Cover.class);

	@Test
	void gainsAreThePublishedOnes() {
		Map<String, String[]> rows = SharedData.table("frost/covers.csv")
			.stream()
			.collect(Collectors.toMap((row) -> row[0], (row) -> row));
		same(Cover.LIGHT_ROW_COVER, rows.get("ROW_COVER"));
		same(Cover.TUNNEL_OR_CLOCHE, rows.get("TUNNEL"));
		same(Cover.SHEETS, rows.get("SHEETS"));
		String[] all = rows.get("ROW_COVERS_ALL");
		assertThat(Cover.HEAVY_ROW_COVER.lowGain()).isGreaterThanOrEqualTo(fahrenheit(all[1]));
		assertThat(Cover.HEAVY_ROW_COVER.highGain()).isLessThanOrEqualTo(fahrenheit(all[2]) + 1e-9);
		String[] below = rows.get("PLANT_BELOW_SHELTER");
		assertThat(NightSky.CLEAR_AND_CALM.colder()).isBetween(fahrenheit(below[1]), fahrenheit(below[2]) + 0.25);
	}

	private static void same(Cover cover, String[] row) {
		assertThat(cover.lowGain()).isCloseTo(fahrenheit(row[1]), within(1e-9));
		assertThat(cover.highGain()).isCloseTo(fahrenheit(row[2]), within(1e-9));
	}

	private static double fahrenheit(String difference) {
		return Degrees.differenceOfFahrenheit(Double.parseDouble(difference));
	}

	/**
	 * Basil is covered or picked at 36 °F; petunias are hurt at the forecast that they
	 * are covered from. On a clear night the least gain of no cover saves these two.
	 */
	@Test
	void theNightsThatGardenersCoverForAreToldOf() {
		List<String[]> rows = SharedData.table("frost/cover-from.csv");
		assertThat(rows).hasSize(8);
		Set<String> more = Set.of("basil", "petunia");
		for (String[] row : rows) {
			double hurt = Degrees.ofFahrenheit(Double.parseDouble(row[1]));
			double from = Degrees.ofFahrenheit(Double.parseDouble(row[2]));
			assertThat(CoverTonight.judge(from, 0, NightSky.CLEAR_AND_CALM, hurt, ALL).verdict()).as(row[0])
				.isEqualTo(more.contains(row[0]) ? Verdict.NO_COVER_IS_ENOUGH : Verdict.COVER);
			assertThat(CoverTonight.judge(hurt + 3.1, 0, NightSky.CLEAR_AND_CALM, hurt, ALL).verdict()).as(row[0])
				.isEqualTo(Verdict.NONE_NEEDED);
			assertThat(CoverTonight.judge(from, 0, NightSky.CLOUDY_OR_WINDY, hurt - 5, ALL).verdict()).as(row[0])
				.isEqualTo(Verdict.NONE_NEEDED);
		}
	}

	/** By hand: 1 °C less 3 °C is -2 °C; 1.1 °C of sheets is not enough, 2.2 °C is. */
	@Test
	void theLightestCoverThatIsEnoughIsNamed() {
		CoverTonight night = CoverTonight.judge(1, 0, NightSky.UNKNOWN, -0.5, ALL);
		assertThat(night.verdict()).isEqualTo(Verdict.COVER);
		assertThat(night.cover()).isEqualTo(Cover.HEAVY_ROW_COVER);
		assertThat(night.plantCelsius()).isEqualTo(-2);
		assertThat(night.coveredCelsius()).isCloseTo(-2 + 4 / 1.8, within(1e-9));
		assertThat(night.amount().words()).isEqualTo("Cover with heavy or double row cover before sunset, down to the "
				+ "ground: about −2 °C (28 °F) at the plant, about 0 °C (32 °F) under it.");
		assertThat(night.amount().explanation().toString()).contains("National Weather Service", "GardenNotes 722");
		CoverTonight sheets = CoverTonight.judge(1, 0, NightSky.UNKNOWN, -0.5, Set.of(Cover.SHEETS));
		assertThat(sheets.verdict()).isEqualTo(Verdict.NO_COVER_IS_ENOUGH);
		assertThat(sheets.amount().words()).contains("heavy or double row cover would be");
		assertThat(CoverTonight.judge(-10, 0, NightSky.UNKNOWN, 0, ALL).amount().words())
			.startsWith("No cover is enough: bring it indoors or harvest");
		assertThat(CoverTonight.judge(4, -3, NightSky.CLOUDY_OR_WINDY, 0, ALL).verdict())
			.isEqualTo(Verdict.NONE_NEEDED);
		assertThat(CoverTonight.judge(4, -4, NightSky.CLOUDY_OR_WINDY, 0, ALL).verdict()).isEqualTo(Verdict.COVER);
	}

	@Test
	void aCoverNeverLowersAndMoreCoversNeverMakeItWorse() {
		Random random = new Random(9);
		for (int count = 0; count < 20_000; count++) {
			double forecast = -25 + random.nextDouble() * 35;
			double offset = -5 + random.nextDouble() * 8;
			double hurt = -10 + random.nextDouble() * 15;
			NightSky sky = NightSky.values()[random.nextInt(3)];
			Set<Cover> some = EnumSet.noneOf(Cover.class);
			for (Cover one : Cover.values()) {
				if (random.nextBoolean()) {
					some.add(one);
				}
			}
			CoverTonight few = CoverTonight.judge(forecast, offset, sky, hurt, some);
			CoverTonight all = CoverTonight.judge(forecast, offset, sky, hurt, ALL);
			assertThat(few.coveredCelsius()).isGreaterThanOrEqualTo(few.plantCelsius());
			assertThat(all.verdict()).isLessThanOrEqualTo(few.verdict());
			if (few.verdict() != Verdict.NO_COVER_IS_ENOUGH) {
				assertThat(few.coveredCelsius()).isGreaterThan(hurt);
			}
			CoverTonight warmer = CoverTonight.judge(forecast + 1, offset, sky, hurt, some);
			assertThat(warmer.verdict()).isLessThanOrEqualTo(few.verdict());
			assertThat(few.amount().words()).hasSizeLessThanOrEqualTo(300);
		}
	}

	@Test
	void impossibleTemperaturesAreRefusedWithTheirField() {
		for (Object[] one : new Object[][] { { 50.0, 0.0, 0.0, "forecast" }, { 0.0, 20.0, 0.0, "offset" },
				{ 0.0, 0.0, 30.0, "hurt" }, { Double.NaN, 0.0, 0.0, "forecast" } }) {
			assertThatExceptionOfType(BadInput.class).isThrownBy(
					() -> CoverTonight.judge((double) one[0], (double) one[1], NightSky.UNKNOWN, (double) one[2], ALL))
				.matches((ex) -> ex.where().equals(one[3]));
		}
	}

}
