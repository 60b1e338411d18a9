package org.leafward.counties.web;

import java.io.ByteArrayInputStream;
import java.net.URI;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.zip.GZIPInputStream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.leafward.accounts.People;
import org.leafward.accounts.PersonId;
import org.leafward.counties.CountyCalendars;
import org.leafward.counties.ModelGardens;
import org.leafward.feeds.ical.FeedReading;
import org.leafward.feeds.ical.IcsLinter;
import org.leafward.plants.Catalogue;
import org.leafward.quick.core.PlantedWhen;
import org.leafward.regions.County;
import org.leafward.regions.Regions;
import org.leafward.register.Planting;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.leafward.support.PublicDemoServer;
import org.leafward.support.Wire;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.jdbc.core.simple.JdbcClient;

import static org.assertj.core.api.Assertions.assertThat;
import static org.leafward.support.Wire.header;

/** The calendars of the invented region's counties, as anybody meets them. */
@PublicDemoServer
class CountyCalendarsTests {

	private static final String ALDER = "/c/us-ia-alder-county/";

	@LocalServerPort
	private int port;

	@Autowired
	private Regions regions;

	@Autowired
	private Register register;

	@Autowired
	private People people;

	@Autowired
	private Catalogue catalogue;

	@Autowired
	private ModelGardens gardens;

	@Autowired
	private CountyCalendars calendars;

	@Autowired
	private JdbcClient database;

	@Test
	void everyCalendarOfOneKindIsAtHandAndSound() throws Exception {
		this.calendars.rebuildStale(Duration.ofMinutes(2));
		int entries = 0;
		for (County county : this.regions.counties()) {
			for (String kind : this.calendars.codes()) {
				byte[] octets = send("GET", "/c/" + county.code() + "/" + kind + "/tasks.ics").body();
				assertThat(IcsLinter.problems(octets)).as(county.code() + " " + kind).isEmpty();
				List<FeedReading.Seen> seen = FeedReading.read(octets);
				assertThat(seen).extracting(FeedReading.Seen::uid).doesNotHaveDuplicates();
				entries += seen.size();
			}
		}
		assertThat(this.regions.counties()).hasSize(3);
		assertThat(entries).isGreaterThan(1000);
		assertThat(
				this.database.sql("select count(*) from counties.calendar where usual").query(Integer.class).single())
			.isEqualTo(3 * this.calendars.codes().size());
	}

	@Test
	void severalKindsInSpanishFitInADocument() throws Exception {
		byte[] octets = send("GET", ALDER + "vegetables+annuals+conifers+shade-trees/es-metric/tasks.ics").body();
		assertThat(IcsLinter.problems(octets)).isEmpty();
		String text = new String(octets, StandardCharsets.UTF_8).replace("\r\n ", "");
		assertThat(text).contains("NAME:Cuidado de plantas: Hortalizas", "Sitio: Alder County")
			.containsPattern(" y \\d+ más");
		assertThat(text).doesNotContain(" in)").doesNotContain("/tasks/");
		assertThat(octets.length).isLessThan(900_000);
		// The last day ahead is reached, so nothing was cut for want of room.
		LocalDate last = FeedReading.read(octets).stream().map(FeedReading.Seen::from).max(LocalDate::compareTo).get();
		assertThat(last).isAfter(LocalDate.now().plusDays(330));
	}

	@Test
	void answersAsSharedCachesWantIt() throws Exception {
		String path = ALDER + "roses/tasks.ics";
		HttpResponse<byte[]> plain = send("GET", path);
		assertThat(plain.statusCode()).isEqualTo(200);
		assertThat(header(plain, "content-type")).isEqualToIgnoringWhitespace("text/calendar;charset=utf-8");
		assertThat(plain.headers().allValues("cache-control")).containsExactly("public, max-age=3600");
		assertThat(plain.headers().allValues("vary")).containsExactly("Accept-Encoding");
		assertThat(header(plain, "x-robots-tag")).isEqualTo("noindex, nofollow");
		assertThat(plain.headers().map()).doesNotContainKeys("set-cookie", "location", "pragma", "expires");
		HttpResponse<byte[]> packed = send("GET", path, "Accept-Encoding", "gzip");
		assertThat(header(packed, "etag")).isEqualTo("W/" + header(plain, "etag"));
		assertThat(new GZIPInputStream(new ByteArrayInputStream(packed.body())).readAllBytes()).isEqualTo(plain.body());
		HttpResponse<byte[]> headed = send("HEAD", path);
		assertThat(headed.body()).isEmpty();
		assertThat(header(headed, "content-length")).isEqualTo(Integer.toString(plain.body().length));
		for (String tag : List.of(header(plain, "etag"), header(packed, "etag"), "\"x\", " + header(plain, "etag"),
				"*")) {
			assertThat(send("GET", path, "If-None-Match", tag).statusCode()).as(tag).isEqualTo(304);
		}
		assertThat(send("GET", path, "If-Modified-Since", header(plain, "last-modified")).statusCode()).isEqualTo(304);
		assertThat(send("GET", path, "If-None-Match", "\"x\"", "If-Modified-Since", header(plain, "last-modified"))
			.statusCode()).isEqualTo(200);
	}

	@ParameterizedTest
	@ValueSource(strings = { "OPTIONS", "PROPFIND", "POST", "PUT", "DELETE", "REPORT" })
	void otherMethodsAreNotAllowed(String method) {
		HttpResponse<byte[]> response = send(method, ALDER + "roses/tasks.ics");
		assertThat(response.statusCode()).isEqualTo(405);
		assertThat(header(response, "allow")).isEqualTo("GET, HEAD");
	}

	@ParameterizedTest
	@CsvSource(quoteCharacter = '"', value = {
			"us-ia-alder-county/roses+bulbs/tasks.ics, at https://plants.example.org/c/us-ia-alder-county/bulbs+roses/tasks.ics only",
			"us-ia-alder-county/roses/en-both/tasks.ics, at https://plants.example.org/c/us-ia-alder-county/roses/tasks.ics only",
			"us-ia-alder-county/ROSES/tasks.ics, at https://plants.example.org/c/us-ia-alder-county/roses/tasks.ics only",
			"us-ia-alder-county/roses/ES-us/tasks.ics, at https://plants.example.org/c/us-ia-alder-county/roses/es-us/tasks.ics only",
			"us-ia-alder-county/tulips/tasks.ics, kind 'tulips'", "nowhere/roses/tasks.ics, no county 'nowhere'",
			"us-ia-alder-county/roses/fr-us/tasks.ics, 'fr' is no language" })
	void whatIsNoAddressIsToldInWordsAndNotSentElsewhere(String path, String words) {
		HttpResponse<byte[]> response = send("GET", "/c/" + path);
		assertThat(response.statusCode()).isEqualTo(404);
		assertThat(header(response, "content-type")).startsWith("text/plain");
		assertThat(header(response, "cache-control")).isEqualTo("no-store");
		assertThat(new String(response.body(), StandardCharsets.UTF_8)).contains(words, "https://plants.example.org/c");
		assertThat(response.headers().map()).doesNotContainKeys("set-cookie", "location");
	}

	@Test
	void aChangeOfTheGardenReachesTheCalendarAndOnlyWhatChangedIsRevised() throws Exception {
		String path = "/c/us-ia-sable-county/hydrangeas/tasks.ics";
		byte[] before = send("GET", path).body();
		Planting one = this.register.plantingsOf(garden("Sable County").id())
			.stream()
			.filter((each) -> each.species().value().equals("hydrangea-macrophylla"))
			.findFirst()
			.orElseThrow();
		this.register.removePlanting(one.id());
		assertThat(this.calendars.rebuildStale(Duration.ofMinutes(2))).isPositive();
		byte[] after = send("GET", path).body();
		assertThat(names(before)).contains("bigleaf hydrangea");
		assertThat(names(after)).doesNotContain("bigleaf hydrangea").contains("hydrangea");
		assertThat(IcsLinter.problems(after)).isEmpty();
		Set<String> kept = uids(after);
		kept.retainAll(uids(before));
		assertThat(kept).as("entries that other hydrangeas share stay themselves").isNotEmpty();
		this.database.sql("update counties.garden set tended_on = tended_on - 1 where county = 'us-ia-sable-county'")
			.update();
		assertThat(this.gardens.tend()).isEqualTo(1);
		this.calendars.rebuildStale(Duration.ofMinutes(2));
		assertThat(names(send("GET", path).body())).as("the garden is looked after").contains("bigleaf hydrangea");
	}

	@Test
	void eachCountyHasOneGardenWithWhatIsGrownThereAndNobodySeesIt() {
		assertThat(this.gardens.tend()).as("tended already").isZero();
		List<Site> own = this.register.sitesOf(PersonId.SERVER);
		assertThat(own).extracting(Site::county)
			.containsExactlyInAnyOrder("Alder County", "Merrow County", "Sable County");
		for (Site site : own) {
			List<Planting> plantings = this.register.plantingsOf(site.id());
			assertThat(plantings).extracting(Planting::species).doesNotHaveDuplicates();
			Set<String> species = new HashSet<>(plantings.stream().map((one) -> one.species().value()).toList());
			assertThat(this.catalogue.all().stream().filter(PlantedWhen::lastsASeason))
				.allSatisfy((one) -> assertThat(species).contains(one.id().value()));
			// Hardy from zone 7 on; these counties lie in 4 to 6.
			assertThat(species).contains("quercus-rubra", "ficus-benjamina").doesNotContain("lagerstroemia-indica");
		}
		assertThat(this.register.sites(0, 100)).extracting(Site::owner).doesNotContain(PersonId.SERVER);
		assertThat(this.register.sitesIn(Set.of("Alder County"), 0, 100)).isNotEmpty()
			.extracting(Site::owner)
			.doesNotContain(PersonId.SERVER);
		assertThat(this.people.list(0, 200)).isNotEmpty().noneMatch((one) -> one.id().equals(PersonId.SERVER));
		assertThat(this.people.find(PersonId.SERVER).orElseThrow().mailbox()).isEmpty();
	}

	@Test
	void thePageLeadsFromACountyToAnAddressThatAnswers() {
		Document counties = page("/county-calendars");
		assertThat(counties.select("main a[href*=county]").eachText()).contains("Alder County");
		Document county = page(counties.select("main a:contains(Alder County)").attr("href"));
		assertThat(county.text()).contains("above sea level, from the records of Ferrow Mill", "For average ground");
		assertThat(county.select("input[type=checkbox]")).hasSameSizeAs(this.calendars.codes());
		assertThat(county.select("script, [style]")).isEmpty();
		Document shown = page(
				"/county-calendars?county=us-ia-alder-county&kind=roses&kind=bulbs&language=es&system=us");
		String address = shown.select("#address").text();
		assertThat(address).isEqualTo("https://plants.example.org" + ALDER + "bulbs+roses/es-us/tasks.ics");
		assertThat(shown.select("a.button").attr("href")).isEqualTo(address.replace("https:", "webcal:"));
		assertThat(shown.select("svg.qr")).hasSize(1);
		assertThat(shown.select("ul#coming[lang=es] li")).hasSize(3);
		assertThat(shown.select("input[checked]").eachAttr("value")).containsExactlyInAnyOrder("bulbs", "roses");
		assertThat(send("GET", URI.create(address).getPath()).statusCode()).isEqualTo(200);
	}

	@ParameterizedTest
	@CsvSource(quoteCharacter = '"',
			value = { "county=nowhere, no county 'nowhere'", "county=us-ia-alder-county&go=show, no kind of plants",
					"county=us-ia-alder-county&kind=tulips, the kind 'tulips'",
					"county=us-ia-alder-county&kind=roses&language=fr, 'fr' is no language" })
	void thePageTellsWhatIsWrong(String query, String words) {
		HttpResponse<byte[]> response = send("GET", "/county-calendars?" + query);
		assertThat(response.statusCode()).isEqualTo(400);
		assertThat(Jsoup.parse(new String(response.body(), StandardCharsets.UTF_8)).select("[role=alert]").text())
			.contains(words);
	}

	private Site garden(String county) {
		return this.register.sitesOf(PersonId.SERVER)
			.stream()
			.filter((one) -> one.county().equals(county))
			.findFirst()
			.orElseThrow();
	}

	private static String names(byte[] octets) {
		return new String(octets, StandardCharsets.UTF_8).replace("\r\n ", "");
	}

	private static Set<String> uids(byte[] octets) {
		return new HashSet<>(FeedReading.read(octets).stream().map(FeedReading.Seen::uid).toList());
	}

	private Document page(String path) {
		HttpResponse<byte[]> response = send("GET", path);
		assertThat(response.statusCode()).as(path).isEqualTo(200);
		return Jsoup.parse(new String(response.body(), StandardCharsets.UTF_8));
	}

	private HttpResponse<byte[]> send(String method, String path, String... headers) {
		return Wire.send(this.port, method, path, headers);
	}

}
