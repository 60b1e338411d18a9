package org.leafward.quick.web;

import java.time.Duration;
import java.net.URI;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.leafward.accounts.People;
import org.leafward.accounts.Secret;
import org.leafward.feeds.FeedExpiry;
import org.leafward.feeds.ical.FeedReading;
import org.leafward.register.Planting;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.leafward.register.SiteId;
import org.leafward.regions.RegionMap;
import org.leafward.regions.Regions;
import org.leafward.support.PublicDemoServer;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.assertj.core.api.Assertions.within;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

/** The steps over HTTP, by a stranger, with all that can go wrong. */
@PublicDemoServer
class QuickPagesTests {

	@Autowired
	private MockMvc web;

	@Autowired
	private Register register;

	@Autowired
	private Regions regions;

	@Autowired
	private JdbcClient database;

	@Autowired
	private People people;

	@Autowired
	private FeedExpiry expiry;

	@Test
	void aClickOnTheMapIsAPlace() throws Exception {
		RegionMap map = this.regions.map(344).orElseThrow();
		int x = (int) map.projection().x(-91.43);
		int y = (int) map.projection().y(42.27);
		Document page = ok(step().param("map344.x", "" + x).param("map344.y", "" + y));
		assertThat(page.text()).contains("Merrow County", "365 m");
		assertThat(Double.parseDouble(page.select("input[name=latitude]").val())).isCloseTo(42.27, within(0.01));
		Document key = refused(step().param("map344.x", "0").param("map344.y", "0"));
		assertThat(key.select("[role=alert]").text()).contains("no place on the map", "choose its county");
		refused(step().param("map344.x", "abc").param("map344.y", "1"));
		refused(step().param("map344.x", "99999999999").param("map344.y", "1"));
	}

	@Test
	void placesThatCantBeUsedAreToldByField() throws Exception {
		Document page = refused(step().param("go", "coordinates")
			.param("latitude", "142,1")
			.param("longitude", "east")
			.param("elevation", "high")
			.param("species", "acer-rubrum"));
		assertThat(page.select("[role=alert] a[href=#longitude]").text()).contains("'east' is not a number");
		assertThat(page.select("[role=alert] a[href=#elevation]")).hasSize(1);
		assertThat(page.getElementById("latitude").val()).isEqualTo("142,1");
		assertThat(page.select("input[type=hidden][name=species]").val()).as("nothing is lost")
			.isEqualTo("acer-rubrum");
		assertThat(refused(step().param("go", "coordinates").param("latitude", "142.1").param("longitude", "1")).text())
			.contains("142.1 is outside -90");
		assertThat(refused(step().param("go", "county").param("county", "")).text()).contains("no place is chosen yet");
		assertThat(refused(step().param("go", "county").param("county", "us-xx-nowhere")).text())
			.contains("there is no county 'us-xx-nowhere'");
		assertThat(refused(step().param("go", "coordinates")
			.param("latitude", "42")
			.param("longitude", "-91.6")
			.param("elevation", "99999")).select("#elevation-error").text()).contains("8850");
	}

	@Test
	void outsideOfAllCountiesItWorksByCoordinates() throws Exception {
		// Between the stations, but east of the map.
		Document near = ok(place("42.10", "-90.60"));
		assertThat(near.text()).contains("outside of our counties", "186 m");
		Document made = ok(make("42.10", "-90.60").param("species", "syringa-vulgaris"));
		assertThat(site(made).county()).isEmpty();
		assertThat(site(made).zone().getId()).isEqualTo("America/Chicago");
		assertThat(made.select("ul.tasks li")).isNotEmpty();
		assertThat(refused(place("-33.9", "151.2")).select("#elevation-error").text()).contains("give the height");
		Document far = ok(place("-33.9", "151.2").param("elevation", "130").param("unit", "ft"));
		assertThat(far.select(".caution").text()).contains("No weather station is near");
		assertThat(far.text()).contains("40 m (130 ft)");
	}

	@Test
	void plantsAreFoundAddedAndTakenOff() throws Exception {
		Document page = ok(search("tomatos, hydrangea, xyzzy").param("species", "acer-rubrum", "no-such-plant"));
		assertThat(page.select(".planted li strong").eachText()).containsExactly("red maple", "tomato");
		assertThat(page.select("fieldset legend").eachText()).containsExactly("We don’t know “xyzzy”.",
				"Which “hydrangea”?");
		assertThat(page.select("[role=status]").text()).contains("no-such-plant");
		Document less = ok(search("").param("species", "solanum-lycopersicum"));
		assertThat(less.select(".planted li strong").eachText()).containsExactly("tomato");
		assertThat(less.select("details.drawer input[value=acer-rubrum]")).as("back in its drawer").hasSize(1);
	}

	@Test
	void hostileTextIsToldAndHarmsNothing() throws Exception {
		Document page = refused(search("rose ".repeat(2048)).param("species", "acer-rubrum"));
		assertThat(page.select("#search-error").text()).contains("10,240 characters");
		assertThat(page.getElementById("search").val()).hasSize(300);
		assertThat(page.select(".planted li")).hasSize(1);
		Document script = ok(search("<script>alert(1)</script>"));
		assertThat(script.select("main script")).isEmpty();
		assertThat(script.select("legend").text()).contains("<script>alert(1)</script>");
		assertThat(refused(make("42.08", "-91.58").param("species", "acer-rubrum").param("name", "a\u202eb")).text())
			.contains("control character");
		assertThat(refused(make("42.08", "-91.58").param("species", "acer-rubrum").param("sun", "moon")).text())
			.contains("'moon' is unknown");
		assertThat(refused(make("42.08", "-91.58").param("species", "no-such-plant")).text())
			.contains("no plant is on your list yet");
	}

	@Test
	void aThousandPlantsAreTooMany() throws Exception {
		List<String> ids = ok(search("")).select("details.drawer input").eachAttr("value");
		assertThat(ids).hasSizeGreaterThan(280);
		long before = calendars();
		MockHttpServletRequestBuilder many = make("42.08", "-91.58");
		for (int i = 0; i < 1000; i++) {
			many.param("species", ids.get(i % ids.size()));
		}
		Document page = refused(many);
		assertThat(page.select("#search-error").text()).contains("plants are on your list: keep up to 40");
		assertThat(page.select(".planted li")).as("nothing is lost").hasSize(ids.size());
		assertThat(calendars()).isEqualTo(before);
	}

	@Test
	void theCalendarIsThereWithItsTasksWhenItsAddressIsShown() throws Exception {
		MockHttpServletResponse response = perform(make("42.08", "-91.58").param("species", "acer-rubrum")
			.param("species", "ficus-benjamina")
			.param("species", "solanum-lycopersicum")
			.param("young", "acer-rubrum")
			.param("soil", "clay"));
		assertThat(response.getStatus()).isEqualTo(200);
		assertThat(response.getHeader("Cache-Control")).isEqualTo("no-store");
		assertThat(response.getHeader("Referrer-Policy")).isEqualTo("no-referrer");
		Document page = Jsoup.parse(response.getContentAsString());
		URI address = URI.create(page.getElementById("address").text());
		assertThat(address.toString()).matches("https://plants\\.example\\.org/f/[A-Za-z0-9_-]{32}/tasks\\.ics");
		assertThat(page.select("a[href^=webcal]").attr("href"))
			.isEqualTo(address.toString().replace("https", "webcal"));
		byte[] feed = this.web.perform(get(address.getPath())).andReturn().getResponse().getContentAsByteArray();
		assertThat(FeedReading.read(feed)).hasSizeGreaterThan(10)
			.noneMatch((entry) -> entry.summary().contains("Nothing planned"));
		Site site = site(page);
		assertThat(site.county()).isEqualTo("Alder County");
		assertThat(site.region()).isEqualTo("US-IA");
		assertThat(site.point().elevationMetres()).isEqualTo(225);
		assertThat(site.soil().words()).isEqualTo("clay");
		assertThat(this.register.plantingsOf(site.id())).extracting(Planting::label)
			.containsExactlyInAnyOrder("red maple", "tomato", "weeping fig");
		assertThat(this.register.plantingsOf(site.id())).filteredOn(Planting::wintersIndoors)
			.extracting(Planting::label)
			.containsExactly("weeping fig");
	}

	@Test
	void itSpeaksTheLanguageAndUnitsThatWereChosen() throws Exception {
		Document found = ok(search("lila común, jitomate"));
		assertThat(found.select(".planted li strong").eachText()).containsExactlyInAnyOrder("common lilac", "tomato");
		Document page = ok(make("42.08", "-91.58").param("species", "syringa-vulgaris")
			.param("species", "solanum-lycopersicum")
			.param("language", "es")
			.param("system", "metric"));
		String feed = this.web.perform(get(URI.create(page.getElementById("address").text()).getPath()))
			.andReturn()
			.getResponse()
			.getContentAsString()
			.replace("\r\n ", "");
		assertThat(feed).contains("NAME:Cuidado de plantas: Jardín en Alder County", ": tomate", "Por qué: ", " °C")
			.doesNotContain("Why: ", " °F", " gal", "Amount");
		assertThat(refused(make("42.08", "-91.58").param("species", "acer-rubrum").param("language", "xx"))
			.select("#language-error")
			.text()).contains("no language that we have words in");
		assertThat(refused(make("42.08", "-91.58").param("species", "acer-rubrum").param("system", "cubits")).text())
			.contains("'cubits' are no units");
	}

	@Test
	void sentTwiceTheSecondTakesThePlaceOfTheFirst() throws Exception {
		String key = UUID.randomUUID().toString();
		Document first = ok(make("42.08", "-91.58").param("key", key).param("species", "acer-rubrum"));
		long calendars = calendars();
		Document second = ok(make("42.08", "-91.58").param("key", key).param("species", "syringa-vulgaris"));
		assertThat(calendars()).isEqualTo(calendars);
		assertThat(status(first)).isEqualTo(410);
		assertThat(status(second)).isEqualTo(200);
		Document third = ok(make("42.08", "-91.58").param("key", key).param("species", "acer-rubrum"));
		assertThat(status(second)).as("it was fetched, so somebody has it").isEqualTo(200);
		assertThat(status(third)).isEqualTo(200);
	}

	@Test
	void manyAtOnceDontBlockOneAnotherAndOneKeyMakesOneCalendar() throws Exception {
		long before = calendars();
		String key = UUID.randomUUID().toString();
		ExecutorService threads = Executors.newFixedThreadPool(12);
		try {
			List<Callable<Integer>> orders = new ArrayList<>();
			for (int i = 0; i < 12; i++) {
				String own = (i < 4) ? key : UUID.randomUUID().toString();
				orders.add(() -> perform(make("42.08", "-91.58").param("key", own).param("species", "acer-rubrum"))
					.getStatus());
			}
			for (Future<Integer> one : threads.invokeAll(orders, 60, TimeUnit.SECONDS)) {
				assertThat(one.get()).isEqualTo(200);
			}
		}
		finally {
			threads.shutdownNow();
		}
		assertThat(calendars()).isEqualTo(before + 9);
	}

	@Test
	void thePageThatManagesNeedsItsSecret() throws Exception {
		Document made = ok(make("42.08", "-91.58").param("species", "acer-rubrum"));
		String path = URI.create(made.select("#manage a").attr("href")).getPath();
		MockHttpServletResponse page = perform(get(path));
		assertThat(page.getStatus()).isEqualTo(200);
		assertThat(page.getHeader("Referrer-Policy")).isEqualTo("no-referrer");
		assertThat(page.getContentAsString()).contains("red maple", "was not fetched yet");
		assertThat(this.database.sql("select manage_hash::text from quick.calendar").query(String.class).list())
			.noneMatch((hash) -> hash.contains(path.substring(path.lastIndexOf('/') + 1)));
		assertThat(perform(get(path + "x")).getStatus()).isEqualTo(404);
		assertThat(perform(post(path + "x/delete").with(csrf())).getStatus()).isEqualTo(404);
		assertThat(perform(post(path + "/email").param("email", "nobody").with(csrf())).getContentAsString())
			.contains("not an e-mail address");
		assertThat(perform(post(path + "/email").param("email", "x".repeat(10_240)).with(csrf())).getStatus())
			.isEqualTo(400);
		assertThat(perform(post(path + "/email").param("email", "new@example.org").with(csrf())).getContentAsString())
			.contains("This server has no mail server");
		assertThat(perform(post(path + "/delete").with(csrf())).getStatus()).isEqualTo(200);
		assertThat(perform(get(path)).getStatus()).isEqualTo(404);
		assertThat(status(made)).isEqualTo(410);
	}

	@Test
	void whatEndsUnusedIsDeletedUnlessSomebodyCanSignInToIt() throws Exception {
		Document nobodys = ok(make("42.08", "-91.58").param("species", "acer-rubrum"));
		Document somebodys = ok(make("42.08", "-91.58").param("species", "acer-rubrum"));
		assertThat(this.people.giveAddress(site(somebodys).owner(), "finder@example.org")).isTrue();
		String manage = URI.create(somebodys.select("#manage a").attr("href")).getPath();
		for (Document made : List.of(nobodys, somebodys)) {
			this.database.sql("update feeds.feed set created_at = now() - interval '19 months' where what = ?")
				.param(site(made).id().value())
				.update();
		}
		SiteId gone = site(nobodys).id();
		SiteId kept = site(somebodys).id();
		long before = calendars();
		assertThat(this.expiry.expire()).isEqualTo(2);
		await().atMost(Duration.ofSeconds(20)).untilAsserted(() -> assertThat(calendars()).isEqualTo(before - 1));
		assertThat(status(nobodys)).isEqualTo(410);
		assertThat(status(somebodys)).isEqualTo(410);
		assertThat(this.register.find(gone)).isEmpty();
		assertThat(this.register.find(kept)).isPresent();
		Document page = Jsoup.parse(perform(get(manage)).getContentAsString());
		assertThat(page.select("main form")).as("the secret opens nothing any more").isEmpty();
		assertThat(page.text()).contains("Sign in to change it");
		assertThat(perform(post(manage + "/delete").with(csrf())).getStatus()).isEqualTo(404);
	}

	@Test
	void theMapStandsAloneWithItsColoursAndNothingFromElsewhere() throws Exception {
		MockHttpServletResponse map = perform(get("/regions/map.svg?width=344"));
		assertThat(map.getContentType()).startsWith("image/svg+xml");
		assertThat(map.getHeader("Content-Security-Policy")).startsWith("default-src 'none'; style-src 'sha256-");
		assertThat(map.getContentAsString()).contains("--paper").contains("Sable County").doesNotContain("url(");
		assertThat(perform(get("/regions/map.svg?width=9999")).getStatus()).isEqualTo(400);
	}

	private long calendars() {
		return this.database.sql("select count(*) from quick.calendar").query(Long.class).single();
	}

	private int status(Document made) throws Exception {
		return perform(get(URI.create(made.getElementById("address").text()).getPath())).getStatus();
	}

	private Site site(Document made) {
		String path = URI.create(made.select("#manage a").attr("href")).getPath();
		byte[] hash = Secret.hash(path.substring(path.lastIndexOf('/') + 1));
		UUID site = this.database.sql("select site from quick.calendar where manage_hash = ?")
			.param(hash)
			.query(UUID.class)
			.single();
		return this.register.require(new SiteId(site));
	}

	private static MockHttpServletRequestBuilder step() {
		return post("/quick").with(csrf());
	}

	private static MockHttpServletRequestBuilder place(String latitude, String longitude) {
		return step().param("go", "coordinates").param("latitude", latitude).param("longitude", longitude);
	}

	private static MockHttpServletRequestBuilder search(String text) {
		return step().param("go", "search")
			.param("latitude", "42.08")
			.param("longitude", "-91.58")
			.param("search", text);
	}

	private static MockHttpServletRequestBuilder make(String latitude, String longitude) {
		return post("/quick/calendar").with(csrf()).param("latitude", latitude).param("longitude", longitude);
	}

	private MockHttpServletResponse perform(MockHttpServletRequestBuilder request) throws Exception {
		return this.web.perform(request).andReturn().getResponse();
	}

	private Document ok(MockHttpServletRequestBuilder request) throws Exception {
		MockHttpServletResponse response = perform(request);
		assertThat(response.getStatus()).isEqualTo(200);
		return Jsoup.parse(response.getContentAsString());
	}

	private Document refused(MockHttpServletRequestBuilder request) throws Exception {
		MockHttpServletResponse response = perform(request);
		assertThat(response.getStatus()).isEqualTo(400);
		return Jsoup.parse(response.getContentAsString());
	}

}
