package org.leafward.accounts.web;

import java.util.LinkedHashSet;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.Test;
import org.leafward.support.TestDatabase;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.annotation.Qualifier;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.http.HttpMethod;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.context.ContextConfiguration;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.web.bind.annotation.RequestMethod;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.request;

/**
 * Outside the demo nothing opens to a stranger but what is named here; a new address is
 * closed until somebody adds it.
 */
@SpringBootTest(properties = "leafward.operator-token=" + StrangerTests.TOKEN)
@AutoConfigureMockMvc
@ContextConfiguration(initializers = TestDatabase.class)
class StrangerTests {

	static final String TOKEN = "another-token-for-tests-0123456789";

	private static final Set<String> OPEN = Set.of("GET /sign-in", "POST /sign-in", "POST /sign-in/link",
			"GET /sign-in/sent", "GET /sign-in/once", "GET /f/{token}/tasks.ics", "HEAD /f/{token}/tasks.ics",
			"* /f/{token}/tasks.ics", "* /error");

	/** They read and keep nothing. */
	private static final String CALCULATORS = "GET (/api)?/calculators(/[a-z-]+)?";

	@Autowired
	private MockMvc web;

	@Autowired
	@Qualifier("requestMappingHandlerMapping")
	private RequestMappingHandlerMapping mappings;

	@TestFactory
	Stream<DynamicTest> everyAddressIsClosedOrNamed() {
		Set<String> addresses = addresses();
		assertThat(addresses).as("the walk finds the addresses").hasSizeGreaterThan(25);
		return addresses.stream()
			.filter((address) -> !OPEN.contains(address) && !address.matches(CALCULATORS))
			.map((address) -> DynamicTest.dynamicTest(address, () -> closed(address)));
	}

	private Set<String> addresses() {
		TreeMap<String, String> found = new TreeMap<>();
		this.mappings.getHandlerMethods().forEach((mapping, method) -> {
			Set<String> methods = new LinkedHashSet<>();
			for (RequestMethod one : mapping.getMethodsCondition().getMethods()) {
				methods.add(one.name());
			}
			if (methods.isEmpty()) {
				methods.add("*");
			}
			mapping.getPatternValues().forEach((path) -> methods.forEach((one) -> found.put(one + " " + path, path)));
		});
		return found.keySet();
	}

	private void closed(String address) throws Exception {
		String method = address.startsWith("*") ? "GET" : address.substring(0, address.indexOf(' '));
		String path = address.substring(address.indexOf(' ') + 1)
			.replaceAll("\\{[^}]*}", "00000000-0000-4000-8000-000000000000");
		MockHttpServletResponse response = this.web.perform(request(HttpMethod.valueOf(method), path))
			.andReturn()
			.getResponse();
		if (path.startsWith("/api/")) {
			assertThat(response.getStatus()).isEqualTo(401);
			// RFC 6750, section 3.
			assertThat(response.getHeader("WWW-Authenticate")).isEqualTo("Bearer realm=\"Leafward\"");
			assertThat(response.getContentType()).startsWith("application/problem+json");
		}
		else if (method.equals("GET") || method.equals("HEAD")) {
			assertThat(response.getStatus()).isEqualTo(302);
			assertThat(response.getRedirectedUrl()).endsWith("/sign-in");
		}
		else {
			// Without the form's secret a change is refused before anybody is asked to
			// sign in.
			assertThat(response.getStatus()).isIn(302, 403);
		}
	}

	@Test
	void theOperatorTokenOpensTheApiAndAWrongOneDoesNot() throws Exception {
		assertThat(status("Bearer " + TOKEN)).isEqualTo(200);
		assertThat(status("bearer " + TOKEN)).as("the scheme's name has no case, RFC 9110, section 11.1")
			.isEqualTo(200);
		assertThat(status("Bearer " + TOKEN + "x")).isEqualTo(401);
		assertThat(status("Basic " + TOKEN)).isEqualTo(401);
		assertThat(status("Bearer ")).isEqualTo(401);
	}

	private int status(String authorization) throws Exception {
		return this.web.perform(get("/api/v1/sites").header("Authorization", authorization))
			.andReturn()
			.getResponse()
			.getStatus();
	}

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

}
