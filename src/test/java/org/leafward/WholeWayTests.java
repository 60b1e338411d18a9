package org.leafward;

import biweekly.Biweekly;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.time.Duration;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.leafward.feeds.ical.IcsLinter;
import org.leafward.support.SharedData;
import org.leafward.support.TestDatabase;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.context.SpringBootTest.WebEnvironment;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.context.ContextConfiguration;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

/**
 * The main job as an operator and a calendar program see it, over HTTP: a station's real
 * record and a garden become a subscribed calendar whose dates follow the record.
 */
@SpringBootTest(webEnvironment = WebEnvironment.RANDOM_PORT,
		properties = { "leafward.operator-token=" + WholeWayTests.TOKEN, "leafward.base-url=" })
@ContextConfiguration(initializers = TestDatabase.class)
class WholeWayTests {

	static final String TOKEN = "a-token-for-tests-0123456789";

	private final HttpClient http = HttpClient.newHttpClient();

	@LocalServerPort
	private int port;

	@Autowired
	private JsonMapper json;

	@Test
	void fromAStationFileToACalendarWhoseDatesFollowIt() throws Exception {
		// Central Park, GHCN-Daily 3.27: position from NCEI's normals file.
		post("/api/v1/stations", """
				{"id": "USW00094728", "name": "Central Park", "latitude": 40.7789, "longitude": -73.9692,
				 "elevationMetres": 39.6}""");
		byte[] file = Files.readAllBytes(SharedData.file("climate/USW00094728.dly.gz"));
		JsonNode report = put("/api/v1/stations/USW00094728/observations", file);
		assertThat(report.get("daysInserted").asInt()).isGreaterThan(55_000);
		assertThat(report.get("problemsInAll").asInt()).isZero();
		JsonNode again = put("/api/v1/stations/USW00094728/observations", file);
		assertThat(again.get("daysInserted").asInt() + again.get("daysChanged").asInt()).isZero();

		String owner = post("/api/v1/people", """
				{"name": "Ada", "email": "ada@example.org", "zone": "America/New_York"}""").get("id").asString();
		String site = post("/api/v1/sites", """
				{"owner": "%s", "name": "Ramble", "county": "New York", "latitude": 40.7789, "longitude": -73.9692,
				 "elevationMetres": 39.6, "zone": "America/New_York"}""".formatted(owner)).get("id").asString();
		post("/api/v1/sites/" + site + "/plantings", """
				{"species": "buxus-sempervirens", "label": "hedge", "count": 8, "plantedOn": "2015-04-20"}""");

		int season = LocalDate.now().getYear() + 1;
		JsonNode freezes = get("/api/v1/stations/USW00094728/freeze-dates?from=1989&to=2018&threshold=32F");
		String median = fall(freezes);
		JsonNode marker = marker(site, season);
		assertThat(marker.get("date").asString()).as("same height, same place, same date").endsWith(median);
		LocalDate holdOff = holdOff(site, season);
		// Eight weeks before the first freeze: the usual end of shearing (common
		// practice).
		assertThat(holdOff).isEqualTo(LocalDate.parse(marker.get("date").asString()).minusDays(56));

		URI feed = URI.create(post("/api/v1/sites/" + site + "/feed", "").get("address").asString());
		HttpResponse<byte[]> first = fetch(feed, null);
		assertThat(first.statusCode()).isEqualTo(200);
		assertThat(IcsLinter.problems(first.body())).isEmpty();
		String tag = first.headers().firstValue("ETag").orElseThrow();
		assertThat(fetch(feed, tag).statusCode()).isEqualTo(304);
		Map<String, VEvent> before = events(first.body());
		assertThat(before).hasSizeGreaterThan(10);

		// Toronto's record at the same spot is colder; the site's dates move earlier in
		// fall.
		post("/api/v1/stations", """
				{"id": "CA006158350", "name": "Toronto", "latitude": 40.7789, "longitude": -73.9692,
				 "elevationMetres": 39.6}""");
		put("/api/v1/stations/CA006158350/observations",
				Files.readAllBytes(SharedData.file("climate/CA006158350.dly.gz")));
		await().atMost(Duration.ofSeconds(30)).untilAsserted(() -> {
			assertThat(holdOff(site, season)).isBefore(holdOff);
			assertThat(fetch(feed, tag).statusCode()).isEqualTo(200);
		});
		HttpResponse<byte[]> second = fetch(feed, tag);
		assertThat(IcsLinter.problems(second.body())).isEmpty();
		assertOnlyWhatChangedWentUp(before, events(second.body()));
	}

	private static void assertOnlyWhatChangedWentUp(Map<String, VEvent> before, Map<String, VEvent> after) {
		int moved = 0;
		for (Map.Entry<String, VEvent> entry : before.entrySet()) {
			VEvent now = after.get(entry.getKey());
			if (now == null) {
				continue;
			}
			boolean changed = !now.getDateStart().getValue().equals(entry.getValue().getDateStart().getValue())
					|| !now.getDateEnd().getValue().equals(entry.getValue().getDateEnd().getValue())
					|| now.getStatus() != null;
			int difference = now.getSequence().getValue() - entry.getValue().getSequence().getValue();
			assertThat(difference).as(now.getSummary().getValue()).isEqualTo(changed ? 1 : 0);
			moved += changed ? 1 : 0;
		}
		assertThat(moved).isPositive();
	}

	@Test
	void aRemovedPlantingLeavesATombstoneInTheCalendar() throws Exception {
		String owner = post("/api/v1/people", """
				{"name": "Bea", "email": "bea@example.org", "zone": "UTC"}""").get("id").asString();
		String site = post("/api/v1/sites", """
				{"owner": "%s", "name": "Far away", "latitude": -60, "longitude": 0, "elevationMetres": 0,
				 "zone": "UTC"}""".formatted(owner)).get("id").asString();
		String planting = post("/api/v1/sites/" + site + "/plantings", """
				{"species": "acer-rubrum", "label": "maple", "plantedOn": "%s"}""".formatted(LocalDate.now())).get("id")
			.asString();
		URI feed = URI.create(post("/api/v1/sites/" + site + "/feed", "").get("address").asString());
		Map<String, VEvent> before = events(fetch(feed, null).body());
		assertThat(before).as("the watering of a new tree needs no station").hasSizeGreaterThan(5);
		assertThat(get("/api/v1/sites/" + site + "/tasks?season=" + LocalDate.now().getYear()).get("undated"))
			.as("what needs one says why it has no date")
			.isNotEmpty();
		send(request("/api/v1/plantings/" + planting).DELETE());
		await().atMost(Duration.ofSeconds(20))
			.untilAsserted(() -> assertThat(events(fetch(feed, null).body()).values())
				.anySatisfy((event) -> assertThat(event.getStatus().isCancelled()).isTrue()));
	}

	@Test
	void refusalsSayWhatWhereAndHowToMend() throws Exception {
		HttpResponse<String> refused = this.http.send(request("/api/v1/stations").POST(BodyPublishers.ofString("""
				{"id": "short", "name": "x", "latitude": 1, "longitude": 1, "elevationMetres": 1}"""))
			.header("Content-Type", "application/json")
			.build(), BodyHandlers.ofString());
		assertThat(refused.statusCode()).isEqualTo(400);
		// RFC 9457, section 3: the media type and the members of a problem.
		assertThat(refused.headers().firstValue("Content-Type").orElse("")).startsWith("application/problem+json");
		JsonNode problem = this.json.readTree(refused.body());
		assertThat(problem.get("detail").asString()).contains("short");
		assertThat(problem.get("where").asString()).isEqualTo("id");
		assertThat(problem.get("mend").asString()).contains("USW00094728");
	}

	private String fall(JsonNode freezes) {
		for (JsonNode point : freezes.get("fall").get("points")) {
			if (point.get("probability").asInt() == 50) {
				return point.get("date").asString().replace("--", "");
			}
		}
		throw new AssertionError("no median in " + freezes);
	}

	private JsonNode marker(String site, int season) throws Exception {
		for (JsonNode marker : get("/api/v1/sites/" + site + "/markers?season=" + season)) {
			if (marker.get("marker").asString().equals("first-fall-freeze") && marker.get("probability").asInt() == 50
					&& marker.get("threshold").asString().equals("32F")) {
				return marker;
			}
		}
		throw new AssertionError("no median first fall freeze");
	}

	private LocalDate holdOff(String site, int season) throws Exception {
		for (JsonNode task : get("/api/v1/sites/" + site + "/tasks?season=" + season).get("tasks")) {
			if (task.get("rule").asString().equals("evergreens/no-late-pruning")) {
				return LocalDate.parse(task.get("from").asString());
			}
		}
		throw new AssertionError("no hold-off from pruning");
	}

	private static Map<String, VEvent> events(byte[] calendar) {
		ICalendar parsed = Biweekly.parse(new String(calendar, StandardCharsets.UTF_8)).first();
		Map<String, VEvent> events = new HashMap<>();
		parsed.getEvents().forEach((event) -> events.put(event.getUid().getValue(), event));
		return events;
	}

	private HttpResponse<byte[]> fetch(URI feed, String tag) throws IOException, InterruptedException {
		HttpRequest.Builder request = HttpRequest.newBuilder(feed);
		if (tag != null) {
			request.header("If-None-Match", tag);
		}
		return this.http.send(request.build(), BodyHandlers.ofByteArray());
	}

	private HttpRequest.Builder request(String path) {
		return HttpRequest.newBuilder(URI.create("http://localhost:" + this.port + path))
			.header("Authorization", "Bearer " + TOKEN);
	}

	private JsonNode get(String path) throws Exception {
		return send(request(path));
	}

	private JsonNode post(String path, String body) throws Exception {
		return send(request(path).header("Content-Type", "application/json").POST(BodyPublishers.ofString(body)));
	}

	private JsonNode put(String path, byte[] body) throws Exception {
		return send(request(path).header("Content-Type", "application/gzip").PUT(BodyPublishers.ofByteArray(body)));
	}

	private JsonNode send(HttpRequest.Builder request) throws Exception {
		HttpResponse<String> response = this.http.send(request.build(), BodyHandlers.ofString());
		assertThat(response.statusCode()).as(response.body()).isBetween(200, 299);
		return this.json.readTree(response.body().isEmpty() ? "null" : response.body());
	}

}
