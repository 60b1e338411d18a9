package org.leafward.care.web;

import java.security.MessageDigest;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.leafward.accounts.People;
import org.leafward.accounts.PersonId;
import org.leafward.accounts.Roles;
import org.leafward.accounts.signin.SignedIn;
import org.leafward.care.CareTask;
import org.leafward.care.NewObservation;
import org.leafward.care.Observation;
import org.leafward.care.PhenologyLog;
import org.leafward.care.Replanning;
import org.leafward.care.TaskCalendar;
import org.leafward.care.TaskId;
import org.leafward.care.TaskNews;
import org.leafward.care.TaskNews.News;
import org.leafward.care.TaskState;
import org.leafward.climate.Forecasts;
import org.leafward.climate.Observations;
import org.leafward.climate.ObservedDay;
import org.leafward.climate.Station;
import org.leafward.climate.StationId;
import org.leafward.climate.Stations;
import org.leafward.measure.DayWindow;
import org.leafward.measure.GeoPoint;
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
import org.leafward.support.SettableClock;
import org.leafward.support.StillServer;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.MvcResult;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.springframework.test.web.servlet.request.RequestPostProcessor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

/**
 * This week over HTTP, in made-up weather: noon of 20 May 2026 in Chicago, −2 °C forecast
 * for the morning after.
 */
@StillServer
class WeekPagesTests {

	private static final ZoneId ZONE = ZoneId.of("America/Chicago");

	private static final LocalDate TODAY = LocalDate.of(2026, 5, 20);

	private static final StationId STATION = new StationId("XX000000309");

	private static final GeoPoint HERE = new GeoPoint(45, -62, 200);

	@Autowired
	private MockMvc web;

	@Autowired
	private Register register;

	@Autowired
	private People people;

	@Autowired
	private Roles roles;

	@Autowired
	private Stations stations;

	@Autowired
	private Observations observations;

	@Autowired
	private Forecasts forecasts;

	@Autowired
	private Replanning replanning;

	@Autowired
	private PhenologyLog phenology;

	@Autowired
	private TaskCalendar calendar;

	@Autowired
	private TaskNews news;

	@Autowired
	private SettableClock clock;

	private Site site;

	private PersonId person;

	@BeforeEach
	void plant() {
		this.clock.set(TODAY.atTime(12, 0).atZone(ZONE).toInstant());
		if (this.stations.near(HERE, 10).isEmpty()) {
			this.stations.register(new Station(STATION, "Made up", HERE, true));
			this.observations.load(STATION, record());
		}
		forecast(5, -2, 9, 9, 9);
		this.person = this.people.join("Wilma Trial", UUID.randomUUID() + "@example.org", ZONE).id();
		this.site = site("Orchard Lane");
		this.register.addPlantings(this.site.id(),
				List.of(planting("solanum-lycopersicum", "tomato bed", Placement.GROUND, "2026-05-15"),
						planting("capsicum-annuum", "pepper pot", Placement.CONTAINER, "2026-05-15"),
						planting("syringa-vulgaris", "lilac", Placement.GROUND, "2010-05-20")));
		this.replanning.derive(this.site.id());
	}

	private Site site(String name) {
		return this.register.addSite(this.person,
				new NewSite(name, "", HERE, ZONE, SoilTexture.LOAM, Sun.FULL_SUN, Wind.AVERAGE));
	}

	private static NewPlanting planting(String species, String label, Placement placement, String day) {
		return new NewPlanting(new SpeciesId(species), label, 1, LocalDate.parse(day), placement, false, false);
	}

	/** Minima from today on, °C. */
	private void forecast(int... minima) {
		StringBuilder csv = new StringBuilder("# issued: " + this.clock.instant() + "\ndate,min_c,max_c\n");
		for (int day = 0; day < minima.length; day++) {
			csv.append("%s,%d,20\n".formatted(TODAY.plusDays(day), minima[day]));
		}
		this.forecasts.upload(STATION, csv.toString());
	}

	private static List<ObservedDay> record() {
		Random random = new Random(7);
		List<ObservedDay> days = new ArrayList<>();
		for (LocalDate day = LocalDate.of(2004, 1, 1); day.isBefore(TODAY); day = day.plusDays(1)) {
			double mean = 8 - 16 * Math.cos(2 * Math.PI * (day.getDayOfYear() - 15) / 365.25)
					+ 2 * random.nextGaussian();
			days.add(new ObservedDay(day, (int) Math.round(10 * (mean - 8)), (int) Math.round(10 * (mean + 8)),
					(day.toEpochDay() % 3 == 0) ? 80 : 0, 0, null));
		}
		return days;
	}

	@Test
	void tonightSaysWhatToCoverAndWhatToBringIn() throws Exception {
		Element night = page(get("/")).selectFirst("section.tonight");
		assertThat(night.select("p").eachText()).startsWith("Tonight −2 °C (28 °F) at Orchard Lane.");
		assertThat(night.text()).containsPattern("Cover: [^.]*tomato bed").containsPattern("Bring in: [^.]*pepper pot");
		assertThat(night.text()).contains("The forecast is less than an hour old.");
		this.clock.set(TODAY.atTime(17, 30).atZone(ZONE).toInstant());
		assertThat(page(get("/")).selectFirst("section.tonight").text()).contains("The forecast is 5 hours old.");
		forecast(5, 8, 9, 9, 9);
		this.replanning.derive(this.site.id());
		Document mild = page(get("/"));
		assertThat(mild.select("section.tonight")).isEmpty();
		assertThat(mild.select("main").text()).contains("Tonight about 8 °C (46 °F); no cover is called for.");
		this.clock.set(TODAY.plusDays(1).atTime(12, 0).atZone(ZONE).toInstant());
		assertThat(page(get("/")).select("main").text()).as("a stale forecast is none").doesNotContain("Tonight");
	}

	@Test
	void doneIsOnePressAndTheWayBackStandsThereWithoutScript() throws Exception {
		CareTask task = cover();
		MvcResult done = this.web
			.perform(with(post("/tasks/done").param("task", task.id().toString()).param("back", "home").with(csrf())))
			.andReturn();
		assertThat(done.getResponse().getRedirectedUrl()).isEqualTo("/");
		assertThat(state(task)).isEqualTo(TaskState.DONE);
		Document page = page(get("/").cookie(done.getResponse().getCookie("SESSION")));
		assertThat(page.select("section[role=status]").text())
			.startsWith("Noted as done: Cover for a night near frost");
		Element undo = page.selectFirst("form[action=/tasks/undo]");
		assertThat(undo.select("input[name=task]").eachAttr("value")).containsExactly(task.id().toString());
		assertThat(page(get("/")).select("form[action=/tasks/undo]")).as("told once").isEmpty();
		MvcResult undone = this.web
			.perform(with(post("/tasks/undo").param("task", task.id().toString()).param("back", "home").with(csrf())))
			.andReturn();
		assertThat(state(task)).isEqualTo(TaskState.PLANNED);
		assertThat(
				page(get("/").cookie(undone.getResponse().getCookie("SESSION"))).select("section[role=status]").text())
			.startsWith("Taken back: ");
	}

	@Test
	void aPartOfThePageIsAnsweredWithTheLineAlone() throws Exception {
		CareTask task = cover();
		MockHttpServletResponse done = part(
				post("/tasks/done").param("task", task.id().toString()).param("back", "home").with(csrf()));
		assertThat(done.getStatus()).isEqualTo(200);
		assertThat(done.getHeaders("Vary")).contains("HX-Request");
		assertThat(done.getContentAsString()).doesNotContain("<html", "<h1", "<main");
		Document line = Jsoup.parseBodyFragment(done.getContentAsString());
		assertThat(line.select("body > li.task .task-note").text()).contains("Done on Wed 20 May 2026.");
		Element undo = line.selectFirst("form[hx-post=/tasks/undo] button");
		assertThat(undo.id()).isEqualTo("act-" + task.id());
		assertThat(undo.hasAttr("autofocus")).as("the focus stays in the line").isTrue();
		assertThat(line.select("form input[name=_csrf]")).isNotEmpty();
		assertThat(line.select("[hx-swap-oob=innerHTML:#said]").text()).startsWith("Noted as done: Cover for a night");
		assertThat(line.select("[hx-swap-oob=innerHTML:#lead]").text()).isNotBlank();
		Document back = Jsoup.parseBodyFragment(
				part(post("/tasks/undo").param("task", task.id().toString()).param("back", "site").with(csrf()))
					.getContentAsString());
		assertThat(back.select("form[hx-post=/tasks/done] button").attr("id")).isEqualTo("act-" + task.id());
		assertThat(back.select("input[name=back]").val()).isEqualTo("site");
		assertThat(back.select("[hx-swap-oob=innerHTML:#lead]")).as("only This week has it").isEmpty();
		assertThat(state(task)).isEqualTo(TaskState.PLANNED);
		MockHttpServletResponse whole = part(post("/tasks/done").param("task", task.id().toString()).with(csrf()));
		assertThat(whole.getRedirectedUrl()).as("a page that has no lines").isEqualTo("/tasks/" + task.id());
	}

	@Test
	void whatIsRefusedIsToldBesideTheLine() throws Exception {
		CareTask task = cover();
		MockHttpServletResponse refused = part(post("/tasks/skip").param("task", task.id().toString())
			.param("back", "home")
			.param("reason", " ")
			.with(csrf()));
		assertThat(refused.getStatus()).isEqualTo(400);
		assertThat(refused.getHeader("HX-Retarget")).isEqualTo("#wrong-" + task.id());
		assertThat(refused.getHeader("HX-Reswap")).isEqualTo("innerHTML");
		assertThat(refused.getContentAsString()).contains("reason").doesNotContain("<html");
		MockHttpServletResponse gone = part(
				post("/tasks/done").param("task", UUID.randomUUID().toString()).param("back", "home").with(csrf()));
		assertThat(gone.getStatus()).isEqualTo(404);
		assertThat(gone.getHeader("HX-Retarget")).isEqualTo("#said");
		assertThat(gone.getContentAsString()).contains("There is no task").doesNotContain("<html");
	}

	@Test
	void whoseSessionEndedIsLedToTheSignInAsAWhole() throws Exception {
		for (MockHttpServletRequestBuilder call : List.of(
				post("/tasks/done").param("task", UUID.randomUUID().toString()).with(csrf()),
				post("/tasks/done").param("task", UUID.randomUUID().toString()), get("/plants/search?q=box"))) {
			MockHttpServletResponse answer = this.web.perform(call.header("HX-Request", "true"))
				.andReturn()
				.getResponse();
			assertThat(answer.getStatus()).isEqualTo(401);
			assertThat(answer.getHeader("HX-Redirect")).isEqualTo("/sign-in");
			assertThat(answer.getContentAsString()).isEmpty();
		}
		assertThat(this.web.perform(get("/plants/search?q=box")).andReturn().getResponse().getRedirectedUrl())
			.endsWith("/sign-in");
	}

	/** Item 3.4.3 of the security list. */
	@Test
	void onlyPagesOfPeopleWhoAreSignedInMayLoadScripts() throws Exception {
		MockHttpServletResponse mine = this.web.perform(with(get("/"))).andReturn().getResponse();
		assertThat(mine.getHeader("Content-Security-Policy"))
			.contains("default-src 'none'", "script-src 'self'", "connect-src 'self'", "form-action 'self'",
					"base-uri 'none'")
			.doesNotContain("unsafe", "worker-src", "http:", "https:", "*");
		Document page = Jsoup.parse(mine.getContentAsString());
		for (String script : page.select("script").eachAttr("src")) {
			MockHttpServletResponse file = this.web.perform(get(script)).andReturn().getResponse();
			assertThat(file.getStatus()).as(script).isEqualTo(200);
			assertThat(file.getContentType()).isEqualTo("text/javascript;charset=UTF-8");
		}
		for (String open : List.of("/sign-in", "/quick", "/calculators", "/css/leafward.css")) {
			MockHttpServletResponse first = this.web.perform(get(open)).andReturn().getResponse();
			assertThat(first.getHeader("Content-Security-Policy")).as(open)
				.contains("default-src 'none'")
				.doesNotContain("script-src", "connect-src");
			assertThat(first.getContentAsString()).as(open).doesNotContain("<script");
		}
	}

	/**
	 * The hash is that of the makers' installation notes for htmx 2.0.8, from memory; it
	 * fits the file of the web jar.
	 */
	@Test
	void htmxIsServedAsPublishedAndKeptForLong() throws Exception {
		MockHttpServletResponse plain = this.web.perform(get("/js/htmx-2.0.8.min.js")).andReturn().getResponse();
		assertThat(Base64.getEncoder()
			.encodeToString(MessageDigest.getInstance("SHA-384").digest(plain.getContentAsByteArray())))
			.isEqualTo("/TgkGk7p307TH7EXJDuUlgG3Ce1UVolAOFopFekQkkXihi5u/6OCvVKyz1W+idaz");
		assertThat(plain.getHeader("Cache-Control")).contains("max-age=31536000", "immutable");
	}

	@Test
	void whatMovedIsNewsWithItsFormerDaysAndTheReason() throws Exception {
		DayWindow year = new DayWindow(TODAY, TODAY.plusYears(1));
		Map<TaskId, CareTask> before = byId(this.calendar.ofSite(this.site.id(), year));
		assertThat(this.news.of(this.person, TODAY)).as("a new planting is no change").isEmpty();
		Planting lilac = this.register.plantingsOf(this.site.id())
			.stream()
			.filter((one) -> one.label().equals("lilac"))
			.findFirst()
			.orElseThrow();
		this.phenology.observe(this.site.id(),
				new NewObservation(lilac.id(), Observation.Kind.PHASE, "bloom-end", TODAY.minusDays(10)), this.person);
		Map<TaskId, CareTask> after = byId(this.calendar.ofSite(this.site.id(), year));
		Set<TaskId> moved = after.values()
			.stream()
			.filter((task) -> before.containsKey(task.id()) && task.state() == TaskState.PLANNED
					&& far(before.get(task.id()).window(), task.window())
					&& task.window().from().isBefore(TODAY.plusDays(57)))
			.map(CareTask::id)
			.collect(Collectors.toSet());
		assertThat(moved).as("bloom far from its estimate moves what follows it").isNotEmpty();
		List<News> told = this.news.of(this.person, TODAY).stream().filter((one) -> one.was() != null).toList();
		assertThat(told).extracting((one) -> one.task().id()).containsAll(moved);
		assertThat(told).allSatisfy((one) -> assertThat(one.was()).isEqualTo(before.get(one.task().id()).window()));
		assertThat(this.news.why(moved).values()).isNotEmpty()
			.allSatisfy((why) -> assertThat(why).endsWith("Sun 10 May 2026."));
		Element changed = page(get("/")).selectFirst("h2:contains(What changed) + ul");
		assertThat(changed.text()).contains("Now ", ", was ", "lilac");
		assertThat(changed.select(".task-title a").eachAttr("href")).allMatch((href) -> href.startsWith("/tasks/"));
		this.clock.set(TODAY.plusDays(8).atTime(12, 0).atZone(ZONE).toInstant());
		assertThat(this.news.of(this.person, TODAY.plusDays(8))).filteredOn((one) -> one.was() != null)
			.as("after a week it is no news")
			.isEmpty();
	}

	@Test
	void whatFellAwayAndCameBackIsNews() {
		CareTask task = cover();
		forecast(5, 9, 9, 9, 9);
		this.replanning.derive(this.site.id());
		assertThat(this.news.of(this.person, TODAY)).filteredOn((one) -> one.task().id().equals(task.id()))
			.singleElement()
			.satisfies((one) -> {
				assertThat(one.task().state()).isEqualTo(TaskState.WITHDRAWN);
				assertThat(one.was()).isNull();
				assertThat(one.backAt()).isNull();
			});
		forecast(5, -1, 9, 9, 9);
		this.replanning.derive(this.site.id());
		assertThat(this.news.of(this.person, TODAY)).filteredOn((one) -> one.task().id().equals(task.id()))
			.singleElement()
			.satisfies((one) -> assertThat(one.backAt()).isBetween(this.clock.instant().minus(Duration.ofMinutes(1)),
					this.clock.instant()));
	}

	@Test
	void twoHundredPlantingsStayAShortPage() throws Exception {
		String[] species = { "acer-rubrum", "buxus-sempervirens", "capsicum-annuum", "solanum-lycopersicum",
				"syringa-vulgaris", "hydrangea-macrophylla", "quercus-rubra", "zea-mays" };
		List<NewPlanting> many = new ArrayList<>();
		for (int i = 0; i < 197; i++) {
			many.add(planting(species[i % species.length], "bed " + i, Placement.GROUND,
					(i % 3 == 0) ? "2026-05-0" + (1 + i % 9) : "2015-05-20"));
		}
		this.register.addPlantings(this.site.id(), many);
		Document page = page(get("/"));
		assertThat(page.select("li.task").size()).isBetween(5, 12 + 4 * 6);
		for (Element list : page.select("ul.tasks")) {
			assertThat(list.select("> li").size()).isLessThanOrEqualTo(12);
		}
		assertThat(page(get("/").param("all", "1")).select("li.task"))
			.hasSizeGreaterThanOrEqualTo(page.select("li.task").size());
	}

	@Test
	void anEmptyWeekSaysSoAndWhyNothingIsPlanned() throws Exception {
		this.person = this.people.join("Newt Trial", UUID.randomUUID() + "@example.org", ZONE).id();
		assertThat(page(get("/")).select(".note a.button").attr("href")).isEqualTo("/sites/new");
		site("Bare ground");
		Document bare = page(get("/"));
		assertThat(bare.select(".lead").text()).isEqualTo("Nothing this week. Nothing is planned for the year ahead.");
		assertThat(bare.select("main").text()).contains("Nothing is planted at your sites yet.");
	}

	@Test
	void aPlantIsFoundWhileItsNameIsTypedAndPicked() throws Exception {
		String form = "/sites/" + this.site.id() + "/plantings/new";
		Document empty = page(get(form));
		assertThat(empty.select("datalist, option[value=buxus-sempervirens]")).as("no whole catalogue").isEmpty();
		assertThat(empty.select("#species").attr("hx-get")).isEqualTo("/plants/search");
		MockHttpServletResponse answer = part(get("/plants/search").param("species", "tomates"));
		assertThat(answer.getHeaders("Vary")).contains("HX-Request");
		Document list = Jsoup.parseBodyFragment(answer.getContentAsString());
		assertThat(list.select("input[type=radio][name=picked]").eachAttr("value")).contains("solanum-lycopersicum");
		assertThat(list.select("[hx-swap-oob=innerHTML:#found-count]").text()).containsPattern("plants? fits?\\.$");
		assertThat(page(get("/plants/search").param("q", "tomates")).select("h1").text()).isEqualTo("Find a plant");
		assertThat(part(get("/plants/search").param("q", "x".repeat(90))).getStatus()).isEqualTo(400);

		Document found = page(
				post(form).param("species", "maple").param("label", "at the gate").param("find", "1").with(csrf()));
		assertThat(found.getElementById("label").val()).isEqualTo("at the gate");
		assertThat(found.select("input[name=picked]").size()).isBetween(2, 12);
		int before = this.register.plantingsOf(this.site.id()).size();
		MockHttpServletResponse unsure = this.web.perform(with(planting(form, "maple").with(csrf())))
			.andReturn()
			.getResponse();
		assertThat(unsure.getStatus()).isEqualTo(400);
		Document again = Jsoup.parse(unsure.getContentAsString());
		assertThat(again.select("#species-error").text()).contains("pick one of the list");
		assertThat(again.getElementById("species").val()).isEqualTo("maple");
		assertThat(again.select("input[name=picked]")).isNotEmpty();
		assertThat(this.register.plantingsOf(this.site.id())).hasSize(before);
		assertThat(species(planting(form, "maple").param("picked", "acer-rubrum").param("pickedFor", "maple")))
			.isEqualTo("acer-rubrum");
		assertThat(species(planting(form, "Red maples").param("picked", "quercus-rubra").param("pickedFor", "oak")))
			.as("a pick for another name is out of date")
			.isEqualTo("acer-rubrum");
		assertThat(species(planting(form, "buxus-sempervirens"))).isEqualTo("buxus-sempervirens");
		assertThat(Jsoup
			.parse(this.web.perform(with(planting(form, "zzzqq").with(csrf())))
				.andReturn()
				.getResponse()
				.getContentAsString())
			.select("#species-error")
			.text()).startsWith("No plant of the catalogue is called “zzzqq”");
	}

	private static MockHttpServletRequestBuilder planting(String form, String species) {
		return post(form).param("species", species)
			.param("label", species)
			.param("count", "1")
			.param("plantedOn", "2026-05-01")
			.param("placement", "ground");
	}

	/** The species of the planting that a form adds. */
	private String species(MockHttpServletRequestBuilder call) throws Exception {
		Set<Object> before = this.register.plantingsOf(this.site.id())
			.stream()
			.map(Planting::id)
			.collect(Collectors.toSet());
		MockHttpServletResponse answer = this.web.perform(with(call.with(csrf()))).andReturn().getResponse();
		assertThat(answer.getStatus()).as(answer.getContentAsString()).isEqualTo(302);
		return this.register.plantingsOf(this.site.id())
			.stream()
			.filter((one) -> !before.contains(one.id()))
			.findFirst()
			.orElseThrow()
			.species()
			.value();
	}

	private static boolean far(DayWindow was, DayWindow now) {
		return Math.abs(was.from().toEpochDay() - now.from().toEpochDay()) >= 3
				|| Math.abs(was.to().toEpochDay() - now.to().toEpochDay()) >= 3;
	}

	private static Map<TaskId, CareTask> byId(List<CareTask> tasks) {
		return tasks.stream().collect(Collectors.toMap(CareTask::id, Function.identity()));
	}

	/** The tomatoes' cover for the night that begins today. */
	private CareTask cover() {
		return this.calendar.ofSite(this.site.id(), DayWindow.of(TODAY))
			.stream()
			.filter((task) -> task.rule().equals("frost-nights/cover-very-tender")
					&& task.window().equals(DayWindow.of(TODAY)))
			.findFirst()
			.orElseThrow();
	}

	private TaskState state(CareTask task) {
		return this.calendar.find(task.id()).orElseThrow().state();
	}

	private RequestPostProcessor me() {
		return SecurityMockMvcRequestPostProcessors
			.authentication(SignedIn.person(this.people.find(this.person).orElseThrow(), this.roles.of(this.person)));
	}

	private MockHttpServletRequestBuilder with(MockHttpServletRequestBuilder call) {
		return call.with(me());
	}

	private MockHttpServletResponse part(MockHttpServletRequestBuilder call) throws Exception {
		return this.web.perform(with(call).header("HX-Request", "true")).andReturn().getResponse();
	}

	private Document page(MockHttpServletRequestBuilder call) throws Exception {
		MockHttpServletResponse response = this.web.perform(with(call)).andReturn().getResponse();
		assertThat(response.getStatus()).isEqualTo(200);
		return Jsoup.parse(response.getContentAsString());
	}

}
