package org.leafward.care.web;

import jakarta.servlet.http.Cookie;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.leafward.accounts.People;
import org.leafward.accounts.PersonId;
import org.leafward.care.AmountUnit;
import org.leafward.care.CareLog;
import org.leafward.care.CareTask;
import org.leafward.care.SiteYears;
import org.leafward.care.TaskCalendar;
import org.leafward.care.TaskKind;
import org.leafward.care.TaskState;
import org.leafward.care.WorkDone;
import org.leafward.care.core.review.YearReview;
import org.leafward.measure.DayWindow;
import org.leafward.measure.GeoPoint;
import org.leafward.plants.Catalogue;
import org.leafward.plants.Species;
import org.leafward.plants.SpeciesId;
import org.leafward.register.NewPlanting;
import org.leafward.register.NewSite;
import org.leafward.register.Placement;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.leafward.register.SoilTexture;
import org.leafward.register.Sun;
import org.leafward.register.Wind;
import org.leafward.support.DemoServer;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.MockMvc;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

/** A year looked back on over HTTP, in the weather of the invented region. */
@DemoServer
class ReviewPagesTests {

	private static final String HOSTILE = "<script>alert(1)</script> & \"Q\" עץ \ud83c\udf33";

	@Autowired
	private MockMvc web;

	@Autowired
	private Register register;

	@Autowired
	private People people;

	@Autowired
	private CareLog log;

	@Autowired
	private TaskCalendar calendar;

	@Autowired
	private SiteYears years;

	@Autowired
	private Catalogue catalogue;

	private Site site;

	private LocalDate today;

	private Cookie mine;

	private Cookie other;

	private CareTask task;

	@BeforeEach
	void plant() throws Exception {
		ZoneId zone = ZoneId.of("America/Chicago");
		this.today = LocalDate.ofInstant(Instant.now(), zone);
		PersonId owner = this.people.join("Wilma Trial", UUID.randomUUID() + "@example.org", zone).id();
		this.site = this.register.addSite(owner, new NewSite(HOSTILE, "Alder County", new GeoPoint(42, -91.6, 220),
				zone, SoilTexture.LOAM, Sun.FULL_SUN, Wind.AVERAGE));
		this.register.addPlantings(this.site.id(), List.of(new NewPlanting(new SpeciesId("acer-rubrum"),
				"@maple \"young\"", 1, this.today, Placement.GROUND, false, false)));
		this.mine = session(owner);
		this.other = session(this.people.join("Otto Other", UUID.randomUUID() + "@example.org", zone).id());
		// In some weeks of a year nothing is due; done early is done.
		this.task = this.calendar.ofSite(this.site.id(), new DayWindow(this.today, this.today.plusDays(200)))
			.stream()
			.filter((one) -> one.kind() == TaskKind.DO && one.state() == TaskState.PLANNED
					&& one.window().from().getYear() == this.today.getYear())
			.findFirst()
			.orElseThrow();
		this.log.done(List.of(this.task.id()), WorkDone.on(this.today, "=1+1\nby hand"), owner);
		this.log.log(this.site.id(), null, "water", new WorkDone(this.today, 12.0, AmountUnit.MM, null, "soaker hose"),
				owner);
	}

	@Test
	void theYearStandsOnAPageWithWhatWasDoneAndTheWeather() throws Exception {
		Document page = page(address(this.today.getYear()));
		assertThat(page.select("h1").text()).isEqualTo(this.today.getYear() + " so far at " + HOSTILE);
		assertThat(page.select(".facts").first().text()).contains("Done on time 1", "Missed 0");
		assertThat(page.text()).contains("Watering", "12 mm (0.47 in) in 1 watering", "soaker hose", "=1+1 by hand",
				"Last freeze of spring", "invented for a demonstration");
		assertThat(page.select("table th[scope=row]").eachText()).anyMatch((row) -> row.contains("@maple \"young\""));
		assertThat(page.select("a[href$=.csv], a[href*=.pdf?paper=]")).hasSize(3);
		assertThat(page.select("a[href=" + address(this.today.getYear() - 1) + "]")).hasSize(1);
		assertThat(page.select("script")).isEmpty();
		for (String from : List.of("", "/log")) {
			assertThat(page("/sites/" + this.site.id() + from).select("a[href=/sites/" + this.site.id() + "/review]"))
				.hasSize(1);
		}
	}

	@Test
	void withoutAYearTheSensibleOneIsShown() throws Exception {
		MockHttpServletResponse answer = answer(this.mine, "/sites/" + this.site.id() + "/review");
		// In January and February too, as nothing is known of the year before.
		assertThat(answer.getRedirectedUrl()).isEqualTo(address(this.today.getYear()));
	}

	@Test
	void aYearWithoutAnythingIsAFriendlyPage() throws Exception {
		Document page = page(address(1950));
		assertThat(page.select(".lead").text()).startsWith("Nothing is kept of 1950 here");
		assertThat(page.text()).contains("observed a day of 1950, so what the weather did can’t be told");
		page = page(address(this.today.getYear() + 1));
		assertThat(page.select(".lead").text()).contains("has not begun");
		assertThat(page.select("a[href*=review/" + (this.today.getYear() + 2) + "]")).isEmpty();
		assertThat(answer(this.mine, address(1950) + ".pdf").getStatus()).isEqualTo(200);
		assertThat(answer(this.mine, address(1950) + ".csv").getContentAsString()).isEqualToNormalizingNewlines(
				"record,id,first_day,last_day,day,work,kind,title,planting,outcome,reason,otherwise,amount,unit,hold_off,note,rule,task\n");
	}

	@ParameterizedTest
	@ValueSource(strings = { "1899", "9999", "soon", "2026x" })
	void aYearOutOfBoundsIsRefusedInWords(String year) throws Exception {
		for (String end : List.of("", ".csv", ".pdf")) {
			MockHttpServletResponse answer = answer(this.mine,
					"/sites/%s/review/%s%s".formatted(this.site.id(), year, end));
			assertThat(answer.getStatus()).as(end).isEqualTo(400);
			assertThat(answer.getContentAsString()).contains(year, "Where", "year");
		}
		assertThat(api("/review/" + year).getStatus()).isEqualTo(400);
	}

	@Test
	void theTableHasALineForEachTaskAndEntry() throws Exception {
		MockHttpServletResponse answer = answer(this.mine, address(this.today.getYear()) + ".csv");
		assertThat(answer.getContentType()).startsWith("text/csv");
		assertThat(answer.getHeader("Content-Disposition"))
			.isEqualTo("attachment; filename=\"leafward-review-%d.csv\"".formatted(this.today.getYear()));
		try (CSVParser table = CSVFormat.RFC4180.builder()
			.setHeader()
			.setSkipHeaderRecord(true)
			.get()
			.parse(new StringReader(answer.getContentAsString()))) {
			List<CSVRecord> rows = table.getRecords();
			CSVRecord done = rows.stream()
				.filter((row) -> row.get("id").equals(this.task.id().toString()))
				.findFirst()
				.orElseThrow();
			assertThat(done.get("outcome")).isEqualTo("on-time");
			assertThat(done.get("day")).isEqualTo(this.today.toString());
			assertThat(done.get("planting")).startsWith("'@maple \"young\"");
			assertThat(rows.stream().filter((row) -> row.get("record").equals("done")).map((row) -> row.get("note")))
				.containsExactlyInAnyOrder("'=1+1\nby hand", "soaker hose");
			assertThat(rows.stream().filter((row) -> row.get("unit").equals("mm")).map((row) -> row.get("amount")))
				.containsExactly("12");
		}
	}

	@Test
	void thePaperSaysTheSame() throws Exception {
		for (String paper : List.of("a4", "letter")) {
			MockHttpServletResponse answer = answer(this.mine, address(this.today.getYear()) + ".pdf?paper=" + paper);
			assertThat(answer.getStatus()).isEqualTo(200);
			assertThat(answer.getContentType()).isEqualTo("application/pdf");
			Files.write(preview().resolve("review-%s.pdf".formatted(paper)), answer.getContentAsByteArray());
			try (PDDocument pdf = Loader.loadPDF(answer.getContentAsByteArray())) {
				String text = new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
				assertThat(text).contains(this.today.getYear() + " so far at <script>alert(1)</script> & \"Q\"",
						"By planting", "@maple \"young\"", "12 mm (0.47 in) in 1 watering", "=1+1 by hand",
						"Last freeze of spring", "printed on ");
				assertThat(pdf.getNumberOfPages()).isBetween(1, 6);
				assertThat(pdf.getDocumentInformation().getTitle()).startsWith(this.today.getYear() + " at <script>");
			}
		}
		assertThat(answer(this.mine, address(this.today.getYear()) + ".pdf?paper=a3").getStatus()).isEqualTo(400);
	}

	@Test
	void thePaperIsInTheReadersLanguageAndUnits() throws Exception {
		MockHttpServletResponse answer = this.web.perform(get(address(this.today.getYear()) + ".pdf?paper=a4")
			.cookie(this.mine, new Cookie("reading", "es.metric"))).andReturn().getResponse();
		assertThat(answer.getStatus()).isEqualTo(200);
		Files.write(preview().resolve("review-es.pdf"), answer.getContentAsByteArray());
		try (PDDocument pdf = Loader.loadPDF(answer.getContentAsByteArray())) {
			String text = new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
			assertThat(text)
				.contains(this.today.getYear() + " hasta ahora en <script>alert(1)</script> & \"Q\"", "impreso el ",
						"@maple \"young\"", "=1+1 by hand", "12 mm")
				.doesNotContain("(0.47 in)", "By planting", "so far at", "Last freeze of spring");
		}
	}

	@Test
	void theSameGoesByApi() throws Exception {
		JsonNode review = JsonMapper.shared().readTree(api("/review/" + this.today.getYear()).getContentAsString());
		assertThat(review.get("over").asBoolean()).isFalse();
		assertThat(review.get("total").get("onTime").asInt()).isEqualTo(1);
		assertThat(review.get("done")).hasSize(2);
		assertThat(review.get("watered").get(0).get("millimetres").asDouble()).isEqualTo(12);
		assertThat(review.get("weather").get("invented").asBoolean()).isTrue();
		assertThat(review.get("weather").get("lastSpringFreeze").get("median").asString())
			.startsWith(this.today.getYear() + "-0");
	}

	@Test
	void whatIsOthersIsNotThere() throws Exception {
		for (String end : List.of("", ".csv", ".pdf", "x")) {
			assertThat(answer(this.other, address(this.today.getYear()) + end).getStatus()).as(end).isEqualTo(404);
		}
		assertThat(answer(this.other, "/sites/" + this.site.id() + "/review").getStatus()).isEqualTo(404);
	}

	/**
	 * Target 100 ms of computing; the best of twenty, as others may use the processors,
	 * and five times that, for slow machines.
	 */
	@Test
	void twoHundredPlantingsAreLookedBackOnQuickly() throws Exception {
		List<NewPlanting> many = new ArrayList<>();
		List<Species> species = this.catalogue.all();
		for (int i = 0; i < 199; i++) {
			many.add(new NewPlanting(species.get(i % species.size()).id(), "planting " + i, 1,
					LocalDate.of(2015, 4, 20), Placement.GROUND, false, false));
		}
		this.register.addPlantings(this.site.id(), many);
		List<String> measured = new ArrayList<>();
		for (int year = this.today.getYear(); year <= this.today.getYear() + 1; year++) {
			long best = Long.MAX_VALUE;
			int tasks = 0;
			for (int round = 0; round < 20; round++) {
				long begin = System.nanoTime();
				YearReview review = this.years.review(this.site, year);
				ReviewWords.of(review, this.years.weather(this.site, year).orElse(null), this.today);
				best = Math.min(best, System.nanoTime() - begin);
				tasks = review.tasks().size();
			}
			measured.add("%d: %d tasks in %d ms".formatted(year, tasks, best / 1_000_000));
			assertThat(tasks).as("tasks of %d", year).isGreaterThan(200);
			assertThat(best).as("%d tasks of %d, ns", tasks, year).isLessThan(500_000_000);
		}
		long drawn = System.nanoTime();
		byte[] pdf = answer(this.mine, address(this.today.getYear() + 1) + ".pdf").getContentAsByteArray();
		drawn = System.nanoTime() - drawn;
		try (PDDocument sheets = Loader.loadPDF(pdf)) {
			measured.add("%d sheets in %d ms".formatted(sheets.getNumberOfPages(), drawn / 1_000_000));
			assertThat(sheets.getNumberOfPages()).isBetween(2, 40);
		}
		Files.write(preview().resolve("review-200.pdf"), pdf);
		Files.write(preview().resolve("review-200.txt"), measured);
	}

	/** Where what is to be looked at is left. */
	private static Path preview() throws IOException {
		return Files.createDirectories(Path.of("target", "preview"));
	}

	private String address(int year) {
		return "/sites/%s/review/%d".formatted(this.site.id(), year);
	}

	private Cookie session(PersonId person) throws Exception {
		return this.web.perform(post("/people/" + person.value()).with(csrf()))
			.andReturn()
			.getResponse()
			.getCookie("SESSION");
	}

	private MockHttpServletResponse answer(Cookie session, String address) throws Exception {
		MockHttpServletResponse response = this.web.perform(get(address).cookie(session)).andReturn().getResponse();
		if (response.getContentType() != null && response.getContentType().startsWith("text/")) {
			response.setCharacterEncoding("UTF-8");
		}
		return response;
	}

	private Document page(String address) throws Exception {
		MockHttpServletResponse response = answer(this.mine, address);
		assertThat(response.getStatus()).as(address).isEqualTo(200);
		return Jsoup.parse(response.getContentAsString());
	}

	private MockHttpServletResponse api(String address) throws Exception {
		return this.web.perform(
				get("/api/v1/sites/" + this.site.id() + address).header("Authorization", "Bearer " + DemoServer.TOKEN))
			.andReturn()
			.getResponse();
	}

}
