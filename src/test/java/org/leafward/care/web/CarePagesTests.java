package org.leafward.care.web;

import jakarta.servlet.http.Cookie;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.UUID;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.leafward.accounts.People;
import org.leafward.accounts.PersonId;
import org.leafward.care.CareTask;
import org.leafward.care.TaskCalendar;
import org.leafward.care.TaskKind;
import org.leafward.care.TaskState;
import org.leafward.measure.DayWindow;
import org.leafward.measure.GeoPoint;
import org.leafward.pages.NotForYou;
import org.leafward.plants.SpeciesId;
import org.leafward.register.NewPlanting;
import org.leafward.register.NewSite;
import org.leafward.register.Placement;
import org.leafward.register.Planting;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.leafward.register.SoilTexture;
import org.leafward.register.Sun;
import org.leafward.register.Wind;
import org.leafward.support.DemoServer;
import org.leafward.support.FarrowHouse;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.MvcResult;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.InstanceOfAssertFactories.type;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.delete;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

/** Living tasks over HTTP, in the weather of the invented region. */
@DemoServer
class CarePagesTests {

	private static final String TOKEN = DemoServer.TOKEN;

	@Autowired
	private MockMvc web;

	@Autowired
	private Register register;

	@Autowired
	private People people;

	@Autowired
	private TaskCalendar calendar;

	private Site site;

	private Planting lilac;

	private LocalDate today;

	private Cookie mine;

	private Cookie other;

	@BeforeEach
	void plant() throws Exception {
		ZoneId zone = ZoneId.of("America/Chicago");
		this.today = LocalDate.ofInstant(Instant.now(), zone);
		PersonId owner = this.people.join("Wilma Trial", UUID.randomUUID() + "@example.org", zone).id();
		this.site = this.register.addSite(owner, new NewSite("Trial ground", "Alder County",
				new GeoPoint(42, -91.6, 220), zone, SoilTexture.LOAM, Sun.FULL_SUN, Wind.AVERAGE));
		this.lilac = this.register
			.addPlantings(this.site.id(), List.of(new NewPlanting(new SpeciesId("syringa-vulgaris"),
					"lilac by the shed", 1, LocalDate.of(2010, 5, 20), Placement.GROUND, false, false)))
			.get(0);
		this.register.addPlantings(this.site.id(), List.of(new NewPlanting(new SpeciesId("acer-rubrum"), "young maple",
				1, this.today, Placement.GROUND, false, false)));
		this.mine = session(owner);
		this.other = session(FarrowHouse.in(this.register).owner());
	}

	@Test
	void aTaskIsDoneLeftOutAndTakenBackByItsButtons() throws Exception {
		CareTask task = aTask();
		String address = "/tasks/" + task.id();
		Document page = page(this.mine, address);
		assertThat(page.select("form[action=/tasks/done] input[name=_csrf]")).as("every form carries its secret")
			.hasSameSizeAs(page.select("form[action=/tasks/done]"))
			.isNotEmpty();
		MockHttpServletResponse wrong = send(this.mine, "/tasks/done", "task", task.id().toString(), "day",
				"2999-01-01", "note", "kept");
		assertThat(wrong.getStatus()).isEqualTo(400);
		Document form = Jsoup.parse(wrong.getContentAsString());
		assertThat(form.select("[role=alert] a[href=#day]")).hasSize(1);
		assertThat(form.getElementById("note").text()).isEqualTo("kept");
		MockHttpServletResponse done = send(this.mine, "/tasks/done", "task", task.id().toString(), "note",
				"with a sharp saw", "back", "site");
		assertThat(done.getRedirectedUrl()).isEqualTo("/sites/" + this.site.id() + "#now");
		page = page(this.mine, address);
		assertThat(page.selectFirst(".standing").text()).startsWith("Done on ");
		assertThat(page.text()).contains("with a sharp saw", "logged by Wilma Trial", "by Wilma Trial");
		assertThat(page.select("form[action=/tasks/done]")).isEmpty();
		assertThat(page(this.mine, "/sites/" + this.site.id()).text()).contains("Lately", "Done on ");
		assertThat(send(this.mine, "/tasks/undo", "task", task.id().toString()).getRedirectedUrl()).isEqualTo(address);
		assertThat(send(this.mine, "/tasks/skip", "task", task.id().toString()).getStatus()).as("no reason")
			.isEqualTo(400);
		send(this.mine, "/tasks/skip", "task", task.id().toString(), "reason", "Too wet");
		page = page(this.mine, address);
		assertThat(page.selectFirst(".standing").text()).isEqualTo("Left out this time: Too wet.");
		assertThat(page.select(".dates li").eachText()).anyMatch((line) -> line.contains("Not done after all"));
	}

	@Test
	void theLogOfASiteTakesEntriesAndFiltersThem() throws Exception {
		String address = "/sites/" + this.site.id() + "/log";
		assertThat(page(this.mine, address).text()).contains("Nothing is logged here yet.");
		assertThat(send(this.mine, address, "work", "mulch", "planting", this.lilac.id().toString(), "day",
				this.today.toString(), "amount", "2", "unit", "bags", "note", "a ring, <b>not</b> a cone")
			.getStatus()).isEqualTo(302);
		send(this.mine, address, "work", "water", "day", this.today.toString(), "amount", "1", "unit", "inches");
		Document log = page(this.mine, address);
		assertThat(log.select(".logged li")).hasSize(2);
		assertThat(log.text()).contains("Mulching, 2 bags", "a ring, <b>not</b> a cone", "Watering, 1 in");
		assertThat(page(this.mine, address + "?of=" + this.lilac.id()).select(".logged li")).hasSize(1);
		assertThat(api("/waterings")).as("written through to the water balance").contains("\"millimetres\":25.4");
		MockHttpServletResponse wrong = send(this.mine, address, "work", "mulch", "day", "soon", "amount", "some");
		assertThat(wrong.getStatus()).isEqualTo(400);
		assertThat(Jsoup.parse(wrong.getContentAsString()).select("[role=alert] a").eachAttr("href"))
			.containsExactly("#day", "#amount");
		for (Element undo : log.select(".logged form")) {
			assertThat(send(this.mine, undo.attr("action")).getStatus()).isEqualTo(302);
		}
		assertThat(api("/waterings")).isEqualTo("[]");
	}

	@Test
	void whatIsSeenIsEnteredListedAndTakenBack() throws Exception {
		String address = "/sites/" + this.site.id() + "/observations";
		Document page = page(this.mine, address);
		assertThat(page.select("#what option[value=phase:bloom-start]").text()).isEqualTo("first bloom");
		assertThat(page.text()).contains("The first flowers are open.");
		MockHttpServletResponse wrong = send(this.mine, address, "what", "phase:bloom-start", "day",
				this.today.toString());
		assertThat(wrong.getStatus()).isEqualTo(400);
		assertThat(Jsoup.parse(wrong.getContentAsString()).select("[role=alert] a").eachAttr("href"))
			.containsExactly("#planting");
		send(this.mine, address, "what", "phase:bloom-start", "planting", this.lilac.id().toString(), "day",
				this.today.toString());
		page = page(this.mine, address);
		assertThat(page.select(".logged li").text()).contains("first bloom on ", "lilac by the shed", "Wilma Trial");
		assertThat(send(this.mine, page.selectFirst(".logged form").attr("action")).getStatus()).isEqualTo(302);
		assertThat(page(this.mine, address).select(".logged li")).isEmpty();
	}

	/** Of a year ahead there is a task as soon as the next season is planned. */
	@Test
	void aTaskFarAheadIsNotDoneYet() throws Exception {
		CareTask task = this.calendar
			.ofSite(this.site.id(), new DayWindow(this.today.plusDays(60), this.today.plusDays(420)))
			.stream()
			.filter((one) -> one.kind() == TaskKind.DO && one.window().from().isAfter(this.today.plusDays(31)))
			.findFirst()
			.orElseThrow();
		Document page = page(this.mine, "/tasks/" + task.id());
		assertThat(page.select("form[action=/tasks/done]")).isEmpty();
		assertThat(page.text()).contains("It can be noted as done from ");
		MockHttpServletResponse refused = send(this.mine, "/tasks/done", "task", task.id().toString());
		assertThat(refused.getStatus()).isEqualTo(400);
		assertThat(Jsoup.parse(refused.getContentAsString()).select("[role=alert]").text())
			.contains("and can be noted as done from ");
		assertThat(call(400, post("/api/v1/tasks/" + task.id() + "/done"), null)).contains("can be noted as done from",
				"\"mend\":");
		assertThat(this.calendar.find(task.id())).contains(task);
	}

	@Test
	void whoeverMayNotSeeAPageIsToldWhoMay() throws Exception {
		for (String page : List.of("/replanning", "/workshop", "/workshop/trees")) {
			MvcResult answer = this.web.perform(get(page).cookie(this.mine)).andReturn();
			assertThat(answer.getResponse().getStatus()).as(page).isEqualTo(403);
			assertThat(answer.getRequest().getAttribute(NotForYou.ATTRIBUTE)).as(page)
				.asInstanceOf(type(NotForYou.class))
				.extracting(NotForYou::what)
				.asString()
				.contains("operator");
		}
	}

	@Test
	void anotherPersonFindsNothingAndChangesNothing() throws Exception {
		CareTask task = aTask();
		send(this.mine, "/sites/" + this.site.id() + "/log", "work", "mulch", "day", this.today.toString());
		String undo = page(this.mine, "/sites/" + this.site.id() + "/log").selectFirst(".logged form").attr("action");
		for (String act : List.of("/tasks/done", "/tasks/skip", "/tasks/undo")) {
			assertThat(send(this.other, act, "task", task.id().toString(), "reason", "x").getStatus()).as(act)
				.isEqualTo(404);
		}
		for (String page : List.of("/log", "/observations")) {
			String address = "/sites/" + this.site.id() + page;
			assertThat(this.web.perform(get(address).cookie(this.other)).andReturn().getResponse().getStatus())
				.isEqualTo(404);
			assertThat(send(this.other, address, "work", "mulch", "what", "event:thunder").getStatus()).isEqualTo(404);
		}
		assertThat(send(this.other, undo).getStatus()).isEqualTo(404);
		assertThat(this.web.perform(post("/tasks/done").param("task", task.id().toString()).cookie(this.mine))
			.andReturn()
			.getResponse()
			.getStatus()).as("without the form's secret").isEqualTo(403);
		assertThat(this.calendar.find(task.id())).contains(task);
	}

	@Test
	void allOfItGoesByApi() throws Exception {
		CareTask task = aTask();
		String tasks = "/api/v1/tasks/" + task.id();
		JsonNode done = JsonMapper.shared().readTree(call(200, post(tasks + "/done"), "{\"note\":\"by crew\"}"));
		assertThat(done.get("task").asString()).isEqualTo(task.id().toString());
		assertThat(done.get("day").asString()).isEqualTo(this.today.toString());
		assertThat(call(400, post(tasks + "/done"), null)).contains("It is done already", "\"mend\":");
		assertThat(call(200, post(tasks + "/undo"), null)).contains("\"state\":\"planned\"");
		assertThat(call(200, post(tasks + "/skip"), "{\"reason\":\"Too wet\"}")).contains("\"state\":\"skipped\"",
				"Too wet");
		String sites = "/api/v1/sites/" + this.site.id();
		JsonNode entry = JsonMapper.shared()
			.readTree(call(201, post(sites + "/log"),
					"{\"work\":\"prune\",\"planting\":\"%s\"}".formatted(this.lilac.id())));
		assertThat(api("/log")).contains(entry.get("id").asString());
		call(204, delete(sites + "/log/" + entry.get("id").asString()), null);
		call(404, delete(sites + "/log/" + entry.get("id").asString()), null);
		JsonNode seen = JsonMapper.shared()
			.readTree(call(201, post(sites + "/observations"),
					"{\"kind\":\"phase\",\"name\":\"leaf-drop\",\"planting\":\"%s\"}".formatted(this.lilac.id())));
		assertThat(seen.get("season").asInt()).isEqualTo(this.today.getYear());
		assertThat(api("/observations")).contains("leaf-drop");
		call(204, delete(sites + "/observations/" + seen.get("id").asString()), null);
		assertThat(api("/observations")).isEqualTo("[]");
		assertThat(JsonMapper.shared()
			.readTree(call(400, post(sites + "/observations"), "{\"kind\":\"mood\",\"day\":\"soon\"}"))
			.get("problems")).hasSize(3);
	}

	/**
	 * One of today where there is one: the maple was planted today and wants water, but
	 * not in winter.
	 */
	private CareTask aTask() {
		return this.calendar.ofSite(this.site.id(), new DayWindow(this.today.minusDays(1), this.today.plusYears(1)))
			.stream()
			.filter((task) -> task.kind() == TaskKind.DO && task.state() == TaskState.PLANNED)
			.min(Comparator.comparing((task) -> !task.window().contains(this.today)))
			.orElseThrow();
	}

	/** The cookie by which the server knows a person. */
	private Cookie session(PersonId person) throws Exception {
		return this.web.perform(post("/people/" + person.value()).with(csrf()))
			.andReturn()
			.getResponse()
			.getCookie("SESSION");
	}

	private MockHttpServletResponse send(Cookie session, String address, String... fields) throws Exception {
		MockHttpServletRequestBuilder request = post(address).with(csrf()).cookie(session);
		for (int i = 0; i < fields.length; i += 2) {
			request.param(fields[i], fields[i + 1]);
		}
		return this.web.perform(request).andReturn().getResponse();
	}

	private Document page(Cookie session, String address) throws Exception {
		MockHttpServletResponse response = this.web.perform(get(address).cookie(session)).andReturn().getResponse();
		assertThat(response.getStatus()).as(address).isEqualTo(200);
		return Jsoup.parse(response.getContentAsString());
	}

	private String api(String address) throws Exception {
		return call(200, get("/api/v1/sites/" + this.site.id() + address), null);
	}

	private String call(int status, MockHttpServletRequestBuilder request, String body) throws Exception {
		request.header("Authorization", "Bearer " + TOKEN);
		if (body != null) {
			request.contentType("application/json").content(body);
		}
		MockHttpServletResponse response = this.web.perform(request).andReturn().getResponse();
		assertThat(response.getStatus()).as(response.getContentAsString()).isEqualTo(status);
		return response.getContentAsString();
	}

}
