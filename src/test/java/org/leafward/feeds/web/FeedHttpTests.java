package org.leafward.feeds.web;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.leafward.feeds.FeedDocument;
import org.leafward.feeds.FeedDocuments;
import org.leafward.feeds.FeedForm;
import org.leafward.feeds.FeedId;
import org.leafward.feeds.FeedState;
import org.leafward.feeds.NewFeed;
import org.leafward.support.SettableClock;
import org.springframework.http.HttpMethod;
import org.springframework.mock.web.MockHttpServletRequest;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.MvcResult;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.springframework.test.web.servlet.setup.MockMvcBuilders;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.BDDMockito.given;
import static org.mockito.BDDMockito.then;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.never;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.head;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.request;

/** HTTP rules of a subscription; sections are of RFC 9110 where nothing else is said. */
class FeedHttpTests {

	private static final String PATH = "/f/0123456789abcdefghijklmnopqrstuv/tasks.ics";

	private static final String TOKEN = "0123456789abcdefghijklmnopqrstuv";

	private static final byte[] KEY = new byte[32];

	private static final FeedId FEED = new FeedId(new UUID(1, 2));

	private static final Instant MODIFIED = Instant.parse("2026-03-04T05:06:07Z");

	private static final String DATE = "Wed, 04 Mar 2026 05:06:07 GMT";

	private static final byte[] OCTETS = "BEGIN:VCALENDAR\r\nX:ü\r\nEND:VCALENDAR\r\n".getBytes(StandardCharsets.UTF_8);

	/** Stands for the packed form, which is only handed on. */
	private static final byte[] PACKED = pack(OCTETS);

	private final FeedDocuments documents = mock();

	private final SettableClock clock = new SettableClock(Instant.parse("2026-04-01T00:00:00Z"));

	private final MockMvc mvc = MockMvcBuilders.standaloneSetup(new FeedHttp(this.documents, this.clock))
		.addFilters(FeedMethods.filter())
		.build();

	@BeforeEach
	void aFeed() {
		given(this.documents.find(any(), any())).willReturn(Optional.empty());
		given(this.documents.find(TOKEN, FeedForm.EVENTS))
			.willReturn(Optional.of(new FeedState(KEY, FeedForm.EVENTS, false, false, "abc", MODIFIED)));
		given(this.documents.read(any())).willReturn(Optional.of(new FeedDocument(PACKED, "abc", MODIFIED)));
	}

	/** One client shortens longer addresses: at most 116 characters were reported. */
	@Test
	void urlIsShortAndEndsInIcs() {
		String url = "https://calendar.a-rather-long-host-name.example.org"
				+ new NewFeed(FEED, TOKEN).path(FeedForm.EVENTS);
		assertThat(url).hasSizeLessThan(116).endsWith("/tasks.ics").doesNotContain("?");
		assertThat(new NewFeed(FEED, TOKEN).path(FeedForm.EVENTS)).isEqualTo(PATH);
	}

	@Test
	void urlNeverRedirectsOrSetsACookie() throws Exception {
		MvcResult result = this.mvc.perform(get(PATH)).andReturn();
		MockHttpServletResponse response = result.getResponse();
		assertThat(response.getRedirectedUrl()).isNull();
		assertThat(response.getCookies()).isEmpty();
		assertThat(response.getHeader("Set-Cookie")).isNull();
		assertThat(result.getRequest().getSession(false)).isNull();
	}

	/** Section 9.3.2. */
	@Test
	void methodsGetAndHeadAnswerAlike() throws Exception {
		MockHttpServletResponse got = perform(get(PATH));
		MockHttpServletResponse headed = perform(head(PATH));
		assertThat(headed.getStatus()).isEqualTo(200);
		assertThat(headed.getContentAsByteArray()).isEmpty();
		assertThat(headed.getHeaderNames()).containsExactlyInAnyOrderElementsOf(got.getHeaderNames());
		for (String name : got.getHeaderNames()) {
			assertThat(headed.getHeader(name)).isEqualTo(got.getHeader(name));
		}
		assertThat(headed.getContentLength()).isEqualTo(OCTETS.length);
	}

	/** Section 15.5.6. */
	@ParameterizedTest
	@ValueSource(strings = { "OPTIONS", "PROPFIND", "POST", "PUT", "DELETE", "PATCH", "REPORT", "TRACE" })
	void methodsOtherThanThoseAreNotAllowed(String method) throws Exception {
		MockHttpServletResponse response = perform(request(HttpMethod.valueOf(method), PATH));
		assertThat(response.getStatus()).isEqualTo(405);
		assertThat(response.getHeader("Allow")).isEqualTo("GET, HEAD");
		then(this.documents).should(never()).find(any(), any());
	}

	@ParameterizedTest
	@ValueSource(strings = { "text/html", "application/json", "*/*", "text/calendar", "nonsense",
			"text/calendar, application/calendar+json, application/calendar+xml" })
	void contentTypeIsCalendarWhateverAccept(String accept) throws Exception {
		MockHttpServletResponse response = perform(get(PATH).header("Accept", accept));
		assertThat(response.getStatus()).isEqualTo(200);
		assertThat(response.getHeader("Content-Type")).isEqualToIgnoringWhitespace("text/calendar;charset=utf-8");
		assertThat(response.getContentAsByteArray()).isEqualTo(OCTETS);
	}

	@Test
	void contentTypeIsCalendarWithoutAccept() throws Exception {
		assertThat(perform(get(PATH)).getHeader("Content-Type"))
			.isEqualToIgnoringWhitespace("text/calendar;charset=utf-8");
	}

	@Test
	void contentDispositionIsInline() throws Exception {
		assertThat(perform(get(PATH)).getHeader("Content-Disposition")).isEqualTo("inline; filename=\"tasks.ics\"");
	}

	/** Section 8.8.3. */
	@Test
	void etagIsStrongAndQuoted() throws Exception {
		assertThat(perform(get(PATH)).getHeader("ETag")).isEqualTo("\"abc\"");
	}

	@Test
	void lastModifiedIsThatOfTheDocument() throws Exception {
		assertThat(perform(get(PATH)).getHeader("Last-Modified")).isEqualTo(DATE);
	}

	/** Section 8.8.2.1: never later than the time of the answer. */
	@Test
	void lastModifiedIsNeverInTheFuture() throws Exception {
		this.clock.set(MODIFIED.minusSeconds(1));
		assertThat(perform(get(PATH)).getHeader("Last-Modified")).isEqualTo("Wed, 04 Mar 2026 05:06:06 GMT");
		assertThat(perform(get(PATH).header("If-Modified-Since", "Wed, 04 Mar 2026 05:06:06 GMT")).getStatus())
			.isEqualTo(200);
	}

	/** Sections 13.1.2, 13.1.3 and 13.2.2; dates in the three forms of 5.6.7. */
	@ParameterizedTest
	@CsvSource(delimiter = '|', nullValues = "-", textBlock = """
			"abc"                | -                              | 304
			W/"abc"              | -                              | 304
			"x", W/"y" ,"abc"    | -                              | 304
			*                    | -                              | 304
			"abd"                | -                              | 200
			abc                  | -                              | 200
			"ab", "bc"           | -                              | 200
			"other"              | Wed, 04 Mar 2026 05:06:07 GMT  | 200
			"abc"                | Wed, 04 Mar 2020 05:06:07 GMT  | 304
			-                    | Wed, 04 Mar 2026 05:06:07 GMT  | 304
			-                    | Thu, 05 Mar 2026 05:06:07 GMT  | 304
			-                    | Wed, 04 Mar 2026 05:06:06 GMT  | 200
			-                    | Wednesday, 04-Mar-26 05:06:07 GMT | 304
			-                    | Wed Mar  4 05:06:07 2026       | 304
			-                    | yesterday                      | 200
			-                    | 0                              | 200
			""", quoteCharacter = '`')
	void precedence(String tags, String since, int status) throws Exception {
		MockHttpServletRequestBuilder request = get(PATH);
		if (tags != null) {
			request.header("If-None-Match", tags);
		}
		if (since != null) {
			request.header("If-Modified-Since", since);
		}
		assertThat(perform(request).getStatus()).isEqualTo(status);
	}

	@Test
	void precedenceTakesSeveralHeaderLinesAsOneList() throws Exception {
		assertThat(perform(get(PATH).header("If-None-Match", "\"x\"", "\"abc\"")).getStatus()).isEqualTo(304);
	}

	/** Section 15.4.5. */
	@Test
	void precedenceRepeatsTheHeadersWith304() throws Exception {
		MockHttpServletResponse response = perform(get(PATH).header("If-None-Match", "\"abc\""));
		assertThat(response.getStatus()).isEqualTo(304);
		assertThat(response.getContentAsByteArray()).isEmpty();
		assertThat(response.getHeader("ETag")).isEqualTo("\"abc\"");
		assertThat(response.getHeader("Last-Modified")).isEqualTo(DATE);
		assertThat(response.getHeader("Cache-Control")).isEqualTo("private, max-age=900");
		assertThat(response.getHeader("Vary")).isEqualTo("Accept-Encoding");
		then(this.documents).should(never()).read(any());
	}

	@Test
	void cacheControlKeepsSharedCachesOut() throws Exception {
		MockHttpServletResponse response = perform(get(PATH));
		assertThat(response.getHeader("Cache-Control")).isEqualTo("private, max-age=900");
		assertThat(response.getHeader("Vary")).isEqualTo("Accept-Encoding");
	}

	/** Section 12.5.3. */
	@ParameterizedTest
	@CsvSource(delimiter = '|', textBlock = """
			gzip                      | true
			deflate, gzip;q=0.5       | true
			GZIP                      | true
			*                         | true
			br, *;q=0.1               | true
			gzip;q=0                  | false
			gzip; q=0.000, *          | false
			*;q=0                     | false
			br, deflate               | false
			identity                  | false
			''                        | false
			""")
	void gzipIsSentWhereOffered(String accepted, boolean gzip) throws Exception {
		MockHttpServletResponse response = perform(get(PATH).header("Accept-Encoding", accepted));
		assertThat(response.getHeader("Content-Encoding")).isEqualTo(gzip ? "gzip" : null);
		assertThat(response.getContentAsByteArray()).isEqualTo(gzip ? PACKED : OCTETS);
		assertThat(response.getHeader("ETag")).isEqualTo(gzip ? "W/\"abc\"" : "\"abc\"");
	}

	/** Section 8.8.3.2: weakly, both forms are the same. */
	@ParameterizedTest
	@ValueSource(strings = { "\"abc\"", "W/\"abc\"" })
	void gzipNeedsNoTransferWhereThePlainFormIsKnown(String known) throws Exception {
		MockHttpServletResponse response = perform(
				get(PATH).header("Accept-Encoding", "gzip").header("If-None-Match", known));
		assertThat(response.getStatus()).isEqualTo(304);
		assertThat(response.getHeader("ETag")).isEqualTo("W/\"abc\"");
	}

	@ParameterizedTest
	@ValueSource(strings = { "/f/unknown/tasks.ics", "/f/%20/tasks.ics", "/f/%C3%BC!/tasks.ics",
			"/f/0123456789abcdefghijklmnopqrstuV/tasks.ics" })
	void unknownTokenIsNotFound(String path) throws Exception {
		MockHttpServletResponse response = perform(get(URI.create(path)));
		assertThat(response.getStatus()).isEqualTo(404);
		assertThat(response.getContentType()).isEqualToIgnoringWhitespace("text/plain;charset=utf-8");
		assertThat(response.getContentAsString()).isEqualTo("There is no calendar at this address.\n");
		then(this.documents).should().find(any(), any());
		then(this.documents).should(never()).read(any());
	}

	/** Section 15.5.11; one client then stops asking for good. */
	@Test
	void revokedTokenIsGone() throws Exception {
		given(this.documents.find(TOKEN, FeedForm.EVENTS))
			.willReturn(Optional.of(new FeedState(KEY, FeedForm.EVENTS, true, false, null, null)));
		MockHttpServletResponse response = perform(get(PATH).header("If-None-Match", "\"abc\""));
		assertThat(response.getStatus()).isEqualTo(410);
		assertThat(response.getContentType()).startsWith("text/plain");
		assertThat(response.getContentAsString()).contains("revoked");
	}

	@Test
	void whatEndedUnusedSaysSo() throws Exception {
		given(this.documents.find(TOKEN, FeedForm.EVENTS))
			.willReturn(Optional.of(new FeedState(KEY, FeedForm.EVENTS, true, true, null, null)));
		MockHttpServletResponse response = perform(get(PATH));
		assertThat(response.getStatus()).isEqualTo(410);
		assertThat(response.getContentAsString()).contains("18 months");
	}

	@Test
	void neverAnEmptyBody() throws Exception {
		assertThat(perform(get(PATH)).getContentAsByteArray()).isNotEmpty();
		given(this.documents.find(TOKEN, FeedForm.EVENTS))
			.willReturn(Optional.of(new FeedState(KEY, FeedForm.EVENTS, false, false, null, null)));
		MockHttpServletResponse built = perform(get(PATH).header("If-None-Match", "*"));
		assertThat(built.getStatus()).isEqualTo(200);
		assertThat(built.getContentAsByteArray()).isEqualTo(OCTETS);
	}

	@Test
	void neverAPartOfABodyAfterAFailure() {
		given(this.documents.read(any())).willThrow(new IllegalStateException("database is away"));
		MockHttpServletResponse response = new MockHttpServletResponse();
		assertThatIllegalStateException().isThrownBy(() -> new FeedHttp(this.documents, this.clock).tasks(TOKEN,
				new MockHttpServletRequest("GET", PATH), response));
		assertThat(response.isCommitted()).isFalse();
		assertThat(response.getContentAsByteArray()).isEmpty();
		assertThat(response.getHeader("ETag")).isNull();
	}

	@ParameterizedTest
	@ValueSource(strings = { PATH, "/f/unknown/tasks.ics" })
	void robotsAreAskedNotToIndexAndNoRefererTellsTheToken(String path) throws Exception {
		MockHttpServletResponse response = perform(get(path));
		assertThat(response.getHeader("X-Robots-Tag")).isEqualTo("noindex, nofollow");
		assertThat(response.getHeader("Referrer-Policy")).isEqualTo("no-referrer");
	}

	private static byte[] pack(byte[] octets) {
		ByteArrayOutputStream packed = new ByteArrayOutputStream();
		try (GZIPOutputStream out = new GZIPOutputStream(packed)) {
			out.write(octets);
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
		return packed.toByteArray();
	}

	private MockHttpServletResponse perform(MockHttpServletRequestBuilder request) throws Exception {
		return this.mvc.perform(request).andReturn().getResponse();
	}

}
