package org.leafward;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.SequenceInputStream;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublisher;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.leafward.support.TestDatabase;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.context.SpringBootTest.WebEnvironment;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.context.ContextConfiguration;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * What the API refuses, it refuses with a problem detail (RFC 9457) that says what is
 * wrong, where, and how to mend it, whoever refuses: controller, filter or the server.
 */
@SpringBootTest(webEnvironment = WebEnvironment.RANDOM_PORT,
		properties = "leafward.operator-token=" + RefusalsTests.TOKEN)
@ContextConfiguration(initializers = TestDatabase.class)
class RefusalsTests {

	static final String TOKEN = "a-token-for-refusals-0123456789";

	private final HttpClient http = HttpClient.newHttpClient();

	@LocalServerPort
	private int port;

	@ParameterizedTest
	@ValueSource(strings = { "/api/v1/people;x=1", "/api//v1/people", "/api/v1/../people", "/api/v1/people%2F",
			"/api/v1/people%00", "/api/v1/people%FF", "/api/v1/people%252F", "/api/v1/people?page=%FF" })
	void addressesWithTricks(String address) throws Exception {
		String answer = raw("GET", address);
		assertThat(answer).startsWith("HTTP/1.1 400 ").containsIgnoringCase("Content-Type: application/problem+json");
		assertThat(answer).contains("\"detail\":", "\"where\":", "\"mend\":").doesNotContain("<html", "Exception");
	}

	@ParameterizedTest
	@CsvSource({ "TRACE, 405", "PROPFIND, 400", "NONSENSE, 400" })
	void methodsThatNobodyKnows(String method, int status) throws Exception {
		assertThat(raw(method, "/api/v1/people")).startsWith("HTTP/1.1 " + status)
			.containsIgnoringCase("Content-Type: application/problem+json")
			.contains("\"mend\":");
	}

	/** RFC 9112, section 7.1: the size of a chunk is hexadecimal. */
	@Test
	void bodiesThatAreNoChunks() throws Exception {
		assertThat(raw("POST", "/api/v1/people", "Content-Type: application/json\r\nTransfer-Encoding: chunked\r\n",
				"ZZZ\r\n"))
			.startsWith("HTTP/1.1 400 ")
			.contains("\"mend\":");
	}

	@Test
	void headersThatAreTooLong() throws Exception {
		assertThat(raw("GET", "/api/v1/people?" + "x".repeat(20_000))).startsWith("HTTP/1.1 4")
			.contains("\"mend\":")
			.doesNotContain("<html");
	}

	@Test
	void pagesAreRefusedAsPages() throws Exception {
		HttpResponse<String> form = this.http.send(HttpRequest.newBuilder(at("/sign-in"))
			.header("Content-Type", "application/x-www-form-urlencoded")
			.POST(BodyPublishers.ofString("token=guess"))
			.build(), BodyHandlers.ofString());
		assertThat(form.statusCode()).isEqualTo(403);
		assertThat(form.body()).contains("<main", "open the page again and send the form once more");
		assertThat(raw("GET", "/sites;x")).startsWith("HTTP/1.1 400 ").contains("<main").doesNotContain("timestamp");
		assertThat(raw("GET", "/sites%00")).startsWith("HTTP/1.1 400 ").doesNotContain("Tahoma");
	}

	@Test
	void bodiesSayWhichMemberIsWrong() throws Exception {
		String person = """
				{"name": "Ada", "email": "refused@example.org", "zone": "Europe/Berlin", %s}""";
		assertThat(post(person.formatted("\"nickname\": \"A\""))).contains("\"where\":\"nickname\"");
		assertThat(post("{\"name\": {\"first\": \"Ada\"}}")).contains("\"where\":\"name\"");
		assertThat(post("{\"name\": \n ,}")).contains("\"where\":\"body, line 2, column ");
	}

	@Test
	void bodiesThatAreTooLargeAreRefusedAndNothingIsSaved() throws Exception {
		String large = "{\"name\": \"" + "x".repeat(2_000_000) + "\"}";
		assertTooLarge(send("POST", "/api/v1/people", BodyPublishers.ofString(large)));
		assertTooLarge(send("POST", "/api/v1/people",
				BodyPublishers.ofInputStream(() -> new ByteArrayInputStream(large.getBytes(StandardCharsets.UTF_8)))));
		this.http.send(request("/api/v1/stations").POST(BodyPublishers.ofString("""
				{"id": "XX000000009", "name": "Far", "latitude": -45.0, "longitude": 10.0, "elevationMetres": 5}"""))
			.build(), BodyHandlers.discarding());
		byte[] line = "XX000000009,20010101,TMIN,50,,,C,\n".getBytes(StandardCharsets.US_ASCII);
		// A good line again and again: nothing but its length is wrong with the file.
		assertTooLarge(send("PUT", "/api/v1/stations/XX000000009/observations",
				BodyPublishers.ofInputStream(() -> repeated(line, 70_000_000))));
		assertThat(this.http
			.send(request("/api/v1/stations/XX000000009/freeze-dates").GET().build(), BodyHandlers.ofString())
			.body()).contains("covers no season");
	}

	private static InputStream repeated(byte[] line, int length) {
		byte[] many = new byte[line.length * 10_000];
		for (int i = 0; i < many.length; i += line.length) {
			System.arraycopy(line, 0, many, i, line.length);
		}
		return new SequenceInputStream(Collections.enumeration(
				Collections.nCopies(length / many.length + 1, many).stream().map(ByteArrayInputStream::new).toList()));
	}

	/** Shapes: OpenAPI Specification 3.1, sections 4.8.2, 4.8.27 and 4.8.30. */
	@Test
	void theDescriptionNamesTheTokenTheNumbersAndTheRefusals() throws Exception {
		JsonNode all = JsonMapper.shared()
			.readTree(this.http.send(request("/api/docs").GET().build(), BodyHandlers.ofString()).body());
		assertThat(all.at("/info/title").asString()).isEqualTo("Leafward");
		assertThat(all.at("/components/securitySchemes/token/scheme").asString()).isEqualTo("bearer");
		assertThat(all.at("/security/0/token").isArray()).isTrue();
		assertThat(all.at("/components/schemas/SiteRequest/properties/latitude/type").asString()).isEqualTo("number");
		assertThat(all.at("/components/schemas/PlantingRequest/properties/count/type").asString()).isEqualTo("integer");
		assertThat(all.at("/components/schemas/Problem/properties/mend").isObject()).isTrue();
		assertThat(all.at("/paths/~1api~1v1~1stations~1{id}~1observations/put/requestBody/content")
			.has("application/octet-stream")).isTrue();
		for (JsonNode path : all.get("paths")) {
			for (JsonNode operation : path) {
				assertThat(operation.path("summary").asString("")).as(operation.toString()).isNotBlank();
				assertThat(operation.at("/responses/400/content/application~1problem+json/schema/$ref").asString(""))
					.endsWith("/Problem");
				assertThat(operation.at("/tags/0").asString()).doesNotContain("-api");
			}
		}
	}

	private static void assertTooLarge(HttpResponse<String> answer) {
		// RFC 9110, section 15.5.14.
		assertThat(answer.statusCode()).isEqualTo(413);
		assertThat(answer.headers().firstValue("Content-Type")).hasValue("application/problem+json");
		assertThat(answer.body()).contains("is larger than", "\"where\":\"body\"", "\"mend\":");
	}

	private String post(String body) throws IOException, InterruptedException {
		HttpResponse<String> answer = send("POST", "/api/v1/people", BodyPublishers.ofString(body));
		assertThat(answer.statusCode()).isEqualTo(400);
		return answer.body();
	}

	private HttpResponse<String> send(String method, String address, BodyPublisher body)
			throws IOException, InterruptedException {
		return this.http.send(request(address).method(method, body).build(), BodyHandlers.ofString());
	}

	private HttpRequest.Builder request(String address) {
		return HttpRequest.newBuilder(at(address))
			.header("Authorization", "Bearer " + TOKEN)
			.header("Content-Type", "application/json");
	}

	private URI at(String address) {
		return URI.create("http://localhost:" + this.port + address);
	}

	/** Clients mend such addresses before they send them; a socket does not. */
	private String raw(String method, String address) throws IOException {
		return raw(method, address, "", "");
	}

	private String raw(String method, String address, String header, String body) throws IOException {
		try (Socket socket = new Socket("localhost", this.port)) {
			socket.getOutputStream()
				.write("%s %s HTTP/1.1\r\nHost: localhost\r\nAuthorization: Bearer %s\r\nConnection: close\r\n%s\r\n%s"
					.formatted(method, address, TOKEN, header, body)
					.getBytes(StandardCharsets.US_ASCII));
			return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
		}
	}

}
