package org.leafward.care.web;

import jakarta.servlet.http.Cookie;
import java.time.Instant;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.leafward.climate.LocalClimate;
import org.leafward.climate.MinimumComparison;
import org.leafward.climate.MinimumReading;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.leafward.support.DemoServer;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

/** A thermometer over HTTP, with the invented region behind it. */
@DemoServer
class ThermometerPagesTests {

	@Autowired
	private MockMvc web;

	@Autowired
	private Register register;

	@Autowired
	private LocalClimate climate;

	@Autowired
	private JdbcClient database;

	@Test
	void whatAThermometerSaysMovesTheDatesOfItsSiteWhenItIsUsed() throws Exception {
		Site site = site("Millrace Park");
		Cookie session = session(site);
		String address = "/sites/" + site.id() + "/thermometer";
		assertThat(page(get(address).cookie(session), 200).select("button[value=use]")).isEmpty();
		// Two degrees colder than estimated on each of twenty nights, to a tenth.
		List<String> lines = colder(site, 20, 2);
		Document found = page(send(address, session).param("readings", String.join("\n", lines)), 200);
		assertThat(found.select("[role=status]").text()).contains("2.0 °C (3.6 °F) colder");
		assertThat(found.text()).contains("20 of 20 nights counted").doesNotContain("too few to lean on");
		assertThat(found.select("table:has(caption:contains(night)) tbody tr")).hasSize(20);
		assertThat(found.getElementById("readings").wholeText().strip()).isEqualTo(String.join("\n", lines));
		Document spring = found.clone();
		assertThat(spring.select("tr:has(th:contains(Last spring freeze at 32 °F))").text()).contains("later");
		assertThat(spring.select("tr:has(th:contains(First fall freeze at 28 °F))").text()).contains("earlier");
		assertThat(found.select("dl.facts del")).as("tasks that would move").isNotEmpty();
		assertThat(this.register.require(site.id()).microclimate().measuredOffsetCelsius()).as("looked at only")
			.isNull();
		List<String> before = tasks(site);
		assertThat(perform(send(address, session).param("go", "use").param("readings", String.join("\n", lines)))
			.getStatus()).isEqualTo(302);
		assertThat(this.register.require(site.id()).microclimate().measuredOffsetCelsius()).isEqualTo(-2.0);
		List<String> after = tasks(site);
		assertThat(after).isNotEqualTo(before);
		moved(found, before, after);
		assertThat(page(get(address).cookie(session), 200).text()).contains("Your thermometer is in use");
		Document same = page(send(address, session).param("readings", String.join("\n", lines)), 200);
		assertThat(same.text()).as("it is so already").contains("No task would get other days.");
		assertThat(perform(send(address, session).param("go", "forget")).getStatus()).isEqualTo(302);
		assertThat(this.register.require(site.id()).microclimate().measuredOffsetCelsius()).isNull();
		// What the colder estimate brought back from days that were over may stay.
		List<String> again = tasks(site);
		assertThat(again).as("and back again").containsAll(before);
		assertThat(after).containsAll(again.stream().filter((one) -> !before.contains(one)).toList());
	}

	/** The preview tells as many tasks with other days as using it moves. */
	private static void moved(Document found, List<String> before, List<String> after) {
		int told = found.select("dl.facts > div").size();
		String more = found.select("main p")
			.stream()
			.map((one) -> one.text())
			.filter((text) -> text.matches("And \\d+ more\\."))
			.map((text) -> text.replaceAll("\\D", ""))
			.findFirst()
			.orElse("0");
		Map<String, String> was = byId(before);
		Map<String, String> is = byId(after);
		Set<String> ids = new HashSet<>(was.keySet());
		ids.addAll(is.keySet());
		assertThat((long) told + Integer.parseInt(more))
			.isEqualTo(ids.stream().filter((id) -> !Objects.equals(was.get(id), is.get(id))).count());
	}

	private static Map<String, String> byId(List<String> tasks) {
		return tasks.stream().collect(Collectors.toMap((task) -> task.split(" ")[0], (task) -> task));
	}

	@Test
	void aFewNightsAreTooFewAndWrongLinesAreNamed() throws Exception {
		Site site = site("Millrace Park");
		Cookie session = session(site);
		String address = "/sites/" + site.id() + "/thermometer";
		String few = String.join("\n", colder(site, 3, -1)) + "\n1850-01-01 0";
		Document found = page(send(address, session).param("readings", few), 200);
		assertThat(found.text()).contains("3 of 4 nights counted", "too few to lean on", "no record",
				"1.0 °C (1.8 °F) warmer");
		Document wrong = page(send(address, session).param("unit", "F").param("readings", "2026-01-04 20\nfrost\n"),
				400);
		assertThat(wrong.select("[role=alert] a[href=#readings]").text())
			.startsWith("line 2: 'frost' is not a date and degrees");
		assertThat(wrong.getElementById("readings").wholeText()).contains("frost");
		assertThat(wrong.select("#unit option[selected]").val()).as("nothing is lost").isEqualTo("F");
		assertThat(page(send(address, session).param("go", "use").param("readings", "1850-01-01 0"), 400).text())
			.contains("no weather station has any of these nights");
		String far = String.join("\n", colder(site, 14, 12));
		assertThat(page(send(address, session).param("readings", far), 200).select("button[value=use]")).isEmpty();
		assertThat(page(send(address, session).param("go", "use").param("readings", far), 400).text())
			.contains("larger than 10 °C");
		page(get(address).cookie(session(site("Farrow house"))), 404);
		page(send(address, session(site("Farrow house"))).param("go", "forget"), 404);
		assertThat(page(get("/sites/" + site.id() + "/freezes").cookie(session), 200).select("a[href$=/thermometer]"))
			.hasSize(1);
	}

	/**
	 * Readings of the latest nights that have a record, so much colder than estimated.
	 */
	private List<String> colder(Site site, int nights, double by) {
		LocalDate today = LocalDate.ofInstant(Instant.now(), site.zone());
		List<MinimumReading> asked = IntStream.rangeClosed(1, 40)
			.mapToObj((back) -> new MinimumReading(today.minusDays(back), 0))
			.collect(Collectors.toList());
		return this.climate.compare(site.point(), asked)
			.nights()
			.stream()
			.filter((night) -> night.estimated() != null)
			.limit(nights)
			.map((night) -> line(night, by))
			.toList();
	}

	private static String line(MinimumComparison.Night night, double by) {
		return String.format(Locale.ROOT, "%s %.1f", night.day(), night.estimated() - by);
	}

	private List<String> tasks(Site site) {
		return this.database.sql("""
				select id || ' ' || from_day || ' ' || to_day from care.task
				where site = ? and state = 'PLANNED' and to_day >= current_date order by 1""")
			.param(site.id().value())
			.query(String.class)
			.list();
	}

	private Site site(String name) {
		return this.register.sites(0, 200).stream().filter((one) -> one.name().equals(name)).findFirst().orElseThrow();
	}

	private static MockHttpServletRequestBuilder send(String address, Cookie session) {
		return post(address).with(csrf()).cookie(session);
	}

	private Cookie session(Site site) throws Exception {
		return perform(post("/people/" + site.owner().value()).with(csrf())).getCookie("SESSION");
	}

	private MockHttpServletResponse perform(MockHttpServletRequestBuilder request) throws Exception {
		return this.web.perform(request).andReturn().getResponse();
	}

	private Document page(MockHttpServletRequestBuilder request, int status) throws Exception {
		MockHttpServletResponse response = perform(request);
		assertThat(response.getStatus()).as(response.getContentAsString()).isEqualTo(status);
		return Jsoup.parse(response.getContentAsString());
	}

}
