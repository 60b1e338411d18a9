package org.leafward.reminders.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.leafward.reminders.TaskFixture.ADA;
import static org.mockito.Mockito.verify;
import static org.mockito.Mockito.verifyNoInteractions;
import static org.mockito.Mockito.when;

import java.net.URI;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Optional;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leafward.accounts.People;
import org.leafward.accounts.Person;
import org.leafward.measure.BadInput;
import org.leafward.measure.NotThere;
import org.leafward.pages.Viewer;
import org.leafward.pages.Viewers;
import org.leafward.reminders.channel.webhook.WebhookView;
import org.leafward.reminders.channel.webhook.Webhooks;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.TestConfiguration;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.boot.webmvc.test.autoconfigure.WebMvcTest;
import org.springframework.context.annotation.Bean;
import org.springframework.http.HttpMethod;
import org.springframework.http.MediaType;
import org.springframework.test.context.bean.override.mockito.MockitoBean;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

/** The page of a webhook and its API; what they do is tried where it is done. */
@WebMvcTest({ WebhookPage.class, WebhookApi.class })
@AutoConfigureMockMvc(addFilters = false)
class WebhookPageTests {

	private static final String PAGE = "/reminders/webhook";

	private static final String API = "/api/v1/reminders/webhook";

	private static final String SECRET = "whsec_MfKQ9r8GKYqrTwjUPD8ILPZIo2LaLaSw";

	private static final WebhookView OFF = new WebhookView(URI.create("https://example.org/%3Chook%3E"),
			Instant.parse("2026-11-12T13:00:00Z"), Instant.parse("2026-11-22T13:00:00Z"),
			Instant.parse("2026-11-21T13:00:00Z"), "its server took nothing for 5 days",
			Instant.parse("2026-11-14T13:00:00Z"), Instant.parse("2026-11-21T13:00:00Z"),
			"nobody answered at this address");

	@Autowired
	private MockMvcTester mvc;

	@MockitoBean
	private Webhooks webhooks;

	@MockitoBean
	private Viewers viewers;

	@MockitoBean
	private People people;

	@TestConfiguration
	static class Time {

		@Bean
		Clock clock() {
			return Clock.fixed(Instant.parse("2026-11-21T14:00:00Z"), ZoneOffset.UTC);
		}

	}

	@BeforeEach
	void adaLooks() {
		when(this.viewers.current()).thenReturn(new Viewer(ADA.value(), "Ada", false, false));
		when(this.people.find(ADA))
			.thenReturn(Optional.of(new Person(ADA, "Ada", "ada@example.org", ZoneId.of("America/Chicago"))));
		when(this.webhooks.find(ADA)).thenReturn(Optional.empty());
	}

	private static Document page(MvcTestResult result) throws Exception {
		return Jsoup.parse(result.getResponse().getContentAsString());
	}

	@Test
	void withoutAWebhookThereIsOnlyTheForm() throws Exception {
		MvcTestResult result = this.mvc.get().uri(PAGE).exchange();
		assertThat(result).hasStatusOk();
		assertThat(page(result).select("main form").eachAttr("action")).containsExactly(PAGE);
		assertThat(page(result).select("#secret")).isEmpty();
	}

	@Test
	void whatIsMadeShowsItsSecretOnce() throws Exception {
		when(this.webhooks.set(ADA, "https://example.org/hook")).thenReturn(Optional.of(SECRET));
		MvcTestResult made = this.mvc.post().uri(PAGE).param("address", "https://example.org/hook").exchange();
		assertThat(made).hasStatusOk();
		assertThat(page(made).select("#secret").text()).isEqualTo(SECRET);
		assertThat(made.getResponse().getHeader("Cache-Control")).isEqualTo("no-store");
		when(this.webhooks.set(ADA, "https://example.org/hook")).thenReturn(Optional.empty());
		assertThat(this.mvc.post().uri(PAGE).param("address", "https://example.org/hook").exchange())
			.hasRedirectedUrl(PAGE);
	}

	@Test
	void tellsWhyItIsOffAndWhatMayBeDone() throws Exception {
		when(this.webhooks.find(ADA)).thenReturn(Optional.of(OFF));
		Document page = page(this.mvc.get().uri(PAGE).exchange());
		assertThat(page.select(".lead").text()).isEqualTo("Your webhook is off: its server took nothing for 5 days.");
		assertThat(page.getElementById("address").val()).isEqualTo(OFF.address().toString());
		// Chicago is at UTC-6 in November (15 U.S.C. 260a, 263).
		assertThat(page.select("dd").eachText()).containsExactly("Thu 12 Nov 2026, 07:00",
				"Sat 21 Nov 2026, 07:00: nobody answered at this address", "Sat 14 Nov 2026, 07:00",
				"signs too until Sun 22 Nov 2026, 07:00");
		assertThat(page.select("main form").eachAttr("action")).containsExactly(PAGE, PAGE + "/trial", PAGE + "/secret",
				PAGE + "/remove");
	}

	@Test
	void aBadAddressStaysInTheForm() throws Exception {
		when(this.webhooks.set(ADA, "gopher://x"))
			.thenThrow(new BadInput("the address does not begin with https://", "address", "write it so"));
		MvcTestResult result = this.mvc.post().uri(PAGE).param("address", "gopher://x").exchange();
		assertThat(result).hasStatus(400);
		assertThat(page(result).getElementById("address").val()).isEqualTo("gopher://x");
		assertThat(page(result).getElementById("address-error").text()).contains("does not begin with https://");
	}

	@Test
	void tooManyTrialsAreRefusedInWords() throws Exception {
		when(this.webhooks.find(ADA)).thenReturn(Optional.of(OFF));
		when(this.webhooks.trial(ADA))
			.thenThrow(new BadInput("you have sent 5 trials within an hour", "trial", "wait an hour"));
		MvcTestResult result = this.mvc.post().uri(PAGE + "/trial").exchange();
		assertThat(result).hasStatus(400);
		assertThat(page(result).select(".problem a[href=#trial]").text()).contains("5 trials within an hour");
		assertThat(page(result).getElementById("trial")).isNotNull();
	}

	@Test
	void anotherSecretAndTheEnd() throws Exception {
		when(this.webhooks.find(ADA)).thenReturn(Optional.of(OFF));
		when(this.webhooks.renewSecret(ADA)).thenReturn(SECRET);
		assertThat(page(this.mvc.post().uri(PAGE + "/secret").exchange()).select("#secret").text()).isEqualTo(SECRET);
		assertThat(this.mvc.post().uri(PAGE + "/remove").exchange()).hasRedirectedUrl(PAGE);
		verify(this.webhooks).remove(ADA);
	}

	@Test
	void theApiSaysTheSameAsJson() {
		when(this.webhooks.find(ADA)).thenReturn(Optional.of(OFF));
		assertThat(this.mvc.get().uri(API).exchange()).hasStatusOk().bodyJson().isStrictlyEqualTo("""
				{"address": "https://example.org/%3Chook%3E", "on": false, "createdAt": "2026-11-12T13:00:00Z",
				"offSince": "2026-11-21T13:00:00Z", "offBecause": "its server took nothing for 5 days",
				"lastTakenAt": "2026-11-14T13:00:00Z", "lastSentAt": "2026-11-21T13:00:00Z",
				"lastOutcome": "nobody answered at this address", "formerSecretUntil": "2026-11-22T13:00:00Z"}
				""");
		when(this.webhooks.set(ADA, "https://example.org/a")).thenReturn(Optional.of(SECRET));
		assertThat(put("{\"address\": \"https://example.org/a\"}")).hasStatus(201)
			.bodyJson()
			.extractingPath("$.secret")
			.isEqualTo(SECRET);
		when(this.webhooks.set(ADA, "https://example.org/a")).thenReturn(Optional.empty());
		assertThat(put("{\"address\": \"https://example.org/a\"}")).hasStatusOk()
			.bodyJson()
			.extractingPath("$.secret")
			.isNull();
		assertThat(put("{\"url\": \"https://example.org/a\"}")).hasStatus(400);
		assertThat(this.mvc.delete().uri(API).exchange()).hasStatus(204);
		verify(this.webhooks).remove(ADA);
	}

	private MvcTestResult put(String body) {
		return this.mvc.put().uri(API).contentType(MediaType.APPLICATION_JSON).content(body).exchange();
	}

	@Test
	void whatIsNotThereIsNot() {
		when(this.webhooks.renewSecret(ADA)).thenThrow(new NotThere("You have no webhook."));
		assertThat(this.mvc.get().uri(API).exchange()).hasStatus(404);
		assertThat(this.mvc.post().uri(API + "/secret").exchange()).hasStatus(404);
		assertThat(this.mvc.post().uri(PAGE + "/secret").exchange()).hasStatus(404);
	}

	@ParameterizedTest
	@CsvSource({ "GET," + PAGE, "POST," + PAGE, "POST," + PAGE + "/secret", "POST," + PAGE + "/trial",
			"POST," + PAGE + "/remove", "GET," + API, "PUT," + API, "POST," + API + "/secret", "POST," + API + "/trial",
			"DELETE," + API })
	void theOperatorTokenHasNone(String method, String path) {
		when(this.viewers.current()).thenReturn(new Viewer(null, "Operator", true, false));
		assertThat(this.mvc.method(HttpMethod.valueOf(method))
			.uri(path)
			.contentType(MediaType.APPLICATION_JSON)
			.content("{\"address\": \"https://example.org/a\"}")
			.exchange()).hasStatus(404);
		verifyNoInteractions(this.webhooks);
	}

}
