package org.leafward.climate.source.ghcn;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.zip.GZIPInputStream;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.Test;
import org.leafward.climate.StationId;
import org.leafward.climate.core.DailyRecord;
import org.leafward.climate.core.Element;
import org.leafward.climate.core.RecordFixture;
import org.leafward.measure.BadInput;
import org.leafward.support.SharedData;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

/**
 * Source of the layouts: NOAA's readme of GHCN-Daily, section III, and readme-by_station.
 */
class GhcnReaderTests {

	private static final StationId STATION = new StationId("US1AZMR0156");

	@Test
	void readsTheFixedWidthLayout() throws IOException {
		GhcnFile file = read(line("202002", "TMIN", "  -22  C", "   11 IC", "-9999   ") + "\n"
				+ line("202002", "PRCP", "    0T C", "  123  C") + "\n" + line("202002", "TSUN", "  123  C"));
		assertThat(file.problems()).isEmpty();
		assertThat(file.lines()).isEqualTo(3);
		assertThat(file.kept()).isEqualTo(3);
		assertThat(file.flagged()).isEqualTo(1);
		assertThat(file.missing()).isEqualTo(27 + 27);
		assertThat(file.record().value(Element.TMIN, LocalDate.of(2020, 2, 1))).isEqualTo((short) -22);
		assertThat(file.record().value(Element.TMIN, LocalDate.of(2020, 2, 2))).isEqualTo(DailyRecord.MISSING);
		assertThat(file.record().value(Element.PRCP, LocalDate.of(2020, 2, 2))).isEqualTo((short) 123);
		assertThat(file.record().firstDay()).hasValue(LocalDate.of(2020, 2, 1));
		assertThat(file.record().lastDay(Element.TMIN)).hasValue(LocalDate.of(2020, 2, 1));
	}

	@Test
	void readsTheCompactCsvWithOrWithoutAHeader() throws IOException {
		String rows = "US1AZMR0156,20200201,TMIN,-22,,,C,0700\nUS1AZMR0156,20200202,TMIN,11,,I,C,\n"
				+ "US1AZMR0156,20200201,PRCP,0,T,,C\nUS1AZMR0156,20200202,PRCP,123\r\nUS1AZMR0156,20200202,WT01,1,,,C,\n";
		GhcnFile plain = read(rows);
		assertThat(plain.problems()).isEmpty();
		assertThat(plain.kept()).isEqualTo(3);
		assertThat(plain.flagged()).isEqualTo(1);
		assertThat(plain.record().value(Element.PRCP, LocalDate.of(2020, 2, 2))).isEqualTo((short) 123);
		GhcnFile headed = read("ID,DATE,ELEMENT,DATA_VALUE,M_FLAG,Q_FLAG,S_FLAG,OBS_TIME\n" + rows);
		assertThat(headed.record()).isEqualTo(plain.record());
		assertThat(headed.problemsInAll()).isZero();
	}

	/** U+FEFF in UTF-8: Unicode Standard, section 23.8. */
	@Test
	void aByteOrderMarkIsNoPartOfTheFirstLine() throws IOException {
		GhcnFile file = read("\u00ef\u00bb\u00bfUS1AZMR0156,20200201,TMIN,-22,,,C,0700\n");
		assertThat(file.problems()).isEmpty();
		assertThat(file.kept()).isEqualTo(1);
	}

	/** The same real data, written over into the other layout here. */
	@Test
	void bothLayoutsOfTheSameRealDataAgree() throws IOException {
		byte[] fixed = Files.readAllBytes(SharedData.file("climate/CA006158350.dly.gz"));
		GhcnFile one = new GhcnReader().read(new ByteArrayInputStream(fixed), RecordFixture.TORONTO, "dly");
		GhcnFile other = new GhcnReader().read(new ByteArrayInputStream(gzip(asCsv(fixed))), RecordFixture.TORONTO,
				"csv");
		assertThat(one.problemsInAll()).isZero();
		assertThat(other.problemsInAll()).isZero();
		assertThat(other.record()).isEqualTo(one.record());
		assertThat(other.kept()).isEqualTo(one.kept()).isGreaterThan(180_000);
		assertThat(other.flagged()).isEqualTo(one.flagged()).isPositive();
		// counted in the notes on the data: 1840-03-01 to 2003-06-30, three days missing
		assertThat(one.record().firstDay(Element.TMIN)).hasValue(LocalDate.of(1840, 3, 1));
		assertThat(one.record().lastDay(Element.TMIN)).hasValue(LocalDate.of(2003, 6, 30));
	}

	@Test
	void plainAndGzipAreToldApartByTheirContent() throws IOException {
		byte[] packed = Files.readAllBytes(SharedData.file("climate/USW00094728.dly.gz"));
		byte[] plain;
		try (InputStream stream = new GZIPInputStream(new ByteArrayInputStream(packed))) {
			plain = stream.readAllBytes();
		}
		GhcnReader reader = new GhcnReader();
		GhcnFile one = reader.read(new ByteArrayInputStream(packed), RecordFixture.CENTRAL_PARK, "any");
		GhcnFile other = reader.read(new ByteArrayInputStream(plain), RecordFixture.CENTRAL_PARK, "any");
		assertThat(one.record()).isEqualTo(other.record());
		// counted by a script that shares no code with the reader
		assertThat(one.kept()).isEqualTo(212_873);
		assertThat(one.flagged()).isEqualTo(6);
		assertThat(one.missing()).isEqualTo(551);
		assertThat(one.lines()).isEqualTo(plain.length / 270);
	}

	@Test
	void damagedLinesAreReportedAndTheRestKept() throws IOException {
		String good = line("202003", "TMIN", "  -22  C");
		GhcnFile file = read(String.join("\n", good, good.substring(0, 100).replace("202003", "202004"),
				line("202013", "TMIN", "    1  C"), line("202005", "TMIN", "  x22  C"),
				"CA006158350" + good.substring(11), line("202006", "TMIN", " 9000  C"), "rubbish", "A".repeat(2000),
				line("202007", "TMIN", "   33  C")));
		assertThat(file.problems()).extracting("line").containsExactly(2L, 3L, 4L, 5L, 6L, 7L, 8L);
		assertThat(file.problems()).allSatisfy((problem) -> {
			assertThat(problem.what()).isNotBlank();
			assertThat(problem.mend()).isNotBlank();
		});
		assertThat(file.problems().get(3).what()).contains("CA006158350");
		assertThat(file.problems().get(4).what()).contains("TMIN on 2020-06-01 is 9000, outside -950 to 600");
		assertThat(file.record().value(Element.TMIN, LocalDate.of(2020, 3, 1))).isEqualTo((short) -22);
		assertThat(file.record().value(Element.TMIN, LocalDate.of(2020, 7, 1))).isEqualTo((short) 33);
		assertThat(file.kept()).isEqualTo(2);
	}

	@Test
	void damagedCsvLinesAreReportedAndTheRestKept() throws IOException {
		GhcnFile file = read("""
				US1AZMR0156,20200201,TMIN,-22,,,C,0700
				US1AZMR0156,20200231,TMIN,-22,,,C,0700
				US1AZMR0156,20200203,TMIN,cold,,,C,0700
				US1AZMR0156,20200204,TMIN
				US1AZMR0156,20200205,TMIN,1,2,3,4,5,6,7
				US1AZMR0156,20200201,TMIN,-23,,,C,0700

				US1AZMR0156,20200207,TMIN,-24,,,C,0700
				""");
		assertThat(file.problems()).extracting("line").containsExactly(2L, 3L, 4L, 5L, 6L);
		assertThat(file.problems().get(4).what()).contains("given twice");
		assertThat(file.record().value(Element.TMIN, LocalDate.of(2020, 2, 1))).isEqualTo((short) -23);
		assertThat(file.record().value(Element.TMIN, LocalDate.of(2020, 2, 7))).isEqualTo((short) -24);
	}

	@Test
	void aValueOnADayThatDoesntExistIsAProblem() throws IOException {
		String[] days = new String[31];
		Arrays.fill(days, "   10  C");
		GhcnFile file = read(line("202102", "TMAX", days));
		assertThat(file.kept()).isEqualTo(28);
		assertThat(file.problemsInAll()).isEqualTo(3);
		assertThat(file.problems().get(0).what()).contains("day 29 of 2021-02");
	}

	@Test
	void problemsAreCountedBeyondThoseListed() throws IOException {
		GhcnFile file = read(line("202003", "TMIN", "  -22  C") + "\nrubbish".repeat(500));
		assertThat(file.problems()).hasSize(GhcnReader.MOST_PROBLEMS);
		assertThat(file.problemsInAll()).isEqualTo(500);
	}

	@Test
	void trailingBlanksMayBeCutOff() throws IOException {
		assertThat(read(line("202001", "TMIN", "  -22   ").stripTrailing()).kept()).isEqualTo(1);
	}

	@Test
	void otherFilesAreRefusedWithWhatIsExpected() {
		for (String content : new String[] { "", "\n\n\n", "<html>not found</html>", "{\"a\":1}\n".repeat(200),
				"STATION,DATE,LATITUDE,TMAX\n\"USW00094728\",\"2020-01-01\",\"40\",\"30\"\n" }) {
			assertThatExceptionOfType(BadInput.class).isThrownBy(() -> read(content))
				.satisfies((refusal) -> assertThat(refusal.mend()).contains(".dly").contains("ID,YYYYMMDD,ELEMENT"));
		}
	}

	@Test
	void anotherStationsFileIsRefusedByName() {
		assertThatExceptionOfType(BadInput.class)
			.isThrownBy(() -> read(line("202003", "TMIN", "  -22  C").replace("US1AZMR0156", "CA006158350")))
			.withMessageContaining("CA006158350");
	}

	@Test
	void aFileWithoutOurElementsIsRefused() {
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> read(line("202003", "TSUN", "   22  C")))
			.withMessageContaining("no value");
	}

	@Test
	void aDamagedArchiveIsRefused() throws IOException {
		byte[] packed = gzip(line("202003", "TMIN", "  -22  C").getBytes(StandardCharsets.US_ASCII));
		byte[] cut = Arrays.copyOf(packed, packed.length / 2);
		assertThatExceptionOfType(BadInput.class)
			.isThrownBy(() -> new GhcnReader().read(new ByteArrayInputStream(cut), STATION, "cut"))
			.withMessageContaining("damaged");
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> new GhcnReader()
			.read(new ByteArrayInputStream(new byte[] { 0x1f, (byte) 0x8b, 1 }), STATION, "x"));
	}

	/** A small archive that would unpack to far more than allowed. */
	@Test
	void unpackingStopsAtTheBound() throws IOException {
		byte[] packed = gzip(
				(line("202003", "TMIN", "  -22  C") + "\n").repeat(20_000).getBytes(StandardCharsets.US_ASCII));
		assertThat(packed.length).isLessThan(200_000);
		assertThatExceptionOfType(BadInput.class)
			.isThrownBy(() -> new GhcnReader(1_000_000).read(new ByteArrayInputStream(packed), STATION, "bomb"))
			.withMessageContaining("1000000 bytes");
	}

	private static GhcnFile read(String content) throws IOException {
		return new GhcnReader().read(new ByteArrayInputStream(content.getBytes(StandardCharsets.ISO_8859_1)), STATION,
				"test");
	}

	/** A line of the fixed-width layout; days not given are missing. */
	private static String line(String month, String element, String... days) {
		StringBuilder line = new StringBuilder(STATION.value()).append(month).append(element);
		for (int day = 0; day < 31; day++) {
			line.append((day < days.length) ? days[day] : "-9999   ");
		}
		return line.toString();
	}

	private static byte[] asCsv(byte[] fixed) throws IOException {
		StringBuilder csv = new StringBuilder();
		String text;
		try (InputStream stream = new GZIPInputStream(new ByteArrayInputStream(fixed))) {
			text = new String(stream.readAllBytes(), StandardCharsets.US_ASCII);
		}
		for (String line : text.split("\n")) {
			for (int day = 0; day < 31; day++) {
				String cell = line.substring(21 + 8 * day, 29 + 8 * day);
				if (!cell.startsWith("-9999")) {
					csv.append(line, 0, 11)
						.append(',')
						.append(line, 11, 17)
						.append("%02d,".formatted(day + 1))
						.append(line, 17, 21)
						.append(',')
						.append(cell.substring(0, 5).strip())
						.append(',')
						.append(cell.substring(5, 6).strip())
						.append(',')
						.append(cell.substring(6, 7).strip())
						.append(',')
						.append(cell.substring(7).strip())
						.append(",\n");
				}
			}
		}
		return csv.toString().getBytes(StandardCharsets.US_ASCII);
	}

	private static byte[] gzip(byte[] plain) throws IOException {
		ByteArrayOutputStream bytes = new ByteArrayOutputStream();
		try (GZIPOutputStream stream = new GZIPOutputStream(bytes)) {
			stream.write(plain);
		}
		return bytes.toByteArray();
	}

}
