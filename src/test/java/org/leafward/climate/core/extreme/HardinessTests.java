package org.leafward.climate.core.extreme;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.leafward.climate.core.DailyRecord;
import org.leafward.climate.core.Element;
import org.leafward.climate.core.RecordFixture;
import org.leafward.climate.core.SeasonPeriod;
import org.leafward.climate.core.extreme.ExtremeMinimum.Years;
import org.leafward.measure.Hemisphere;
import org.leafward.support.SharedData;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

class HardinessTests {

	/** The table's head names the source and the convention about ties. */
	@Test
	void halfZonesHaveThePublishedBounds() {
		List<String[]> rows = SharedData.table("climate/hardiness-zones.csv");
		assertThat(rows).hasSize(26);
		for (String[] row : rows) {
			double lowest = Double.parseDouble(row[1]);
			assertThat(HardinessZone.of(lowest).orElseThrow().code()).isEqualTo(row[0]);
			assertThat(HardinessZone.of(lowest + 4.99).orElseThrow().code()).isEqualTo(row[0]);
			assertThat(HardinessZone.of(lowest).orElseThrow().from()).isEqualTo((int) lowest);
		}
		assertThat(HardinessZone.of(-60.01)).isEmpty();
		assertThat(HardinessZone.of(70)).isEmpty();
		assertThat(HardinessZone.of(Double.NaN)).isEmpty();
		assertThatIllegalArgumentException().isThrownBy(() -> new HardinessZone(14, 'a'));
	}

	/** By hand: one cold spell on both sides of the new year, 2001 and 2002. */
	@Test
	void calendarYearsCountASpellTwiceAndWintersOnce() {
		Map<String, Integer> cold = new HashMap<>();
		cold.put("2001-12-31", -200);
		cold.put("2002-01-01", -200);
		DailyRecord record = RecordFixture.constant("1999-07-01", "2013-06-30", -50, cold);
		SeasonPeriod period = new SeasonPeriod(2001, 2012);
		ExtremeMinimum winters = ExtremeMinimum.of(record, period, Years.WINTERS, Hemisphere.NORTH).orElseThrow();
		ExtremeMinimum calendar = ExtremeMinimum.of(record, period, Years.CALENDAR, Hemisphere.NORTH).orElseThrow();
		assertThat(winters.celsius()).isCloseTo(-(11 * 5 + 20) / 12.0, within(1e-9));
		assertThat(calendar.celsius()).isCloseTo(-(10 * 5 + 40) / 12.0, within(1e-9));
		assertThat(winters.lowest()).isEqualTo(-20);
		assertThat(winters.years()).isEqualTo(12);
		// -6.25 °C is 20.75 °F; 5 °C colder is 11.75 °F
		assertThat(winters.zone(0).orElseThrow().code()).isEqualTo("9a");
		assertThat(winters.zone(5).orElseThrow().code()).isEqualTo("8a");
	}

	@Test
	void aWinterWithMoreThanTenMissingNightsIsLeftOut() {
		Map<String, Integer> gap = new HashMap<>();
		for (int day = 1; day <= 10; day++) {
			gap.put("2003-01-%02d".formatted(day), null);
		}
		for (int day = 1; day <= 11; day++) {
			gap.put("2005-12-%02d".formatted(day), null);
		}
		for (int day = 1; day <= 31; day++) {
			gap.put("2007-08-%02d".formatted(day), null);
		}
		DailyRecord record = RecordFixture.constant("1999-07-01", "2013-06-30", -50, gap);
		ExtremeMinimum mean = ExtremeMinimum.of(record, new SeasonPeriod(2001, 2012), Years.WINTERS, Hemisphere.NORTH)
			.orElseThrow();
		assertThat(mean.leftOut()).isEqualTo(1);
		assertThat(mean.years()).isEqualTo(11);
		assertThat(ExtremeMinimum.of(record, new SeasonPeriod(2001, 2009), Years.WINTERS, Hemisphere.NORTH)).isEmpty();
	}

	/** July to December are 184 days, so 1 July becomes 1 January. */
	@Test
	void theSouthIsTheNorthHalfAYearLater() {
		DailyRecord north = RecordFixture.wave(4, 1989, 2021, 8, false);
		DailyRecord.Builder shifted = DailyRecord.builder();
		LocalDate last = north.lastDay(Element.TMIN).orElseThrow();
		for (LocalDate day = north.firstDay(Element.TMIN).orElseThrow(); !day.isAfter(last); day = day.plusDays(1)) {
			shifted.set(Element.TMIN, day.plusDays(184), north.value(Element.TMIN, day));
		}
		ExtremeMinimum one = ExtremeMinimum.of(north, new SeasonPeriod(1991, 2020), Years.WINTERS, Hemisphere.NORTH)
			.orElseThrow();
		ExtremeMinimum other = ExtremeMinimum
			.of(shifted.build(), new SeasonPeriod(1991, 2020), Years.WINTERS, Hemisphere.SOUTH)
			.orElseThrow();
		assertThat(other).isEqualTo(one);
	}

	/** Manhattan lies in zone 7b on the maps of 2012 and 2023 (from memory). */
	@Test
	void centralParkLiesInItsZone() {
		ExtremeMinimum mean = ExtremeMinimum
			.of(RecordFixture.real(RecordFixture.CENTRAL_PARK), new SeasonPeriod(1976, 2005), Years.WINTERS,
					Hemisphere.NORTH)
			.orElseThrow();
		assertThat(mean.years()).isEqualTo(30);
		assertThat(mean.zone(0).orElseThrow().code()).isEqualTo("7b");
	}

}
