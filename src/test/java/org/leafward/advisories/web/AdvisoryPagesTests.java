package org.leafward.advisories.web;

import biweekly.Biweekly;
import biweekly.ICalendar;
import com.rometools.rome.feed.atom.Entry;
import com.rometools.rome.feed.atom.Feed;
import com.rometools.rome.io.WireFeedInput;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.StringReader;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.leafward.advisories.cap.CapSchema;
import org.leafward.feeds.ical.IcsLinter;
import org.leafward.support.WalkServer;
import org.springframework.boot.test.web.server.LocalServerPort;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

import static org.assertj.core.api.Assertions.assertThat;

/** What strangers, their programs and the pages of others get, over HTTP, in the demo. */
@WalkServer
class AdvisoryPagesTests {

	private static final String SABLE = "/advisories/us-ia-sable-county";

	private final HttpClient http = HttpClient.newHttpClient();

	@LocalServerPort
	private int port;

	private HttpResponse<byte[]> get(String path, String... headers) throws Exception {
		HttpRequest.Builder request = HttpRequest.newBuilder(
				path.startsWith("http") ? URI.create(path) : URI.create("http://localhost:" + this.port + path));
		for (int i = 0; i < headers.length; i += 2) {
			request.header(headers[i], headers[i + 1]);
		}
		return this.http.send(request.build(), BodyHandlers.ofByteArray());
	}

	private static String text(HttpResponse<byte[]> response) {
		return new String(response.body(), StandardCharsets.UTF_8);
	}

	private static String header(HttpResponse<?> response, String name) {
		return response.headers().firstValue(name).orElse("");
	}

	private Feed feed(String path) throws Exception {
		HttpResponse<byte[]> response = get(path);
		assertThat(response.statusCode()).isEqualTo(200);
		assertThat(header(response, "Content-Type")).isEqualTo("application/atom+xml;charset=utf-8");
		return (Feed) new WireFeedInput(true, Locale.ROOT).build(new StringReader(text(response)));
	}

	/**
	 * RFC 4287 by ROME; each entry leads to a document that keeps to the schema of CAP.
	 */
	@Test
	void eachEntryOfAFeedLeadsToItsAlert() throws Exception {
		Feed feed = feed(SABLE + "/feed.atom");
		assertThat(feed.getTitle()).isEqualTo("Garden advisories for Sable County");
		assertThat(feed.getEntries()).isNotEmpty();
		boolean inSpanish = false;
		for (Entry entry : feed.getEntries()) {
			String href = entry.getAlternateLinks().get(0).getHref();
			HttpResponse<byte[]> alert = get(href);
			assertThat(header(alert, "Content-Type")).isEqualTo("application/cap+xml;charset=utf-8");
			assertThat(header(alert, "Cache-Control")).isEqualTo("public, max-age=31536000, immutable");
			CapSchema.check(alert.body());
			assertThat(text(alert)).contains("<identifier>" + entry.getId() + "</identifier>", "<status>Test</status>",
					"<language>en-US</language>");
			inSpanish |= text(alert).contains("<language>es-US</language>");
			assertThat(get(entry.getOtherLinks().get(0).getHref()).statusCode()).isEqualTo(200);
		}
		assertThat(inSpanish).isTrue();
		assertThat(feed("/advisories/feed.atom").getEntries()).hasSizeGreaterThanOrEqualTo(feed.getEntries().size());
		assertThat(feed("/advisories/us-ia-alder-county/feed.atom").getTitle()).contains("Alder County");
	}

	/** RFC 9110, section 13.1.2: who has it already gets no body. */
	@ParameterizedTest
	@ValueSource(strings = { "/advisories", SABLE, SABLE + "/feed.atom", SABLE + "/current.json", SABLE + "/embed",
			SABLE + "/advisories.ics", SABLE + "/es/advisories.ics", "/advisories/us-ia-alder-county/advisories.ics",
			"/season-dates/counties/us-ia-sable-county" })
	void whatDidntChangeIsNotSentAgain(String path) throws Exception {
		HttpResponse<byte[]> first = get(path);
		assertThat(first.statusCode()).isEqualTo(200);
		assertThat(header(first, "Cache-Control")).isEqualTo("public, max-age=60");
		assertThat(header(first, "Set-Cookie")).as("no session for strangers").isEmpty();
		HttpResponse<byte[]> second = get(path, "If-None-Match", header(first, "ETag"));
		assertThat(second.statusCode()).isEqualTo(304);
		assertThat(second.body()).isEmpty();
	}

	/** RFC 5545 by biweekly and octet by octet; RFC 9110, section 13.1.3, by its date. */
	@Test
	void aCountyHasACalendarOfItsAdvisories() throws Exception {
		HttpResponse<byte[]> response = get(SABLE + "/advisories.ics");
		assertThat(header(response, "Content-Type")).startsWith("text/calendar");
		assertThat(IcsLinter.problems(response.body())).isEmpty();
		ICalendar calendar = Biweekly.parse(text(response)).first();
		assertThat(calendar.getEvents()).hasSizeGreaterThanOrEqualTo(2)
			.allMatch((one) -> one.getSummary().getValue().startsWith("Advisory"))
			.allMatch((one) -> one.getUrl().getValue().contains("/advisories/"));
		assertThat(text(response)).as("soon enough for a frost of this night (RFC 7986, section 5.7)")
			.contains("REFRESH-INTERVAL;VALUE=DURATION:PT1H\r\n", "X-PUBLISHED-TTL:PT1H\r\n");
		assertThat(get(SABLE + "/advisories.ics").body()).as("the same for everybody").isEqualTo(response.body());
		assertThat(get(SABLE + "/advisories.ics", "If-Modified-Since", header(response, "Last-Modified")).statusCode())
			.isEqualTo(304);
		byte[] spanish = get(SABLE + "/es/advisories.ics").body();
		assertThat(IcsLinter.problems(spanish)).isEmpty();
		assertThat(Biweekly.parse(new String(spanish, StandardCharsets.UTF_8)).first().getEvents())
			.hasSameSizeAs(calendar.getEvents())
			.allMatch((one) -> one.getSummary().getValue().startsWith("Aviso"));
		byte[] none = get("/advisories/us-ia-alder-county/advisories.ics").body();
		assertThat(IcsLinter.problems(none)).isEmpty();
		assertThat(Biweekly.parse(new String(none, StandardCharsets.UTF_8)).first().getEvents()).hasSize(1);
	}

	@Test
	void programsGetBothLanguages() throws Exception {
		HttpResponse<byte[]> response = get(SABLE + "/current.json");
		assertThat(header(response, "Access-Control-Allow-Origin")).isEqualTo("*");
		JsonNode json = JsonMapper.shared().readTree(text(response));
		assertThat(json.get("invented").asBoolean()).isTrue();
		assertThat(json.get("area").asString()).isEqualTo("Sable County");
		JsonNode one = json.get("advisories").get(0);
		assertThat(one.get("english").get("headline").asString()).isNotBlank();
		assertThat(one.get("severity").asString()).isEqualTo("Moderate");
		CapSchema.check(get(one.get("cap").asString()).body());
		assertThat(get(one.get("page").asString()).statusCode()).isEqualTo(200);
	}

	@Test
	void theFrameStandsInPagesOfOthersAndRunsNothing() throws Exception {
		HttpResponse<byte[]> response = get(SABLE + "/embed?language=es");
		assertThat(header(response, "Content-Security-Policy"))
			.isEqualTo("default-src 'none'; style-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors *");
		assertThat(header(response, "X-Frame-Options")).isEmpty();
		Document page = Jsoup.parse(text(response));
		assertThat(page.select("script, form, img")).isEmpty();
		assertThat(page.selectFirst("html").attr("lang")).isEqualTo("es");
		assertThat(page.select("a[target=_top]")).isNotEmpty();
		assertThat(page.text()).contains("Todos los avisos", "inventados");
		assertThat(header(get(SABLE), "X-Frame-Options")).as("no other page does").isEqualTo("DENY");
		assertThat(get(SABLE + "/embed?language=xx").statusCode()).isEqualTo(400);
	}

	@Test
	void theOldMessageOfTheDemoRefersToTheFirst() throws Exception {
		Document county = Jsoup.parse(text(get(SABLE)));
		String past = county.select("h2:contains(Ended) ~ ul a:contains(reeze)").attr("href");
		Document page = Jsoup.parse(text(get(past)));
		assertThat(page.select(".lead").text()).startsWith("It is over.");
		List<String> documents = page.select("a[href$=.cap.xml]").eachAttr("href");
		assertThat(documents).hasSize(2);
		String update = text(get(documents.get(0)));
		String alert = text(get(documents.get(1)));
		assertThat(value(update, "references"))
			.isEqualTo(value(alert, "sender") + "," + value(alert, "identifier") + "," + value(alert, "sent"));
		assertThat(value(update, "incidents")).isEqualTo(value(alert, "incidents"));
	}

	private static String value(String document, String name) {
		int from = document.indexOf("<" + name + ">") + name.length() + 2;
		return document.substring(from, document.indexOf("</" + name + ">"));
	}

	@ParameterizedTest
	@CsvSource({ "wide.png, 1200, 630", "square.png, 1080, 1080", "wide-es.png, 1200, 630" })
	void picturesHaveTheSizeThatOthersWant(String name, int width, int height) throws Exception {
		for (String path : List.of(current() + "/pictures/" + name, "/season-dates/last-freeze/pictures/" + name)) {
			HttpResponse<byte[]> response = get(path);
			assertThat(header(response, "Content-Type")).isEqualTo("image/png");
			BufferedImage picture = ImageIO.read(new ByteArrayInputStream(response.body()));
			assertThat(picture.getWidth()).isEqualTo(width);
			assertThat(picture.getHeight()).isEqualTo(height);
			// Ink of the headline, where letters stand; a picture without letters has
			// none.
			assertThat(dark(picture, 56, 90, 500, 160)).isGreaterThan(2_000);
		}
	}

	private static int dark(BufferedImage picture, int x, int y, int width, int height) {
		int dark = 0;
		for (int row = y; row < y + height; row++) {
			for (int column = x; column < x + width; column++) {
				if ((picture.getRGB(column, row) & 0xFF) < 0x60) {
					dark++;
				}
			}
		}
		return dark;
	}

	private String current() throws Exception {
		return Jsoup.parse(text(get(SABLE))).selectFirst(".task-title a").attr("href");
	}

	@Test
	void drawingsAreXmlWithWordsForThoseWhoDontSeeThem() throws Exception {
		for (String path : List.of(current() + "/pictures/wide.svg",
				"/season-dates/first-freeze/pictures/square-es.svg")) {
			HttpResponse<byte[]> response = get(path);
			assertThat(header(response, "Content-Type")).isEqualTo("image/svg+xml;charset=utf-8");
			var root = DocumentBuilderFactory.newDefaultInstance()
				.newDocumentBuilder()
				.parse(new ByteArrayInputStream(response.body()))
				.getDocumentElement();
			assertThat(root.getAttribute("role")).isEqualTo("img");
			assertThat(root.getAttribute("aria-label")).contains("County");
		}
		assertThat(get(current() + "/pictures/huge.png").statusCode()).isEqualTo(404);
		assertThat(get("/season-dates/noon/pictures/wide.png").statusCode()).isEqualTo(404);
	}

	@Test
	void theDatesOfACountyArePrinted() throws Exception {
		HttpResponse<byte[]> response = get("/season-dates/counties/us-ia-sable-county.pdf");
		assertThat(header(response, "Content-Type")).isEqualTo("application/pdf");
		Document page = Jsoup.parse(text(get("/season-dates/counties/us-ia-sable-county")));
		List<String> row = page.select("tbody tr").get(0).select("td").eachText();
		try (PDDocument pdf = Loader.loadPDF(response.body())) {
			String printed = new PDFTextStripper().getText(pdf);
			assertThat(printed).contains("Dates of the season in Sable County", "Last freeze in spring", "invented");
			row.forEach((date) -> assertThat(printed).contains(date));
			assertThat(pdf.getNumberOfPages()).isEqualTo(1);
		}
	}

	@Test
	void readersOfSpanishGetTheirWords() throws Exception {
		Document page = Jsoup.parse(text(get(current(), "Accept-Language", "es")));
		assertThat(page.selectFirst("html").attr("lang")).isEqualTo("es");
		assertThat(page.selectFirst("h1").attr("lang")).isEqualTo("es");
		assertThat(page.select("section h2").eachText()).contains("Qué hacer");
		assertThat(page.select("main [lang=en]:not([translate=no] [lang=en]):not([translate=no])").eachText())
			.isEmpty();
	}

	@ParameterizedTest
	@ValueSource(strings = { "/advisories/us-ia-nowhere", "/advisories/us-ia-nowhere/feed.atom",
			"/advisories/us-ia-nowhere/embed", "/advisories/us-ia-nowhere/advisories.ics", "/season-dates/noon",
			"/season-dates/counties/us-ia-nowhere" })
	void whatIsntThereIsSaidToBeMissing(String path) throws Exception {
		assertThat(get(path).statusCode()).isEqualTo(404);
		assertThat(get("/advisories/" + UUID.randomUUID()).statusCode()).isEqualTo(404);
		assertThat(get("/advisories/messages/" + UUID.randomUUID() + ".cap.xml").statusCode()).isEqualTo(404);
	}

}
