package org.leafward.climate.source.ncei;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.leafward.climate.LineProblem;
import org.leafward.climate.ObservedDay;
import org.leafward.climate.StationId;
import org.leafward.climate.source.FetchFailed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

/**
 * Answers written for these tests in the shape of the data service: quoted fields, whole
 * numbers of GHCN-Daily, attributes as measurement, quality and source flag (GHCN-Daily
 * readme, section III, tables of flags).
 */
class NceiReaderTests {

	private static final StationId STATION = new StationId("XX000000001");

	private static final String HEADER = "\"DATE\",\"STATION\",\"AWND\",\"AWND_ATTRIBUTES\",\"PRCP\",\"PRCP_ATTRIBUTES\","
			+ "\"SNWD\",\"SNWD_ATTRIBUTES\",\"TMAX\",\"TMAX_ATTRIBUTES\",\"TMIN\",\"TMIN_ATTRIBUTES\"\n";

	@Test
	void readsValuesAndFlags() {
		NceiDays read = read(HEADER
				+ "\"2026-11-01\",\"XX000000001\",\"31\",\",,W\",\"    0\",\"T,,W,2400\",,,\"117\",\",,W,2400\",\"-22\",\",,W,2400\"\n"
				+ "\"2026-11-02\",\"XX000000001\",,,\"254\",\",,W,2400\",\"50\",\",,W\",\"350\",\",I,W,2400\",\"-9999\",\"\"\n");
		assertThat(read.days()).containsExactly(new ObservedDay(LocalDate.of(2026, 11, 1), -22, 117, 0, null, 31),
				new ObservedDay(LocalDate.of(2026, 11, 2), null, null, 254, 50, null));
		assertThat(read.flagged()).isEqualTo(1);
		assertThat(read.missing()).isEqualTo(3);
		assertThat(read.problemsInAll()).isZero();
		assertThat(read.last()).hasValue(LocalDate.of(2026, 11, 2));
	}

	@Test
	void columnsMayBeFewerAndInAnotherOrder() {
		NceiDays read = read("STATION,DATE,TMIN\nXX000000001,2026-11-01,5\nXX000000001,2026-11-05,6\n");
		assertThat(read.days()).extracting(ObservedDay::minimum).containsExactly(5, 6);
	}

	@ParameterizedTest
	@ValueSource(strings = { "", "\n", HEADER })
	void nothingIsNoFailure(String text) {
		assertThat(read(text).days()).isEmpty();
	}

	@Test
	void aBadLineIsLeftOutAndTheRestIsTaken() {
		NceiDays read = read("DATE,STATION,TMIN\n2026-11-01,XX000000001,5\n2026-11-02,XX000000002,5\n"
				+ "2026-02-30,XX000000001,5\n2026-11-03,XX000000001,cold\n2026-11-04,XX000000001,700\n"
				+ "2026-11-05,XX000000001\n2026-11-06,\"XX0000\n2026-11-07,XX000000001,6\n2026-11-07,XX000000001,7\n"
				+ "1066-10-14,XX000000001,7\n");
		assertThat(read.days()).containsExactly(new ObservedDay(LocalDate.of(2026, 11, 1), 5, null, null, null, null),
				new ObservedDay(LocalDate.of(2026, 11, 7), 7, null, null, null, null));
		assertThat(read.problems()).extracting(LineProblem::line).containsExactly(3L, 4L, 5L, 6L, 7L, 8L, 10L, 11L);
	}

	/** With units=standard or metric the service gives decimals. */
	@ParameterizedTest
	@ValueSource(strings = { "27.2", "0.00" })
	void otherUnitsAreRefused(String value) {
		assertThatExceptionOfType(FetchFailed.class)
			.isThrownBy(() -> read("DATE,STATION,TMAX\n2026-11-01,XX000000001," + value + "\n"))
			.withMessageContaining("other units");
	}

	@Test
	void anotherTextIsRefused() {
		assertThatExceptionOfType(FetchFailed.class).isThrownBy(() -> read("<html></html>"))
			.withMessageContaining("no column DATE");
	}

	@Test
	void keepsFiftyProblems() {
		NceiDays read = read("DATE,STATION,TMIN\n" + "x,XX000000001,1\n".repeat(60));
		assertThat(read.problems()).hasSize(50);
		assertThat(read.problemsInAll()).isEqualTo(60);
	}

	private static NceiDays read(String text) {
		return NceiReader.read(text, STATION);
	}

}
