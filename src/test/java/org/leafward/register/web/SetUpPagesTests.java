package org.leafward.register.web;

import jakarta.servlet.http.Cookie;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.leafward.climate.Microclimate;
import org.leafward.regions.RegionMap;
import org.leafward.regions.Regions;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.leafward.register.SiteFeature;
import org.leafward.register.SoilTexture;
import org.leafward.register.Wind;
import org.leafward.support.DemoServer;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

/** The steps to a site, and the site moved, over HTTP with the invented region behind. */
@DemoServer
class SetUpPagesTests {

	private static final String NEW = "/sites/new";

	@Autowired
	private MockMvc web;

	@Autowired
	private Register register;

	@Autowired
	private Regions regions;

	@Test
	void threeStepsWithoutACoordinateMakeASite() throws Exception {
		Cookie session = session("Farrow house");
		Document where = page(get(NEW).cookie(session), 200);
		String code = where.select("#county option")
			.stream()
			.filter((one) -> one.text().equals("Alder County"))
			.findFirst()
			.orElseThrow()
			.val();
		assertThat(where.select("input[type=image]")).hasSize(3);
		assertThat(where.select("[name=zone]")).as("the county tells it").isEmpty();
		Document like = page(send(session).param("go", "county").param("county", code), 200);
		assertThat(like.getElementById("elevation").val()).as("filled in from the county").isEqualTo("225");
		assertThat(like.select("input[type=hidden][name=zone]").val()).isEqualTo("America/Chicago");
		assertThat(like.select("input[type=hidden][name=region]").val()).isEqualTo("US-IA");
		Document all = page(filled(session, like, NEW, "go", "all", "name", "Orchard Lane", "elevation", "750", "unit",
				"ft", "lie", "hollow", "nearWall", "true", "wind", "sheltered", "soil", "feel", "ball", "yes", "ribbon",
				"medium", "rubbed", "gritty", "irrigation", "true", "bucket", "10 l", "seconds", "30"), 200);
		assertThat(all.getElementById("elevationMetres").val()).as("750 ft of 0.3048 m").isEqualTo("228.6");
		assertThat(all.select("#soil option[selected]").val()).as("sandy clay loam counts as").isEqualTo("clay-loam");
		assertThat(all.getElementById("flow").val()).isEqualTo("20");
		Document back = page(filled(session, all, NEW, "go", "back-to-like"), 200);
		assertThat(back.getElementById("name").val()).isEqualTo("Orchard Lane");
		assertThat(back.getElementById("elevation").val()).isEqualTo("228.6");
		assertThat(back.select("#ball option[selected]").val()).as("nothing is lost").isEqualTo("yes");
		assertThat(back.select("#soil option[selected]").val()).as("another answer would count").isEqualTo("feel");
		assertThat(back.getElementById("flow").val()).isEmpty();
		assertThat(back.getElementById("nearWall").hasAttr("checked")).isTrue();
		Document place = page(filled(session, all, NEW, "go", "back-to-place"), 200);
		assertThat(place.select("#county option[selected]").text()).isEqualTo("Alder County");
		assertThat(place.select("input[type=hidden][name=name]").val()).isEqualTo("Orchard Lane");
		MockHttpServletResponse added = this.web.perform(filled(session, all, NEW)).andReturn().getResponse();
		assertThat(added.getStatus()).isEqualTo(302);
		Site site = site("Orchard Lane");
		assertThat(added.getRedirectedUrl()).isEqualTo("/sites/" + site.id());
		assertThat(site.county()).isEqualTo("Alder County");
		assertThat(site.region()).isEqualTo("US-IA");
		assertThat(site.zone().getId()).isEqualTo("America/Chicago");
		assertThat(site.point().elevationMetres()).isEqualTo(228.6);
		assertThat(site.soil()).isEqualTo(SoilTexture.CLAY_LOAM);
		assertThat(site.wind()).isEqualTo(Wind.SHELTERED);
		assertThat(site.features()).containsExactly(SiteFeature.IRRIGATION);
		assertThat(site.litresPerMinute()).isEqualTo(20);
		assertThat(site.microclimate()).isEqualTo(new Microclimate(Microclimate.Lie.HOLLOW, true, false, null));
		assertThat(site.owner()).isEqualTo(site("Farrow house").owner());
	}

	@Test
	void aClickOnTheMapIsThePlaceOfANewSite() throws Exception {
		Cookie session = session("Farrow house");
		Document like = page(click(send(session)), 200);
		assertThat(like.select(".lead").text()).contains("Merrow County");
		assertThat(like.getElementById("elevation").val()).isEqualTo("365");
		assertThat(Double.parseDouble(like.select("input[name=latitude]").val())).isCloseTo(42.27, within(0.01));
		Document key = page(send(session).param("map344.x", "0").param("map344.y", "0"), 400);
		assertThat(key.select("[role=alert] a[href=#county]").text()).contains("no place on the map");
	}

	@Test
	void whatCantBeUsedIsToldInItsStepAndNothingIsLost() throws Exception {
		Cookie session = session("Farrow house");
		Document where = page(send(session).param("go", "coordinates")
			.param("latitude", "142.1")
			.param("longitude", "-91.6")
			.param("name", "Kept"), 400);
		assertThat(where.getElementById("latitude").attr("aria-invalid")).isEqualTo("true");
		assertThat(where.getElementById("longitude").val()).isEqualTo("-91.6");
		assertThat(where.select("input[type=hidden][name=name]").get(0).val()).isEqualTo("Kept");
		assertThat(page(send(session).param("go", "county"), 400).select("[role=alert]").text())
			.contains("no place is chosen yet");
		Document like = page(
				send(session).param("go", "coordinates").param("latitude", "42.08").param("longitude", "-91.58"), 200);
		Document refused = page(filled(session, like, NEW, "go", "all", "elevation", "9999", "soil", "feel", "ball",
				"yes", "ribbon", "short", "bucket", "10 l"), 400);
		assertThat(refused.select("[role=alert] a").eachAttr("href")).containsExactlyInAnyOrder("#name", "#elevation",
				"#rubbed", "#seconds");
		assertThat(refused.select("#elevation-error").text()).contains("8850");
		assertThat(refused.select("#ribbon option[selected]").val()).isEqualTo("short");
		assertThat(refused.getElementById("bucket").val()).isEqualTo("10 l");
		Document tried = page(filled(session, like, NEW, "go", "try", "ball", "yes", "ribbon", "short", "rubbed",
				"smooth", "bucket", "3 gal", "seconds", "60"), 200);
		assertThat(tried.select("[role=status]").eachText()).containsExactly("By feel it is silt loam.",
				"Your hose gives 11.4 l/min (3.0 gal/min).");
		Document unknown = page(filled(session, like, NEW, "go", "all", "name", "Plain"), 200);
		assertThat(unknown.select("#soil option[selected]").val()).as("nobody knows").isEqualTo("loam");
		assertThat(page(send(session), 400).getElementById("name").attr("aria-invalid")).isEqualTo("true");
		assertThat(page(get(NEW + "?step=all").cookie(session), 200).getElementById("measuredOffsetCelsius"))
			.isNotNull();
	}

	@Test
	void aSiteIsMovedOnTheMapAndItsSoilFelt() throws Exception {
		Cookie session = session("Farrow house");
		Site before = add(session, "To be moved");
		String address = "/sites/" + before.id() + "/place";
		Document form = page(get(address).cookie(session), 200);
		assertThat(form.select("#soil option[selected]").val()).isEqualTo("loam");
		Document moved = page(click(filled(session, form, address)), 200);
		assertThat(moved.select("[role=status]").text()).contains("Merrow County", "365 m");
		assertThat(moved.getElementById("county").val()).isEqualTo("Merrow County");
		assertThat(this.register.require(before.id())).as("not before it is saved").isEqualTo(before);
		assertThat(page(filled(session, form, address, "go", "county", "moveTo", "us-xx-nowhere"), 400)
			.select("#moveTo-error")
			.text()).contains("there is no county");
		assertThat(page(filled(session, moved, address, "soil", "feel", "ball", "yes"), 400).select("[role=alert] a")
			.eachAttr("href")).containsExactlyInAnyOrder("#ribbon", "#rubbed");
		assertThat(this.web
			.perform(filled(session, moved, address, "soil", "feel", "ball", "no", "flow", "", "bucket", "12",
					"seconds", "60"))
			.andReturn()
			.getResponse()
			.getStatus()).isEqualTo(302);
		Site after = this.register.require(before.id());
		assertThat(after.county()).isEqualTo("Merrow County");
		assertThat(after.point().latitude()).isCloseTo(42.27, within(0.01));
		assertThat(after.point().elevationMetres()).isEqualTo(365);
		assertThat(after.soil()).isEqualTo(SoilTexture.SAND);
		assertThat(after.litresPerMinute()).isEqualTo(12);
		assertThat(after.name()).isEqualTo(before.name());
	}

	private Site add(Cookie session, String name) throws Exception {
		this.web
			.perform(send(session).param("name", name)
				.param("county", "Alder County")
				.param("latitude", "42.08")
				.param("longitude", "-91.58")
				.param("elevationMetres", "231")
				.param("zone", "America/Chicago"))
			.andReturn();
		return site(name);
	}

	private Site site(String name) {
		return this.register.sites(0, 200).stream().filter((one) -> one.name().equals(name)).findFirst().orElseThrow();
	}

	private MockHttpServletRequestBuilder send(Cookie session) {
		return post(NEW).with(csrf()).cookie(session);
	}

	private MockHttpServletRequestBuilder click(MockHttpServletRequestBuilder request) {
		RegionMap map = this.regions.map(344).orElseThrow();
		return request.param("map344.x", "" + (int) map.projection().x(-91.43))
			.param("map344.y", "" + (int) map.projection().y(42.27));
	}

	/** What a browser sends of a page with one form, with what somebody types there. */
	private static MockHttpServletRequestBuilder filled(Cookie session, Document page, String address,
			String... typed) {
		Map<String, String> sent = new LinkedHashMap<>();
		for (Element input : page.select("main form input[name], main form select[name]")) {
			boolean off = input.attr("type").equals("checkbox") && !input.hasAttr("checked");
			Element chosen = input.selectFirst("option[selected]");
			String value = input.tagName().equals("select")
					? ((chosen != null) ? chosen.val() : input.select("option").get(0).val()) : input.val();
			if (!off && !input.attr("type").equals("image") && !input.attr("name").equals("_csrf")) {
				sent.put(input.attr("name"), value);
			}
		}
		for (int i = 0; i < typed.length; i += 2) {
			sent.put(typed[i], typed[i + 1]);
		}
		MockHttpServletRequestBuilder request = post(address).with(csrf()).cookie(session);
		sent.forEach(request::param);
		return request;
	}

	private Cookie session(String site) throws Exception {
		return this.web.perform(post("/people/" + site(site).owner().value()).with(csrf()))
			.andReturn()
			.getResponse()
			.getCookie("SESSION");
	}

	private Document page(MockHttpServletRequestBuilder request, int status) throws Exception {
		MockHttpServletResponse response = this.web.perform(request).andReturn().getResponse();
		assertThat(response.getStatus()).as(response.getContentAsString()).isEqualTo(status);
		return Jsoup.parse(response.getContentAsString());
	}

}
