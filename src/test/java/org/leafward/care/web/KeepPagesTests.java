package org.leafward.care.web;

import jakarta.servlet.http.Cookie;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import java.util.UUID;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.leafward.accounts.People;
import org.leafward.accounts.Person;
import org.leafward.accounts.Roles;
import org.leafward.accounts.signin.SignedIn;
import org.leafward.care.CareTask;
import org.leafward.care.KeptCalculations;
import org.leafward.care.TaskCalendar;
import org.leafward.care.TaskState;
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
import org.leafward.register.PlantingSize;
import org.leafward.register.RaisedIn;
import org.leafward.register.Register;
import org.leafward.register.SiteId;
import org.leafward.register.SoilTests;
import org.leafward.register.SoilTexture;
import org.leafward.register.Sun;
import org.leafward.register.Wind;
import org.leafward.support.SettableClock;
import org.leafward.support.StillServer;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.security.core.context.SecurityContextImpl;
import org.springframework.session.Session;
import org.springframework.session.SessionRepository;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

/**
 * From a calculator's answer to the tasks of a planting, over HTTP: afterwards they say
 * what the calculator said.
 */
@StillServer
class KeepPagesTests {

	private static final GeoPoint POINT = new GeoPoint(45, -90, 200);

	private static final ZoneId ZONE = ZoneId.of("America/Chicago");

	private static final StationId STATION = new StationId("XX000000056");

	private static final LocalDate TODAY = LocalDate.of(2026, 5, 6);

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
	private TaskCalendar calendar;

	@Autowired
	private KeptCalculations kept;

	@Autowired
	private SoilTests soilTests;

	@Autowired
	private SessionRepository<? extends Session> sessions;

	@Autowired
	private SettableClock clock;

	private SiteId site;

	private Cookie mine;

	private Cookie other;

	@BeforeEach
	void plant() {
		this.clock.set(TODAY.atTime(12, 0).atZone(ZONE).toInstant());
		if (this.stations.find(STATION).isEmpty()) {
			this.stations.register(new Station(STATION, "Made up", POINT, true));
			List<ObservedDay> days = new ArrayList<>();
			for (LocalDate day = LocalDate.of(2006, 1, 1); day.isBefore(TODAY); day = day.plusDays(1)) {
				double warmth = 80 - 170 * Math.cos((day.getDayOfYear() - 20) * 2 * Math.PI / 365);
				days.add(new ObservedDay(day, (int) warmth - 60, (int) warmth + 60,
						(day.toEpochDay() % 20 == 0) ? 60 : 0, 0, 20));
			}
			this.observations.load(STATION, days);
		}
		Person ada = this.people.join("Ada", UUID.randomUUID() + "@example.org", ZONE);
		this.site = this.register
			.addSite(ada.id(), new NewSite("Garden", "", POINT, ZONE, SoilTexture.LOAM, Sun.FULL_SUN, Wind.AVERAGE))
			.id();
		this.mine = session(this.sessions, ada);
		this.other = session(this.sessions, this.people.join("Bo", UUID.randomUUID() + "@example.org", ZONE));
	}

	private <S extends Session> Cookie session(SessionRepository<S> all, Person who) {
		S session = all.createSession();
		session.setAttribute("SPRING_SECURITY_CONTEXT",
				new SecurityContextImpl(SignedIn.person(who, this.roles.of(who.id()))));
		all.save(session);
		return new Cookie("SESSION",
				Base64.getEncoder().encodeToString(session.getId().getBytes(StandardCharsets.UTF_8)));
	}

	private Planting planting(String species, String label, LocalDate day) {
		return this.register
			.addPlantings(this.site,
					List.of(new NewPlanting(new SpeciesId(species), label, 1, day, Placement.GROUND, false, false)))
			.get(0);
	}

	private List<String> amounts(Planting planting, String rule) {
		return this.calendar.ofSite(this.site, new DayWindow(TODAY, TODAY.plusDays(420)))
			.stream()
			.filter((task) -> task.rule().equals(rule) && planting.id().equals(task.planting())
					&& task.state() == TaskState.PLANNED)
			.map((task) -> String.valueOf(task.text().amount()))
			.toList();
	}

	private Planting now(Planting planting) {
		return this.register.find(planting.id()).orElseThrow();
	}

	/** From the calculator by its own link to the page of the planting. */
	private Document keep(String calculator, Planting planting, String... more) throws Exception {
		Document answer = page(this.mine, calculator, 200);
		Element link = answer.selectFirst("a[href^=/keep/]");
		assertThat(link.text()).isEqualTo("Keep this for a planting");
		Document choose = page(this.mine, link.attr("href"), 200);
		Element chosen = choose.select("ul.pick a")
			.stream()
			.filter((one) -> one.attr("href").contains(planting.id().toString()))
			.findFirst()
			.orElseThrow();
		Document confirm = page(this.mine, chosen.attr("href"), 200);
		assertThat(confirm.selectFirst(".lead").text()).isEqualTo(answer.selectFirst(".lead").text());
		Element form = confirm.selectFirst("main form[method=post]");
		MockHttpServletRequestBuilder send = post(form.attr("action")).with(csrf()).cookie(this.mine);
		form.select("input[name]:not([name=_csrf])").forEach((one) -> {
			String own = value(one.attr("name"), more);
			send.param(one.attr("name"), (own != null) ? own : one.val());
		});
		MockHttpServletResponse response = this.web.perform(send).andReturn().getResponse();
		assertThat(response.getRedirectedUrl()).isEqualTo("/plantings/" + planting.id() + "/amounts");
		Document amounts = page(this.mine, response.getRedirectedUrl(), 200);
		assertThat(amounts.select("#kept ~ ul li").text()).contains(answer.selectFirst(".lead").text(), "by Ada");
		return amounts;
	}

	private static String value(String name, String... more) {
		for (int i = 0; i < more.length; i += 2) {
			if (more[i].equals(name)) {
				return more[i + 1];
			}
		}
		return null;
	}

	private Document page(Cookie session, String address, int status) throws Exception {
		MockHttpServletRequestBuilder call = get(URI.create(address));
		if (session != null) {
			call.cookie(session);
		}
		MockHttpServletResponse response = this.web.perform(call).andReturn().getResponse();
		assertThat(response.getStatus()).as(address).isEqualTo(status);
		return Jsoup.parse(response.getContentAsString());
	}

	@Test
	void waterOfABedStandsInItsTasksWithTheTimeOfTheHose() throws Exception {
		Planting bed = planting("asparagus-officinalis", "asparagus", LocalDate.of(2020, 5, 1));
		assertThat(amounts(bed, "edibles/water-lasting-crops")).isNotEmpty()
			.anyMatch((words) -> words.contains("on each square metre"));
		String calculator = "/calculators/water?what=bed&soil=loam&area=20&flow=10&depth=300&missing=&rain=0";
		Document page = keep(calculator, bed);
		assertThat(now(bed).size().squareMetres()).isEqualTo(20);
		assertThat(this.register.require(this.site).litresPerMinute()).isEqualTo(10);
		String lead = page(null, calculator, 200).selectFirst(".lead").text();
		assertThat(amounts(bed, "edibles/water-lasting-crops")).as("what lies farther off takes what is usual")
			.anyMatch((words) -> words.startsWith(lead.substring(0, lead.length() - 1)));
		assertThat(page.select("#now ~ ul .task-note").text()).contains("minutes");
	}

	@Test
	void aNewTreeIsWateredByItsTrunkFromItsDay() throws Exception {
		Planting maple = planting("acer-rubrum", "maple", TODAY.minusDays(40));
		assertThat(amounts(maple, "new-plantings/water-weeks-1-2")).as("planted long ago").isEmpty();
		keep("/calculators/new-tree?calliper=2%20in&planted=" + TODAY + "&count=1&flow=", maple);
		assertThat(now(maple).size().calliperMillimetres()).isEqualTo(50.8);
		assertThat(now(maple).plantedOn()).isEqualTo(TODAY);
		assertThat(amounts(maple, "new-plantings/water-weeks-1-2")).isNotEmpty()
			.allMatch((words) -> words.startsWith("About 7.6 to 11 litres (2 to 3 gal)"));
		assertThat(amounts(maple, "new-plantings/water-weeks-3-12")).isNotEmpty()
			.allMatch((words) -> words.contains("7.6 to 11 litres") && words.contains("every two to three days"));
	}

	@Test
	void seedlingsGoOutByTheLightOfTheirLamp() throws Exception {
		Planting tomatoes = planting("solanum-lycopersicum", "tomatoes", TODAY.plusDays(30));
		LocalDate out = TODAY.plusDays(25);
		String asked = "latitude=45&longitude=-90&elevationMetres=200&zone=America/Chicago&date=" + out
				+ "&days=14&start=lamp&level=200&unit=micromoles&hours=14&site=full-sun&nightCelsius=10";
		keep("/calculators/light?" + asked, tomatoes);
		assertThat(now(tomatoes).raised().in()).isEqualTo(RaisedIn.LAMPS);
		assertThat(now(tomatoes).raised().micromoles()).isEqualTo(200);
		assertThat(now(tomatoes).plantedOn()).isEqualTo(out);
		JsonNode days = json("/api/calculators/light?" + asked).get("days");
		List<CareTask> ramp = this.calendar.ofSite(this.site, new DayWindow(TODAY, out))
			.stream()
			.filter((task) -> task.rule().equals("hardening/harden-off-seedlings") && task.state() == TaskState.PLANNED)
			.toList();
		assertThat(ramp).hasSize(14).hasSize(days.size());
		for (int i = 0; i < ramp.size(); i++) {
			assertThat(ramp.get(i).window().from()).isEqualTo(LocalDate.parse(days.get(i).get("date").asString()));
			assertThat(ramp.get(i).text().amount()).isEqualTo(days.get(i).get("words").asString());
		}
	}

	@Test
	void aHedgeThatSaltReachesIsLeachedAfterTheThaw() throws Exception {
		Planting hedge = planting("buxus-sempervirens", "hedge", LocalDate.of(2020, 5, 1));
		assertThat(amounts(hedge, "salt/leach-salt")).isEmpty();
		String calculator = "/calculators/salt?area=10&rootDepth=45&cause=de-icing&drainage=untested&road=true";
		keep(calculator, hedge);
		assertThat(now(hedge).saltExposed()).isTrue();
		String lead = page(null, calculator, 200).selectFirst(".lead").text();
		assertThat(amounts(hedge, "salt/leach-salt")).isNotEmpty()
			.allMatch((words) -> words.startsWith(lead.substring(0, lead.indexOf(" of clear water"))));
	}

	@Test
	void gypsumOfASoilTestIsSpreadOnItsBed() throws Exception {
		Planting hedge = planting("buxus-sempervirens", "hedge", LocalDate.of(2020, 5, 1));
		String calculator = "/calculators/soil-test?ph=8.8&ec=2&extract=saturated-paste&soil=loam&esp=20&cec=18&area=10"
				+ "&depth=15%20cm&drainage=good";
		String lead = page(null, calculator, 200).selectFirst(".lead").text();
		String kilograms = lead.replaceAll(".*about ([0-9.]+ kg \\([0-9.]+ lb\\)).*", "$1");
		assertThat(kilograms).matches("[0-9.]+ kg \\([0-9.]+ lb\\)");
		LocalDate sampled = TODAY.minusDays(10);
		keep(calculator, hedge, "day", sampled.toString());
		assertThat(now(hedge).size().squareMetres()).isEqualTo(10);
		assertThat(this.soilTests.latest(this.site, 0, 10)).singleElement()
			.matches((test) -> test.day().equals(sampled) && hedge.id().equals(test.planting()));
		List<CareTask> gypsum = this.calendar.ofSite(this.site, new DayWindow(sampled, TODAY.plusDays(420)))
			.stream()
			.filter((task) -> task.rule().equals("soil/spread-gypsum"))
			.toList();
		assertThat(gypsum).isNotEmpty()
			.first()
			.matches((task) -> String.valueOf(task.text().amount()).contains(kilograms), "says " + kilograms);
		keep(calculator, hedge, "day", sampled.toString());
		assertThat(this.soilTests.latest(this.site, 0, 10)).as("kept once").hasSize(1);
		assertThat(this.kept.latest(hedge.id(), 0, 10)).hasSize(1);
	}

	@Test
	void whatCantBeKeptIsToldAndNothingChanges() throws Exception {
		Planting hedge = planting("buxus-sempervirens", "hedge", LocalDate.of(2020, 5, 1));
		String soil = "/plantings/" + hedge.id() + "/keep/soil-test";
		MockHttpServletResponse response = this.web
			.perform(post(soil).with(csrf())
				.cookie(this.mine)
				.param("ph", "8.8")
				.param("ec", "2")
				.param("esp", "20")
				.param("area", "10")
				.param("day", TODAY.plusDays(1).toString()))
			.andReturn()
			.getResponse();
		assertThat(response.getStatus()).isEqualTo(400);
		Document form = Jsoup.parse(response.getContentAsString());
		assertThat(form.select("[role=alert] a[href=#day]").text()).contains("still to come");
		assertThat(form.select("input[name=ph]").val()).isEqualTo("8.8");
		assertThat(now(hedge).size()).isEqualTo(PlantingSize.UNKNOWN);
		assertThat(this.kept.latest(hedge.id(), 0, 10)).isEmpty();
		page(this.mine, "/plantings/" + hedge.id() + "/keep/soil-test?ph=much&area=10", 400);
		page(this.mine, "/plantings/" + hedge.id() + "/keep/weather?ph=7", 404);
		page(this.mine, "/keep/cover?forecast=30", 404);
		assertThat(page(this.mine, "/plantings/" + hedge.id() + "/keep/water?what=bed&area=10&flow=2000", 400)
			.select("[role=alert]")
			.text()).contains("flow");
	}

	@Test
	void strangersSeeNoLinkAndOthersNoPlanting() throws Exception {
		Planting hedge = planting("buxus-sempervirens", "hedge", LocalDate.of(2020, 5, 1));
		String asked = "/calculators/water?what=pot&pot=5&for=" + hedge.id();
		assertThat(page(null, asked, 200).select("a[href*=keep]")).isEmpty();
		assertThat(page(null, asked, 200).text()).contains("Nothing is kept.").doesNotContain("hedge");
		assertThat(page(this.mine, asked, 200).select("a[href*=keep]").text()).isEqualTo("Keep this for hedge");
		assertThat(page(this.mine, asked, 200).select("input[name=for]").val()).isEqualTo(hedge.id().toString());
		Document others = page(this.other, asked, 200);
		assertThat(others.select("a[href*=keep]").text()).isEqualTo("Keep this for a planting");
		assertThat(others.text()).doesNotContain("hedge");
		assertThat(page(this.mine, "/calculators/water", 200).select("a[href*=keep]")).as("no answer yet").isEmpty();
		for (String address : List.of("/keep/water?what=nonsense", "/amounts")) {
			page(this.other, "/plantings/" + hedge.id() + address, 404);
		}
		assertThat(this.web
			.perform(post("/plantings/" + hedge.id() + "/keep/water").with(csrf())
				.cookie(this.other)
				.param("what", "pot")
				.param("pot", "5"))
			.andReturn()
			.getResponse()
			.getStatus()).isEqualTo(404);
		assertThat(now(hedge).size()).isEqualTo(PlantingSize.UNKNOWN);
	}

	@Test
	void manyPlantingsAreSearchedAndPaged() throws Exception {
		for (int i = 0; i < 23; i++) {
			planting("buxus-sempervirens", "hedge 100%% no. %02d".formatted(i), LocalDate.of(2020, 5, 1));
		}
		planting("acer-rubrum", "by the gate", LocalDate.of(2020, 5, 1));
		Document first = page(this.mine, "/keep/water?what=pot&pot=5", 200);
		assertThat(first.select("ul.pick li")).hasSize(20);
		Document second = page(this.mine, first.selectFirst("a[rel=next]").attr("href"), 200);
		assertThat(second.select("ul.pick li")).hasSize(4);
		assertThat(page(this.mine, "/keep/water?what=pot&pot=5&q=100%25%20no.%200", 200).select("ul.pick li"))
			.hasSize(10);
		assertThat(page(this.mine, "/keep/water?what=pot&pot=5&q=Red%20Maple", 200).select("ul.pick .pick-name").text())
			.isEqualTo("by the gate");
		assertThat(page(this.mine, "/keep/water?what=pot&pot=5&q=gard", 200).select("ul.pick li")).hasSize(20);
		assertThat(page(this.mine, "/keep/water?what=pot&pot=5&q=_", 200).text())
			.contains("No planting of yours is called that.");
		assertThat(page(this.other, "/keep/water?what=pot&pot=5&q=hedge", 200).select("ul.pick li")).isEmpty();
		page(this.mine, "/keep/water?what=pot&pot=5&page=-1", 400);
		page(this.mine, "/keep/water?what=pot&pot=5&q=" + "x".repeat(101), 400);
	}

	@Test
	void aSiteWithManyPlantingsHasPages() throws Exception {
		this.register.addPlantings(this.site,
				IntStream.range(0, 61)
					.mapToObj((i) -> new NewPlanting(new SpeciesId("buxus-sempervirens"), "hedge no. %02d".formatted(i),
							1, LocalDate.of(2020, 5, 1), Placement.GROUND, false, false))
					.toList());
		planting("acer-rubrum", "by the gate", LocalDate.of(2020, 5, 1));
		String here = "/sites/" + this.site;
		Document first = page(this.mine, here, 200);
		assertThat(first.select("#plantings ~ ul.dates li")).hasSize(20);
		assertThat(first.text()).contains("Plantings 1 to 20 of 62");
		Document second = page(this.mine, first.selectFirst("a[rel=next]").attr("href"), 200);
		Document third = page(this.mine, second.selectFirst("a[rel=next]").attr("href"), 200);
		Document last = page(this.mine, third.selectFirst("a[rel=next]").attr("href"), 200);
		assertThat(last.select("#plantings ~ ul.dates li")).hasSize(2);
		assertThat(last.select("a[rel=next]")).isEmpty();
		// Each planting is on one page, and its year too.
		assertThat(Stream.of(first, second, third, last)
			.flatMap((page) -> page.select("#plantings ~ ul.dates strong").eachText().stream())
			.toList()).doesNotHaveDuplicates().hasSize(62);
		assertThat(last.select("figure svg").text()).contains("hedge no. 60").doesNotContain("hedge no. 05");
		assertThat(page(this.mine, here + "?q=red%20MAPLE", 200).select("#plantings ~ ul.dates strong").text())
			.isEqualTo("by the gate");
		// The catalogue's Spanish name of the red maple.
		assertThat(page(this.mine, here + "?q=arce%20rojo", 200).select("#plantings ~ ul.dates strong").text())
			.isEqualTo("by the gate");
		assertThat(page(this.mine, here + "?q=_", 200).text()).contains("No planting here is called that.");
		Document found = page(this.mine, here + "?q=no.", 200);
		assertThat(
				page(this.mine, found.selectFirst("a[rel=next]").attr("href"), 200).select("#plantings ~ ul.dates li"))
			.hasSize(20);
		assertThat(page(this.mine, here + "?q=palm", 200).text()).contains("No planting here is called that.");
		assertThat(page(this.mine, here + "?page=999", 200).select("#plantings ~ ul.dates li")).hasSize(2);
		page(this.mine, here + "?page=-1", 400);
	}

	@Test
	void whatIsKeptOpensAgainAndIsDeleted() throws Exception {
		Planting maple = planting("acer-rubrum", "maple", TODAY.minusDays(40));
		Document page = keep("/calculators/new-tree?calliper=2%20in&planted=" + TODAY + "&count=3&flow=3%20gal/min",
				maple);
		Element kept = page.selectFirst("#kept ~ ul li");
		Document again = page(this.mine, kept.selectFirst("a").attr("href"), 200);
		assertThat(again.getElementById("calliper").val()).isEqualTo("2 in");
		assertThat(again.getElementById("flow").val()).isEqualTo("3 gal/min");
		assertThat(again.select("a[href*=keep]").text()).isEqualTo("Keep this for maple");
		String delete = kept.selectFirst("form").attr("action");
		assertThat(this.web.perform(post(delete).with(csrf()).cookie(this.other)).andReturn().getResponse().getStatus())
			.isEqualTo(404);
		assertThat(this.web.perform(post(delete).with(csrf()).cookie(this.mine))
			.andReturn()
			.getResponse()
			.getRedirectedUrl()).isEqualTo("/plantings/" + maple.id() + "/amounts#kept");
		assertThat(this.kept.latest(maple.id(), 0, 10)).isEmpty();
		assertThat(now(maple).size().calliperMillimetres()).as("the figures stay").isEqualTo(50.8);
		assertThat(this.web.perform(post(delete).with(csrf()).cookie(this.mine)).andReturn().getResponse().getStatus())
			.isEqualTo(404);
		keep("/calculators/new-tree?calliper=3%20in&planted=&count=&flow=", maple);
		this.register.removePlanting(maple.id());
		assertThat(this.kept.latest(maple.id(), 0, 10)).as("goes with its planting").isEmpty();
	}

	@Test
	void calculatorsOpenWithWhatIsKnownOfAPlanting() throws Exception {
		Planting maple = planting("acer-rubrum", "maple", TODAY.minusDays(21));
		Planting tomatoes = planting("solanum-lycopersicum", "tomatoes", TODAY.plusDays(30));
		assertThat(page(this.mine, "/plantings/" + maple.id() + "/size", 200).select("a[href$=/amounts]")).hasSize(1);
		assertThat(page(this.mine, "/sites/" + this.site, 200).select("a[href$=/amounts]")).hasSize(2);
		for (Planting one : List.of(maple, tomatoes)) {
			List<String> addresses = page(this.mine, "/plantings/" + one.id() + "/amounts", 200)
				.select("ul.pick a[href^=/calculators/]")
				.eachAttr("href");
			assertThat(addresses).hasSize(4);
			for (String address : addresses) {
				Document form = page(this.mine, address, 200);
				assertThat(form.select("[role=alert]")).as(address).isEmpty();
				assertThat(form.select("input[name=for]").val()).isEqualTo(one.id().toString());
			}
		}
		this.register.changeSize(maple.id(), new PlantingSize(null, 50.8, null), null);
		Document amounts = page(this.mine, "/plantings/" + maple.id() + "/amounts", 200);
		Document water = page(this.mine, amounts.selectFirst("a[href^=/calculators/water]").attr("href"), 200);
		assertThat(water.selectFirst(".lead").text()).startsWith("About 7.6 to 11 litres")
			.contains("two to three days");
		Document tree = page(this.mine, amounts.selectFirst("a[href^=/calculators/new-tree]").attr("href"), 200);
		assertThat(tree.getElementById("planted").val()).isEqualTo(TODAY.minusDays(21).toString());
		assertThat(tree.select("tbody tr")).hasSize(26);
		Document light = page(this.mine,
				page(this.mine, "/plantings/" + tomatoes.id() + "/amounts", 200)
					.selectFirst("a[href^=/calculators/light]")
					.attr("href"),
				200);
		assertThat(light.getElementById("nightCelsius").select("option[selected]").val()).isEqualTo("10");
		assertThat(light.getElementById("date").val()).isEqualTo(TODAY.plusDays(30).toString());
		assertThat(light.select("#main tbody tr")).hasSize(14);
	}

	private JsonNode json(String address) throws Exception {
		MockHttpServletResponse response = this.web.perform(get(URI.create(address))).andReturn().getResponse();
		assertThat(response.getStatus()).isEqualTo(200);
		return new JsonMapper().readTree(response.getContentAsString());
	}

}
