package org.leafward.accounts.web;

import java.net.URI;
import java.util.List;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.Test;
import org.leafward.support.EmptyServer;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.MockMvc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.head;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.request;

/**
 * What strangers see outside the demo; which addresses they may open is in access.csv.
 */
@EmptyServer
class StrangerTests {

	@Autowired
	private MockMvc web;

	@Autowired
	private JdbcClient database;

	@Test
	void aPageNeverAsksAnotherServerForAnything() throws Exception {
		MockHttpServletResponse response = this.web.perform(get("/sign-in")).andReturn().getResponse();
		assertThat(response.getStatus()).isEqualTo(200);
		assertThat(response.getHeader("Content-Security-Policy")).contains("default-src 'none'")
			.doesNotContain("unsafe");
		assertThat(response.getContentAsString()).doesNotContain("http://").doesNotContain("https://");
	}

	@Test
	void aWrongTokenSignsNobodyIn() throws Exception {
		MockHttpServletResponse response = this.web.perform(post("/sign-in").param("token", "guess").with(csrf()))
			.andReturn()
			.getResponse();
		assertThat(response.getStatus()).isEqualTo(401);
	}

	@Test
	void thereAreNoInventedPeopleOutsideTheDemo() throws Exception {
		assertThat(this.web.perform(get("/people")).andReturn().getResponse().getRedirectedUrl()).endsWith("/sign-in");
	}

	/**
	 * A row for everybody who comes along would cost more than it is worth; only a form
	 * and a closed page need something remembered.
	 */
	@Test
	void whoOnlyLooksLeavesNoSession() throws Exception {
		long before = sessions();
		for (String page : List.of("/calculators", "/calculators/water", "/calculators/cover", "/css/leafward.css",
				"/quick/manage/unknown", "/quick/nothing", "/sign-in/sent", "/sign-in/once", "/sign-in/once?token=x",
				"/regions/map.svg?width=344", "/actuator/health", "/f/x/tasks.ics", "/f/x", "/r/x", "/u/x",
				"/api/v1/sites", "/nothing.html", "/favicon.ico", "/a;b")) {
			MockHttpServletResponse answer = this.web.perform(get(URI.create(page))).andReturn().getResponse();
			assertThat(answer.getCookie("SESSION")).as(page).isNull();
			assertThat(sessions()).as(page).isEqualTo(before);
		}
		this.web.perform(get("/sign-in"));
		assertThat(sessions()).as("its form has a secret of its own").isEqualTo(before + 1);
	}

	/**
	 * A browser asks for it beside the first page. A session that came of that would take
	 * the place of the one of somebody who signed in meanwhile.
	 */
	@Test
	void theIconNeedsNoSignIn() throws Exception {
		long before = sessions();
		MockHttpServletResponse asked = this.web.perform(get("/favicon.ico")).andReturn().getResponse();
		assertThat(asked.getStatus()).isEqualTo(301);
		assertThat(this.web.perform(head("/favicon.ico")).andReturn().getResponse().getStatus()).isEqualTo(301);
		MockHttpServletResponse icon = this.web.perform(get(asked.getRedirectedUrl())).andReturn().getResponse();
		assertThat(icon.getStatus()).isEqualTo(200);
		assertThat(icon.getContentType()).isEqualTo("image/svg+xml");
		assertThat(Jsoup.parse(this.web.perform(get("/sign-in")).andReturn().getResponse().getContentAsString())
			.select("link[rel=icon]")
			.attr("href")).isEqualTo(asked.getRedirectedUrl());
		assertThat(sessions()).as("but for the form").isEqualTo(before + 1);
	}

	private long sessions() {
		return this.database.sql("select count(*) from accounts.session").query(Long.class).single();
	}

}
