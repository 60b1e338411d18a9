package org.leafward.climate.core.light;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.leafward.climate.core.water.SunGeometry;
import org.leafward.measure.GeoPoint;
import org.leafward.support.SharedData;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

/**
 * Against NREL SPA and the US Naval Observatory; the heads of the files have the rest.
 */
class SunPositionTests {

	private static final GeoPoint GOLDEN = new GeoPoint(39.742476, -105.1786, 1830.14);

	@Test
	void positionAgreesWithSpa() {
		SunPosition sun = SunPosition.at(GOLDEN, Instant.parse("2003-10-17T19:30:30Z"));
		Map<String, Double> computed = new HashMap<>();
		computed.put("azimuth", sun.azimuth());
		computed.put("altitude", sun.altitude());
		computed.put("apparent altitude", sun.apparentAltitude());
		List<String[]> rows = SharedData.table("light/sun-position.csv");
		assertThat(rows).hasSize(3);
		for (String[] row : rows) {
			assertThat(computed.get(row[0])).as(row[0])
				.isCloseTo(Double.parseDouble(row[1]), within(Double.parseDouble(row[2])));
		}
	}

	@Test
	void timesAgreeWithSpaAndTheAlmanac() {
		List<String[]> rows = SharedData.table("light/sun-times.csv");
		assertThat(rows).hasSize(26);
		for (String[] row : rows) {
			ZoneId zone = ZoneOffset.ofHours(Integer.parseInt(row[3]));
			LocalDate date = LocalDate.parse(row[4]);
			SunPosition.Day day = SunPosition
				.day(new GeoPoint(Double.parseDouble(row[1]), Double.parseDouble(row[2]), 0), date, zone);
			ZonedDateTime computed = Objects.requireNonNull(switch (row[5]) {
				case "rise" -> day.rise();
				case "set" -> day.set();
				default -> day.noon();
			});
			Duration off = Duration.between(date.atTime(LocalTime.parse(row[6])).atZone(zone), computed).abs();
			assertThat(off).as(String.join(" ", row))
				.isLessThanOrEqualTo(Duration.ofSeconds(row[0].equals("spa") ? 60 : 90));
		}
	}

	/** Trap of SPA: the sunset of a date is that of the local date, not of the UT day. */
	@Test
	void sunsetBelongsToTheLocalDate() {
		ZoneId denver = ZoneId.of("America/Denver");
		for (LocalDate date = LocalDate.of(2027, 1, 1); date.getYear() == 2027; date = date.plusDays(1)) {
			SunPosition.Day day = SunPosition.day(GOLDEN, date, denver);
			assertThat(Objects.requireNonNull(day.rise()).toLocalDate()).isEqualTo(date);
			assertThat(Objects.requireNonNull(day.set()).toLocalDate()).isEqualTo(date);
			assertThat(day.rise()).isBefore(day.noon());
			assertThat(day.noon()).isBefore(day.set());
		}
	}

	/**
	 * Sunrise to sunset is longer than the daylight hours of FAO-56, which take the sun's
	 * centre without refraction: by 9.9 to 16.9 minutes at 40° N, computed with another
	 * program.
	 */
	@Test
	void refractionMakesDaysLongerThanTheFormula() {
		double least = Double.MAX_VALUE;
		double most = 0;
		for (LocalDate date = LocalDate.of(2001, 1, 1); date.getYear() == 2001; date = date.plusDays(1)) {
			SunPosition.Day day = SunPosition.day(new GeoPoint(40, 0, 0), date, ZoneOffset.UTC);
			double minutes = Duration.between(Objects.requireNonNull(day.rise()), Objects.requireNonNull(day.set()))
				.toSeconds() / 60.0;
			double longer = minutes - 60 * SunGeometry.dayLength(40, date.getDayOfYear());
			least = Math.min(least, longer);
			most = Math.max(most, longer);
		}
		assertThat(least).isCloseTo(9.9, within(1.0));
		assertThat(most).isCloseTo(16.9, within(1.0));
	}

	@Test
	void polarDaysHaveNoSunset() {
		GeoPoint tromso = new GeoPoint(69.65, 18.96, 0);
		ZoneId oslo = ZoneId.of("Europe/Oslo");
		SunPosition.Day summer = SunPosition.day(tromso, LocalDate.of(2027, 6, 21), oslo);
		assertThat(summer.alwaysUp()).isTrue();
		assertThat(summer.rise()).isNull();
		SunPosition.Day winter = SunPosition.day(tromso, LocalDate.of(2027, 12, 21), oslo);
		assertThat(winter.alwaysDown()).isTrue();
		assertThat(winter.set()).isNull();
	}

}
