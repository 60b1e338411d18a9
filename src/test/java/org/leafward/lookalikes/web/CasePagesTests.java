package org.leafward.lookalikes.web;

import jakarta.servlet.http.Cookie;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.leafward.accounts.People;
import org.leafward.accounts.PersonId;
import org.leafward.accounts.Role;
import org.leafward.accounts.Roles;
import org.leafward.care.AddedTasks;
import org.leafward.care.CareTask;
import org.leafward.care.TaskCalendar;
import org.leafward.care.TaskId;
import org.leafward.care.TaskState;
import org.leafward.feeds.FeedOptions;
import org.leafward.feeds.Feeds;
import org.leafward.feeds.NewFeed;
import org.leafward.lookalikes.CaseClosed;
import org.leafward.lookalikes.CaseId;
import org.leafward.lookalikes.CaseState;
import org.leafward.lookalikes.Cases;
import org.leafward.lookalikes.PlantCase;
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
import org.leafward.support.DemoServer;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.MediaType;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.test.context.event.ApplicationEvents;
import org.springframework.test.context.event.RecordApplicationEvents;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.multipart;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.put;

/** Cases over HTTP, in the weather of the invented region. */
@DemoServer
@RecordApplicationEvents
class CasePagesTests {

	/** That of {@code CarePagesTests}, so that both share a context. */
	private static final String TOKEN = DemoServer.TOKEN;

	private static final ZoneId ZONE = ZoneId.of("America/Chicago");

	@Autowired
	private MockMvc web;

	@Autowired
	private Register register;

	@Autowired
	private People people;

	@Autowired
	private Roles roles;

	@Autowired
	private Cases cases;

	@Autowired
	private AddedTasks added;

	@Autowired
	private TaskCalendar calendar;

	@Autowired
	private Feeds feeds;

	@Autowired
	private ApplicationEvents events;

	private PersonId owner;

	private Site site;

	private Planting oak;

	private LocalDate today;

	private Cookie mine;

	@BeforeEach
	void plant() throws Exception {
		this.today = LocalDate.ofInstant(Instant.now(), ZONE);
		this.owner = person("Wilma");
		this.site = this.register.addSite(this.owner, new NewSite("Back garden", "Alder County",
				new GeoPoint(42.07, -91.61, 220), ZONE, SoilTexture.LOAM, Sun.FULL_SUN, Wind.AVERAGE));
		this.oak = this.register
			.addPlantings(this.site.id(), List.of(new NewPlanting(new SpeciesId("quercus-palustris"),
					"oak by the drive", 1, LocalDate.of(1994, 4, 20), Placement.GROUND, false, false)))
			.get(0);
		this.mine = session(this.owner);
	}

	private PersonId person(String name) {
		return this.people.join(name + " Trial", UUID.randomUUID() + "@example.org", ZONE).id();
	}

	private Cookie session(PersonId person) throws Exception {
		return this.web.perform(post("/people/" + person.value()).with(csrf()))
			.andReturn()
			.getResponse()
			.getCookie("SESSION");
	}

	private MockHttpServletResponse call(MockHttpServletRequestBuilder call, Cookie who) throws Exception {
		MockHttpServletResponse response = this.web.perform(call.cookie(who).with(csrf())).andReturn().getResponse();
		if (response.getContentType() != null && response.getContentType().startsWith("text/")) {
			response.setCharacterEncoding("UTF-8");
		}
		return response;
	}

	private Document page(String address, Cookie who) throws Exception {
		MockHttpServletResponse response = call(get(address), who);
		assertThat(response.getStatus()).as(address).isEqualTo(200);
		return Jsoup.parse(response.getContentAsString());
	}

	private String begin() throws Exception {
		MockHttpServletResponse response = call(post("/cases").param("planting", this.oak.id().toString())
			.param("seen", this.today.minusDays(20).toString()), this.mine);
		assertThat(response.getRedirectedUrl()).matches("/cases/[0-9a-f-]{36}/ask");
		return response.getRedirectedUrl().replaceFirst("/ask$", "");
	}

	private void answer(String address, String question, String... ticked) throws Exception {
		MockHttpServletResponse response = call(
				post(address + "/answers").param("question", question).param("answer", ticked), this.mine);
		assertThat(response.getStatus()).isEqualTo(302);
	}

	/** What Mississippi State's leaflet P3665 tells of bacterial leaf scorch, ticked. */
	private void scorch(String address) throws Exception {
		answer(address, "when", "seen-high-summer");
		answer(address, "where-in-leaf", "leaf-edge-inward");
		answer(address, "border", "border-yellow");
		answer(address, "where-in-crown", "crown-branch-then-more");
		answer(address, "which-leaves", "oldest-leaves-first");
		answer(address, "again", "every-year-and-more");
	}

	private PlantCase read(String address) {
		return this.cases.require(new CaseId(UUID.fromString(address.substring("/cases/".length()))));
	}

	@Test
	void oneQuestionAfterTheOtherLeadsToWhatItMayBe() throws Exception {
		String address = begin();
		int asked = 0;
		String next = address + "/ask";
		while (next.endsWith("/ask")) {
			Document ask = page(next, this.mine);
			assertThat(ask.select("main h1")).hasSize(1);
			assertThat(ask.select("button[value=cannot-tell]")).hasSize(1);
			String question = ask.select("input[name=question]").val();
			MockHttpServletResponse response = call(
					post(address + "/answers").param("question", question).param("say", "cannot-tell"), this.mine);
			next = response.getRedirectedUrl();
			assertThat(++asked).isLessThanOrEqualTo(12);
		}
		assertThat(next).isEqualTo(address);
		assertThat(asked).isGreaterThan(3);
		assertThat(page(address, this.mine).select("#answers + details dl dd").eachText())
			.allMatch((text) -> text.startsWith("Can’t tell"));
	}

	@Test
	void theAnswerNamesForAndAgainstAndWhatOnlyALaboratoryKnowsIsSuspected() throws Exception {
		String address = begin();
		scorch(address);
		Document page = page(address, this.mine);
		assertThat(page.select(".lead").text()).contains("Bacterial leaf scorch", "Only a laboratory can confirm that");
		assertThat(page.select(".causes h3").first().text()).startsWith("Suspected: Bacterial leaf scorch");
		assertThat(page.select(".causes li").first().text()).contains("For it:", "one branch first",
				"What would settle it:", "Mississippi State University Extension");
		assertThat(page.text()).contains("Nothing here is certain", "follow the label and local advice",
				"Kestrel Basin Plant Clinic", "Only a laboratory can tell");
		int before = scorchPercent(page);
		assertThat(before).isBetween(50, 97);
		// Other answers turn it.
		answer(address, "again", "not-again");
		answer(address, "watering", "water-helps");
		assertThat(scorchPercent(page(address, this.mine))).isLessThan(before);
	}

	private static int scorchPercent(Document page) {
		return page.select(".causes > li")
			.stream()
			.filter((one) -> one.select("h3").text().contains("Bacterial leaf scorch"))
			.map((one) -> Integer.parseInt(one.select(".share-own").attr("width")))
			.findFirst()
			.orElse(0);
	}

	@Test
	void whereAPartIsWantedTheNextQuestionComesAlone() throws Exception {
		String address = begin();
		MockHttpServletResponse response = call(post(address + "/answers").param("question", "when")
			.param("answer", "seen-autumn")
			.header("HX-Request", "true"), this.mine);
		assertThat(response.getStatus()).isEqualTo(200);
		assertThat(response.getHeaders("Vary")).contains("HX-Request");
		Document part = Jsoup.parse(response.getContentAsString());
		assertThat(part.select("header, footer")).isEmpty();
		assertThat(part.select("#asking h1[autofocus]")).hasSize(1);
		response = call(post(address + "/answers").param("question", "border").header("HX-Request", "true"), this.mine);
		assertThat(response.getStatus()).isEqualTo(400);
		assertThat(Jsoup.parse(response.getContentAsString()).select("[role=alert]").text())
			.isEqualTo("nothing is ticked: choose one, or say that you can’t tell.");
		// Changed, it leads back to the case.
		response = call(post(address + "/answers").param("question", "when")
			.param("answer", "seen-leafing-out")
			.header("HX-Request", "true"), this.mine);
		assertThat(response.getHeader("HX-Redirect")).isEqualTo(address);
		assertThat(call(post(address + "/answers").param("question", "when").param("answer", "seen-x"), this.mine)
			.getStatus()).isEqualTo(400);
		assertThat(call(post(address + "/answers").param("question", "nonsense").param("answer", "x"), this.mine)
			.getStatus()).isEqualTo(404);
	}

	@Test
	void aLineOfTheRecordIsStruckAndCountsAgain() throws Exception {
		String address = begin();
		Document page = page(address, this.mine);
		// An oak is an oak by its species.
		String line = page.select(".record input[name=line]").first().val();
		assertThat(page.select(".record li").first().text()).contains("Strike");
		call(post(address + "/struck").param("line", line).param("struck", "true"), this.mine);
		assertThat(read(address).struck()).containsExactly(line);
		assertThat(page(address, this.mine).select(".record .struck")).hasSize(1);
		call(post(address + "/struck").param("line", line).param("struck", "false"), this.mine);
		assertThat(read(address).struck()).isEmpty();
		assertThat(
				call(post(address + "/struck").param("line", "nothing").param("struck", "true"), this.mine).getStatus())
			.isEqualTo(400);
	}

	@Test
	void theFollowUpStandsOnTheCalendarInTheFeedAndLeadsBack() throws Exception {
		String address = begin();
		scorch(address);
		NewFeed feed = this.feeds.createForSite(this.site.id(), this.owner, FeedOptions.USUAL);
		call(post(address + "/follow-up").param("cause", "bacterial-scorch"), this.mine);
		List<TaskId> tasks = this.added.of(read(address).id().value());
		assertThat(tasks).hasSizeGreaterThan(2);
		CareTask again = this.calendar.find(tasks)
			.values()
			.stream()
			.filter((task) -> task.rule().equals("case:look-a-year-on"))
			.findFirst()
			.orElseThrow();
		assertThat(again.plant()).isEqualTo("oak by the drive (pin oak)");
		Document task = page("/tasks/" + again.id(), this.mine);
		assertThat(task.select("a[href=" + address + "]")).hasSize(1);
		assertThat(task.select("a[href^=/rules/]")).isEmpty();
		// Built in the background.
		await().untilAsserted(
				() -> assertThat(call(get("/f/" + feed.token() + "/tasks.ics"), this.mine).getContentAsString())
					.contains("Look at it again"));
		// Something else takes its place.
		call(post(address + "/follow-up").param("cause", "summer-scorch"), this.mine);
		assertThat(this.calendar.find(tasks).values()).filteredOn((one) -> !one.rule().equals("case:look-a-year-on"))
			.allSatisfy((one) -> assertThat(one.state()).isEqualTo(TaskState.WITHDRAWN));
		call(post(address + "/delete"), this.mine);
		assertThat(call(get(address), this.mine).getStatus()).isEqualTo(404);
		assertThat(this.calendar.find(again.id()).orElseThrow().withdrawnBecause()).isEqualTo("Its case was deleted.");
	}

	@Test
	void aSampleIsSentAndItsResultClosesTheCase() throws Exception {
		String address = begin();
		scorch(address);
		MockHttpServletResponse form = call(
				get(address + "/sample.pdf").param("cause", "bacterial-scorch").param("paper", "a4"), this.mine);
		assertThat(form.getContentType()).isEqualTo("application/pdf");
		try (PDDocument pdf = Loader.loadPDF(form.getContentAsByteArray())) {
			assertThat(new PDFTextStripper().getText(pdf)).contains("Suspected: Bacterial leaf scorch",
					"4 Lantern Street", "10 to 15 leaves", "August", "paper", "oak by the drive");
			assertThat(pdf.getNumberOfPages()).isLessThanOrEqualTo(2);
		}
		assertThat(
				call(post(address + "/sampled").param("day", this.today.plusDays(1).toString()), this.mine).getStatus())
			.isEqualTo(400);
		call(post(address + "/sampled").param("day", this.today.toString()), this.mine);
		assertThat(page(address, this.mine).select(".lead").text()).startsWith("A sample went to a laboratory on");
		assertThat(call(post(address + "/close"), this.mine).getStatus()).as("nothing found").isEqualTo(400);
		call(post(address + "/close").param("found", "bacterial-scorch")
			.param("result", "ELISA positive")
			.param("laboratory", "true"), this.mine);
		Document closed = page(address, this.mine);
		assertThat(closed.select(".lead").text()).contains("by a laboratory", "Bacterial leaf scorch")
			.doesNotContain("suspected");
		assertThat(closed.text()).contains("ELISA positive");
		assertThat(this.events.stream(CaseClosed.class)).singleElement().satisfies((event) -> {
			assertThat(event.cause()).isEqualTo("bacterial-scorch");
			assertThat(event.basis()).isEqualTo("LABORATORY");
			assertThat(event.county()).isEqualTo("Alder County");
			assertThat(event.species()).isEqualTo("quercus-palustris");
			assertThat(event.latitude()).as("a tenth of a degree").isEqualTo(42.1);
			assertThat(event.closed()).isEqualTo(this.today);
		});
		MockHttpServletResponse again = call(post(address + "/again"), this.mine);
		String anew = again.getRedirectedUrl().replaceFirst("#answers$", "");
		PlantCase next = read(anew);
		assertThat(next.follows()).isEqualTo(read(address).id());
		assertThat(next.answers().given()).as("what still stands")
			.containsOnlyKeys("where-in-leaf", "border", "where-in-crown", "which-leaves");
		Document page = page(anew, this.mine);
		assertThat(page.select("a[href=" + address + "]").text()).isEqualTo("the former case");
		assertThat(page.select("#answers + details dl dd").eachText()).allMatch((one) -> one.contains("(as before)"));
		assertThat(page.select(".record li")).as("the record, read anew").isNotEmpty();
		call(post(anew + "/answers").param("question", "border").param("say", "take-back"), this.mine);
		assertThat(read(anew).answers().has("border")).isFalse();
		assertThat(read(address).answers().has("border")).as("the former stays").isTrue();
	}

	/** Whoever types addresses by hand, presses twice, or comes when it is closed. */
	@Test
	void aClosedCaseTakesNothingMoreAndOthersAreNotThere() throws Exception {
		String address = begin();
		scorch(address);
		call(post(address + "/close").param("found", "salt-spray"), this.mine);
		assertThat(call(post(address + "/close").param("found", "winter-burn"), this.mine).getStatus()).isEqualTo(400);
		assertThat(call(post(address + "/sampled").param("day", this.today.toString()), this.mine).getStatus())
			.isEqualTo(400);
		assertThat(call(post(address + "/follow-up").param("cause", "winter-burn"), this.mine).getStatus())
			.isEqualTo(400);
		assertThat(
				call(post(address + "/answers").param("question", "border").param("answer", "border-sharp"), this.mine)
					.getStatus())
			.isEqualTo(400);
		ByteArrayOutputStream png = new ByteArrayOutputStream();
		ImageIO.write(new BufferedImage(9, 6, BufferedImage.TYPE_INT_RGB), "png", png);
		assertThat(this.web
			.perform(multipart(address + "/photos")
				.file(new MockMultipartFile("photo", "leaf.png", "image/png", png.toByteArray()))
				.cookie(this.mine)
				.with(csrf()))
			.andReturn()
			.getResponse()
			.getStatus()).isEqualTo(400);
		assertThat(page(address, this.mine).select("input[type=file]")).isEmpty();
		assertThat(read(address).cause()).isEqualTo("salt-spray");
		Cookie stranger = session(person("Otto"));
		for (String theirs : List.of("/answers?question=border&answer=border-sharp", "/close?found=salt-spray",
				"/reopen", "/again", "/notes?words=x", "/delete", "/help", "/struck?line=x&struck=true",
				"/sampled?day=" + this.today)) {
			assertThat(call(post(address + theirs), stranger).getStatus()).as(theirs).isEqualTo(404);
		}
		call(post(address + "/reopen"), this.mine);
		call(post(address + "/sampled").param("day", this.today.toString()), this.mine);
		call(post(address + "/reopen"), this.mine);
		assertThat(read(address).state()).as("open already").isEqualTo(CaseState.WAITING);
	}

	/** Two who answer at once: neither answer is lost. */
	@Test
	void twoWhoAnswerAtOnceLoseNothing() throws Exception {
		CaseId id = read(begin()).id();
		List<Callable<PlantCase>> both = List.of(() -> this.cases.answer(id, "border", Set.of("border-sharp")),
				() -> this.cases.answer(id, "when", Set.of("seen-autumn")),
				() -> this.cases.answer(id, "which-leaves", Set.of("all-leaves-alike")),
				() -> this.cases.answer(id, "wood", Set.of("none")));
		try (var pool = new Pool(Executors.newFixedThreadPool(4))) {
			for (Future<PlantCase> one : pool.threads().invokeAll(both)) {
				one.get();
			}
		}
		assertThat(this.cases.require(id).answers().given()).containsOnlyKeys("border", "when", "which-leaves", "wood");
	}

	/** Ends its threads. */
	private record Pool(ExecutorService threads) implements AutoCloseable {

		@Override
		public void close() {
			this.threads.shutdownNow();
		}

	}

	@Test
	void theHelpDeskSeesWhatItWasAskedAndNothingElse() throws Exception {
		String address = begin();
		PersonId here = person("Odalys");
		this.roles.grant(here, Role.SPECIALIST, "Alder County");
		PersonId elsewhere = person("Elso");
		this.roles.grant(elsewhere, Role.SPECIALIST, "Sable County");
		PersonId coordinator = person("Coral");
		this.roles.grant(coordinator, Role.COORDINATOR, "");
		Cookie desk = session(here);
		Cookie other = session(elsewhere);
		Cookie helper = session(coordinator);
		assertThat(call(get(address), desk).getStatus()).as("not asked").isEqualTo(404);
		assertThat(page("/help-desk", desk).select(".pick a[href=" + address + "]")).isEmpty();
		call(post(address + "/help"), this.mine);
		assertThat(page("/help-desk", desk).select(".pick a[href=" + address + "]").text()).contains("oak by the drive",
				"Wilma in Alder County", "nobody looks after it yet");
		assertThat(page(address, desk).text()).contains("You see this as the help desk", "Send the reply");
		assertThat(call(get(address), other).getStatus()).isEqualTo(404);
		assertThat(call(get(address), helper).getStatus()).isEqualTo(404);
		assertThat(page("/help-desk", helper).select(".pick a")).isEmpty();
		call(post(address + "/assigned").param("helper", coordinator.toString()), desk);
		assertThat(page("/help-desk", helper).select(".pick a[href=" + address + "]")).hasSize(1);
		call(post(address + "/notes").param("words", "Look at the\nroot flare <b>."), helper);
		Document mine = page(address, this.mine);
		assertThat(mine.select(".history").text()).contains("Coral, help desk", "root flare <b>.");
		assertThat(call(post(address + "/assigned").param("helper", elsewhere.toString()), desk).getStatus())
			.isEqualTo(400);
		for (String gone : List.of("/follow-up?cause=salt-spray", "/delete", "/help", "/again")) {
			assertThat(call(post(address + gone), desk).getStatus()).as(gone).isEqualTo(404);
		}
		call(post(address + "/close").param("found", "salt-spray"), desk);
		assertThat(page(address, this.mine).select(".lead").text()).contains("by the help desk", "alt");
		assertThat(page("/help-desk?closed=true", desk).select(".pick").text()).contains("Taken for:");
		assertThat(page("/help-desk", desk).select("table").text()).contains("Alder County");
		assertThat(page("/help-desk", desk).select("svg.region-map text").eachText())
			.anyMatch((text) -> text.matches("\\d+ cases?"));
	}

	@Test
	void photosAreDrawnAnewAndSeenByThoseWhoSeeTheCase() throws Exception {
		String address = begin();
		ByteArrayOutputStream png = new ByteArrayOutputStream();
		ImageIO.write(new BufferedImage(90, 60, BufferedImage.TYPE_INT_RGB), "png", png);
		MockHttpServletResponse sent = this.web
			.perform(multipart(address + "/photos")
				.file(new MockMultipartFile("photo", "../leaf.png", "image/png", png.toByteArray()))
				.param("words", "lower branch")
				.cookie(this.mine)
				.with(csrf()))
			.andReturn()
			.getResponse();
		assertThat(sent.getRedirectedUrl()).isEqualTo(address + "#photos");
		Document page = page(address, this.mine);
		String picture = page.select(".photos img").attr("src");
		assertThat(page.select(".photos img").attr("alt")).isEqualTo("lower branch");
		MockHttpServletResponse jpeg = call(get(picture), this.mine);
		assertThat(jpeg.getContentType()).isEqualTo("image/jpeg");
		assertThat(jpeg.getHeader("Cache-Control")).contains("private");
		assertThat(ImageIO.read(new ByteArrayInputStream(jpeg.getContentAsByteArray())).getWidth()).isEqualTo(90);
		assertThat(call(get(picture), session(person("Otto"))).getStatus()).isEqualTo(404);
		MockHttpServletResponse wrong = this.web
			.perform(multipart(address + "/photos")
				.file(new MockMultipartFile("photo", "x.jpg", "image/jpeg", new byte[] { 1, 2 }))
				.cookie(this.mine)
				.with(csrf()))
			.andReturn()
			.getResponse();
		assertThat(wrong.getStatus()).isEqualTo(400);
		call(post(picture + "/delete"), this.mine);
		assertThat(call(get(picture), this.mine).getStatus()).isEqualTo(404);
	}

	@Test
	void aPlantThatIsInNoRegisterIsAskedAboutByName() throws Exception {
		MockHttpServletResponse response = call(post("/cases").param("plant", "pin oaks")
			.param("county", "us-ia-alder-county")
			.param("seen", this.today.toString()), this.mine);
		String address = response.getRedirectedUrl().replaceFirst("/ask$", "");
		assertThat(read(address).species()).isEqualTo(new SpeciesId("quercus-palustris"));
		scorch(address);
		Document page = page(address, this.mine);
		assertThat(page.select("form[action$=follow-up]")).as("no calendar to put it on").isEmpty();
		assertThat(page.select("#follow-up ~ ul li").text()).contains("Send leaves to a laboratory");
		MockHttpServletResponse wrong = call(post("/cases").param("plant", "").param("seen", "3026-01-01"), this.mine);
		assertThat(wrong.getStatus()).isEqualTo(400);
		assertThat(Jsoup.parse(wrong.getContentAsString()).select(".problem li")).isNotEmpty();
		assertThat(call(post("/cases").param("planting", UUID.randomUUID().toString()).param("seen", "2026-01-01"),
				this.mine)
			.getStatus()).isEqualTo(404);
	}

	@Test
	void programsOpenAnswerAndReadACase() throws Exception {
		JsonNode opened = api(post("/api/v1/cases"),
				"{\"planting\": \"%s\", \"seen\": \"%s\"}".formatted(this.oak.id(), this.today));
		String address = "/api/v1/cases/" + opened.at("/plantCase/id").asString();
		assertThat(opened.at("/next/answers").size()).isPositive();
		assertThat(opened.at("/record").size()).isPositive();
		JsonNode answered = api(put(address + "/answers/border"), "{\"answers\": [\"border-yellow\"]}");
		assertThat(answered.at("/answers/0/question").asString()).isEqualTo("border");
		assertThat(answered.at("/findings").size()).isBetween(1, 5);
		assertThat(answered.at("/findings/0/share").asDouble()).isBetween(0.0, 0.99);
		assertThat(api(get(address), "").at("/plantCase/leading").asString()).isNotBlank();
	}

	private JsonNode api(MockHttpServletRequestBuilder call, String body) throws Exception {
		MockHttpServletResponse response = this.web.perform(
				call.header("Authorization", "Bearer " + TOKEN).contentType(MediaType.APPLICATION_JSON).content(body))
			.andReturn()
			.getResponse();
		assertThat(response.getStatus()).isBetween(200, 201);
		return JsonMapper.shared().readTree(response.getContentAsString());
	}

}
