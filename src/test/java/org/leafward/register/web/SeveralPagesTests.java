package org.leafward.register.web;

import jakarta.servlet.http.Cookie;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.zip.GZIPOutputStream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.leafward.climate.Microclimate;
import org.leafward.plants.Catalogue;
import org.leafward.plants.Species;
import org.leafward.register.NewSite;
import org.leafward.register.Placement;
import org.leafward.register.Planting;
import org.leafward.register.PlantingsChanged;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.leafward.support.DemoServer;
import org.leafward.support.FarrowHouse;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.test.context.event.ApplicationEvents;
import org.springframework.test.context.event.RecordApplicationEvents;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.RequestBuilder;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.multipart;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

/** A list of plantings from paste to plan, over HTTP. */
@DemoServer
@RecordApplicationEvents
class SeveralPagesTests {

	private static final String TOKEN = DemoServer.TOKEN;

	@Autowired
	private MockMvc web;

	@Autowired
	private Register register;

	@Autowired
	private Catalogue catalogue;

	@Autowired
	private ApplicationEvents events;

	@LocalServerPort
	private int port;

	/** A site of somebody who is there already, with nothing in it. */
	private Site bare() {
		Site like = FarrowHouse.in(this.register);
		return this.register.addSite(like.owner(), new NewSite("Bare ground", like.county(), like.point(), like.zone(),
				like.soil(), like.sun(), like.wind(), Microclimate.NONE, "", Set.of()));
	}

	@Test
	void theListIsUnderstoodShownMendedAndAddedOnce() throws Exception {
		Site site = bare();
		Cookie session = session(site);
		String address = "/sites/" + site.id() + "/plantings/several";
		assertThat(Jsoup.parse(ask(get("/sites/" + site.id()).cookie(session), 200)).select("a[href=" + address + "]"))
			.hasSize(1);
		assertThat(ask(get("/sites/" + site.id() + "/plantings/new").cookie(session), 200)).contains(address);
		ask(get(address).cookie(session), 200);
		String list = """
				12 common lilac, hedge by the gate, 2019-05-01
				roses, pot, 3/4/2021
				xyzzyq qwrtp, 2020

				red maple, 2018
				tomato""";
		Document page = preview(session, address, list);
		assertThat(page.select(".entry")).hasSize(5);
		assertThat(page.select(".entry legend").eachText()).containsExactly("Line 1", "Line 2", "Line 3", "Line 5",
				"Line 6");
		assertThat(page.select(".written").eachText())
			.containsExactlyElementsOf(list.lines().filter((line) -> !line.isBlank()).toList());
		assertThat(page.getElementById("count-1").val()).isEqualTo("12");
		assertThat(page.getElementById("label-1").val()).isEqualTo("hedge by the gate");
		assertThat(page.select(".entry").get(0).text()).contains("common lilac, Syringa vulgaris");
		assertThat(page.select("#placement-2 option[selected]").val()).isEqualTo("container");
		assertThat(page.select("#species-2 option")).hasSizeGreaterThan(2);
		assertThat(page.select("#species-1, #species-3")).isEmpty();
		assertThat(page.select(".entry").get(3).text()).contains("Only the year is told: Tue 1 May 2018 is taken.");
		assertThat(page.select("[role=status] a").eachAttr("href")).containsExactly("#species-2", "#name-3",
				"#planted-6");
		assertThat(page.select("[role=status] a").eachText()).last()
			.asString()
			.startsWith("Line 6: the day of planting");
		assertThat(preview(session, address, "tomato\nred maple\nxyzzyq qwrtp, 2020\ngarlic").select("[role=status] a")
			.eachText()).hasSize(2).first().asString().startsWith("Lines 1–2, 4: the day of planting is missing");
		assertThat(page.select(".entry").get(1).text()).contains("Thu 4 Mar 2021 or Sat 3 Apr 2021");
		assertThat(page.getElementById("order")).isNotNull();
		assertThat(page.select("button[value=add]").text()).isEqualTo("Add these 5 plantings");
		assertThat(this.register.plantingsOf(site.id())).isEmpty();

		Map<String, String> form = fields(page);
		form.put("go", "add");
		Document refused = Jsoup.parse(ask(send(session, address, form), 400));
		assertThat(refused.select("[role=alert]").text()).contains("Nothing was added", "mend them");
		assertThat(refused.getElementById("name-3").attr("aria-invalid")).isEqualTo("true");
		assertThat(this.register.plantingsOf(site.id())).isEmpty();

		String rose = page.select("#species-2 option").get(1).val();
		form.put("species-2", rose);
		form.put("order", "day-first");
		form.put("name-3", "arce rojo");
		form.put("leave-5", "true");
		form.put("usual", "2022");
		form.put("count-6", "many");
		form.put("go", "look");
		Document again = Jsoup.parse(ask(send(session, address, form), 200));
		assertThat(again.select("#species-2 option[selected]").val()).isEqualTo(rose);
		assertThat(again.select(".entry").get(2).text()).contains("red maple, Acer rubrum");
		assertThat(again.select(".entry").get(4).text())
			.contains("No date stands on this line: Sun 1 May 2022 is taken.", "'many' is not a whole number");
		assertThat(again.getElementById("count-6").val()).isEqualTo("many");
		assertThat(again.select("button[value=add]").text()).isEqualTo("Add these 4 plantings");
		Document back = Jsoup
			.parse(ask(send(session, address, Map.of("go", "list", "text", form.get("text"), "usual", "2022")), 200));
		assertThat(back.getElementById("text").wholeText()).isEqualTo(list);

		form = fields(again);
		form.put("count-6", "6");
		form.put("go", "add");
		this.events.clear();
		MockHttpServletResponse added = this.web.perform(send(session, address, form)).andReturn().getResponse();
		assertThat(added.getStatus()).as(added.getContentAsString()).isEqualTo(302);
		assertThat(added.getRedirectedUrl()).isEqualTo("/sites/" + site.id());
		assertThat(this.events.stream(PlantingsChanged.class)).as("the site is derived once").hasSize(1);
		assertThat(ask(get("/sites/" + site.id()).cookie(session), 200))
			.contains("4 plantings were added. One line was left out.");
		List<Planting> there = this.register.plantingsOf(site.id());
		assertThat(there).hasSize(4);
		Planting potted = there.stream().filter((one) -> one.species().value().equals(rose)).findFirst().orElseThrow();
		assertThat(potted.plantedOn()).hasToString("2021-04-03");
		assertThat(potted.placement()).isEqualTo(Placement.CONTAINER);
		assertThat(there).filteredOn((one) -> one.count() == 6)
			.singleElement()
			.satisfies((one) -> assertThat(one.plantedOn()).hasToString("2022-05-01"));

		ask(send(session, address, form), 302);
		assertThat(ask(get("/sites/" + site.id()).cookie(session), 200))
			.contains("The list came twice and was added once");
		assertThat(this.register.plantingsOf(site.id())).hasSize(4);
		form.put("count-6", "7");
		Document other = Jsoup.parse(ask(send(session, address, form), 400));
		assertThat(other.select("[role=alert]").text()).contains("this one differs from it");
		assertThat(other.select("input[name=key]").val()).isNotEqualTo(form.get("key"));
		assertThat(this.register.plantingsOf(site.id())).hasSize(4);
	}

	@Test
	void pressedManyTimesAtOnceItIsAddedOnce() throws Exception {
		Site site = bare();
		Cookie session = session(site);
		String address = "/sites/" + site.id() + "/plantings/several";
		Map<String, String> form = fields(preview(session, address, "3 tomato, 2024\nred maple, 2019"));
		form.put("go", "add");
		ExecutorService threads = Executors.newFixedThreadPool(6);
		try {
			List<Future<Integer>> sent = new ArrayList<>();
			for (int i = 0; i < 6; i++) {
				sent.add(threads.submit(
						() -> this.web.perform(send(session, address, form)).andReturn().getResponse().getStatus()));
			}
			for (Future<Integer> one : sent) {
				assertThat(one.get()).isEqualTo(302);
			}
		}
		finally {
			threads.shutdownNow();
		}
		assertThat(this.register.plantingsOf(site.id())).hasSize(2);
	}

	@Test
	void filesOfSpreadsheetsAreReadAndWhatIsNoListIsRefused() throws Exception {
		Site site = bare();
		Cookie session = session(site);
		String address = "/sites/" + site.id() + "/plantings/several";
		byte[] spanish = "Planta;Cantidad;Notas;Año;Precio\narce rojo;3;niño;2019;5 €\n"
			.getBytes(Charset.forName("windows-1252"));
		Document page = Jsoup.parse(ask(file(session, address, spanish, ""), 200));
		assertThat(page.select(".entry").text()).contains("red maple, Acer rubrum");
		assertThat(page.getElementById("label-2").val()).isEqualTo("niño");
		assertThat(page.text()).contains("names of the columns", "not taken over: Precio");
		assertThat(ask(file(session, address, new byte[] { 'P', 'K', 3, 4 }, ""), 400)).contains("as CSV");
		assertThat(ask(file(session, address, spanish, "tomato"), 400)).contains("send one of them", "tomato");
		assertThat(ask(send(session, address, Map.of("text", "")), 400)).contains("the list is empty");
		assertThat(ask(send(session, address, Map.of("text", "rose\n".repeat(10_000))), 400))
			.contains("the list has 10,000 lines");
		Document usual = Jsoup.parse(ask(send(session, address, Map.of("text", "tomato", "usual", "soon")), 400));
		assertThat(usual.getElementById("usual").attr("aria-invalid")).isEqualTo("true");
		assertThat(usual.getElementById("usual").val()).isEqualTo("soon");
		Document hostile = preview(session, address,
				"<script>alert(1)</script>, 2019\n\u202etomato\n${7*7}\n" + "a".repeat(5000));
		assertThat(hostile.select("main script")).isEmpty();
		assertThat(hostile.select(".written").get(0).text()).isEqualTo("<script>alert(1)</script>, 2019");
		Site others = this.register.sites(0, 50)
			.stream()
			.filter((one) -> !one.owner().equals(site.owner()))
			.findFirst()
			.orElseThrow();
		ask(get("/sites/" + others.id() + "/plantings/several").cookie(session), 404);
		ask(send(session, "/sites/" + others.id() + "/plantings/several", Map.of("text", "tomato", "go", "add")), 404);
	}

	/** Through the real server, which bounds parameters and the size of a form. */
	@Test
	void fourHundredLinesPassTheServerAndItsPageStaysLight() throws Exception {
		Site site = bare();
		Cookie session = session(site);
		List<Species> all = this.catalogue.all();
		StringBuilder list = new StringBuilder("count,plant,label,planted,where,area\n");
		for (int i = 0; i < 400; i++) {
			list.append("%d,%s,bed %d,%d,pot,%d m2%n".formatted(i + 1, all.get(i % all.size()).botanicalName(), i,
					1990 + i % 30, 1 + i % 9));
		}
		String address = "/sites/" + site.id() + "/plantings/several";
		Document form = Jsoup.parse(http(session, address, null).body());
		String token = form.select("input[name=_csrf]").val();
		HttpResponse<String> preview = http(session, address,
				Map.of("_csrf", token, "text", list.toString(), "usual", "", "go", "read"));
		assertThat(preview.statusCode()).isEqualTo(200);
		Document page = Jsoup.parse(preview.body());
		assertThat(page.select(".entry")).hasSize(400);
		assertThat(page.select("[role=status] a")).isEmpty();
		int packed = packed(preview.body());
		assertThat(packed).as("octets, packed").isLessThan(60_000);
		Map<String, String> fields = fields(page);
		fields.put("go", "add");
		HttpResponse<String> added = http(session, address, fields);
		assertThat(added.statusCode()).as(added.body()).isEqualTo(302);
		assertThat(this.register.plantingsOf(site.id())).hasSize(400);
	}

	@Test
	void batchesByApiAreAddedWholeOrNotAtAll() throws Exception {
		Site site = bare();
		String address = "/api/v1/sites/" + site.id() + "/plantings/batch";
		String good = "{\"species\":\"acer-rubrum\",\"label\":\"maple\",\"plantedOn\":\"2019-05-01\"}";
		JsonNode wrong = JsonMapper.shared()
			.readTree(api(address,
					"[%s,{\"species\":\"no-such\",\"label\":\"x\",\"plantedOn\":\"2019-05-01\"},{\"label\":\"y\"},null]"
						.formatted(good),
					400));
		assertThat(wrong.get("problems").valueStream().map((one) -> one.get("where").asString()).toList())
			.containsExactly("[1].species", "[2].species", "[2].plantedOn", "[3]");
		assertThat(this.register.plantingsOf(site.id())).isEmpty();
		assertThat(api(address, "[]", 400)).contains("1 to 500");
		assertThat(api(address, "[" + (good + ",").repeat(500) + good + "]", 400)).contains("501 plantings");
		JsonNode added = JsonMapper.shared().readTree(api(address, "[%s,%s]".formatted(good, good), 201));
		assertThat(added).hasSize(2);
		assertThat(this.register.plantingsOf(site.id())).hasSize(2);
	}

	private String api(String address, String body, int status) throws Exception {
		return ask(
				post(address).header("Authorization", "Bearer " + TOKEN).contentType("application/json").content(body),
				status);
	}

	private Document preview(Cookie session, String address, String list) throws Exception {
		return Jsoup.parse(ask(send(session, address, Map.of("text", list, "go", "read")), 200));
	}

	/** What a browser would send of the form, without its buttons. */
	private static Map<String, String> fields(Document page) {
		Map<String, String> fields = new LinkedHashMap<>();
		for (Element one : page.select("main form").first().select("input, select, textarea")) {
			boolean off = one.attr("type").equals("checkbox") && !one.hasAttr("checked");
			if (!off && !one.attr("name").isEmpty()) {
				fields.put(one.attr("name"), one.is("select") ? chosen(one) : one.val());
			}
		}
		return fields;
	}

	private static String chosen(Element select) {
		Element chosen = select.selectFirst("option[selected]");
		return ((chosen != null) ? chosen : select.selectFirst("option")).val();
	}

	private static MockHttpServletRequestBuilder send(Cookie session, String address, Map<String, String> fields) {
		MockHttpServletRequestBuilder request = post(address).with(csrf()).cookie(session);
		fields.forEach(request::param);
		return request;
	}

	private static RequestBuilder file(Cookie session, String address, byte[] content, String text) {
		return multipart(address).file(new MockMultipartFile("file", "plants.csv", "text/csv", content))
			.param("text", text)
			.with(csrf())
			.cookie(session);
	}

	private HttpResponse<String> http(Cookie session, String address, Map<String, String> fields)
			throws IOException, InterruptedException {
		HttpRequest.Builder request = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + this.port + address))
			.header("Cookie", "SESSION=" + session.getValue());
		if (fields != null) {
			StringBuilder body = new StringBuilder();
			fields.forEach((name, value) -> body.append(body.isEmpty() ? "" : "&")
				.append(URLEncoder.encode(name, StandardCharsets.UTF_8))
				.append('=')
				.append(URLEncoder.encode(value, StandardCharsets.UTF_8)));
			request.header("Content-Type", "application/x-www-form-urlencoded")
				.POST(HttpRequest.BodyPublishers.ofString(body.toString()));
		}
		return HttpClient.newHttpClient().send(request.build(), HttpResponse.BodyHandlers.ofString());
	}

	private static int packed(String page) throws IOException {
		ByteArrayOutputStream octets = new ByteArrayOutputStream();
		try (GZIPOutputStream gzip = new GZIPOutputStream(octets)) {
			gzip.write(page.getBytes(StandardCharsets.UTF_8));
		}
		return octets.size();
	}

	private Cookie session(Site site) throws Exception {
		return this.web.perform(post("/people/" + site.owner().value()).with(csrf()))
			.andReturn()
			.getResponse()
			.getCookie("SESSION");
	}

	private String ask(RequestBuilder request, int status) throws Exception {
		MockHttpServletResponse response = this.web.perform(request).andReturn().getResponse();
		assertThat(response.getStatus()).as(response.getContentAsString()).isEqualTo(status);
		return response.getContentAsString();
	}

}
