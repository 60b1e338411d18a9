package org.leafward.pages;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Attribute;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.springframework.mock.web.MockHttpServletRequest;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.mock.web.MockServletContext;
import org.springframework.web.context.support.GenericWebApplicationContext;
import org.springframework.web.servlet.DispatcherServlet;
import org.springframework.web.servlet.View;
import org.thymeleaf.spring6.SpringTemplateEngine;
import org.thymeleaf.spring6.view.ThymeleafView;
import org.thymeleaf.spring6.view.ThymeleafViewResolver;
import org.thymeleaf.templateresolver.ClassLoaderTemplateResolver;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * Renders every template with invented content, checks what WCAG 2.2 and a style policy
 * without inline style ask of the markup, and leaves the pages in target/preview to be
 * looked at.
 */
class TemplateTests {

	private static final Viewer VIEWER = new Viewer(UUID.randomUUID(), "Nora Field", false, true);

	/** Pages that change in place where script runs. */
	private static final Set<String> LIVE = Set.of("care/home", "care/site", "register/planting-form",
			"lookalikes/ask");

	private static final ThymeleafViewResolver VIEWS = views();

	static Stream<String> names() {
		return PageSamples.all().keySet().stream();
	}

	@ParameterizedTest
	@MethodSource("names")
	void pageIsCompleteWithoutScriptOrInlineStyle(String name) throws IOException {
		Document page = page(name, VIEWER);
		preview(name, page.clone());
		assertThat(page.select("style, link[rel=stylesheet]:not([href=/css/leafward.css])")).isEmpty();
		// One page asks the browser something, some change in place; scripts are files.
		List<String> scripts = name.equals("reminders/push") ? List.of("/js/push.js")
				: name.equals("workdays/checklist") ? List.of("/js/checklist.js")
						: LIVE.contains(name) ? List.of("/js/htmx-2.0.8.min.js", "/js/live.js") : List.of();
		assertThat(page.select("script").eachAttr("src")).isEqualTo(scripts);
		assertThat(page.select("script:not(:empty)")).isEmpty();
		for (Element element : page.getAllElements()) {
			for (Attribute attribute : element.attributes()) {
				String key = attribute.getKey().toLowerCase(Locale.ROOT);
				assertThat(key).doesNotStartWith("on").isNotEqualTo("style").doesNotStartWith("th:");
			}
		}
		// WCAG 2.2: 3.1.1 language, 2.4.2 title, 1.3.1 structure, 2.4.1 skip link
		assertThat(page.selectFirst("html").attr("lang")).isEqualTo("en");
		assertThat(page.title()).endsWith("Leafward").hasSizeGreaterThan(12).doesNotContain("<", "${");
		assertThat(page.select("main")).hasSize(1);
		assertThat(page.select("h1")).hasSize(1);
		assertThat(page.select("a.skip")).hasSize(1);
		assertThat(page.getElementById("main")).isNotNull();
		assertThat(page.text()).contains("power lines");
	}

	@ParameterizedTest
	@MethodSource("names")
	void everyReferenceInsideThePageHasItsTarget(String name) throws IOException {
		Document page = page(name, VIEWER);
		Set<String> ids = new HashSet<>();
		page.select("[id]").forEach((element) -> assertThat(ids.add(element.id())).as(element.id()).isTrue());
		for (String attribute : List.of("for", "aria-describedby", "aria-labelledby", "list")) {
			page.select("[" + attribute + "]")
				.forEach((element) -> assertThat(ids).contains(element.attr(attribute).split(" ")));
		}
		page.select("a[href^=#]").forEach((link) -> assertThat(ids).contains(link.attr("href").substring(1)));
		// WCAG 2.2: 3.3.2 and 4.1.2, every control has a visible name
		for (Element control : page.select("input:not([type=hidden]), select, textarea")) {
			assertThat(page.select("label[for=" + control.id() + "], label:has(#" + control.id() + ")").text())
				.isNotBlank();
		}
	}

	@Test
	void wrongFieldsSaySoInWordsAndMarkup() throws IOException {
		Document page = page("register/site-form", VIEWER);
		Element latitude = page.getElementById("latitude");
		assertThat(latitude.attr("aria-invalid")).isEqualTo("true");
		assertThat(latitude.val()).isEqualTo("144.98");
		assertThat(page.getElementById("latitude-error").text()).contains("outside -90 to 90");
		assertThat(page.select(".problem a[href=#latitude]")).hasSize(1);
		assertThat(page.getElementById("longitude").hasAttr("aria-invalid")).isFalse();
		assertThat(page.select("#soil option[selected]").attr("value")).isEqualTo("LOAM");
	}

	@Test
	void theFreezesOfASiteSayWhatIsInventedAndHowSureTheyAre() throws IOException {
		Document page = page("register/freezes", VIEWER);
		assertThat(page.select(".lead").text()).startsWith("After 16 May, 32 °F");
		assertThat(page.select("main").text()).contains("invented for a demonstration", "Maple Hill (invented)", "80 %",
				"Cold hollow: 2 °C colder", "from memory", "6 days apart", "foretold from the others");
		assertThat(page.select("a[href*=threshold=28F]")).hasSize(1);
		assertThat(page.select("svg.freeze-curve")).hasSize(1);
		assertThat(page("register/place-form", VIEWER).getElementById("measuredOffsetCelsius").attr("aria-invalid"))
			.isEqualTo("true");
	}

	@Test
	void navigationMarksThePageAndKnowsStrangers() throws IOException {
		Document mine = page("register/sites", VIEWER);
		assertThat(mine.select("nav [aria-current=page]").text()).isEqualTo("My sites");
		assertThat(mine.select(".masthead nav > ul li").eachText()).containsExactly("This week", "My sites", "Calendar",
				"Why brown leaves?");
		assertThat(mine.select(".strip").text()).contains("invented");
		Document stranger = page("climate/stations", new Viewer(null, "", false, false));
		assertThat(stranger.select(".masthead nav > ul").text()).isEqualTo("Make a calendar Advisories Sign in");
		assertThat(stranger.select(".masthead summary.here")).as("the page is behind the word").hasSize(1);
		assertThat(stranger.select(".masthead .more [aria-current=page]").text()).isEqualTo("Stations");
		assertThat(stranger.select(".strip")).isEmpty();
		Document signedIn = page("climate/stations", new Viewer(UUID.randomUUID(), "Nora", false, false));
		assertThat(signedIn.select(".masthead form[method=post][action=/sign-out] button").text())
			.isEqualTo("Sign out");
	}

	/**
	 * Items 3.4.3 and 14.3.3 of the security list: nothing is evaluated, nothing kept.
	 */
	@Test
	void whatChangesInPlaceIsToldToEvaluateAndKeepNothing() throws IOException {
		Document page = page("care/home", VIEWER);
		JsonNode config = JsonMapper.shared().readTree(page.select("meta[name=htmx-config]").attr("content"));
		for (String off : List.of("allowEval", "allowScriptTags", "includeIndicatorStyles", "historyEnabled")) {
			assertThat(config.get(off).asBoolean(true)).as(off).isFalse();
		}
		assertThat(config.get("selfRequestsOnly").asBoolean()).isTrue();
		assertThat(config.get("historyCacheSize").asInt(1)).isZero();
		assertThat(page.select("[hx-on], [hx-vars], [hx-ext], [hx-vals], [hx-push-url], [hx-history-elt]")).isEmpty();
		assertThat(page.select("#said[role=status]")).hasSize(1);
		Document stranger = page("climate/stations", new Viewer(null, "", false, false));
		assertThat(stranger.select("script, meta[name=htmx-config], #said")).isEmpty();
	}

	@Test
	void aLineChangesInPlaceAndItsFormsWorkWithoutThat() throws IOException {
		Document page = page("care/site", VIEWER);
		Element acts = page.selectFirst(".acts:has(form[action=/tasks/done])");
		assertThat(acts.attr("hx-target")).isEqualTo("closest li");
		for (Element form : acts.select("form")) {
			assertThat(form.attr("hx-post")).isEqualTo(form.attr("action"));
			assertThat(form.attr("method")).isEqualTo("post");
		}
		assertThat(acts.select("[role=alert]").attr("id"))
			.isEqualTo("wrong-" + acts.select("input[name=task]").first().val());
		assertThat(page("care/task", VIEWER).select("[hx-post]")).as("a page of its own").isEmpty();
	}

	@Test
	void theNightIsToldInFewWordsWithWhatCanHurt() throws IOException {
		Element night = page("care/home", VIEWER).selectFirst("section.tonight");
		assertThat(night.select("p").eachText()).startsWith("Tonight −2 °C (28 °F) at Orchard Lane, Mill Road.",
				"Cover: tomato bed (tomato); 3 more plantings.", "Bring in: basil pot (basil).");
		assertThat(night.text()).contains("The forecast is 3 hours old.", "No lamps or heaters under cloth.");
		assertThat(night.select("[translate=no]").eachText()).containsExactly("Orchard Lane", "Mill Road");
	}

	@Test
	void taskLinesCarryWordAndShape() throws IOException {
		Document page = page("care/home", VIEWER);
		for (Element task : page.select("li.task")) {
			assertThat(task.select(".kind svg[aria-hidden=true] > *")).isNotEmpty();
			assertThat(task.select(".kind span").text()).isNotBlank();
		}
		assertThat(page.select("li.task:has(.hatch-line) .kind").text()).isEqualTo("Hold off");
		assertThat(page.select("li.task.withdrawn .kind").eachText()).containsExactly("Withdrawn");
		assertThat(page.select("li.task.withdrawn .mark-do")).isEmpty();
		assertThat(page.select("h2:contains(To do) + ul li.task").first().select(".days").text())
			.isEqualTo("9 Nov – 24 Nov");
	}

	@Test
	void whatMayBeDoneStandsBesideATaskAndWorksWithoutScript() throws IOException {
		Document page = page("care/site", VIEWER);
		Element done = page.selectFirst("form[method=post][action=/tasks/done]");
		assertThat(done.select("input[name=task]")).hasSize(2);
		assertThat(done.select("input[name=back]").val()).isEqualTo("site");
		assertThat(done.select("button").text()).isEqualTo("Done: Mulch the bed, young maple (red maple)");
		assertThat(page.select("form[action=/tasks/skip] input[name=reason][required]")).hasSize(1);
		assertThat(page.select("form[action=/tasks/undo]")).hasSize(2);
		assertThat(page.text()).contains("came back on Mon 9 Nov 2026", "Done on Wed 11 Nov 2026",
				"Left out this time: Away until the weekend.");
	}

	@Test
	void aTaskShowsWhatWasLoggedAndWhatBecameOfIt() throws IOException {
		Document page = page("care/task", VIEWER);
		assertThat(page.select(".standing").text()).isEqualTo("Due today, until Tue 24 Nov 2026.");
		assertThat(page.select(".note .caution").text()).isEqualTo("Inside a hold-off: Leave evergreens unpruned.");
		assertThat(page.select("details[open] #day").attr("aria-invalid")).isEqualTo("true");
		assertThat(page.text()).contains("Withdrawn: 32 mm of rain fell since Sunday.");
		Document log = page("care/log", VIEWER);
		assertThat(log.select("[role=status]").text()).startsWith("It is kept, and marked");
		assertThat(log.getElementById("note").attr("aria-invalid")).isEqualTo("true");
		assertThat(page("care/observations", VIEWER).select("dd").text()).isEqualTo("The first flowers are open.");
	}

	@Test
	void explanationsNestAsDeepAsTheirSteps() throws IOException {
		Document page = page("care/task", VIEWER);
		assertThat(page.select(".why > details[open]")).hasSize(1);
		assertThat(page.select(".why details details .why-leaf")).hasSize(3);
		assertThat(page.select(".why .source").eachText()).contains("Source: daily record, 1995 to 2024");
	}

	@Test
	void textIsEscaped() throws IOException {
		Map<String, Object> model = PageSamples.all().get("error");
		model.put("what", "<b onmouseover=alert(1)>no</b>");
		assertThat(render("error", model, VIEWER)).doesNotContain("<b ").contains("&lt;b onmouseover");
	}

	private static Document page(String name, Viewer viewer) throws IOException {
		return Jsoup.parse(render(name, PageSamples.all().get(name), viewer));
	}

	private static String render(String name, Map<String, Object> model, Viewer viewer) {
		MockHttpServletRequest request = new MockHttpServletRequest();
		request.setAttribute(DispatcherServlet.WEB_APPLICATION_CONTEXT_ATTRIBUTE, VIEWS.getApplicationContext());
		MockHttpServletResponse response = new MockHttpServletResponse();
		response.setCharacterEncoding("UTF-8");
		model.put("viewer", viewer);
		model.put("formats", new Formats(Samples.TODAY.getYear()));
		try {
			View view = VIEWS.resolveViewName(name, Locale.ENGLISH);
			assertThat(view).isInstanceOf(ThymeleafView.class);
			view.render(model, request, response);
			return response.getContentAsString();
		}
		catch (Exception ex) {
			throw new IllegalStateException("template %s: %s".formatted(name, ex.getMessage()), ex);
		}
	}

	private static ThymeleafViewResolver views() {
		ClassLoaderTemplateResolver templates = new ClassLoaderTemplateResolver();
		templates.setPrefix("templates/");
		templates.setSuffix(".html");
		templates.setCharacterEncoding("UTF-8");
		SpringTemplateEngine engine = new SpringTemplateEngine();
		engine.setTemplateResolver(templates);
		GenericWebApplicationContext context = new GenericWebApplicationContext(new MockServletContext());
		context.refresh();
		ThymeleafViewResolver views = new ThymeleafViewResolver();
		views.setTemplateEngine(engine);
		views.setCharacterEncoding("UTF-8");
		views.setApplicationContext(context);
		views.setServletContext(context.getServletContext());
		return views;
	}

	private static void preview(String name, Document page) {
		try {
			Path folder = Files.createDirectories(Path.of("target", "preview"));
			Files.copy(Path.of("src/main/resources/static/css/leafward.css"), folder.resolve("leafward.css"),
					StandardCopyOption.REPLACE_EXISTING);
			page.select("link[rel=stylesheet]").attr("href", "leafward.css");
			page.outputSettings().prettyPrint(false);
			Files.writeString(folder.resolve(name.replace('/', '-') + ".html"), page.outerHtml());
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

}
