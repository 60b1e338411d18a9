package org.leafward.climate.core;

import java.time.LocalDate;
import java.time.Year;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.leafward.climate.HeatGoal;
import org.leafward.climate.core.SeasonProjection.ForecastDay;
import org.leafward.climate.core.SeasonProjection.Reached;
import org.leafward.climate.core.heat.HeatMeasure;
import org.leafward.measure.Hemisphere;
import org.leafward.measure.Season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

class SeasonProjectionTests {

	private static final Season SEASON = new Season(2021, Hemisphere.NORTH);

	private static final HeatMeasure BASE_10C = HeatMeasure.average(10, false);

	private static final SeasonPeriod NORMALS = new SeasonPeriod(2000, 2020);

	/**
	 * Each past year 2000 to 2020 is even, with year - 1999 degree-days a day, so 1 to
	 * 21; this season has 5 a day.
	 */
	private static DailyRecord record(LocalDate last) {
		DailyRecord.Builder builder = DailyRecord.builder();
		for (LocalDate day = LocalDate.of(2000, 3, 1); !day.isAfter(last); day = day.plusDays(1)) {
			int year = day.minusMonths(2).getYear();
			int heat = (year == 2021) ? 5 : year - 1999;
			builder.set(Element.TMIN, day, (10 + heat) * 10 - 30);
			builder.set(Element.TMAX, day, (10 + heat) * 10 + 30);
		}
		return builder.build();
	}

	private static SeasonProjection project(LocalDate last, List<ForecastDay> forecast, int sum) {
		return SeasonProjection.of(record(last), forecast, SEASON, BASE_10C, HeatGoal.of(sum), 0, NORMALS)
			.orElseThrow();
	}

	private static List<ForecastDay> forecast(String from, int days, double heat) {
		return IntStream.range(0, days)
			.mapToObj((at) -> new ForecastDay(LocalDate.parse(from).plusDays(at), 7 + heat, 13 + heat))
			.toList();
	}

	/** By hand: 5 a day from 1 March, 100 on the 20th day. */
	@Test
	void whatHasBeenObservedIsCertain() {
		SeasonProjection projection = project(LocalDate.of(2021, 4, 30), List.of(), 100);
		assertThat(projection.reached()).isEqualTo(Reached.OBSERVED);
		assertThat(projection.middle()).isEqualTo("2021-03-20");
		assertThat(projection.early()).isEqualTo(projection.late());
		assertThat(projection.observed()).isCloseTo(100, within(1e-6));
		assertThat(projection.observedDays()).isEqualTo(20);
	}

	/** By hand: 50 by 10 March, then 10 a day, 100 on 15 March. */
	@Test
	void theForecastComesNext() {
		SeasonProjection projection = project(LocalDate.of(2021, 3, 10), forecast("2021-03-11", 7, 10), 100);
		assertThat(projection.reached()).isEqualTo(Reached.FORECAST);
		assertThat(projection.middle()).isEqualTo("2021-03-15");
		assertThat(projection.forecast()).isCloseTo(50, within(1e-6));
		assertThat(projection.forecastDays()).isEqualTo(5);
	}

	@Test
	void observedDaysOfTheForecastArePassedOver() {
		SeasonProjection projection = project(LocalDate.of(2021, 3, 10), forecast("2021-03-08", 10, 10), 100);
		assertThat(projection.middle()).isEqualTo("2021-03-15");
	}

	/**
	 * By hand: 50 by 10 March, 20 by forecast until 12 March; the rest of 210 takes a
	 * past year of n degree-days a day 210 / n days, rounded up: from 10 (n = 21) to 210
	 * (n = 1). Of these 21 numbers rank 3 is 12 (n = 19), rank 11 is 20 (n = 11: 19.1),
	 * rank 19 is 70 (n = 3).
	 */
	@Test
	void thenThePastYearsSpread() {
		SeasonProjection projection = project(LocalDate.of(2021, 3, 10), forecast("2021-03-11", 2, 10), 280);
		assertThat(projection.reached()).isEqualTo(Reached.NORMAL);
		assertThat(projection.years()).isEqualTo(21);
		assertThat(projection.early()).isEqualTo(LocalDate.of(2021, 3, 12).plusDays(12));
		assertThat(projection.middle()).isEqualTo(LocalDate.of(2021, 3, 12).plusDays(20));
		assertThat(projection.late()).isEqualTo(LocalDate.of(2021, 3, 12).plusDays(70));
	}

	/** By hand: 5 and 15 beside the hole of three days, so 10 for each day of it. */
	@Test
	void aShortHoleBeforeTheForecastIsBridgedAndALongOneLeavesItOut() {
		SeasonProjection bridged = project(LocalDate.of(2021, 3, 10), forecast("2021-03-14", 2, 15), 2_000);
		assertThat(bridged.forecastDays()).isEqualTo(5);
		assertThat(bridged.forecast()).isCloseTo(3 * 10 + 2 * 15, within(1e-6));
		SeasonProjection unused = project(LocalDate.of(2021, 3, 10), forecast("2021-03-17", 2, 15), 2_000);
		assertThat(unused.forecastDays()).isZero();
	}

	@Test
	void beforeTheStartPastYearsAloneSpeak() {
		SeasonProjection projection = project(LocalDate.of(2021, 2, 10), List.of(), 210);
		assertThat(projection.observedDays()).isZero();
		assertThat(projection.middle()).isEqualTo(LocalDate.of(2021, 2, 28).plusDays(20));
	}

	@Test
	void aGapInThisSeasonMeansThatNobodyKnows() {
		DailyRecord.Builder builder = DailyRecord.builder();
		for (LocalDate day = LocalDate.of(2021, 1, 1); day.isBefore(LocalDate.of(2021, 5, 1)); day = day.plusDays(1)) {
			if (day.getDayOfYear() < 80 || day.getDayOfYear() > 86) {
				builder.set(Element.TMIN, day, 100);
				builder.set(Element.TMAX, day, 200);
			}
		}
		assertThat(SeasonProjection.of(builder.build(), List.of(), SEASON, BASE_10C, HeatGoal.of(2_000), 0, NORMALS))
			.isEmpty();
	}

	@Test
	void tooFewPastYearsGiveNoDateAndSayWhy() {
		SeasonProjection projection = SeasonProjection
			.of(record(LocalDate.of(2021, 3, 10)), List.of(), SEASON, BASE_10C, HeatGoal.of(300), 0,
					new SeasonPeriod(2015, 2020))
			.orElseThrow();
		assertThat(projection.middle()).isNull();
		assertThat(projection.undefined()).contains("only 6 seasons");
	}

	/** A projection without observed days and the long-term dates are the same thing. */
	@Test
	void withoutNewsTheProjectionIsTheLongTermDate() {
		DailyRecord record = RecordFixture.wave(41, 1990, 2020, 8, false);
		HeatGoal goal = HeatGoal.of(300);
		SeasonPeriod period = new SeasonPeriod(1991, 2020);
		SeasonProjection projection = SeasonProjection.of(record, List.of(), SEASON, BASE_10C, goal, 0, period)
			.orElseThrow();
		List<Double> days = new ArrayList<>();
		for (int year = 1991; year <= 2020; year++) {
			LocalDate date = DegreeDaySearch.reach(record, new Season(year, Hemisphere.NORTH), BASE_10C, goal, 0)
				.date();
			days.add((double) date.getDayOfYear() - (Year.isLeap(year) ? 1 : 0));
		}
		Sample sample = new Sample(days.stream().mapToDouble(Double::doubleValue).toArray(), 0, 0);
		assertThat(projection.middle())
			.isEqualTo(LocalDate.ofYearDay(2021, (int) Math.floor(sample.quantile(50) + 0.5)));
		assertThat(projection.late()).isEqualTo(LocalDate.ofYearDay(2021, (int) Math.floor(sample.quantile(90) + 0.5)));
	}

	@Test
	void aForecastWithHolesIsRefused() {
		List<ForecastDay> days = new ArrayList<>(forecast("2021-03-11", 1, 10));
		days.addAll(forecast("2021-03-13", 1, 10));
		assertThatIllegalArgumentException().isThrownBy(() -> project(LocalDate.of(2021, 3, 10), days, 1_000));
	}

}
