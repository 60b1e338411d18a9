package org.leafward.reminders.web;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.leafward.accounts.PersonId;
import org.leafward.accounts.PersonalRecords;
import org.leafward.care.CareLog;
import org.leafward.care.CareTask;
import org.leafward.care.TaskState;
import org.leafward.language.Language;
import org.leafward.language.Speech;
import org.leafward.language.Units;
import org.leafward.reminders.HowToTell;
import org.leafward.reminders.Series;
import org.leafward.reminders.Wishes;
import org.leafward.reminders.core.Links.Act;
import org.leafward.reminders.dispatch.Materialiser;
import org.leafward.support.SettableClock;
import org.leafward.support.StillServer;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.config.AutowireCapableBeanFactory;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.head;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

/** Acting from a message, over HTTP, by whoever has the address and nothing else. */
@StillServer
class ActPagesTests {

	/** Late in the evening of 20 May in Chicago (UTC-5, 15 U.S.C. 260a). */
	private static final Instant NOW = Instant.parse("2026-05-21T02:00:00Z");

	private static final LocalDate TODAY = LocalDate.parse("2026-05-20");

	private static int people;

	@Autowired
	private MockMvc web;

	@Autowired
	private AutowireCapableBeanFactory beans;

	private LinkFixture fixture;

	@Autowired
	private SettableClock clock;

	@Autowired
	private CareLog log;

	@Autowired
	private HowToTell wishes;

	@Autowired
	private Materialiser materialiser;

	@Autowired
	private PersonalRecords records;

	@Autowired
	private JdbcClient database;

	private PersonId nora;

	@BeforeEach
	void somebody() {
		this.clock.set(NOW);
		this.fixture = this.beans.createBean(LinkFixture.class);
		this.nora = this.fixture.person("Nora Field " + people++);
	}

	private MockHttpServletResponse perform(MockHttpServletRequestBuilder call) throws Exception {
		return this.web.perform(call).andReturn().getResponse();
	}

	private Document page(MockHttpServletRequestBuilder call) throws Exception {
		MockHttpServletResponse answer = perform(call);
		assertThat(answer.getStatus()).isEqualTo(200);
		return Jsoup.parse(answer.getContentAsString());
	}

	private Document press(String path, String act) throws Exception {
		return page(post(path).param("act", act));
	}

	private static String said(Document page) {
		return page.select("[role=status]").text();
	}

	private static List<String> buttons(Document page) {
		return page.select("main button").eachText();
	}

	private TaskState state(CareTask task) {
		return this.fixture.now(task).state();
	}

	/** First days and states of what waits to be told again. */
	private List<String> laters() {
		return this.database
			.sql("select first_day || ' ' || state from reminders.reminder where person_id = ? "
					+ "and dedup_key like '%:later:%' order by 1")
			.param(this.nora.value())
			.query(String.class)
			.list();
	}

	@ParameterizedTest
	@EnumSource
	void followingALinkChangesNothing(Act act) throws Exception {
		CareTask task = this.fixture.lilacs(this.nora, "by the gate").get(0);
		String path = this.fixture.act(task, act);
		page(get(path));
		Map<String, String> before = this.fixture.tables();
		MockHttpServletResponse answer = perform(get(path));
		assertThat(answer.getStatus()).isEqualTo(200);
		assertThat(answer.getCookies()).isEmpty();
		assertThat(answer.getHeader("Cache-Control")).isEqualTo("no-store");
		assertThat(answer.getHeader("Referrer-Policy")).isEqualTo("no-referrer");
		assertThat(answer.getHeader("X-Robots-Tag")).contains("noindex");
		assertThat(answer.getHeader("Content-Security-Policy")).contains("default-src 'none'", "form-action 'self'",
				"frame-ancestors 'none'");
		assertThat(perform(head(path)).getStatus()).isEqualTo(200);
		assertThat(this.fixture.tables()).as("mail scanners follow links").hasSizeGreaterThan(35).isEqualTo(before);
		assertThat(state(task)).isEqualTo(TaskState.PLANNED);
	}

	@Test
	void theProposedActComesFirst() throws Exception {
		CareTask task = this.fixture.lilacs(this.nora, "by the gate").get(0);
		assertThat(buttons(page(get(this.fixture.act(task, Act.DONE))))).containsExactly("I did it today",
				"Tell me again in three days", "Not this year");
		assertThat(buttons(page(get(this.fixture.act(task, Act.LATER))))).containsExactly("Tell me again in three days",
				"I did it today", "Not this year");
		assertThat(buttons(page(get(this.fixture.act(task, Act.SKIP))))).containsExactly("Not this year",
				"I did it today", "Tell me again in three days");
	}

	@Test
	void thePageShowsThatTaskAndNothingElse() throws Exception {
		CareTask task = this.fixture.lilacs(this.nora, "by the gate").get(0);
		this.fixture.lilacs(this.nora, "at the back door");
		Document page = page(get(this.fixture.act(task, Act.DONE)));
		assertThat(page.select("h1").text()).isEqualTo(task.text().title());
		assertThat(page.select(".lead").text()).contains("by the gate (common lilac), Elm Street", "2026");
		assertThat(page.select("main a").eachAttr("href")).hasSize(2)
			.contains("/tasks/" + task.id())
			.anyMatch((link) -> link.matches("/u/[A-Za-z0-9_-]{50}"));
		assertThat(page.text()).doesNotContain("Nora", "@example.org", "back door");
		assertThat(page.select(".masthead nav").text()).as("as whoever is signed in as nobody").contains("Sign in");
		assertThat(perform(get("/tasks/" + task.id())).getRedirectedUrl()).endsWith("/sign-in");
	}

	@Test
	void doneIsNotedForAllThatTheMessageToldTogether() throws Exception {
		List<CareTask> alike = this.fixture.lilacs(this.nora, "gate", "fence", "shed");
		CareTask other = this.fixture.other(alike.get(0));
		this.fixture.settle();
		UUID message = this.fixture.message(this.nora, Series.MORNING);
		UUID first = this.fixture.told(alike.get(0), message);
		this.fixture.told(alike.get(1), message);
		this.fixture.told(other, message);
		// The third went out with another message.
		this.fixture.told(alike.get(2), this.fixture.message(this.nora, Series.SINGLE));
		String path = this.fixture.act(first, Act.DONE);
		assertThat(page(get(path)).select("main li").eachText()).containsExactlyInAnyOrder("gate (common lilac)",
				"fence (common lilac)");
		Document done = press(path, "done");
		assertThat(said(done)).isEqualTo("It is noted as done today.");
		assertThat(buttons(done)).containsExactly("Undo");
		assertThat(alike).extracting(this::state).containsExactly(TaskState.DONE, TaskState.DONE, TaskState.PLANNED);
		assertThat(state(other)).isEqualTo(other.state());
		assertThat(this.log.of(alike.get(1).id())).get().satisfies((entry) -> {
			assertThat(entry.by()).isEqualTo(this.nora);
			assertThat(entry.day()).as("the day at the site").isEqualTo(TODAY);
		});
		Document again = press(path, "done");
		assertThat(said(again)).isEqualTo("It is noted as done already.");
		assertThat(again.text()).contains("Done on Wed 20 May 2026.");
		assertThat(this.log.latest(alike.get(0).site(), null, 0, 10)).hasSize(2);
		assertThat(said(press(path, "undo"))).isEqualTo("Taken back.");
		assertThat(alike).extracting(this::state).containsOnly(TaskState.PLANNED);
		assertThat(this.log.latest(alike.get(0).site(), null, 0, 10)).isEmpty();
	}

	@Test
	void aFormWithoutAnActDoesWhatTheMessageProposed() throws Exception {
		CareTask task = this.fixture.lilacs(this.nora, "by the gate").get(0);
		String path = this.fixture.act(task, Act.SKIP);
		assertThat(said(page(post(path)))).isEqualTo("It is left out this year.");
		assertThat(state(task)).isEqualTo(TaskState.SKIPPED);
		assertThat(said(page(post(path)))).isEqualTo("It is left out already.");
		assertThat(buttons(page(get(path)))).containsExactly("I did it today", "Undo");
		assertThat(said(press(path, "undo"))).isEqualTo("Taken back.");
		assertThat(state(task)).isEqualTo(TaskState.PLANNED);
		assertThat(said(press(path, "undo"))).isEqualTo("There is nothing to take back any more.");
	}

	@Test
	void takingBackEndsAfterADay() throws Exception {
		CareTask task = this.fixture.lilacs(this.nora, "by the gate").get(0);
		String path = this.fixture.act(task, Act.DONE);
		press(path, "done");
		this.clock.advance(Duration.ofHours(23));
		assertThat(buttons(page(get(path)))).containsExactly("Undo");
		this.clock.advance(Duration.ofHours(1));
		assertThat(buttons(page(get(path)))).isEmpty();
		assertThat(said(press(path, "undo"))).isEqualTo("There is nothing to take back any more.");
		assertThat(state(task)).isEqualTo(TaskState.DONE);
	}

	@Test
	void laterIsARowOfItsOwn() throws Exception {
		CareTask task = this.fixture.lilacs(this.nora, "by the gate").get(0);
		String path = this.fixture.act(task, Act.LATER);
		Document page = press(path, "later");
		assertThat(said(page)).isEqualTo("You will be told again on Sat 23 May 2026.");
		assertThat(buttons(page)).containsExactly("Undo");
		assertThat(laters()).containsExactly("2026-05-23 PENDING");
		assertThat(this.database.sql(
				"select channel || ' ' || topic || ' ' || bundle || ' ' || (due_at at time zone 'UTC') || ' ' || dedup_key "
						+ "from reminders.reminder where person_id = ? and dedup_key like '%:later:%'")
			.param(this.nora.value())
			.query(String.class)
			.single()).isEqualTo(
					"mail to-do morning:2026-05-23 2026-05-23 12:00:00 mail:later:%s@2026-05-23".formatted(task.id()));
		assertThat(said(press(path, "later"))).isEqualTo("You will be told again on Sat 23 May 2026.");
		assertThat(laters()).hasSize(1);
		assertThat(buttons(page(get(path)))).containsExactly("I did it today", "Not this year", "Undo");
		this.clock.advance(Duration.ofDays(1));
		assertThat(said(press(path, "later"))).isEqualTo("You will be told again on Sun 24 May 2026.");
		assertThat(laters()).containsExactly("2026-05-23 WITHDRAWN", "2026-05-24 PENDING");
		assertThat(said(press(path, "undo"))).isEqualTo("Taken back.");
		assertThat(laters()).containsExactly("2026-05-23 WITHDRAWN", "2026-05-24 WITHDRAWN");
		assertThat(said(press(path, "later"))).isEqualTo("You will be told again on Sun 24 May 2026.");
		assertThat(laters()).containsExactly("2026-05-23 WITHDRAWN", "2026-05-24 PENDING");
		assertThat(state(task)).isEqualTo(TaskState.PLANNED);
	}

	@Test
	void thePlanLeavesWhatWasAskedForAndTakesItAwayOnceItIsDone() throws Exception {
		CareTask task = this.fixture.lilacs(this.nora, "by the gate").get(0);
		String path = this.fixture.act(task, Act.LATER);
		press(path, "later");
		this.materialiser.person(this.nora);
		assertThat(laters()).containsExactly("2026-05-23 PENDING");
		press(path, "done");
		this.fixture.settle();
		assertThat(laters()).containsExactly("2026-05-23 WITHDRAWN");
	}

	@Test
	void whoLeavesTheMorningsIsNotToldAgain() throws Exception {
		CareTask task = this.fixture.lilacs(this.nora, "by the gate").get(0);
		String path = this.fixture.act(task, Act.LATER);
		press(path, "later");
		page(post(this.fixture.stop(this.nora, Series.MORNING)));
		assertThat(laters()).containsExactly("2026-05-23 WITHDRAWN");
		assertThat(said(press(path, "later"))).isEqualTo("You have left these messages.");
		assertThat(laters()).containsExactly("2026-05-23 WITHDRAWN");
	}

	@Test
	void aTaskThatEndsBeforeIsNotToldAgain() throws Exception {
		CareTask task = this.fixture.lilacs(this.nora, "by the gate").get(0);
		String path = this.fixture.act(task, Act.LATER);
		LocalDate last = task.window().to();
		this.clock.set(last.minusDays(2).atTime(12, 0).atZone(LinkFixture.CHICAGO).toInstant());
		assertThat(buttons(page(get(path)))).containsExactly("I did it today", "Not this year");
		Document page = press(path, "later");
		assertThat(said(page)).startsWith("It ends on ").endsWith(", so there is no later day to tell you again.");
		assertThat(laters()).isEmpty();
	}

	@Test
	void linksEndSixtyDaysAfterTheFirstDay() throws Exception {
		CareTask task = this.fixture.lilacs(this.nora, "by the gate").get(0);
		String path = this.fixture.act(task, Act.DONE);
		LocalDate last = task.window().from().plusDays(60);
		this.clock.set(last.atTime(23, 59).atZone(LinkFixture.CHICAGO).toInstant());
		page(get(path));
		this.clock.advance(Duration.ofMinutes(1));
		for (MockHttpServletRequestBuilder call : List.of(get(path), post(path).param("act", "done"))) {
			MockHttpServletResponse answer = perform(call);
			assertThat(answer.getStatus()).isEqualTo(410);
			Document page = Jsoup.parse(answer.getContentAsString());
			assertThat(page.select("h1").text()).isEqualTo("This link has ended");
			assertThat(page.select("main a").eachAttr("href")).containsExactly("/sign-in");
			assertThat(page.text()).doesNotContain("Elm Street", "lilac");
		}
		assertThat(state(task)).isEqualTo(TaskState.PLANNED);
	}

	@Test
	void whatWasntMadeHereIsNotThereAndNothingIsLookedUp() throws Exception {
		CareTask task = this.fixture.lilacs(this.nora, "by the gate").get(0);
		String path = this.fixture.act(task, Act.DONE);
		page(get(path));
		String token = path.substring(3);
		byte[] octets = Base64.getUrlDecoder().decode(token);
		octets[20] ^= 1;
		String forged = Base64.getUrlEncoder().withoutPadding().encodeToString(octets);
		String leaving = this.fixture.stop(this.nora, Series.MORNING).substring(3);
		this.fixture.without("reminders.reminder", () -> {
			try {
				// A right one is looked up, which fails here.
				assertThat(perform(get(path)).getStatus()).isEqualTo(500);
				for (String wrong : List.of(forged, leaving, token + "A", token.substring(1), "x", "A".repeat(44),
						"A".repeat(5000))) {
					for (MockHttpServletRequestBuilder call : List.of(get("/r/" + wrong),
							post("/r/" + wrong).param("act", "done"))) {
						MockHttpServletResponse answer = perform(call);
						assertThat(answer.getStatus()).as(wrong).isEqualTo(404);
						assertThat(answer.getHeader("Cache-Control")).isEqualTo("no-store");
						assertThat(answer.getHeader("X-Robots-Tag")).contains("noindex");
						assertThat(answer.getContentAsString()).contains("There is no such link")
							.doesNotContain(token.substring(2, 20), leaving.substring(2, 20));
					}
				}
			}
			catch (Exception ex) {
				throw new IllegalStateException(ex);
			}
		});
		assertThat(state(task)).isEqualTo(TaskState.PLANNED);
	}

	@ParameterizedTest
	@ValueSource(strings = { "DONE", "delete", "", "<script>", "done,skip" })
	void anActThatIsNoneIsRefused(String act) throws Exception {
		CareTask task = this.fixture.lilacs(this.nora, "by the gate").get(0);
		MockHttpServletResponse answer = perform(post(this.fixture.act(task, Act.DONE)).param("act", act));
		assertThat(answer.getStatus()).isEqualTo(400);
		assertThat(answer.getContentAsString()).doesNotContain("<script").contains("use done, later, skip or undo");
		assertThat(state(task)).isEqualTo(TaskState.PLANNED);
	}

	@Test
	void whoIsForgottenIsNotKnownByTheirLinks() throws Exception {
		CareTask task = this.fixture.lilacs(this.nora, "by the gate").get(0);
		String path = this.fixture.act(task, Act.DONE);
		press(path, "later");
		this.fixture.settle();
		this.records.forget(this.nora);
		for (MockHttpServletRequestBuilder call : List.of(get(path), post(path).param("act", "later"))) {
			MockHttpServletResponse answer = perform(call);
			assertThat(answer.getStatus()).isEqualTo(410);
			assertThat(answer.getContentAsString()).doesNotContain("Elm Street");
		}
		assertThat(this.database.sql("select count(*) from reminders.reminder where person_id = ?")
			.param(this.nora.value())
			.query(Long.class)
			.single()).isZero();
	}

	@Test
	void thePersonsLanguageIsSpoken() throws Exception {
		Wishes usual = Wishes.USUAL;
		this.wishes.save(this.nora, new Wishes(new Speech(Language.SPANISH, Units.METRIC), usual.morning(),
				DayOfWeek.MONDAY, usual.quiet(), true, null, Map.of(), Map.of()));
		CareTask task = this.fixture.lilacs(this.nora, "junto a la puerta").get(0);
		String path = this.fixture.act(task, Act.DONE);
		Document page = page(get(path));
		assertThat(page.selectFirst("main").attr("lang")).isEqualTo("es");
		assertThat(page.title()).isEqualTo("Desde un mensaje – Leafward");
		assertThat(page.select("h1").text()).isNotEqualTo(task.text().title());
		assertThat(page.select(".lead").text()).contains("junto a la puerta (lila común), Elm Street", "may 2026");
		assertThat(buttons(page)).containsExactly("Lo hice hoy", "Avíseme otra vez en tres días", "Este año no");
		assertThat(said(press(path, "later"))).isEqualTo("Se le avisará otra vez el sáb 23 may 2026.");
		assertThat(said(press(path, "done"))).isEqualTo("Queda anotada como hecha hoy.");
		assertThat(said(press(path, "skip"))).isEqualTo("Ya está anotada como hecha.");
		assertThat(said(press(path, "undo"))).isEqualTo("Deshecho.");
		assertThat(said(press(path, "skip"))).isEqualTo("Queda omitida este año.");
		assertThat(page(get(path)).select("main").text()).contains("Omitida esta vez: Este año no.");
	}

}
