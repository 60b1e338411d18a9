package org.leafward.climate.core.place;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.leafward.climate.Microclimate;
import org.leafward.climate.MinimumComparison;
import org.leafward.climate.MinimumReading;
import org.leafward.climate.NormalsPeriod;
import org.leafward.climate.Station;
import org.leafward.climate.StationId;
import org.leafward.climate.core.DailyRecord;
import org.leafward.climate.core.Element;
import org.leafward.climate.core.Neighbour;
import org.leafward.climate.core.SeasonPeriod;
import org.leafward.climate.core.StationClimate;
import org.leafward.measure.GeoPoint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

/** Counted by hand. */
class ComparedMinimaTests {

	private static final LocalDate FIRST = LocalDate.of(2026, 4, 1);

	/** A hollow, which must not count: the estimate is for level ground. */
	private static final Microclimate HOLLOW = new Microclimate(Microclimate.Lie.HOLLOW, false, false, null);

	private static Neighbour station(int number, double colderBy, double weight, int... tenths) {
		DailyRecord.Builder record = DailyRecord.builder();
		for (int i = 0; i < tenths.length; i++) {
			if (tenths[i] != DailyRecord.MISSING) {
				record.set(Element.TMIN, FIRST.plusDays(i), tenths[i]);
			}
		}
		Station station = new Station(new StationId("XX00000000" + number), "Station " + number,
				new GeoPoint(45, 10, 200), true);
		return new Neighbour(new StationClimate(station, record.build()), NormalsPeriod.LATEST_30,
				new SeasonPeriod(1996, 2025), HOLLOW, 10, 0, colderBy, weight);
	}

	private static List<MinimumReading> readings(double... celsius) {
		List<MinimumReading> readings = new ArrayList<>();
		for (int i = 0; i < celsius.length; i++) {
			readings.add(0, new MinimumReading(FIRST.plusDays(i), celsius[i]));
		}
		return readings;
	}

	/**
	 * The station has 2.0, 4.0, none and 1.0 °C; the place lies 100 m higher, 0.65 °C
	 * colder: 1.35, 3.35, -, 0.35. The thermometer shows 0.35, 1.35, 5, -2.65: colder by
	 * 1, 2 and 3. Mean -2; deviations 1, 0, -1; spread the root of 2 / 2, which is 1.
	 */
	@Test
	void meanAndSpreadOfTheNightsThatHaveBoth() {
		MinimumComparison compared = ComparedMinima.of(readings(0.35, 1.35, 5, -2.65),
				List.of(station(1, 0.65, 1, 20, 40, DailyRecord.MISSING, 10)));
		assertThat(compared.nights()).extracting(MinimumComparison.Night::day)
			.as("in the order of the days")
			.containsExactly(FIRST, FIRST.plusDays(1), FIRST.plusDays(2), FIRST.plusDays(3));
		assertThat(compared.nights().get(0).estimated()).isCloseTo(1.35, within(1e-9));
		assertThat(compared.nights().get(2).estimated()).isNull();
		assertThat(compared.nights().get(2).difference()).isNull();
		assertThat(compared.counted()).isEqualTo(3);
		assertThat(compared.mean()).isCloseTo(-2, within(1e-9));
		assertThat(compared.spread()).isCloseTo(1, within(1e-9));
		assertThat(compared.uncertainty()).isCloseTo(2 / Math.sqrt(3), within(1e-9));
		assertThat(compared.offset()).isEqualTo(-2.0);
		assertThat(compared.few()).isTrue();
		assertThat(compared.wide()).isFalse();
		assertThat(compared.lastDay()).isEqualTo(FIRST.plusDays(3));
	}

	/**
	 * Weights 3 to 1: 2 °C and 6 °C make 3 °C; where one has no night the other speaks
	 * alone, 8 °C.
	 */
	@Test
	void stationsCountByTheirWeights() {
		MinimumComparison compared = ComparedMinima.of(readings(3, 8),
				List.of(station(1, 0, 3, 20, DailyRecord.MISSING), station(2, 0, 1, 60, 80)));
		assertThat(compared.nights().get(0).estimated()).isCloseTo(3, within(1e-9));
		assertThat(compared.nights().get(1).estimated()).isCloseTo(8, within(1e-9));
		assertThat(compared.mean()).isCloseTo(0, within(1e-9));
		assertThat(compared.stations()).hasSize(2);
	}

	@Test
	void fourteenNightsAreEnoughAndWideOnesAreTold() {
		int[] zero = new int[14];
		double[] own = new double[14];
		for (int i = 0; i < 14; i++) {
			// 0 and 6 by turns: mean 3, each 3 away from it; the root of 14 * 9 / 13.
			own[i] = (i % 2 == 0) ? 0 : 6;
		}
		MinimumComparison compared = ComparedMinima.of(readings(own), List.of(station(1, 0, 1, zero)));
		assertThat(compared.few()).isFalse();
		assertThat(compared.spread()).isCloseTo(Math.sqrt(14 * 9 / 13.0), within(1e-9));
		assertThat(compared.wide()).isTrue();
	}

	@Test
	void withoutStationsOrFarOffThereIsNoOffset() {
		MinimumComparison none = ComparedMinima.of(readings(1, 2), List.of());
		assertThat(none.counted()).isZero();
		assertThat(none.mean()).isNull();
		assertThat(none.spread()).isNull();
		assertThat(none.offset()).isNull();
		assertThat(none.lastDay()).isNull();
		MinimumComparison one = ComparedMinima.of(readings(10.04), List.of(station(1, 0, 1, 0)));
		assertThat(one.offset()).as("to a tenth").isEqualTo(10.0);
		assertThat(one.spread()).isNull();
		assertThat(ComparedMinima.of(readings(10.06), List.of(station(1, 0, 1, 0))).offset()).isNull();
	}

}
