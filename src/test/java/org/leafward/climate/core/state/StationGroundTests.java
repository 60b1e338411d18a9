package org.leafward.climate.core.state;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leafward.climate.GroundReading;
import org.leafward.climate.Station;
import org.leafward.climate.StationId;
import org.leafward.climate.core.DailyRecord;
import org.leafward.climate.core.Element;
import org.leafward.climate.core.SoilTemperature;
import org.leafward.measure.GeoPoint;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * By hand: air of 10 °C to the end of January, -10 °C in February, 10 °C in March, the
 * soil a quarter of the way each day. So it is at -1.6 °C on 3 February for the first
 * time, and at 1.6 °C on 3 March.
 */
class StationGroundTests {

	private static final Station STATION = new Station(new StationId("XX000000001"), "Hill", new GeoPoint(45, -90, 200),
			false);

	private static final SoilTemperature SOIL = SoilTemperature.estimate(record());

	@ParameterizedTest
	@CsvSource({ "2020-02-07,false", "2020-02-08,true", "2020-03-07,true", "2020-03-08,false", "2020-04-05,false" })
	void freezesAndThawsAfterFiveDays(LocalDate today, boolean frozen) {
		assertThat(StationGround.read(STATION, SOIL, today, 0)).map(GroundReading::frozen).contains(frozen);
	}

	/** Two degrees colder it would be at -0.75 °C on 2 February already. */
	@Test
	void aHigherPlaceFreezesSooner() {
		assertThat(StationGround.read(STATION, SOIL, LocalDate.of(2020, 2, 7), 2)).map(GroundReading::frozen)
			.contains(true);
	}

	@Test
	void saysNothingWithoutTemperaturesOfLate() {
		assertThat(StationGround.read(STATION, SOIL, LocalDate.of(2020, 4, 6), 0)).isEmpty();
		assertThat(StationGround.read(STATION, SOIL, LocalDate.of(2020, 1, 4), 0)).as("three days are known").isEmpty();
	}

	private static DailyRecord record() {
		DailyRecord.Builder builder = DailyRecord.builder();
		for (LocalDate day = LocalDate.of(2020, 1, 1); day.getMonthValue() < 4; day = day.plusDays(1)) {
			int air = (day.getMonthValue() == 2) ? -100 : 100;
			builder.set(Element.TMIN, day, air);
			builder.set(Element.TMAX, day, air);
		}
		return builder.build();
	}

}
