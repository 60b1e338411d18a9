package org.leafward.feeds;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;
import java.util.zip.GZIPInputStream;
import org.awaitility.Awaitility;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.leafward.advisories.Advisories;
import org.leafward.register.Beds;
import org.leafward.workdays.Groups;
import org.leafward.workdays.Workdays;
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
import org.leafward.support.Wire;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.context.SpringBootTest.WebEnvironment;
import org.springframework.boot.test.context.TestConfiguration;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Primary;
import org.springframework.modulith.test.EnableScenarios;
import org.springframework.modulith.test.Scenario;
import org.springframework.test.context.ContextConfiguration;
import org.springframework.test.context.bean.override.mockito.MockitoBean;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.leafward.feeds.core.CareTaskFixture.aTask;
import static org.leafward.support.Wire.header;
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.ArgumentMatchers.eq;
import static org.mockito.BDDMockito.given;

/**
 * The module behind a real web server with its security and a real database, and tasks as
 * each test wants them: what a calendar client meets on the wire.
 */
@SpringBootTest(webEnvironment = WebEnvironment.RANDOM_PORT,
		properties = { "leafward.operator-token=a-token-for-tests-only-0123456789",
				"leafward.base-url=https://calendar.example.org/", "spring.quartz.auto-startup=false" })
@EnableScenarios
@ContextConfiguration(initializers = TestDatabase.class)
class FeedServerTests {

	private static final String BEARER = "Bearer a-token-for-tests-only-0123456789";

	/** IMF-fixdate, RFC 9110 section 5.6.7. */
	private static final DateTimeFormatter DATE = DateTimeFormatter
		.ofPattern("EEE, dd MMM yyyy HH:mm:ss 'GMT'", Locale.US)
		.withZone(ZoneOffset.UTC);

	private final SiteId site = new SiteId(UUID.randomUUID());

	private final PersonId owner = new PersonId(UUID.randomUUID());

	@LocalServerPort
	private int port;

	@Autowired
	private SettableClock clock;

	@Autowired
	private FeedDocuments documents;

	@MockitoBean
	private TaskCalendar tasks;

	@MockitoBean
	private Register register;

	@MockitoBean
	private OpenSites sites;

	@MockitoBean
	private Beds beds;

	@MockitoBean
	private Groups groups;

	@MockitoBean
	private Workdays workdays;

	@MockitoBean
	private Advisories advisories;

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
		this.clock.set(Instant.parse("2026-03-10T12:00:00Z"));
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

	/**
	 * What a client meets on the wire, rule by rule. Sections are of RFC 9110 where
	 * nothing else is said; some of the rules are those of clients that take the first
	 * mistake for the last.
	 */
	@Nested
	class HttpRulesTests {

		/** One client takes no more than 116 characters. */
		@Test
		void urlIsShortAndFinal() {
			String address = make().get("address").asString();
			assertThat(address).matches("https://calendar\\.example\\.org/f/[A-Za-z0-9_-]{32}/tasks\\.ics")
				.hasSizeLessThanOrEqualTo(116);
			// A host of 60 characters is a long one.
			assertThat("https://".length() + 60 + URI.create(address).getPath().length()).isLessThanOrEqualTo(116);
			HttpResponse<byte[]> feed = send("GET", URI.create(address).getPath());
			assertThat(feed.statusCode()).isEqualTo(200);
			assertThat(feed.headers().map()).doesNotContainKeys("set-cookie", "location", "www-authenticate");
		}

		/** Sections 9.3.2 and 15.5.6. */
		@ParameterizedTest
		@ValueSource(strings = { "OPTIONS", "PROPFIND", "POST", "PUT", "DELETE", "REPORT" })
		void methodsAreGetAndHeadOnly(String method) {
			HttpResponse<byte[]> response = send(method, path(make()));
			assertThat(response.statusCode()).isEqualTo(405);
			assertThat(header(response, "allow")).isEqualTo("GET, HEAD");
		}

		/** Section 9.3.2. */
		@ParameterizedTest
		@ValueSource(strings = { "identity", "gzip" })
		void methodsGetAndHeadAnswerAlike(String coding) {
			String path = path(make());
			HttpResponse<byte[]> got = send("GET", path, "Accept-Encoding", coding);
			HttpResponse<byte[]> headed = send("HEAD", path, "Accept-Encoding", coding);
			assertThat(headed.statusCode()).isEqualTo(200);
			assertThat(headed.body()).isEmpty();
			assertThat(without(headed, "date")).isEqualTo(without(got, "date"));
			assertThat(header(headed, "content-length")).isEqualTo(String.valueOf(got.body().length));
		}

		@ParameterizedTest
		@ValueSource(strings = { "text/html", "application/json", "*/*", "nonsense",
				"text/calendar, application/calendar+json, application/calendar+xml", "" })
		void contentTypeIsCalendarWhateverIsAccepted(String accept) {
			HttpResponse<byte[]> feed = accept.isEmpty() ? send("GET", path(make()))
					: send("GET", path(make()), "Accept", accept);
			assertThat(feed.statusCode()).isEqualTo(200);
			assertThat(header(feed, "content-type")).isEqualToIgnoringWhitespace("text/calendar;charset=utf-8");
			assertThat(text(feed)).startsWith("BEGIN:VCALENDAR\r\n");
		}

		/** RFC 6266 section 4.2. */
		@Test
		void contentDispositionIsInline() {
			assertThat(header(send("GET", path(make())), "content-disposition"))
				.isEqualTo("inline; filename=\"tasks.ics\"");
		}

		/** Section 8.8.3; weak beside gzip, by section 8.8.3.3. */
		@Test
		void etagIsOfTheOctets() {
			String path = path(make());
			HttpResponse<byte[]> plain = send("GET", path);
			assertThat(header(plain, "etag"))
				.isEqualTo('"' + HexFormat.of().formatHex(FeedDocuments.sha256(plain.body())) + '"');
			assertThat(header(send("GET", path, "Accept-Encoding", "gzip"), "etag"))
				.isEqualTo("W/" + header(plain, "etag"));
			FeedServerTests.this.clock.advance(Duration.ofMinutes(10));
			assertThat(header(send("GET", path), "etag")).isEqualTo(header(plain, "etag"));
		}

		/** Section 8.8.2.1: the last change, in whole seconds, and never now. */
		@Test
		void lastModifiedIsTheLastChange() {
			String path = path(make());
			String date = header(send("GET", path), "last-modified");
			FeedServerTests.this.clock.advance(Duration.ofHours(1));
			assertThat(header(send("GET", path), "last-modified")).isEqualTo(date);
			assertThat(date).isEqualTo(DATE.format(FeedServerTests.this.clock.instant().minus(Duration.ofHours(1))));
		}

		/** Sections 13.1.2, 13.1.3, 13.2.2 and 15.4.5. */
		@Test
		void precedenceIsTagsBeforeDates() {
			String path = path(make());
			HttpResponse<byte[]> plain = send("GET", path);
			String tag = header(plain, "etag");
			String date = header(plain, "last-modified");
			for (String known : List.of(tag, "W/" + tag, "*", "\"x\", W/\"y\" ," + tag)) {
				HttpResponse<byte[]> again = send("GET", path, "If-None-Match", known);
				assertThat(again.statusCode()).as(known).isEqualTo(304);
				assertThat(again.body()).isEmpty();
				for (String name : List.of("etag", "last-modified", "cache-control", "vary")) {
					assertThat(header(again, name)).as(name).isNotNull().isEqualTo(header(plain, name));
				}
			}
			assertThat(send("GET", path, "If-Modified-Since", date).statusCode()).isEqualTo(304);
			assertThat(send("GET", path, "If-None-Match", "\"other\"", "If-Modified-Since", date).statusCode())
				.isEqualTo(200);
			assertThat(send("GET", path, "If-None-Match", tag, "If-Modified-Since", "Wed, 04 Mar 2020 05:06:07 GMT")
				.statusCode()).isEqualTo(304);
			assertThat(send("GET", path, "If-Modified-Since", "yesterday").statusCode()).isEqualTo(200);
			assertThat(send("GET", path, "If-Modified-Since", "Wed, 04 Mar 2020 05:06:07 GMT").statusCode())
				.isEqualTo(200);
		}

		/** RFC 9111 section 5.2.2.7: a secret address has no place in a shared cache. */
		@Test
		void cacheControlIsPrivate() {
			HttpResponse<byte[]> feed = send("GET", path(make()));
			assertThat(feed.headers().allValues("cache-control")).containsExactly("private, max-age=900");
			assertThat(feed.headers().allValues("vary")).containsExactly("Accept-Encoding");
			assertThat(feed.headers().map()).doesNotContainKeys("pragma", "expires");
		}

		/** Section 12.5.3, RFC 1952. */
		@Test
		void gzipIsForThoseWhoOfferIt() throws IOException {
			String path = path(make());
			HttpResponse<byte[]> plain = send("GET", path);
			assertThat(header(plain, "content-encoding")).isNull();
			HttpResponse<byte[]> packed = send("GET", path, "Accept-Encoding", "gzip");
			assertThat(header(packed, "content-encoding")).isEqualTo("gzip");
			assertThat(unpack(packed.body())).isEqualTo(plain.body());
			assertThat(packed.body().length).isLessThan(plain.body().length);
			for (HttpResponse<byte[]> known : List.of(plain, packed)) {
				for (String coding : List.of("gzip", "identity")) {
					assertThat(send("GET", path, "If-None-Match", header(known, "etag"), "Accept-Encoding", coding)
						.statusCode()).isEqualTo(304);
				}
			}
		}

		/** Section 15.5.5. */
		@ParameterizedTest
		@ValueSource(strings = { "unknown", "0123456789abcdefghijklmnopqrstuv", "%20", "%C3%BC", "a.b", "~" })
		void unknownTokenIs404(String token) {
			HttpResponse<byte[]> response = send("GET", "/f/" + token + "/tasks.ics");
			assertThat(response.statusCode()).isEqualTo(404);
			assertThat(header(response, "content-type")).startsWith("text/plain");
			assertThat(response.headers().map()).doesNotContainKeys("set-cookie", "location");
			assertThat(text(response)).doesNotContain(token + "/");
		}

		/** Section 15.5.11: one client then stops asking for good. */
		@Test
		void revokedTokenIs410() {
			JsonNode made = make();
			String path = path(made);
			String tag = header(send("GET", path), "etag");
			String feed = "/api/v1/feeds/" + made.get("id").asString();
			assertThat(send("DELETE", feed, "Authorization", BEARER).statusCode()).isEqualTo(204);
			for (HttpResponse<byte[]> response : List.of(send("GET", path), send("GET", path, "If-None-Match", tag),
					send("GET", path.replace("tasks.ics", "todo.ics")))) {
				assertThat(response.statusCode()).isEqualTo(410);
				assertThat(header(response, "content-type")).startsWith("text/plain");
			}
			assertThat(send("DELETE", feed, "Authorization", BEARER).statusCode()).isEqualTo(204);
			assertThat(Instant.parse(listed(made).get("revokedAt").asString()))
				.isEqualTo(FeedServerTests.this.clock.instant());
		}

		/**
		 * Sections 15.6.4 and RFC 6585 section 4 exist, but one client turns a calendar
		 * off for them. A builder that fails or is late is nothing that a reader sees.
		 */
		@Test
		void overloadServesTheStoredBody() {
			String path = path(make());
			HttpResponse<byte[]> before = send("GET", path);
			given(FeedServerTests.this.tasks.ofSite(eq(FeedServerTests.this.site), any()))
				.willThrow(new IllegalStateException("too much to do"));
			FeedServerTests.this.documents.planChanged(FeedServerTests.this.site.value(),
					FeedServerTests.this.owner.value());
			assertThat(FeedServerTests.this.documents.rebuildStale(Duration.ofSeconds(1))).isPositive();
			HttpResponse<byte[]> after = send("GET", path);
			assertThat(after.statusCode()).isEqualTo(200);
			assertThat(after.body()).isEqualTo(before.body());
			assertThat(send("GET", path, "If-None-Match", header(before, "etag")).statusCode()).isEqualTo(304);
		}

		/**
		 * A calendar service asks for all its people from one network address, dead
		 * addresses among them.
		 */
		@Test
		void manyWrongAddressesShutNobodyOut() {
			String path = path(make());
			for (int i = 0; i < 60; i++) {
				assertThat(send("GET", "/f/nobody-has-this-%d/tasks.ics".formatted(i)).statusCode()).isEqualTo(404);
			}
			assertThat(send("GET", path).statusCode()).isEqualTo(200);
		}

		/** Nothing but a whole calendar comes with 200, whoever asks in whatever way. */
		@ParameterizedTest
		@ValueSource(strings = { "text/html,application/xhtml+xml;q=0.9", "text/calendar", "*/*" })
		void neverAnEmptyOrHalfBodyAPageOrARedirect(String accept) {
			plan(aTask().build());
			for (String file : List.of("tasks.ics", "todo.ics")) {
				String path = path(make()).replace("tasks.ics", file);
				HttpResponse<byte[]> feed = send("GET", path, "Accept", accept, "User-Agent", "Mozilla/5.0");
				assertThat(feed.statusCode()).isEqualTo(200);
				assertThat(text(feed)).startsWith("BEGIN:VCALENDAR\r\n").endsWith("END:VCALENDAR\r\n");
				assertThat(header(feed, "content-length")).isEqualTo(String.valueOf(feed.body().length));
				assertThat(header(feed, "transfer-encoding")).isNull();
				assertThat(header(feed, "location")).isNull();
			}
			HttpResponse<byte[]> unknown = send("GET", "/f/unknown/tasks.ics", "Accept", accept);
			assertThat(header(unknown, "content-type")).startsWith("text/plain");
			assertThat(text(unknown)).doesNotContain("<");
		}

		/** RFC 5545 section 3.6: one component at least. */
		@ParameterizedTest
		@ValueSource(strings = { "tasks.ics", "todo.ics" })
		void emptySeasonShowsThatTheCalendarWorks(String file) {
			HttpResponse<byte[]> feed = send("GET", path(make()).replace("tasks.ics", file));
			assertThat(IcsLinter.problems(feed.body())).isEmpty();
			assertThat(FeedReading.count(feed.body())).isOne();
			assertThat(text(feed)).contains("SUMMARY:Nothing planned yet");
		}

		/** The recent past and a year, rolled at midnight UTC and not by who asks. */
		@Test
		void windowRollsOnceADay() {
			FeedServerTests.this.clock.set(Instant.parse("2026-03-10T12:00:00Z"));
			plan(aTask().numbered(1).on("2025-09-11", "2025-09-11").build(),
					aTask().numbered(2).on("2025-09-10", "2025-09-10").build(),
					aTask().numbered(3).on("2027-04-14", "2027-04-14").build(),
					aTask().numbered(4).on("2027-04-15", "2027-04-15").build());
			String path = path(make());
			FeedServerTests.this.documents.rebuildStale(Duration.ofSeconds(5));
			HttpResponse<byte[]> first = send("GET", path);
			assertThat(FeedReading.read(first.body())).extracting(FeedReading.Seen::from)
				.containsExactly(LocalDate.of(2025, 9, 11), LocalDate.of(2027, 4, 14));
			FeedServerTests.this.clock.set(Instant.parse("2026-03-10T23:59:59Z"));
			FeedServerTests.this.documents.rebuildStale(Duration.ofSeconds(5));
			assertThat(header(send("GET", path), "etag")).isEqualTo(header(first, "etag"));
			FeedServerTests.this.clock.set(Instant.parse("2026-03-11T00:00:00Z"));
			// The server's own worker may have the document in hand at this moment.
			Awaitility.await().atMost(Duration.ofSeconds(30)).untilAsserted(() -> {
				FeedServerTests.this.documents.rebuildStale(Duration.ofSeconds(5));
				HttpResponse<byte[]> next = send("GET", path);
				assertThat(FeedReading.read(next.body())).extracting(FeedReading.Seen::from)
					.containsExactly(LocalDate.of(2027, 4, 14), LocalDate.of(2027, 4, 15));
				assertThat(header(next, "last-modified")).isEqualTo("Wed, 11 Mar 2026 00:00:00 GMT");
			});
		}

		@ParameterizedTest
		@ValueSource(booleans = { true, false })
		void robotsAreAskedNotToIndex(boolean known) {
			String path = known ? path(make()) : "/f/unknown/tasks.ics";
			assertThat(header(send("GET", path), "x-robots-tag")).isEqualTo("noindex, nofollow");
			// A rule there would keep a widely used client from fetching.
			HttpResponse<byte[]> robots = send("GET", "/robots.txt");
			assertThat(robots.statusCode() == 200 && text(robots).contains("Disallow: /f")).isFalse();
		}

		/** The Referrer Policy's section 3.1. */
		@ParameterizedTest
		@ValueSource(booleans = { true, false })
		void referrerNeverTellsTheToken(boolean known) {
			String path = known ? path(make()) : "/f/unknown/tasks.ics";
			assertThat(send("GET", path).headers().allValues("referrer-policy")).containsExactly("no-referrer");
		}

		private Map<String, List<String>> without(HttpResponse<?> response, String name) {
			Map<String, List<String>> headers = new TreeMap<>(response.headers().map());
			headers.remove(name);
			return headers;
		}

		private String text(HttpResponse<byte[]> response) {
			return new String(response.body(), StandardCharsets.UTF_8);
		}

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
		return Wire.send(this.port, method, path, headers);
	}

	private static byte[] unpack(byte[] packed) throws IOException {
		try (GZIPInputStream in = new GZIPInputStream(new ByteArrayInputStream(packed))) {
			return in.readAllBytes();
		}
	}

}
