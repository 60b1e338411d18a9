package org.leafward.workdays.core.weather;

import java.time.LocalDate;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leafward.care.core.rule.Work;
import org.leafward.workdays.core.weather.WeatherJudgement.Advice;
import org.leafward.workdays.core.weather.WeatherJudgement.Kind;

import static org.assertj.core.api.Assertions.assertThat;

/** What a forecast means for a day. */
class DayJudgeTests {

	private static final LocalDate DAY = LocalDate.of(2027, 7, 10);

	private static DayOutlook warm(double fahrenheit, @Nullable Integer humidity) {
		return new DayOutlook(DAY, null, null, null, (fahrenheit - 32) / 1.8, humidity, null, null);
	}

	/**
	 * Cells of the heat index chart of the National Weather Service (°F, percent, index),
	 * with the band that the Service prints for the index: caution from 80, extreme
	 * caution from 90, danger from 103, extreme danger from 125 °F.
	 */
	@ParameterizedTest
	@CsvSource({ "80, 40, 80, caution, CARE", "88, 40, 88, caution, CARE", "90, 60, 100, extreme caution, CARE",
			"98, 40, 105, danger, PUT_OFF", "92, 70, 112, danger, PUT_OFF", "110, 40, 136, extreme danger, PUT_OFF" })
	void heatFollowsTheChart(double temperature, int humidity, int index, String band, Advice advice) {
		WeatherJudgement judged = DayJudge.judge(warm(temperature, humidity), Set.of(Work.PRUNE));
		assertThat(judged.advice()).isEqualTo(advice);
		assertThat(judged.findings()).singleElement().satisfies((one) -> {
			assertThat(one.kind()).isEqualTo(Kind.HEAT);
			assertThat(one.words())
				.startsWith("Heat index %d °F (%d °C) in the afternoon (%s)".formatted(index,
						Math.round((index - 32) / 1.8), band))
				.contains("Children, older people");
		});
		assertThat(judged.reminders()).anyMatch((one) -> one.contains("30 minutes after the last thunder"))
			.anyMatch((one) -> one.contains("air quality index"));
	}

	@Test
	void withoutHumidityTheIndexIsNotMadeUp() {
		assertThat(DayJudge.judge(warm(95, null), Set.of(Work.PRUNE)).findings()).singleElement()
			.satisfies((one) -> assertThat(one.words()).startsWith("95 °F (35 °C) in the shade; without humidity"));
		assertThat(DayJudge.judge(warm(70, null), Set.of(Work.PRUNE)).advice()).isEqualTo(Advice.GO);
	}

	@ParameterizedTest
	@CsvSource({ "12, PUT_OFF", "10, PUT_OFF", "9.9, CARE", "2, CARE", "1.9, GO", "0, GO", ", GO" })
	void rainIsToldByItsAmount(@Nullable Double amount, Advice advice) {
		DayOutlook outlook = new DayOutlook(DAY, amount, null, null, 15.0, null, null, null);
		assertThat(DayJudge.judge(outlook, Set.of(Work.WATER)).advice()).isEqualTo(advice);
	}

	@Test
	void frozenGroundStopsWhatDigs() {
		DayOutlook outlook = new DayOutlook(DAY, null, null, null, 2.0, null, null, true);
		assertThat(DayJudge.judge(outlook, Set.of(Work.PRUNE)).advice()).isEqualTo(Advice.GO);
		assertThat(DayJudge.judge(outlook, Set.of(Work.PRUNE, Work.PLANT)).findings()).singleElement()
			.satisfies((one) -> assertThat(one.words())
				.isEqualTo("The ground is frozen, so there is no planting. The other work can be done."));
		assertThat(DayJudge.judge(outlook, Set.of(Work.PLANT)).advice()).isEqualTo(Advice.PUT_OFF);
		assertThat(DayJudge.judge(outlook, Set.of(Work.PLANT)).reminders()).isEmpty();
	}

	/**
	 * The chart of wind chill of the National Weather Service: 0 °F with 15 mph is -19,
	 * where frostbite comes within 30 minutes; 20 °F with 15 mph is 6.
	 */
	@ParameterizedTest
	@CsvSource({ "0, \u221219, PUT_OFF", "20, 6, CARE" })
	void coldFollowsTheWindChill(double low, String chill, Advice advice) {
		DayOutlook outlook = new DayOutlook(DAY, null, null, (low - 32) / 1.8, 0.0, null, 15 * 1609.344 / 3600, null);
		WeatherJudgement judged = DayJudge.judge(outlook, Set.of(Work.PRUNE));
		assertThat(judged.advice()).isEqualTo(advice);
		assertThat(judged.findings().get(0).words()).startsWith("Wind chill %s °F".formatted(chill));
	}

	@Test
	void theGravestComesFirstAndNothingKnownIsNoGo() {
		DayOutlook outlook = new DayOutlook(DAY, 3.0, null, 26.0, 38.0, 60, 2.0, false);
		assertThat(DayJudge.judge(outlook, Set.of(Work.PLANT)).findings()).extracting((one) -> one.kind())
			.containsExactly(Kind.HEAT, Kind.RAIN);
		DayOutlook nothing = new DayOutlook(DAY, null, null, null, null, null, null, null);
		assertThat(DayJudge.judge(nothing, Set.of(Work.PLANT)).advice()).isEqualTo(Advice.UNKNOWN);
	}

}
