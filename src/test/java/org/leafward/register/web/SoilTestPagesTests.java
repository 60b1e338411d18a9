package org.leafward.register.web;

import jakarta.servlet.http.Cookie;
import java.time.Instant;
import java.time.LocalDate;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.leafward.feeds.FeedOptions;
import org.leafward.feeds.Feeds;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.leafward.support.DemoServer;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.delete;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

/** Soil tests over HTTP, with the invented region behind them. */
@DemoServer
class SoilTestPagesTests {

	private static final String TOKEN = DemoServer.TOKEN;

	@Autowired
	private MockMvc web;

	@Autowired
	private Register register;

	@Autowired
	private Feeds feeds;

	private Site site(String name) {
		return this.register.sites(0, 200).stream().filter((one) -> one.name().equals(name)).findFirst().orElseThrow();
	}

	@Test
	void theFeedOfASodicBedHasTheGypsumWithItsAmount() throws Exception {
		Site site = site("Quill Harbor promenade");
		assertThat(ask(get("/sites/" + site.id() + "/soil-tests").cookie(session(site)), 200)).contains("SAR 40",
				"wintercreeper at the steps", "the steps are salted all winter");
		int season = LocalDate.ofInstant(Instant.now(), site.zone()).minusDays(16).getYear();
		String tasks = authorized(get("/api/v1/sites/" + site.id() + "/tasks?season=" + season), 200);
		assertThat(tasks).contains("soil/spread-gypsum");
		String token = this.feeds.createForSite(site.id(), site.owner(), FeedOptions.USUAL).token();
		String feed = ask(get("/f/" + token + "/tasks.ics"), 200).replace("\r\n ", "");
		assertThat(feed).containsPattern("About [0-9.]+ kg \\([0-9.]+ lb\\) of gypsum.*of 2");
	}

	@Test
	void aTestIsKeptShownAndTakenBack() throws Exception {
		Site site = site("Millrace Park");
		Cookie session = session(site);
		String address = "/sites/" + site.id() + "/soil-tests";
		assertThat(Jsoup.parse(ask(get("/sites/" + site.id()).cookie(session), 200)).select("a[href$=/soil-tests]"))
			.hasSize(1);
		Document wrong = Jsoup.parse(ask(post(address).with(csrf())
			.cookie(session)
			.param("day", "soon")
			.param("ec", "lots")
			.param("note", "kept"), 400));
		assertThat(wrong.select("[role=alert] a").eachAttr("href")).containsExactlyInAnyOrder("#day", "#ph", "#ec",
				"#sar");
		assertThat(wrong.getElementById("note").val()).isEqualTo("kept");
		String day = LocalDate.ofInstant(Instant.now(), site.zone()).minusDays(9).toString();
		ask(post(address).with(csrf())
			.cookie(session)
			.param("day", day)
			.param("ph", "8,9")
			.param("ec", "2.1")
			.param("sar", "24")
			.param("cec", "18"), 302);
		Document page = Jsoup.parse(ask(get(address).cookie(session), 200));
		assertThat(page.select("ul.pick li").text()).contains("pH 8.9, 2.1 dS/m in a saturated paste, SAR 24",
				"CEC 18 meq/100 g", "the whole site", "entered by " + "Tobias Wren");
		String undo = page.selectFirst("form[action$=/undo]").attr("action");
		Site others = site("Farrow house");
		ask(get(address).cookie(session(others)), 404);
		ask(post(undo).with(csrf()).cookie(session(others)), 404);
		ask(post(undo).with(csrf()).cookie(session), 302);
		assertThat(ask(get(address).cookie(session), 200)).contains("No soil test is kept here yet.");
	}

	@Test
	void testsComeAndGoByApi() throws Exception {
		String address = "/api/v1/sites/" + site("Tamsin Library garden").id() + "/soil-tests";
		String day = LocalDate.ofInstant(Instant.now(), site("Tamsin Library garden").zone()).minusDays(3).toString();
		JsonNode kept = JsonMapper.shared()
			.readTree(authorized(post(address).contentType("application/json")
				.content("{\"day\":\"%s\",\"ph\":8.9,\"ec\":1.2,\"extract\":\"one-to-two\",\"esp\":20}".formatted(day)),
					201));
		assertThat(kept.get("extract").asString()).isEqualTo("one-to-two");
		assertThat(kept.get("depth").asDouble()).isEqualTo(15);
		assertThat(kept.get("sar").isNull()).isTrue();
		assertThat(JsonMapper.shared().readTree(authorized(get(address + "?size=1"), 200)).get(0)).isEqualTo(kept);
		assertThat(JsonMapper.shared()
			.readTree(authorized(post(address).contentType("application/json").content("{\"day\":\"soon\"}"), 400))
			.get("problems")).hasSize(4);
		assertThat(authorized(get(address + "?size=1000"), 400)).contains("\"mend\":");
		authorized(delete(address + "/" + kept.get("id").asString()), 204);
		authorized(delete(address + "/" + kept.get("id").asString()), 404);
		ask(get(address), 401);
	}

	private Cookie session(Site site) throws Exception {
		return this.web.perform(post("/people/" + site.owner().value()).with(csrf()))
			.andReturn()
			.getResponse()
			.getCookie("SESSION");
	}

	private String authorized(MockHttpServletRequestBuilder request, int status) throws Exception {
		return ask(request.header("Authorization", "Bearer " + TOKEN), status);
	}

	private String ask(MockHttpServletRequestBuilder request, int status) throws Exception {
		MockHttpServletResponse response = this.web.perform(request).andReturn().getResponse();
		assertThat(response.getStatus()).as(response.getContentAsString()).isEqualTo(status);
		return response.getContentAsString();
	}

}
