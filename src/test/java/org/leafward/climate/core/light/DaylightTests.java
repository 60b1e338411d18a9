package org.leafward.climate.core.light;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.leafward.climate.core.water.SunGeometry;
import org.leafward.measure.GeoPoint;
import org.leafward.measure.Hemisphere;
import org.leafward.measure.Season;
import org.leafward.support.SharedData;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

class DaylightTests {

	private static final GeoPoint NEW_YORK = new GeoPoint(40.7789, -73.9692, 39.6);

	private static final GeoPoint SOUTH = new GeoPoint(-40.7789, 172, 40);

	private static final Season NORTHERN = new Season(2027, Hemisphere.NORTH);

	private static final Season SOUTHERN = new Season(2027, Hemisphere.SOUTH);

	/**
	 * Sunset less sunrise of the Solar Position Algorithm of NREL and of the almanac of
	 * the US Naval Observatory (the table's head); minutes of the almanac are rounded.
	 */
	@Test
	void lengthsAgreeWithThePublishedTimes() {
		Map<List<String>, LocalTime> rises = new HashMap<>();
		List<String[]> rows = SharedData.table("light/sun-times.csv");
		rows.stream()
			.filter((row) -> row[5].equals("rise"))
			.forEach((row) -> rises.put(List.of(row[0], row[1], row[4]), LocalTime.parse(row[6])));
		int seen = 0;
		for (String[] row : rows) {
			LocalTime rise = rises.get(List.of(row[0], row[1], row[4]));
			if (row[5].equals("set") && rise != null) {
				GeoPoint point = new GeoPoint(Double.parseDouble(row[1]), Double.parseDouble(row[2]), 0);
				double minutes = Duration.between(rise, LocalTime.parse(row[6])).toSeconds() / 60.0;
				assertThat(Daylight.minutes(point, LocalDate.parse(row[4]))).as(String.join(",", row))
					.isCloseTo(minutes, within(row[0].equals("spa") ? 0.5 : 1.5));
				seen++;
			}
		}
		assertThat(seen).isEqualTo(7);
	}

	/**
	 * FAO-56 (equation 34) takes the centre of the sun without refraction, so its days
	 * are 9 to 18 minutes shorter here; a day grows by 2 to 3 minutes in spring at 40°.
	 */
	@Test
	void datesLieWithinAWeekOfTheFormulaOfFao56() {
		for (int minutes : new int[] { 11 * 60, 12 * 60, 13 * 60, 14 * 60 }) {
			LocalDate day = Daylight.lengthensTo(NEW_YORK, NORTHERN, minutes).orElseThrow();
			LocalDate coarse = day;
			while (SunGeometry.dayLength(40.7789, coarse.getDayOfYear()) * 60 < minutes) {
				coarse = coarse.plusDays(1);
			}
			assertThat(coarse).as("%d minutes", minutes).isBetween(day.plusDays(2), day.plusDays(8));
		}
	}

	@Test
	void theDayBeforeIsShorterAndTheSouthIsHalfAYearLater() {
		LocalDate longer = Daylight.lengthensTo(NEW_YORK, NORTHERN, 14 * 60).orElseThrow();
		assertThat(Daylight.minutes(NEW_YORK, longer)).isGreaterThanOrEqualTo(840);
		assertThat(Daylight.minutes(NEW_YORK, longer.minusDays(1))).isLessThan(840);
		assertThat(longer).isBetween("2027-05-01", "2027-05-10");
		LocalDate shorter = Daylight.shortensTo(NEW_YORK, NORTHERN, 12 * 60).orElseThrow();
		assertThat(Daylight.minutes(NEW_YORK, shorter)).isLessThanOrEqualTo(720);
		assertThat(Daylight.minutes(NEW_YORK, shorter.minusDays(1))).isGreaterThan(720);
		assertThat(shorter).as("days after the equinox of 23 September").isBetween("2027-09-24", "2027-09-29");
		assertThat(Daylight.lengthensTo(SOUTH, SOUTHERN, 14 * 60).orElseThrow())
			.isBetween(longer.plusMonths(6).minusDays(4), longer.plusMonths(6).plusDays(4));
		assertThat(Daylight.shortensTo(SOUTH, SOUTHERN, 12 * 60).orElseThrow()).isBetween("2028-03-21", "2028-03-27");
	}

	@Test
	void whereTheLengthIsNeverReachedThereIsNoDate() {
		assertThat(Daylight.lengthensTo(new GeoPoint(0, 0, 0), NORTHERN, 13 * 60)).isEmpty();
		assertThat(Daylight.lengthensTo(new GeoPoint(0, 0, 0), NORTHERN, 12 * 60)).as("always longer").isEmpty();
		assertThat(Daylight.shortensTo(NEW_YORK, NORTHERN, 9 * 60)).isEmpty();
		GeoPoint tromso = new GeoPoint(69.65, 18.96, 0);
		assertThat(Daylight.minutes(tromso, LocalDate.parse("2027-06-21"))).isEqualTo(1440);
		assertThat(Daylight.minutes(tromso, LocalDate.parse("2027-12-21"))).isZero();
		assertThat(Daylight.lengthensTo(tromso, NORTHERN, 23 * 60 + 59)).isPresent();
	}

}
