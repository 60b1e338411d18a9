package org.leafward.reminders.web;

import java.nio.charset.StandardCharsets;
import java.time.DayOfWeek;
import java.time.Instant;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.leafward.accounts.PersonId;
import org.leafward.accounts.PersonalRecords;
import org.leafward.care.CareTask;
import org.leafward.language.Language;
import org.leafward.language.Speech;
import org.leafward.language.Units;
import org.leafward.reminders.HowToTell;
import org.leafward.reminders.Series;
import org.leafward.reminders.Wishes;
import org.leafward.reminders.core.Links.Act;
import org.leafward.support.SettableClock;
import org.leafward.support.StillServer;
import org.leafward.support.TestDatabase;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.context.annotation.Import;
import org.springframework.test.context.ContextConfiguration;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.config.AutowireCapableBeanFactory;
import org.springframework.http.MediaType;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.head;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

/** Leaving a series as people do, and as mail services do it for them (RFC 8058). */
@SpringBootTest(properties = { "spring.quartz.auto-startup=false", "leafward.base-url=https://plants.example.org" })
@AutoConfigureMockMvc
@ContextConfiguration(initializers = TestDatabase.class)
@Import(StillServer.Times.class)
class LeavePagesTests {

	private static int people;

	@Autowired
	private MockMvc web;

	@Autowired
	private AutowireCapableBeanFactory beans;

	private LinkFixture fixture;

	@Autowired
	private HowToTell wishes;

	@Autowired
	private PersonalRecords records;

	@Autowired
	private JdbcClient database;

	@Autowired
	private SettableClock clock;

	private PersonId nora;

	@BeforeEach
	void somebody() {
		this.clock.set(Instant.parse("2026-05-20T15:00:00Z"));
		this.fixture = this.beans.createBean(LinkFixture.class);
		this.nora = this.fixture.person("Nora Leaver " + people++);
	}

	private MockHttpServletResponse perform(MockHttpServletRequestBuilder call) throws Exception {
		return this.web.perform(call).andReturn().getResponse();
	}

	private Document page(MockHttpServletRequestBuilder call) throws Exception {
		MockHttpServletResponse answer = perform(call);
		assertThat(answer.getStatus()).isEqualTo(200);
		return Jsoup.parse(answer.getContentAsString());
	}

	private static String said(Document page) {
		return page.select("[role=status]").text();
	}

	private Map<String, Set<Series>> stopped() {
		return this.wishes.of(this.nora).stopped();
	}

	/** RFC 8058, section 8.1: the form that a mail service sends. */
	@Test
	void aMailServiceLeavesByOneRequest() throws Exception {
		oneClick(post(this.fixture.stop(this.nora, Series.MORNING)).contentType(MediaType.APPLICATION_FORM_URLENCODED)
			.content("List-Unsubscribe=One-Click"));
	}

	/** RFC 8058, section 3.2 prefers multipart/form-data (RFC 7578). */
	@Test
	void aMailServiceLeavesByOneRequestInParts() throws Exception {
		oneClick(post(this.fixture.stop(this.nora, Series.MORNING))
			.contentType(MediaType.parseMediaType("multipart/form-data; boundary=---FormBoundaryjWmhtjORrn"))
			.content("""
					-----FormBoundaryjWmhtjORrn\r
					Content-Disposition: form-data; name="List-Unsubscribe"\r
					\r
					One-Click\r
					-----FormBoundaryjWmhtjORrn--\r
					""".getBytes(StandardCharsets.US_ASCII)));
	}

	@Test
	void whatTheFormHoldsMakesNoDifference() throws Exception {
		oneClick(post(this.fixture.stop(this.nora, Series.MORNING)).contentType("text/plain").content("%zz=\u0000"));
	}

	/** Section 3.2: no cookies, no sign-in, no redirect. */
	private void oneClick(MockHttpServletRequestBuilder call) throws Exception {
		MockHttpServletResponse answer = perform(call);
		assertThat(answer.getStatus()).isEqualTo(200);
		assertThat(answer.getRedirectedUrl()).isNull();
		assertThat(answer.getCookies()).isEmpty();
		assertThat(answer.getHeader("Cache-Control")).isEqualTo("no-store");
		assertThat(answer.getHeader("Referrer-Policy")).isEqualTo("no-referrer");
		assertThat(answer.getHeader("X-Robots-Tag")).contains("noindex");
		assertThat(said(Jsoup.parse(answer.getContentAsString())))
			.isEqualTo("You have left these messages. None of them goes out to you any more.");
		assertThat(stopped()).isEqualTo(Map.of("mail", Set.of(Series.MORNING)));
		MockHttpServletResponse again = perform(call);
		assertThat(again.getStatus()).isEqualTo(200);
		assertThat(said(Jsoup.parse(again.getContentAsString())))
			.isEqualTo("You had left these messages before. None of them goes out to you.");
		assertThat(stopped()).isEqualTo(Map.of("mail", Set.of(Series.MORNING)));
	}

	@ParameterizedTest
	@EnumSource
	void followingTheLinkLeavesNothing(Series series) throws Exception {
		String path = this.fixture.stop(this.nora, series);
		page(get(path));
		Map<String, String> before = this.fixture.tables();
		Document page = page(get(path));
		assertThat(page.select("main form[method=post]").eachAttr("action")).containsExactly(path);
		assertThat(page.select("main button").text()).isEqualTo("Leave these messages");
		assertThat(page.select("dd").text()).isEqualTo("E-mail");
		assertThat(page.select(".caution").isEmpty()).isEqualTo(series != Series.TONIGHT && series != Series.ADVISORY);
		assertThat(page.text()).doesNotContain("Nora", "@example.org");
		assertThat(perform(head(path)).getStatus()).isEqualTo(200);
		assertThat(this.fixture.tables()).hasSizeGreaterThan(35).isEqualTo(before);
		assertThat(stopped()).isEmpty();
	}

	@Test
	void whoLeftMayComeBack() throws Exception {
		String path = this.fixture.stop(this.nora, Series.OUTLOOK);
		this.wishes.stop(this.nora, "mail", Series.TONIGHT);
		page(post(path));
		Document left = page(get(path));
		assertThat(left.text()).contains("You have left these messages.");
		assertThat(left.select("main form[method=post]").eachAttr("action")).containsExactly(path + "/back");
		assertThat(said(page(post(path + "/back")))).isEqualTo("You are back. These messages go out to you again.");
		assertThat(stopped()).as("what was left otherwise stays so").isEqualTo(Map.of("mail", Set.of(Series.TONIGHT)));
		assertThat(said(page(post(path + "/back")))).isEqualTo("These messages go out to you.");
	}

	@Test
	void whatWasntSentYetIsWithdrawnAtOnce() throws Exception {
		CareTask task = this.fixture.lilacs(this.nora, "by the gate").get(0);
		this.fixture.settle();
		this.database.sql("update reminders.reminder set state = 'PENDING', next_try_at = due_at where task_id = ?")
			.param(task.id().value())
			.update();
		assertThat(states(task)).containsExactly("PENDING");
		page(post(this.fixture.stop(this.nora, Series.MORNING)));
		assertThat(states(task)).containsExactly("WITHDRAWN");
		page(post(this.fixture.stop(this.nora, Series.MORNING) + "/back"));
		assertThat(states(task)).containsExactly("PENDING");
	}

	private List<String> states(CareTask task) {
		return this.database.sql("select state from reminders.reminder where task_id = ? and channel = 'mail'")
			.param(task.id().value())
			.query(String.class)
			.list();
	}

	@Test
	void whatWasntMadeHereIsNotThereAndLeavesNothing() throws Exception {
		CareTask task = this.fixture.lilacs(this.nora, "by the gate").get(0);
		String path = this.fixture.stop(this.nora, Series.MORNING);
		byte[] octets = Base64.getUrlDecoder().decode(path.substring(3));
		for (int at : List.of(0, 5, 18, 30)) {
			byte[] forged = octets.clone();
			forged[at] ^= 1;
			none("/u/" + Base64.getUrlEncoder().withoutPadding().encodeToString(forged));
		}
		none("/u/" + this.fixture.act(task, Act.DONE).substring(3));
		none(path + "A");
		none("/u/x");
		assertThat(this.database.sql("select count(*) from reminders.stopped where person_id = ?")
			.param(this.nora.value())
			.query(Long.class)
			.single()).isZero();
	}

	private void none(String path) throws Exception {
		for (MockHttpServletRequestBuilder call : List.of(post(path), post(path + "/back"))) {
			assertThat(perform(call).getStatus()).as(path).isEqualTo(404);
		}
		assertThat(perform(get(path)).getStatus()).as(path).isIn(404, 429);
	}

	/** Guesses are slowed down, but nobody is kept from leaving by them. */
	@Test
	void whoGuessesWaitsAndWhoLeavesDoesnt() throws Exception {
		String path = this.fixture.stop(this.nora, Series.MORNING);
		MockHttpServletResponse answer = perform(from(get("/r/guess")));
		assertThat(answer.getStatus()).isEqualTo(404);
		for (int tries = 0; tries < 40 && answer.getStatus() == 404; tries++) {
			answer = perform(from(get("/u/guess")));
		}
		assertThat(answer.getStatus()).isEqualTo(429);
		assertThat(Integer.parseInt(answer.getHeader("Retry-After"))).isPositive();
		assertThat(perform(from(get(path))).getStatus()).isEqualTo(429);
		assertThat(perform(from(post(path))).getStatus()).isEqualTo(200);
		assertThat(stopped()).isEqualTo(Map.of("mail", Set.of(Series.MORNING)));
	}

	private static MockHttpServletRequestBuilder from(MockHttpServletRequestBuilder call) {
		return call.with((request) -> {
			request.setRemoteAddr("192.0.2.77");
			return request;
		});
	}

	@Test
	void whoIsForgottenIsNotNotedAgain() throws Exception {
		String path = this.fixture.stop(this.nora, Series.MORNING);
		page(post(path));
		this.records.forget(this.nora);
		for (MockHttpServletRequestBuilder call : List.of(get(path), post(path), post(path + "/back"))) {
			assertThat(page(call).text()).contains("There is nobody here any more whom we could write to.");
		}
		assertThat(this.database.sql("select count(*) from reminders.stopped where person_id = ?")
			.param(this.nora.value())
			.query(Long.class)
			.single()).isZero();
	}

	@Test
	void thePersonsLanguageIsSpoken() throws Exception {
		Wishes usual = Wishes.USUAL;
		this.wishes.save(this.nora, new Wishes(new Speech(Language.SPANISH, Units.BOTH), usual.morning(),
				DayOfWeek.MONDAY, usual.quiet(), true, null, Map.of(), Map.of()));
		for (Series series : Series.values()) {
			String path = this.fixture.stop(this.nora, series);
			for (MockHttpServletRequestBuilder call : List.of(get(path), post(path), post(path), post(path + "/back"),
					post(path + "/back"))) {
				Document page = page(call);
				assertThat(page.selectFirst("main").attr("lang")).isEqualTo("es");
				assertThat(page.select("main").text().toLowerCase()).as("%s", series)
					.doesNotContainPattern("\\b(the|you|these|messages|leave|again|by|night|weekly|get)\\b");
			}
		}
	}

}
