package org.leafward.climate.core;

import java.time.LocalDate;
import java.util.Random;
import java.util.function.LongToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.leafward.climate.core.SeasonOutcome.State;
import org.leafward.measure.Hemisphere;
import org.leafward.measure.Season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

class CrossingTests {

	private static final Season NORTH = new Season(2020, Hemisphere.NORTH);

	private static final Season SOUTH = new Season(2019, Hemisphere.SOUTH);

	/** A degree a day from 1 January on. */
	private static final LongToDoubleFunction RAMP = (day) -> day - LocalDate.of(2020, 1, 1).toEpochDay();

	/** By hand: days 8 to 12 have the mean 10, and day 12 is 13 January. */
	@Test
	void theLastDayOfTheMeanIsTheDate() {
		assertThat(CrossingSearch.rise(RAMP, 5, 50, NORTH).date()).isEqualTo("2020-01-13");
		assertThat(CrossingSearch.rise(RAMP, 1, 10, NORTH).date()).isEqualTo("2020-01-11");
		assertThat(CrossingSearch.rise(RAMP, 7, 70, NORTH).date()).isEqualTo("2020-01-14");
		assertThat(CrossingSearch.rise(RAMP, 5, 5_000, NORTH).state()).isEqualTo(State.WITHOUT);
		assertThatIllegalArgumentException().isThrownBy(() -> CrossingSearch.rise(RAMP, 0, 10, NORTH));
	}

	@Test
	void fallingMirrorsRising() {
		LongToDoubleFunction down = (day) -> LocalDate.of(2020, 8, 1).toEpochDay() - day;
		assertThat(CrossingSearch.fall(down, 5, -50, NORTH).date()).isEqualTo("2020-08-13");
		assertThat(CrossingSearch.fall(down, 5, 1_000, NORTH).date()).as("already there").isEqualTo("2020-08-01");
	}

	@Test
	void aMissingDayBreaksTheMeanAndElevenLeaveTheSeasonOut() {
		long gap = LocalDate.of(2020, 1, 11).toEpochDay();
		LongToDoubleFunction one = (day) -> (day == gap) ? Double.NaN : RAMP.applyAsDouble(day);
		assertThat(CrossingSearch.rise(one, 5, 50, NORTH).date()).isEqualTo("2020-01-16");
		assertThat(CrossingSearch.rise(one, 5, 50, NORTH).missing()).isEqualTo(1);
		LongToDoubleFunction ten = (day) -> (day >= gap && day < gap + 10) ? Double.NaN : RAMP.applyAsDouble(day);
		LongToDoubleFunction eleven = (day) -> (day >= gap && day < gap + 11) ? Double.NaN : RAMP.applyAsDouble(day);
		assertThat(CrossingSearch.rise(ten, 5, 100, NORTH).date()).isEqualTo("2020-01-25");
		assertThat(CrossingSearch.rise(eleven, 5, 100, NORTH).state()).isEqualTo(State.LEFT_OUT);
	}

	@Test
	void minimumMaximumAndMeanOfADay() {
		DailyRecord.Builder builder = DailyRecord.builder();
		builder.set(Element.TMIN, LocalDate.of(2020, 5, 1), 51);
		builder.set(Element.TMAX, LocalDate.of(2020, 5, 1), 100);
		builder.set(Element.TMIN, LocalDate.of(2020, 5, 2), 50);
		DailyRecord record = builder.build();
		long day = LocalDate.of(2020, 5, 1).toEpochDay();
		assertThat(DailyTemperature.MINIMUM.of(record).applyAsDouble(day)).isEqualTo(51);
		assertThat(DailyTemperature.MAXIMUM.of(record).applyAsDouble(day)).isEqualTo(100);
		assertThat(DailyTemperature.MEAN.of(record).applyAsDouble(day)).isEqualTo(75.5);
		assertThat(DailyTemperature.MAXIMUM.of(record).applyAsDouble(day + 1)).isNaN();
		assertThat(DailyTemperature.MEAN.of(record).applyAsDouble(day + 1)).isNaN();
	}

	@Test
	void theSouthLooksHalfAYearLater() {
		LongToDoubleFunction ramp = (day) -> day - LocalDate.of(2019, 7, 1).toEpochDay();
		assertThat(CrossingSearch.rise(ramp, 5, 50, SOUTH).date()).isEqualTo("2019-07-13");
		LongToDoubleFunction down = (day) -> LocalDate.of(2020, 2, 1).toEpochDay() - day;
		assertThat(CrossingSearch.fall(down, 5, -50, SOUTH).date()).isEqualTo("2020-02-13");
	}

	@Test
	void aHigherLimitIsNeverReachedEarlier() {
		Random random = new Random(11);
		for (int round = 0; round < 40; round++) {
			DailyRecord record = RecordFixture.wave(round, 2019, 2021, random.nextDouble() * 16 - 4, false);
			SoilTemperature soil = SoilTemperature.estimate(record);
			LocalDate rise = LocalDate.MIN;
			LocalDate fall = LocalDate.MAX;
			for (int limit = -5; limit <= 15; limit++) {
				SeasonOutcome up = CrossingSearch.rise(soil::celsius, 5, limit * 5, NORTH);
				SeasonOutcome down = CrossingSearch.fall(soil::celsius, 5, limit * 5, NORTH);
				LocalDate upDate = (up.date() != null) ? up.date() : LocalDate.MAX;
				LocalDate downDate = (down.date() != null) ? down.date() : LocalDate.MAX;
				assertThat(upDate).isAfterOrEqualTo(rise);
				assertThat(downDate).isBeforeOrEqualTo(fall);
				rise = upDate;
				fall = downDate;
			}
		}
	}

}
