package org.leafward.climate.source.forecast;

import java.time.Instant;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leafward.climate.ForecastDay;
import org.leafward.measure.BadInput;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

class ForecastCsvTests {

	@Test
	void readsWhatIsDocumented() {
		ForecastCsv read = ForecastCsv.read("""
				\uFEFF# issued: 2026-11-25T06:00:00+01:00
				# any other remark
				date,min_c,max_c,precip_mm,wind_ms,min_rh_percent
				2026-11-25,-2.54,6,0.44,3.1,55

				2026-11-26,,"7.25",,,
				""");
		assertThat(read.issuedAt()).isEqualTo(Instant.parse("2026-11-25T05:00:00Z"));
		assertThat(read.days()).containsExactly(new ForecastDay(LocalDate.of(2026, 11, 25), -25, 60, 4, null, 31, 55),
				new ForecastDay(LocalDate.of(2026, 11, 26), null, 73, null, null, null, null));
	}

	@Test
	void columnsStandInAnyOrder() {
		ForecastCsv read = ForecastCsv.read("Snow_MM,Date\n30,2026-11-25\n");
		assertThat(read.issuedAt()).isNull();
		assertThat(read.days().get(0).snowfall()).isEqualTo(30);
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', value = { "date,min_c;2026-11-25,cold | line 2 | no number",
			"date,min_c;25.11.2026,1 | line 2 | no date", "date,min_c;2026-11-25,1,2 | line 2 | 3 fields for 2 columns",
			"date,min_c,rain;2026-11-25,1,2 | line 1 | column 'rain'", "min_c,max_c;1,2 | line 1 | lack date",
			"date,min_c,min_c;2026-11-25,1,1 | line 1 | name one twice", "date | line 1 | lack date",
			"date,min_c,max_c;2026-11-25,5,4 | line 2 | above the maximum",
			"date,min_c;\"2026-11-25,1 | line 2 | quote", "# issued: yesterday;date,min_c | line 1 | time of issue",
			"# nothing | line 1 | column names", "date,min_c;2026-11-25,1e3 | line 2 | no number",
			"date,min_c;2026-11-25,NaN | line 2 | no number" })
	void saysWhatIsWrongAndWhere(String lines, String where, String what) {
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> ForecastCsv.read(lines.replace(';', '\n')))
			.satisfies((bad) -> assertThat(bad.where()).isEqualTo(where))
			.withMessageContaining(what);
	}

	@Test
	void tooManyLinesAreRefused() {
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> ForecastCsv.read("\n".repeat(401)))
			.withMessageContaining("more than 400 lines");
	}

}
