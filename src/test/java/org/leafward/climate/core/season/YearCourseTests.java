package org.leafward.climate.core.season;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import org.leafward.climate.Microclimate;
import org.leafward.climate.Station;
import org.leafward.climate.StationId;
import org.leafward.climate.TemperatureThreshold;
import org.leafward.climate.WeatherYear;
import org.leafward.climate.core.DailyRecord;
import org.leafward.climate.core.Element;
import org.leafward.climate.core.StationClimate;
import org.leafward.climate.core.water.NearStation;
import org.leafward.measure.GeoPoint;
import org.leafward.measure.Hemisphere;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

/**
 * A made-up record from 2013 to August 2026, so 2014 to 2025 are the seasons that are
 * whole. Days have 10 to 20 °C and 2 mm of rain. A single freeze of −1 °C comes in April,
 * on the 11th in 2014 and a day later each year, to the 22nd in 2025, and one on 10
 * October. In 2026 it comes on 5 May; −18 °C on 20 January, 35.1 °C on 12 July; 10 mm of
 * rain each day, but none in July.
 */
class YearCourseTests {

	private static final LocalDate LAST = LocalDate.of(2026, 8, 31);

	private static final LocalDate TODAY = LocalDate.of(2026, 9, 1);

	private static final TemperatureThreshold BASE = new TemperatureThreshold(50, true);

	@Test
	void freezesStandBesideThoseOfPastSeasons() {
		WeatherYear year = year(2026, TODAY).orElseThrow();
		assertThat(year.to()).isEqualTo(LAST);
		assertThat(year.over()).isFalse();
		assertThat(year.normalsFrom()).isEqualTo(2014);
		assertThat(year.normalsTo()).isEqualTo(2025);
		// 11 to 22 April: the middle is 16.5, which becomes the later day; 12.1 and 20.9.
		assertThat(year.spring()).isEqualTo(new WeatherYear.Freeze(WeatherYear.Seen.OBSERVED, LocalDate.of(2026, 5, 5),
				true, LocalDate.of(2026, 4, 17), LocalDate.of(2026, 4, 12), LocalDate.of(2026, 4, 21), null));
		LocalDate usual = LocalDate.of(2026, 10, 10);
		assertThat(year.fall())
			.isEqualTo(new WeatherYear.Freeze(WeatherYear.Seen.NOT_YET, null, false, usual, usual, usual, null));
	}

	@Test
	void aSpringThatIsNotOverHasOnlyALatestFreezeSoFar() {
		WeatherYear.Freeze spring = year(2026, LocalDate.of(2026, 5, 1)).orElseThrow().spring();
		assertThat(spring.date()).isEqualTo(LocalDate.of(2026, 1, 20));
		assertThat(spring.settled()).isFalse();
	}

	@Test
	void aYearThatIsOverIsWhole() {
		WeatherYear year = year(2020, TODAY).orElseThrow();
		assertThat(year.over()).isTrue();
		assertThat(year.days()).isEqualTo(366);
		assertThat(year.missing()).isZero();
		assertThat(year.spring().date()).isEqualTo(LocalDate.of(2020, 4, 17));
		assertThat(year.fall().date()).isEqualTo(LocalDate.of(2020, 10, 10));
		// 366 days of 2 mm; in past years 365 but for 2016 and 2024.
		assertThat(year.rain().millimetres()).isCloseTo(732, within(1e-6));
		assertThat(year.rain().normal()).isCloseTo(730, within(1e-6));
		assertThat(year.rain().years()).isEqualTo(11);
		// Six days of 2 mm have 12 mm, seven would be wet.
		assertThat(year.rain().driest().days()).isEqualTo(6);
		assertThat(year.hottest()).isEqualTo(new WeatherYear.Extreme(LocalDate.of(2020, 1, 1), 20));
	}

	@Test
	void rainIsComparedWithTheSameDays() {
		WeatherYear.Rain rain = year(2026, TODAY).orElseThrow().rain();
		// 243 days up to 31 August, 31 of them dry.
		assertThat(rain.millimetres()).isCloseTo(2120, within(1e-6));
		// 2 mm on 243 days, on 244 in three of twelve years.
		assertThat(rain.normal()).isCloseTo(486, within(1e-6));
		assertThat(rain.low()).isCloseTo(486, within(1e-6));
		assertThat(rain.high()).isCloseTo(488, within(1e-6));
		assertThat(rain.driest())
			.isEqualTo(new WeatherYear.Spell(LocalDate.of(2026, 7, 1), LocalDate.of(2026, 7, 31), 31));
	}

	@Test
	void extremesAndHeatAreMovedToThePlace() {
		WeatherYear level = year(2026, TODAY).orElseThrow();
		assertThat(level.hottest()).isEqualTo(new WeatherYear.Extreme(LocalDate.of(2026, 7, 12), 35.1));
		assertThat(level.coldest()).isEqualTo(new WeatherYear.Extreme(LocalDate.of(2026, 1, 20), -18));
		// 184 days of 9 from 1 March; none on 5 May, and 22.59 on 12 July (72.59 °F).
		assertThat(level.heat().sum()).isCloseTo(183 * 9 - 9 + 22.59, within(0.01));
		assertThat(level.heat().normal()).isCloseTo(183 * 9, within(0.01));
		WeatherYear higher = YearCourse
			.of(2026, TODAY, Hemisphere.NORTH, Microclimate.NONE, List.of(near("A", 2, (day) -> true)), BASE)
			.orElseThrow();
		assertThat(higher.hottest().celsius()).isCloseTo(33.1, within(1e-6));
		assertThat(higher.coldest().celsius()).isCloseTo(-20, within(1e-6));
	}

	@Test
	void rainThatTheNearestStationLacksIsThatOfAnother() {
		NearStation dry = near("DRY", 0, (day) -> day.getYear() < 2026 || day.getMonthValue() < 3);
		NearStation wet = near("WET", 0, (day) -> true);
		WeatherYear year = YearCourse.of(2026, TODAY, Hemisphere.NORTH, Microclimate.NONE, List.of(dry, wet), BASE)
			.orElseThrow();
		assertThat(year.station().name()).isEqualTo("DRY");
		// Its rain ends in February, though nothing is missing until then.
		assertThat(year.rain().station().name()).isEqualTo("WET");
		assertThat(year.rain().to()).isEqualTo(LAST);
		NearStation gaps = near("GAPS", 0, (day) -> day.getYear() < 2026 || day.getDayOfMonth() > 10);
		year = YearCourse.of(2026, TODAY, Hemisphere.NORTH, Microclimate.NONE, List.of(gaps, wet), BASE).orElseThrow();
		assertThat(year.rain().station().name()).isEqualTo("WET");
		year = YearCourse.of(2026, TODAY, Hemisphere.NORTH, Microclimate.NONE, List.of(gaps), BASE).orElseThrow();
		// Ten days in each of eight months.
		assertThat(year.rain().missing()).isEqualTo(80);
		assertThat(year.rain().normal()).isNull();
		assertThat(year.rain().whyNoNormal()).startsWith("Too many days are missing");
	}

	/**
	 * What is spring in the north is fall there, and the fall of a year belongs to the
	 * season before.
	 */
	@Test
	void inTheSouthTheFallOfAYearComesFirst() {
		WeatherYear year = YearCourse
			.of(2024, TODAY, Hemisphere.SOUTH, Microclimate.NONE, List.of(near("A", 0, (day) -> true)), BASE)
			.orElseThrow();
		assertThat(year.fall().date()).isEqualTo(LocalDate.of(2024, 4, 21));
		assertThat(year.spring().date()).isEqualTo(LocalDate.of(2024, 10, 10));
	}

	@Test
	void nobodyTellsOfAYearWithoutDays() {
		assertThat(year(2012, TODAY)).isEmpty();
	}

	private static Optional<WeatherYear> year(int year, LocalDate today) {
		return YearCourse.of(year, today, Hemisphere.NORTH, Microclimate.NONE, List.of(near("A", 0, (day) -> true)),
				BASE);
	}

	private static NearStation near(String name, double colderBy, Predicate<LocalDate> rain) {
		return new NearStation(
				new StationClimate(new Station(new StationId("XX000000001"), name, new GeoPoint(42, -91, 100), true),
						record(rain)),
				12, colderBy);
	}

	private static DailyRecord record(Predicate<LocalDate> rain) {
		DailyRecord.Builder builder = DailyRecord.builder();
		for (LocalDate day = LocalDate.of(2013, 1, 1); !day.isAfter(LAST); day = day.plusDays(1)) {
			boolean latest = day.getYear() == 2026;
			LocalDate spring = latest ? LocalDate.of(2026, 5, 5)
					: LocalDate.of(day.getYear(), 4, 10 + day.getYear() - 2013);
			boolean freeze = day.equals(spring) || day.equals(LocalDate.of(day.getYear(), 10, 10));
			builder.set(Element.TMIN, day, day.equals(LocalDate.of(2026, 1, 20)) ? -180 : freeze ? -10 : 100);
			builder.set(Element.TMAX, day, day.equals(LocalDate.of(2026, 7, 12)) ? 351 : 200);
			if (rain.test(day)) {
				builder.set(Element.PRCP, day, !latest ? 20 : (day.getMonthValue() == 7) ? 0 : 100);
			}
		}
		return builder.build();
	}

}
