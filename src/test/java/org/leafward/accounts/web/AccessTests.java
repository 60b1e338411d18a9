package org.leafward.accounts.web;

import jakarta.servlet.http.Cookie;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.TestInstance;
import org.leafward.accounts.People;
import org.leafward.accounts.PersonId;
import org.leafward.accounts.Role;
import org.leafward.accounts.Roles;
import org.leafward.accounts.Scope;
import org.leafward.accounts.signin.SignedIn;
import org.leafward.accounts.web.AccessThings.Having;
import org.leafward.support.SettableClock;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.http.HttpMethod;
import org.springframework.http.MediaType;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.security.core.context.SecurityContextImpl;
import org.springframework.session.Session;
import org.springframework.session.SessionRepository;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.springframework.web.servlet.mvc.method.RequestMappingInfoHandlerMapping;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.request;

/**
 * Every address as every caller, with real things of theirs and of somebody else in the
 * address, against the typed table {@code access.csv}. An address without a row fails.
 * With {@code -Daccess.draft=target/access.csv} what was found is written there, to be
 * judged line by line before any of it goes into the table.
 */
@AccessServer
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class AccessTests {

	private static final String TOKEN = AccessServer.TOKEN;

	/** Addresses that filters answer, so that no controller has them. */
	private static final Set<String> OF_FILTERS = Set.of("POST /sign-out", "POST /sign-in/once",
			"GET /oauth2/authorization/county", "GET /login/oauth2/code/county", "GET /css/leafward.css",
			"GET /css/leaf.svg");

	private final AccessTable table = AccessTable.read();

	private final Map<String, Caller> callers = new LinkedHashMap<>();

	private final Map<String, Map<String, String>> found = new LinkedHashMap<>();

	@Autowired
	private MockMvc web;

	@Autowired
	private ApplicationContext context;

	@Autowired
	private SettableClock clock;

	@Autowired
	private AccessThings things;

	@Autowired
	private People people;

	@Autowired
	private Roles roles;

	@Autowired
	private SessionRepository<? extends Session> sessions;

	/**
	 * Somebody who calls.
	 *
	 * @param session who they are on the pages; null for nobody
	 * @param token what they send to the API; null for nothing
	 * @param tokenOnPages whether they send it to the pages too, instead of a session
	 * @param on whose things
	 */
	private record Caller(@Nullable SignedIn session, @Nullable String token, boolean tokenOnPages, Having on) {
	}

	@BeforeAll
	void everybody() {
		this.clock.set(AccessServer.Times.NOW);
		this.things.station();
		PersonId nora = this.things.person("Nora Field");
		Having own = this.things.of(nora);
		Having another = this.things.of(this.things.person("Tomas Brook"));
		this.callers.put("stranger", new Caller(null, null, false, own));
		this.callers.put("own", person(nora, own));
		this.callers.put("another", person(nora, another));
		this.callers.put("coordinator", person(with("Coral Ames", Role.COORDINATOR, ""), another));
		PersonId here = with("Odile Marsh", Role.SPECIALIST, AccessThings.COUNTY);
		this.callers.put("here", person(here, another));
		this.callers.put("elsewhere", person(with("Elso Wren", Role.SPECIALIST, "Birch County"), another));
		this.callers.put("operator", person(with("Opal Reed", Role.OPERATOR, ""), another));
		this.callers.put("op-token", new Caller(SignedIn.operator(), TOKEN, false, another));
		this.callers.put("read", new Caller(null, this.things.secretFor(nora, Scope.READ), true, own));
		this.callers.put("write", new Caller(null, this.things.secretFor(nora, Scope.WRITE), true, own));
		this.callers.put("rules", new Caller(null, this.things.secretFor(here, Scope.RULES), true, another));
		this.callers.put("no-spec", new Caller(null, this.things.secretFor(nora, Scope.RULES), true, own));
	}

	private PersonId with(String name, Role role, String county) {
		PersonId person = this.things.person(name);
		this.roles.grant(person, role, county);
		return person;
	}

	/** On the pages by a session, by API with a token of all scopes. */
	private Caller person(PersonId id, Having on) {
		return new Caller(SignedIn.person(this.people.find(id).orElseThrow(), this.roles.of(id)),
				this.things.secretFor(id), false, on);
	}

	@Test
	void everyAddressHasARowAndEveryRowAnAddress() {
		Set<String> there = new TreeSet<>(OF_FILTERS);
		this.context.getBeansOfType(RequestMappingInfoHandlerMapping.class)
			.values()
			.forEach((mapping) -> mapping.getHandlerMethods().forEach((info, method) -> {
				Set<String> methods = new TreeSet<>();
				info.getMethodsCondition().getMethods().forEach((one) -> methods.add(one.name()));
				info.getPatternValues()
					.forEach((path) -> (methods.isEmpty() ? Set.of("GET") : methods)
						.forEach((one) -> there.add(one + " " + path)));
			}));
		assertThat(there).as("the walk finds the addresses").hasSizeGreaterThan(100);
		List<String> rows = this.table.rows().stream().map(AccessTable.Row::address).toList();
		assertThat(rows).doesNotHaveDuplicates();
		assertThat(new TreeSet<>(rows)).isEqualTo(there);
		assertThat(this.table.callers()).containsExactlyElementsOf(this.callers.keySet());
	}

	@TestFactory
	Stream<DynamicTest> everyAddressAnswersEveryCallerAsTheTableSays() {
		return this.table.rows()
			.stream()
			.flatMap((row) -> row.outcomes()
				.entrySet()
				.stream()
				.map((cell) -> DynamicTest.dynamicTest(row.address() + " as " + cell.getKey(), () -> {
					MockHttpServletResponse response = call(row, this.callers.get(cell.getKey()));
					String outcome = outcome(response);
					this.found.computeIfAbsent(row.address(), (one) -> new LinkedHashMap<>())
						.put(cell.getKey(), outcome);
					draft();
					assertThat(outcome).isEqualTo(cell.getValue());
					if (row.path().startsWith("/api/") && Set.of("unknown", "scope").contains(outcome)) {
						// RFC 6750, section 3: the challenge has at least one parameter.
						assertThat(response.getHeader("WWW-Authenticate")).startsWith("Bearer realm=\"");
						assertThat(response.getContentType()).startsWith("application/problem+json");
					}
				})));
	}

	@TestFactory
	Stream<DynamicTest> aSessionOpensNothingOfTheApi() {
		return this.table.rows()
			.stream()
			.filter((row) -> row.path().startsWith("/api/") && row.outcomes().get("stranger").equals("unknown"))
			.map((row) -> DynamicTest.dynamicTest(row.address(), () -> {
				Caller own = this.callers.get("operator");
				assertThat(call(row, new Caller(own.session(), null, false, own.on())).getStatus()).isEqualTo(401);
			}));
	}

	private MockHttpServletResponse call(AccessTable.Row row, Caller caller) throws Exception {
		boolean api = row.path().startsWith("/api/");
		MockHttpServletRequestBuilder call = request(HttpMethod.valueOf(row.method()),
				this.things.address(row.method(), row.path(), caller.on()));
		String send = row.send().replace("{task}", caller.on().task().toString());
		if (send.startsWith("{") || send.startsWith("[")) {
			call.contentType(MediaType.APPLICATION_JSON).content(send);
		}
		else {
			for (String pair : send.isEmpty() ? new String[0] : send.split("&")) {
				call.param(pair.substring(0, pair.indexOf('=')), pair.substring(pair.indexOf('=') + 1));
			}
		}
		if (caller.token() != null && (api || caller.tokenOnPages())) {
			call.header("Authorization", "Bearer " + caller.token());
		}
		if (caller.session() != null && (!api || caller.token() == null)) {
			call.cookie(session(this.sessions, caller.session()));
		}
		if (!api && !row.method().equals("GET")) {
			call.with(csrf());
		}
		return this.web.perform(call).andReturn().getResponse();
	}

	static <S extends Session> Cookie session(SessionRepository<S> sessions, SignedIn who) {
		S session = sessions.createSession();
		session.setAttribute("SPRING_SECURITY_CONTEXT", new SecurityContextImpl(who));
		sessions.save(session);
		return new Cookie("SESSION",
				Base64.getEncoder().encodeToString(session.getId().getBytes(StandardCharsets.UTF_8)));
	}

	/**
	 * One of: open, heard (what was sent is refused by itself), none, refused, scope,
	 * unknown, sign-in.
	 */
	private static String outcome(MockHttpServletResponse response) {
		int status = response.getStatus();
		String to = response.getRedirectedUrl();
		if (status == 302 && to != null && to.matches("(http://localhost)?/sign-in([?].*)?")) {
			return "sign-in";
		}
		String challenge = response.getHeader("WWW-Authenticate");
		return switch (status) {
			case 400, 405, 409, 413, 415, 422, 502 -> "heard";
			case 401 -> "unknown";
			case 403 -> (challenge != null && challenge.contains("insufficient_scope")) ? "scope" : "refused";
			case 404 -> "none";
			default -> (status < 400) ? "open" : Integer.toString(status);
		};
	}

	private void draft() throws IOException {
		String file = System.getProperty("access.draft");
		if (file != null) {
			List<String> lines = new ArrayList<>();
			for (AccessTable.Row row : this.table.rows()) {
				lines.add("%s|%s|%s|%s".formatted(row.method(), row.path(), row.send(),
						String.join("|", this.found.getOrDefault(row.address(), Map.of()).values())));
			}
			Files.write(Path.of(file), lines);
		}
	}

}
