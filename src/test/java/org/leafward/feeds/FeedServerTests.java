package org.leafward.feeds;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.zip.GZIPInputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.leafward.accounts.PersonId;
import org.leafward.care.CareTask;
import org.leafward.care.PlanChanged;
import org.leafward.care.TaskCalendar;
import org.leafward.feeds.ical.FeedReading;
import org.leafward.feeds.ical.IcsLinter;
import org.leafward.measure.GeoPoint;
import org.leafward.register.OpenSites;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.leafward.register.SiteId;
import org.leafward.register.SoilTexture;
import org.leafward.register.Sun;
import org.leafward.register.Wind;
import org.leafward.support.SettableClock;
import org.leafward.support.TestDatabase;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest.WebEnvironment;
import org.springframework.boot.test.context.TestConfiguration;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Primary;
import org.springframework.modulith.test.ApplicationModuleTest;
import org.springframework.modulith.test.Scenario;
import org.springframework.test.context.ContextConfiguration;
import org.springframework.test.context.TestPropertySource;
import org.springframework.test.context.bean.override.mockito.MockitoBean;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.leafward.feeds.core.CareTaskFixture.aTask;
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.ArgumentMatchers.eq;
import static org.mockito.BDDMockito.given;

/**
 * The module behind a real web server, with the security of the accounts module and a
 * real database: what a calendar client meets on the wire.
 */
@ApplicationModuleTest(extraIncludes = { "accounts", "language", "knowledge" },
		webEnvironment = WebEnvironment.RANDOM_PORT)
@ContextConfiguration(initializers = TestDatabase.class)
@TestPropertySource(properties = { "leafward.operator-token=a-token-for-tests-only-0123456789",
		"leafward.base-url=https://calendar.example.org/" })
class FeedServerTests {

	private static final String BEARER = "Bearer a-token-for-tests-only-0123456789";

	private final HttpClient client = HttpClient.newBuilder().followRedirects(HttpClient.Redirect.NEVER).build();

	private final SiteId site = new SiteId(UUID.randomUUID());

	private final PersonId owner = new PersonId(UUID.randomUUID());

	@LocalServerPort
	private int port;

	@Autowired
	private SettableClock clock;

	@MockitoBean
	private TaskCalendar tasks;

	@MockitoBean
	private Register register;

	@MockitoBean
	private OpenSites sites;

	@TestConfiguration(proxyBeanMethods = false)
	static class Time {

		@Bean
		@Primary
		SettableClock settableClock() {
			return new SettableClock(Instant.parse("2026-03-10T12:00:00Z"));
		}

	}

	@BeforeEach
	void aSite() {
		Site found = new Site(this.site, this.owner, "Allotment 7", "Kent", new GeoPoint(51, 1, 20),
				ZoneId.of("Europe/London"), SoilTexture.LOAM, Sun.FULL_SUN, Wind.AVERAGE);
		given(this.register.find(this.site)).willReturn(Optional.of(found));
		given(this.register.require(this.site)).willReturn(found);
		given(this.sites.own(this.site.value())).willReturn(found);
		plan();
	}

	private void plan(CareTask... planned) {
		given(this.tasks.ofSite(eq(this.site), any())).willReturn(List.of(planned));
	}

	@Test
	void aMadeFeedCanBeSubscribedTo() throws Exception {
		plan(aTask().build());
		JsonNode made = make();
		String address = made.get("address").asString();
		assertThat(address).matches("https://calendar\\.example\\.org/f/[A-Za-z0-9_-]{32}/tasks\\.ics");
		assertThat(made.get("webcal").asString()).isEqualTo(address.replace("https:", "webcal:"));
		assertThat(made.get("note").asString()).contains("shown only now");
		HttpResponse<byte[]> feed = send("GET", path(made));
		assertThat(feed.statusCode()).isEqualTo(200);
		assertThat(IcsLinter.problems(feed.body())).isEmpty();
		assertThat(FeedReading.read(feed.body())).singleElement()
			.satisfies((seen) -> assertThat(seen.from()).isEqualTo(LocalDate.of(2026, 4, 2)))
			.satisfies((seen) -> assertThat(seen.description())
				.endsWith("https://calendar.example.org/tasks/" + aTask().build().id()));
	}

	@Test
	void anEmptySeasonShowsThatTheCalendarWorks() throws Exception {
		HttpResponse<byte[]> feed = send("GET", path(make()));
		assertThat(IcsLinter.problems(feed.body())).isEmpty();
		assertThat(FeedReading.read(feed.body())).extracting(FeedReading.Seen::summary)
			.containsExactly("Nothing planned yet");
	}

	@Test
	void theWireCarriesTheHeadersAndNothingThatHurts() throws Exception {
		HttpResponse<byte[]> feed = send("GET", path(make()));
		assertThat(feed.headers().map()).doesNotContainKeys("set-cookie", "location", "pragma", "expires");
		assertThat(header(feed, "content-type")).isEqualToIgnoringWhitespace("text/calendar;charset=utf-8");
		assertThat(feed.headers().allValues("cache-control")).containsExactly("private, max-age=900");
		assertThat(feed.headers().allValues("vary")).containsExactly("Accept-Encoding");
		assertThat(header(feed, "referrer-policy")).isEqualTo("no-referrer");
		assertThat(header(feed, "x-robots-tag")).isEqualTo("noindex, nofollow");
		assertThat(header(feed, "content-disposition")).isEqualTo("inline; filename=\"tasks.ics\"");
		assertThat(header(feed, "last-modified")).isEqualTo("Tue, 10 Mar 2026 12:00:00 GMT");
		assertThat(header(feed, "etag"))
			.isEqualTo('"' + HexFormat.of().formatHex(FeedDocuments.sha256(feed.body())) + '"');
		HttpResponse<byte[]> headed = send("HEAD", path(make()));
		assertThat(headed.statusCode()).isEqualTo(200);
		assertThat(headed.body()).isEmpty();
		assertThat(header(headed, "content-length")).isNotEqualTo("0");
	}

	@Test
	void askingAgainCostsNoTransferInEitherForm() throws Exception {
		String path = path(make());
		HttpResponse<byte[]> plain = send("GET", path);
		HttpResponse<byte[]> packed = send("GET", path, "Accept-Encoding", "gzip");
		assertThat(header(packed, "content-encoding")).isEqualTo("gzip");
		assertThat(header(packed, "etag")).isEqualTo("W/" + header(plain, "etag"));
		assertThat(unpack(packed.body())).isEqualTo(plain.body());
		for (HttpResponse<byte[]> known : List.of(plain, packed)) {
			HttpResponse<byte[]> again = send("GET", path, "If-None-Match", header(known, "etag"));
			assertThat(again.statusCode()).isEqualTo(304);
			assertThat(again.body()).isEmpty();
			assertThat(header(again, "etag")).isEqualTo(header(plain, "etag"));
			assertThat(header(again, "cache-control")).isEqualTo("private, max-age=900");
		}
		assertThat(send("GET", path, "If-Modified-Since", header(plain, "last-modified")).statusCode()).isEqualTo(304);
	}

	@ParameterizedTest
	@ValueSource(strings = { "OPTIONS", "PROPFIND", "POST", "PUT", "DELETE", "REPORT" })
	void otherMethodsAreNotAllowed(String method) throws Exception {
		HttpResponse<byte[]> response = send(method, path(make()));
		assertThat(response.statusCode()).isEqualTo(405);
		assertThat(header(response, "allow")).isEqualTo("GET, HEAD");
	}

	@ParameterizedTest
	@ValueSource(strings = { "unknown", "0123456789abcdefghijklmnopqrstuv", "%20", "%C3%BC", "a.b", "~" })
	void unknownAndOddTokensAreNotFoundInWords(String token) throws Exception {
		HttpResponse<byte[]> response = send("GET", "/f/" + token + "/tasks.ics");
		assertThat(response.statusCode()).isEqualTo(404);
		assertThat(header(response, "content-type")).startsWith("text/plain");
		assertThat(response.headers().map()).doesNotContainKeys("set-cookie", "location");
	}

	@Test
	void aRevokedFeedIsGoneForGood() throws Exception {
		JsonNode made = make();
		String feed = "/api/v1/feeds/" + made.get("id").asString();
		assertThat(send("DELETE", feed, "Authorization", BEARER).statusCode()).isEqualTo(204);
		HttpResponse<byte[]> response = send("GET", path(made));
		assertThat(response.statusCode()).isEqualTo(410);
		assertThat(header(response, "content-type")).startsWith("text/plain");
		assertThat(send("DELETE", feed, "Authorization", BEARER).statusCode()).isEqualTo(204);
		assertThat(listed(made).get("revokedAt").asString()).isEqualTo("2026-03-10T12:00:00Z");
	}

	@Test
	void theListTellsWhenACalendarLastAskedButNotTheAddress() throws Exception {
		JsonNode made = make();
		String path = path(made);
		assertThat(listed(made).get("lastFetchedAt").isNull()).isTrue();
		send("GET", path);
		await().atMost(Duration.ofSeconds(10))
			.untilAsserted(() -> assertThat(listed(made).path("lastFetchedAt").asString(""))
				.isEqualTo("2026-03-10T12:00:00Z"));
		assertThat(listed(made).toString()).doesNotContain(path.split("/")[2]);
	}

	@Test
	void theApiIsClosedWithoutTheOperatorsToken() throws Exception {
		assertThat(send("POST", "/api/v1/sites/" + this.site + "/feed").statusCode()).isEqualTo(401);
		assertThat(send("GET", "/api/v1/sites/" + this.site + "/feeds").statusCode()).isEqualTo(401);
	}

	@Test
	void aChangedPlanReachesTheDocument(Scenario scenario) throws Exception {
		String path = path(make());
		HttpResponse<byte[]> before = send("GET", path);
		plan(aTask().build());
		scenario.publish(new PlanChanged(this.site.value(), this.owner.value(), 1, 0, 0, this.clock.instant()))
			.customize((execution) -> execution.atMost(Duration.ofSeconds(20)))
			.andWaitForStateChange(() -> etag(path), (etag) -> !etag.equals(header(before, "etag")))
			.andVerify((etag) -> assertThat(FeedReading.read(body(path))).extracting(FeedReading.Seen::summary)
				.containsExactly("Water deeply: hedge by the gate (common boxwood)"));
	}

	private String etag(String path) {
		return header(send("GET", path), "etag");
	}

	private byte[] body(String path) {
		return send("GET", path).body();
	}

	private JsonNode make() {
		HttpResponse<byte[]> response = send("POST", "/api/v1/sites/" + this.site + "/feed", "Authorization", BEARER);
		assertThat(response.statusCode()).isEqualTo(201);
		return JsonMapper.shared().readTree(response.body());
	}

	private JsonNode listed(JsonNode made) {
		byte[] all = send("GET", "/api/v1/sites/" + this.site + "/feeds", "Authorization", BEARER).body();
		for (JsonNode feed : JsonMapper.shared().readTree(all)) {
			if (feed.get("id").equals(made.get("id"))) {
				return feed;
			}
		}
		throw new AssertionError("not listed: " + made.get("id"));
	}

	private static String path(JsonNode made) {
		return URI.create(made.get("address").asString()).getPath();
	}

	private HttpResponse<byte[]> send(String method, String path, String... headers) {
		HttpRequest.Builder request = HttpRequest.newBuilder(URI.create("http://localhost:" + this.port + path))
			.timeout(Duration.ofSeconds(20))
			.method(method, HttpRequest.BodyPublishers.noBody());
		if (headers.length > 0) {
			request.headers(headers);
		}
		try {
			return this.client.send(request.build(), BodyHandlers.ofByteArray());
		}
		catch (IOException | InterruptedException ex) {
			throw new IllegalStateException(ex);
		}
	}

	private static String header(HttpResponse<?> response, String name) {
		return response.headers().firstValue(name).orElse(null);
	}

	private static byte[] unpack(byte[] packed) throws IOException {
		try (GZIPInputStream in = new GZIPInputStream(new ByteArrayInputStream(packed))) {
			return in.readAllBytes();
		}
	}

}
