package org.leafward.reminders.web;

import java.nio.charset.StandardCharsets;
import java.time.ZoneId;
import java.util.EnumSet;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.leafward.accounts.People;
import org.leafward.accounts.PersonId;
import org.leafward.accounts.Roles;
import org.leafward.accounts.Scope;
import org.leafward.accounts.signin.PersonalTokens;
import org.leafward.accounts.signin.SignedIn;
import org.leafward.reminders.channel.push.PushReceiver;
import org.leafward.reminders.dispatch.Materialiser;
import org.leafward.support.LocalServer;
import org.leafward.support.TestDatabase;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.http.MediaType;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors;
import org.springframework.test.context.ContextConfiguration;
import org.springframework.test.context.bean.override.mockito.MockitoSpyBean;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.springframework.test.web.servlet.request.RequestPostProcessor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mockito.Mockito.times;
import static org.mockito.Mockito.verify;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.delete;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

/**
 * From the page to the push service and back, through the filters, the tables and the
 * client for strangers' addresses. The push service is a server on this machine, which
 * the settings allow here.
 */
@SpringBootTest(properties = { "leafward.http.plain=true", "leafward.http.private-addresses=true",
		"spring.quartz.auto-startup=false" })
@AutoConfigureMockMvc
@ContextConfiguration(initializers = TestDatabase.class)
class PushPagesTests {

	private static final String PAGE = "/reminders/push";

	private static final String API = "/api/v1/reminders/push";

	private static int counter;

	private final LocalServer service = LocalServer.start();

	private final List<byte[]> pushed = new CopyOnWriteArrayList<>();

	@Autowired
	private MockMvc web;

	@Autowired
	private People people;

	@Autowired
	private Roles roles;

	@Autowired
	private PersonalTokens tokens;

	@MockitoSpyBean
	private Materialiser materialiser;

	private PersonId nora;

	@BeforeEach
	void somebodyNew() {
		this.nora = somebody();
	}

	@AfterEach
	void close() {
		this.service.close();
	}

	private PersonId somebody() {
		String name = "nora" + counter++;
		return this.people.join(name, name + "@push.example.org", ZoneId.of("America/Chicago")).id();
	}

	private RequestPostProcessor as(PersonId id) {
		return SecurityMockMvcRequestPostProcessors
			.authentication(SignedIn.person(this.people.find(id).orElseThrow(), this.roles.of(id)));
	}

	private MockHttpServletResponse answer(MockHttpServletRequestBuilder call) throws Exception {
		return this.web.perform(call).andReturn().getResponse();
	}

	private Document page() throws Exception {
		MockHttpServletResponse answer = answer(get(PAGE).with(as(this.nora)));
		assertThat(answer.getStatus()).isEqualTo(200);
		return Jsoup.parse(answer.getContentAsString());
	}

	private PushReceiver browser(PersonId person, String name, int status) throws Exception {
		PushReceiver browser = PushReceiver.make();
		this.service.on("/p/" + name, (exchange) -> {
			this.pushed.add(exchange.getRequestBody().readAllBytes());
			LocalServer.status(status).send(exchange);
		});
		MockHttpServletResponse added = answer(add(browser, name).with(as(person)).with(csrf()));
		assertThat(added.getRedirectedUrl()).isEqualTo(PAGE);
		return browser;
	}

	private MockHttpServletRequestBuilder add(PushReceiver browser, String name) {
		return post(PAGE).param("endpoint", this.service.address("/p/" + name).toString())
			.param("p256dh", browser.p256dh())
			.param("auth", browser.auth())
			.param("label", name);
	}

	/** What the page's script needs, and nothing else that a script could use. */
	@Test
	void onlyThisPageMayHaveAWorkerAndTheScriptThatAsksForIt() throws Exception {
		MockHttpServletResponse answer = answer(get(PAGE).with(as(this.nora)));
		assertThat(answer.getHeader("Content-Security-Policy"))
			.contains("default-src 'none'", "script-src 'self'", "worker-src 'self'")
			.doesNotContain("unsafe", "connect-src", "http:", "https:");
		Document page = Jsoup.parse(answer.getContentAsString());
		assertThat(page.select("script").eachAttr("src")).containsExactly("/js/push.js");
		Element form = page.getElementById("add");
		// A point of P-256 in uncompressed form, as PushManager.subscribe takes it.
		assertThat(form.attr("data-key")).matches("B[A-Za-z0-9_-]{86}");
		assertThat(form.attr("data-worker")).isEqualTo("/push-worker.js");
		assertThat(form.hasAttr("hidden")).isTrue();
		assertThat(form.select("[name=_csrf]")).hasSize(1);
		assertThat(page.getElementById("push-state").text()).contains("needs a script");
		for (String other : List.of("/me", "/outbox", "/sites")) {
			assertThat(answer(get(other).with(as(this.nora))).getHeader("Content-Security-Policy")).as(other)
				.contains("default-src 'none'", "script-src 'self'")
				.doesNotContain("worker-src", "unsafe");
		}
		assertThat(answer(get("/push-worker.js")).getHeader("Content-Security-Policy")).contains("default-src 'none'")
			.doesNotContain("script-src", "worker-src");
	}

	@Test
	void scriptsAreOpenToEverybodyAndReadAsScripts() throws Exception {
		for (String path : List.of("/js/push.js", "/push-worker.js")) {
			MockHttpServletResponse answer = answer(get(path));
			assertThat(answer.getStatus()).isEqualTo(200);
			// HTML, section 4.12.1: with nosniff a script needs the type of one.
			assertThat(answer.getContentType()).isEqualTo("text/javascript;charset=UTF-8");
			assertThat(answer.getHeader("X-Content-Type-Options")).isEqualTo("nosniff");
			assertThat(answer.getHeader("Cache-Control")).isEqualTo("no-cache");
			assertThat(answer.getContentAsString()).contains("use strict").doesNotContain("eval(", "innerHTML");
		}
		assertThat(answer(get("/push-worker.js")).getHeader("Service-Worker-Allowed")).isEqualTo("/");
		assertThat(answer(get("/js/other.js")).getStatus()).isEqualTo(302);
	}

	@Test
	void aBrowserIsAddedGetsAMessageAndIsRemoved() throws Exception {
		PushReceiver phone = browser(this.nora, "phone", 201);
		Element row = page().selectFirst("ul.pick form");
		assertThat(row.select(".pick-name").text()).startsWith("phone");
		assertThat(row.select(".pick-more").text()).contains("no message yet");
		assertThat(page().html()).doesNotContain("/p/phone", phone.auth(), phone.p256dh());

		MockHttpServletResponse tried = answer(post(PAGE + "/trial").with(as(this.nora)).with(csrf()));
		assertThat(Jsoup.parse(tried.getContentAsString()).select(".note").text()).contains("is on its way");
		assertThat(tried.getHeader("Content-Security-Policy")).contains("script-src 'self'");
		assertThat(phone.open(this.pushed.get(0))).contains("A trial message", "\"link\":\"/reminders/push\"");
		assertThat(page().select(".pick-more").text()).contains("last message");

		assertThat(answer(post(row.attr("action")).with(as(this.nora)).with(csrf())).getRedirectedUrl())
			.isEqualTo(PAGE);
		assertThat(page().select("ul.pick")).isEmpty();
	}

	@Test
	void remindersAreMadeAnewWithEachChange() throws Exception {
		browser(this.nora, "phone", 201);
		verify(this.materialiser).person(this.nora);
		answer(post(page().selectFirst("ul.pick form").attr("action")).with(as(this.nora)).with(csrf()));
		verify(this.materialiser, times(2)).person(this.nora);
	}

	@Test
	void theSameBrowserAgainStaysOne() throws Exception {
		browser(this.nora, "phone", 201);
		browser(this.nora, "phone", 201);
		assertThat(page().select("ul.pick li")).hasSize(1);
		for (int i = 0; i < 12; i++) {
			browser(this.nora, "b" + i, 201);
		}
		assertThat(page().select("ul.pick .pick-name").eachText()).hasSize(10)
			.anyMatch((one) -> one.startsWith("b11"))
			.noneMatch((one) -> one.startsWith("phone"));
	}

	@Test
	void allThatIsWrongIsToldAtOnceAndNothingIsKept() throws Exception {
		MockHttpServletResponse answer = answer(post(PAGE).param("endpoint", "https://user@push.example.net/")
			.param("p256dh", "AAAA")
			.param("auth", "")
			.param("label", "x".repeat(61))
			.with(as(this.nora))
			.with(csrf()));
		assertThat(answer.getStatus()).isEqualTo(400);
		Document page = Jsoup.parse(answer.getContentAsString());
		assertThat(page.select(".problem a").eachAttr("href")).containsExactly("#endpoint", "#p256dh", "#auth",
				"#label");
		assertThat(page.getElementById("label").attr("aria-invalid")).isEqualTo("true");
		PushReceiver off = PushReceiver.make();
		String point = off.p256dh().substring(0, 60) + "A".repeat(27);
		assertThat(answer(post(PAGE).param("endpoint", "https://push.example.net/a")
			.param("p256dh", point)
			.param("auth", off.auth())
			.param("label", "off the curve")
			.with(as(this.nora))
			.with(csrf())).getStatus()).isEqualTo(400);
		assertThat(page().select("ul.pick")).isEmpty();
	}

	@Test
	void anotherSitesPageCanSendNothing() throws Exception {
		assertThat(answer(add(PushReceiver.make(), "stolen").with(as(this.nora))).getStatus()).isEqualTo(403);
		assertThat(page().select("ul.pick")).isEmpty();
	}

	@Test
	void othersBrowsersAreNotThere() throws Exception {
		browser(this.nora, "phone", 201);
		String stop = page().selectFirst("ul.pick form").attr("action");
		PersonId other = somebody();
		assertThat(answer(post(stop).with(as(other)).with(csrf())).getStatus()).isEqualTo(404);
		assertThat(page().select("ul.pick li")).hasSize(1);
	}

	@Test
	void aTrialTellsWhatWentWrong() throws Exception {
		browser(this.nora, "gone", 410);
		MockHttpServletResponse tried = answer(post(PAGE + "/trial").with(as(this.nora)).with(csrf()));
		assertThat(Jsoup.parse(tried.getContentAsString()).select(".note").text()).contains("knows the browser no more",
				"add it again");
		assertThat(page().select("ul.pick")).isEmpty();
	}

	@Test
	void fiveTrialsAnHourAreEnough() throws Exception {
		for (int i = 0; i < 5; i++) {
			assertThat(answer(post(PAGE + "/trial").with(as(this.nora)).with(csrf())).getStatus()).isEqualTo(200);
		}
		MockHttpServletResponse sixth = answer(post(PAGE + "/trial").with(as(this.nora)).with(csrf()));
		assertThat(sixth.getStatus()).isEqualTo(429);
		assertThat(Long.parseLong(sixth.getHeader("Retry-After"))).isBetween(1L, 3600L);
		PersonId other = somebody();
		assertThat(answer(post(PAGE + "/trial").with(as(other)).with(csrf())).getStatus()).isEqualTo(200);
	}

	@Test
	void programsDoTheSameByApi() throws Exception {
		String token = "Bearer "
				+ this.tokens.make(this.nora, "program", EnumSet.of(Scope.READ, Scope.WRITE), 30).secret();
		PushReceiver program = PushReceiver.make();
		this.service.on("/p/api", (exchange) -> {
			this.pushed.add(exchange.getRequestBody().readAllBytes());
			LocalServer.status(201).send(exchange);
		});
		// As PushSubscription.toJSON() writes it (W3C Push API), with a label.
		String body = """
				{"endpoint": "%s", "keys": {"p256dh": "%s", "auth": "%s"}, "label": "shed"}"""
			.formatted(this.service.address("/p/api"), program.p256dh(), program.auth());
		MockHttpServletResponse made = answer(post(API).header("Authorization", token)
			.contentType(MediaType.APPLICATION_JSON)
			.content(body.getBytes(StandardCharsets.UTF_8)));
		assertThat(made.getStatus()).isEqualTo(201);
		assertThat(made.getContentAsString()).contains("\"label\":\"shed\"").doesNotContain("/p/api", program.auth());
		assertThat(answer(post(API + "/trial").header("Authorization", token)).getContentAsString())
			.contains("\"outcome\":\"taken\"");
		assertThat(program.open(this.pushed.get(0))).contains("A trial message");
		String id = page().selectFirst("ul.pick form").attr("action").replaceAll(".*/push/|/stop", "");
		assertThat(answer(delete(API + "/" + id).header("Authorization", token)).getStatus()).isEqualTo(204);
		assertThat(answer(get(API).header("Authorization", token)).getContentAsString())
			.contains("\"subscriptions\":[]", "\"key\":\"B");
		assertThat(
				answer(post(API).header("Authorization", token).contentType(MediaType.APPLICATION_JSON).content("{}"))
					.getStatus())
			.isEqualTo(400);
	}

}
