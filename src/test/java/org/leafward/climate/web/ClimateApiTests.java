package org.leafward.climate.web;

import com.zaxxer.hikari.HikariDataSource;
import java.time.LocalDate;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.leafward.climate.ClimateFixture;
import org.leafward.measure.BadInput;
import org.leafward.measure.NotThere;
import org.leafward.support.TestDatabase;
import org.springframework.http.MediaType;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

import static org.assertj.core.api.Assertions.assertThat;

/** The API on a real database, without security, which is laid around it elsewhere. */
class ClimateApiTests {

	private static final String STATION = """
			{"id":"XX000000001","name":" Hill ","latitude":45.5,"longitude":10.25,"elevationMetres":300}""";

	private static HikariDataSource source;

	private MockMvcTester mvc;

	@BeforeAll
	static void open() {
		source = TestDatabase.fresh();
	}

	@AfterAll
	static void close() {
		source.close();
	}

	@BeforeEach
	void wire() {
		JdbcClient.create(source).sql("truncate climate.station cascade").update();
		ClimateFixture wired = ClimateFixture.on(source);
		this.mvc = MockMvcTester.of(new ClimateApi(wired.stations(), wired.observations(), wired.climate()));
	}

	@Test
	void stationsAreRegisteredListedAndShown() {
		MvcTestResult created = post(STATION);
		assertThat(created).hasStatus(201).hasHeader("Location", "/api/v1/stations/XX000000001");
		assertThat(created).bodyJson().extractingPath("$.name").isEqualTo("Hill");
		assertThat(post(STATION)).hasStatus(200);
		assertThat(this.mvc.get().uri("/api/v1/stations?page=0&size=10")).hasStatusOk()
			.bodyJson()
			.hasPathSatisfying("$.total", (total) -> assertThat(total).isEqualTo(1))
			.hasPathSatisfying("$.stations[0].elevationMetres", (metres) -> assertThat(metres).isEqualTo(300.0))
			.hasPathSatisfying("$.stations[0].invented", (invented) -> assertThat(invented).isEqualTo(false));
		assertThat(this.mvc.get().uri("/api/v1/stations/XX000000001")).hasStatusOk();
	}

	@Test
	void badStationsAreRefused() {
		assertRefused(post(STATION.replace("45.5", "95.5")), BadInput.class, "latitude 95.5");
		assertRefused(post(STATION.replace("XX000000001", "short")), BadInput.class, "station id 'short'");
		assertRefused(post("{\"id\":\"XX000000001\",\"name\":\"Hill\"}"), BadInput.class, "latitude is missing");
		assertRefused(this.mvc.get().uri("/api/v1/stations/XX000000009").exchange(), NotThere.class, "XX000000009");
		assertRefused(this.mvc.get().uri("/api/v1/stations?size=1000").exchange(), BadInput.class, "size 1000");
	}

	@Test
	void aFileIsTakenWhateverItsContentTypeAndDatesComeOut() {
		post(STATION);
		MvcTestResult loaded = this.mvc.put()
			.uri("/api/v1/stations/XX000000001/observations")
			.contentType(MediaType.TEXT_PLAIN)
			.content(csv() + "broken line\n")
			.exchange();
		assertThat(loaded).hasStatusOk()
			.bodyJson()
			.hasPathSatisfying("$.daysInserted", (days) -> assertThat(days).isEqualTo(7671))
			.hasPathSatisfying("$.problems[0].line", (line) -> assertThat(line).isEqualTo(7672))
			.hasPathSatisfying("$.firstDay", (day) -> assertThat(day).isEqualTo("2000-01-01"))
			.hasPathSatisfying("$.problemsInAll", (number) -> assertThat(number).isEqualTo(1));
		assertThat(this.mvc.get().uri("/api/v1/stations/XX000000001/freeze-dates?from=2001&to=2019&threshold=0C"))
			.hasStatusOk()
			.bodyJson()
			.hasPathSatisfying("$.lastSpringFreeze.probabilities.length()", (number) -> assertThat(number).isEqualTo(9))
			.hasPathSatisfying("$.lastSpringFreeze.probabilities[4].percent",
					(percent) -> assertThat(percent).isEqualTo(50))
			// each year freezes up to 30 April and from 1 November on
			.hasPathSatisfying("$.lastSpringFreeze.probabilities[4].date",
					(date) -> assertThat(date).isEqualTo("04-30"))
			.hasPathSatisfying("$.firstFallFreeze.probabilities[0].date", (date) -> assertThat(date).isEqualTo("11-01"))
			.hasPathSatisfying("$.frostFreeDays.probabilities[8].days", (days) -> assertThat(days).isEqualTo(184.0))
			.hasPathSatisfying("$.seasons[0].lastSpring", (date) -> assertThat(date).isEqualTo("2001-04-30"));
	}

	@Test
	void badFilesAndThresholdsAreRefused() {
		post(STATION);
		assertRefused(put(MediaType.APPLICATION_OCTET_STREAM, "nothing"), BadInput.class, "no GHCN-Daily file");
		assertRefused(this.mvc.get().uri("/api/v1/stations/XX000000001/freeze-dates?threshold=cold").exchange(),
				BadInput.class, "threshold 'cold'");
		assertRefused(this.mvc.get().uri("/api/v1/stations/XX000000001/freeze-dates").exchange(), BadInput.class,
				"covers no season");
	}

	/** Some programs send every body as if it were a form. */
	@Test
	void theContentTypeOfAFileDoesNotMatter() {
		post(STATION);
		assertThat(put(MediaType.APPLICATION_FORM_URLENCODED, csv())).hasStatusOk();
	}

	@Test
	void aNameIsOneLine() {
		assertRefused(post(STATION.replace(" Hill ", "Hill\\u0000")), BadInput.class, "control");
	}

	private MvcTestResult post(String station) {
		return this.mvc.post()
			.uri("/api/v1/stations")
			.contentType(MediaType.APPLICATION_JSON)
			.content(station)
			.exchange();
	}

	private MvcTestResult put(MediaType type, String content) {
		return this.mvc.put()
			.uri("/api/v1/stations/XX000000001/observations")
			.contentType(type)
			.content(content)
			.exchange();
	}

	private static void assertRefused(MvcTestResult result, Class<? extends Exception> kind, String word) {
		assertThat(result).failure().satisfies((failure) -> {
			Throwable cause = (failure.getCause() != null) ? failure.getCause() : failure;
			assertThat(cause).isInstanceOf(kind).hasMessageContaining(word);
		});
	}

	private static String csv() {
		StringBuilder csv = new StringBuilder();
		for (LocalDate day = LocalDate.of(2000, 1, 1); day.getYear() <= 2020; day = day.plusDays(1)) {
			boolean cold = day.getMonthValue() < 5 || day.getMonthValue() > 10;
			csv.append("XX000000001,%s,TMIN,%d,,,C,\n".formatted(day.toString().replace("-", ""), cold ? -5 : 50));
		}
		return csv.toString();
	}

}
