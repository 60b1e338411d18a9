package org.leafward.accounts.web;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.leafward.accounts.People;
import org.leafward.accounts.PersonId;
import org.leafward.accounts.Role;
import org.leafward.accounts.Roles;
import org.leafward.accounts.Scope;
import org.leafward.accounts.Secret;
import org.leafward.accounts.signin.PersonalTokens;
import org.leafward.accounts.signin.SignedIn;
import org.leafward.accounts.web.AccessThings.Having;
import org.leafward.measure.BadInput;
import org.leafward.support.SettableClock;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.http.MediaType;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.springframework.test.web.servlet.request.RequestPostProcessor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.delete;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

/**
 * Tokens that are made, used, expire, are taken back, and are sent in wrong ways. What is
 * expected of the answers is RFC 6750, sections 2 and 3.
 */
@AccessServer
class TokenTests {

	private static final String OPERATOR = AccessServer.TOKEN;

	private static final Instant NOW = AccessServer.Times.NOW;

	/** The secret as the page shows it. */
	private static final Pattern SHOWN = Pattern.compile("id=\"token\"[^>]*>(leafward_[A-Za-z0-9_-]{43})<");

	private static int counter;

	@Autowired
	private MockMvc web;

	@Autowired
	private AccessThings things;

	@Autowired
	private PersonalTokens tokens;

	@Autowired
	private People people;

	@Autowired
	private Roles roles;

	@Autowired
	private JdbcClient database;

	@Autowired
	private SettableClock clock;

	private PersonId nora;

	@BeforeEach
	void somebodyNew() {
		this.clock.set(NOW);
		this.nora = this.things.person("Nora Field " + counter++);
	}

	private RequestPostProcessor signedIn(PersonId id) {
		return SecurityMockMvcRequestPostProcessors
			.authentication(SignedIn.person(this.people.find(id).orElseThrow(), this.roles.of(id)));
	}

	private MockHttpServletResponse answer(MockHttpServletRequestBuilder call) throws Exception {
		return this.web.perform(call).andReturn().getResponse();
	}

	private MockHttpServletResponse sites(String authorization) throws Exception {
		return answer(get("/api/v1/sites").header("Authorization", authorization));
	}

	private void expect(String authorization, int status) throws Exception {
		assertThat(sites(authorization).getStatus()).as(authorization).isEqualTo(status);
	}

	private void invalid(String authorization) throws Exception {
		MockHttpServletResponse answer = sites(authorization);
		assertThat(answer.getStatus()).isEqualTo(401);
		assertThat(answer.getHeader("WWW-Authenticate"))
			.isEqualTo("Bearer realm=\"Leafward\", error=\"invalid_token\"");
		assertThat(answer.getContentAsString()).contains("not known, has expired or was revoked")
			.doesNotContain(authorization.substring(Math.min(7, authorization.length() - 1)));
	}

	@Test
	void thePageMakesATokenShowsItOnceAndEndsIt() throws Exception {
		MockHttpServletResponse made = answer(post("/me/tokens").param("name", "scales <b>")
			.param("scope", "read", "write")
			.param("days", "30")
			.with(signedIn(this.nora))
			.with(csrf()));
		assertThat(made.getStatus()).isEqualTo(200);
		assertThat(made.getHeaderValues("Cache-Control")).isEqualTo(List.of("no-store"));
		assertThat(made.getHeader("Referrer-Policy")).isEqualTo("no-referrer");
		Matcher shown = SHOWN.matcher(made.getContentAsString());
		assertThat(shown.find()).isTrue();
		String secret = shown.group(1);
		expect("Bearer " + secret, 200);
		String list = answer(get("/me/tokens").with(signedIn(this.nora))).getContentAsString();
		assertThat(list).contains("scales &lt;b&gt;", "look at your things, change your things").doesNotContain(secret);
		assertThat(answer(get("/api/v1/tokens").header("Authorization", "Bearer " + secret)).getContentAsString())
			.contains("\"scopes\":[\"read\",\"write\"]", "\"lastUsedAt\":\"2026-05-20T15:00:00Z\"")
			.doesNotContain(secret);
		UUID id = this.tokens.list(this.nora, 0, 1).get(0).id();
		assertThat(answer(post("/me/tokens/" + id + "/revoke").with(signedIn(this.nora)).with(csrf())).getStatus())
			.isEqualTo(302);
		invalid("Bearer " + secret);
		assertThat(this.database.sql("select deed from accounts.audit where concerns = ? and actor = ? order by id")
			.params(this.nora.value(), this.nora.value())
			.query(String.class)
			.list()).containsExactly("MADE_TOKEN", "REVOKED_TOKEN");
	}

	@Test
	void noSecretIsInTheDatabase() {
		String secret = this.tokens.make(this.nora, "x", Set.of(Scope.READ), 1).secret();
		String row = this.database.sql("select t::text from accounts.token t where person = ?")
			.param(this.nora.value())
			.query(String.class)
			.single();
		assertThat(row).doesNotContain(secret).doesNotContain(secret.substring(PersonalTokens.PREFIX.length()));
	}

	@Test
	void whatCantBeMadeIsToldAtTheField() throws Exception {
		MockHttpServletResponse none = answer(
				post("/me/tokens").param("name", "x").param("days", "30").with(signedIn(this.nora)).with(csrf()));
		assertThat(none.getStatus()).isEqualTo(400);
		assertThat(none.getContentAsString()).contains("tick at least one", "value=\"x\"");
		assertThat(answer(post("/me/tokens").param("name", "x")
			.param("scope", "everything")
			.param("days", "30")
			.with(signedIn(this.nora))
			.with(csrf())).getStatus()).isEqualTo(400);
		for (int days : new int[] { 0, -1, 731, Integer.MAX_VALUE }) {
			assertThatExceptionOfType(BadInput.class)
				.isThrownBy(() -> this.tokens.make(this.nora, "x", Set.of(Scope.READ), days));
		}
		assertThatExceptionOfType(BadInput.class)
			.isThrownBy(() -> this.tokens.make(this.nora, "x".repeat(101), Set.of(Scope.READ), 1));
		assertThatExceptionOfType(BadInput.class)
			.isThrownBy(() -> this.tokens.make(this.nora, "a\nb", Set.of(Scope.READ), 1));
		assertThatExceptionOfType(BadInput.class)
			.isThrownBy(() -> this.tokens.make(this.nora, "x", Set.of(Scope.RULES), 1));
		assertThat(this.tokens.list(this.nora, 0, 10)).isEmpty();
		for (int i = 0; i < 50; i++) {
			this.tokens.make(this.nora, "x", Set.of(Scope.READ), 1);
		}
		assertThatExceptionOfType(BadInput.class)
			.isThrownBy(() -> this.tokens.make(this.nora, "x", Set.of(Scope.READ), 1))
			.withMessageContaining("50");
	}

	@Test
	void aTokenWorksToItsLastSecondAndUseIsNotedOnceAnHour() throws Exception {
		String secret = this.tokens.make(this.nora, "x", Set.of(Scope.READ), 1).secret();
		expect("Bearer " + secret, 200);
		this.clock.set(NOW.plus(Duration.ofMinutes(59)));
		expect("Bearer " + secret, 200);
		assertThat(this.tokens.list(this.nora, 0, 1).get(0).lastUsedAt()).isEqualTo(NOW);
		this.clock.set(NOW.plus(Duration.ofMinutes(61)));
		expect("Bearer " + secret, 200);
		assertThat(this.tokens.list(this.nora, 0, 1).get(0).lastUsedAt()).isEqualTo(NOW.plus(Duration.ofMinutes(61)));
		this.clock.set(NOW.plus(Duration.ofDays(1)).minusSeconds(1));
		expect("Bearer " + secret, 200);
		this.clock.set(NOW.plus(Duration.ofDays(1)));
		invalid("Bearer " + secret);
	}

	@Test
	void whatIsNoTokenOpensNothing() throws Exception {
		String secret = this.tokens.make(this.nora, "x", Set.of(Scope.READ), 1).secret();
		// RFC 9110, section 11.1: the scheme's name has no case.
		for (String scheme : List.of("Bearer ", "bearer ", "BEARER ", "bEaReR  ")) {
			expect(scheme + secret, 200);
			expect(scheme + OPERATOR, 200);
		}
		for (String wrong : List.of(secret + "x", secret.substring(0, secret.length() - 1), "x" + secret,
				secret.toUpperCase(), PersonalTokens.PREFIX, OPERATOR + "x", "%00", "' or true --",
				PersonalTokens.PREFIX + "é".repeat(43), PersonalTokens.PREFIX + "a".repeat(100_000))) {
			invalid("Bearer " + wrong);
		}
		MockHttpServletResponse other = sites("Basic " + secret);
		assertThat(other.getStatus()).isEqualTo(401);
		// Section 3.1: who sent no token gets no error code.
		assertThat(other.getHeader("WWW-Authenticate")).isEqualTo("Bearer realm=\"Leafward\"");
		expect("Bearer" + secret, 401);
		expect(secret, 401);
		expect("", 401);
	}

	@Test
	void aTokenInTheAddressOrAFormCountsForNothing() throws Exception {
		String secret = this.tokens.make(this.nora, "x", Set.of(Scope.READ, Scope.WRITE), 1).secret();
		assertThat(answer(get("/api/v1/sites?access_token=" + secret)).getStatus()).isEqualTo(401);
		assertThat(answer(get("/api/v1/sites?token=" + OPERATOR)).getStatus()).isEqualTo(401);
		assertThat(answer(
				post("/api/v1/sites").contentType(MediaType.APPLICATION_FORM_URLENCODED).param("access_token", secret))
			.getStatus()).isEqualTo(401);
		assertThat(answer(get("/sites").header("Authorization", "Bearer " + secret)).getRedirectedUrl())
			.as("tokens are for the API")
			.endsWith("/sign-in");
	}

	@Test
	void twoHeadersAreRefusedEvenIfOneIsRight() throws Exception {
		String secret = this.tokens.make(this.nora, "x", Set.of(Scope.READ), 1).secret();
		MockHttpServletResponse answer = answer(
				get("/api/v1/sites").header("Authorization", "Bearer " + secret, "Bearer " + OPERATOR));
		assertThat(answer.getStatus()).isEqualTo(400);
		assertThat(answer.getHeader("WWW-Authenticate")).contains("error=\"invalid_request\"");
	}

	@Test
	void aMissingScopeIsNamed() throws Exception {
		String secret = this.tokens.make(this.nora, "x", Set.of(Scope.READ), 1).secret();
		MockHttpServletResponse answer = answer(
				delete("/api/v1/plantings/" + UUID.randomUUID()).header("Authorization", "Bearer " + secret));
		assertThat(answer.getStatus()).isEqualTo(403);
		assertThat(answer.getHeader("WWW-Authenticate"))
			.isEqualTo("Bearer realm=\"Leafward\", error=\"insufficient_scope\", scope=\"write\"");
		assertThat(answer.getContentAsString()).contains("lacks the scope write", "\"mend\":");
	}

	@Test
	void aRoleThatIsTakenBackEndsBetweenTwoCalls() throws Exception {
		this.roles.grant(this.nora, Role.SPECIALIST, "Alder County");
		String secret = this.tokens.make(this.nora, "x", Set.of(Scope.RULES), 1).secret();
		assertThat(packs(secret)).isEqualTo(200);
		assertThat(workshop()).isEqualTo(200);
		this.roles.withdraw(this.nora, Role.SPECIALIST, "Alder County");
		assertThat(packs(secret)).isEqualTo(403);
		assertThat(workshop()).isEqualTo(403);
	}

	private int packs(String secret) throws Exception {
		return answer(get("/api/v1/packs").header("Authorization", "Bearer " + secret)).getStatus();
	}

	/** With a session that still has the role. */
	private int workshop() throws Exception {
		SignedIn before = SignedIn.person(this.people.find(this.nora).orElseThrow(),
				new org.leafward.accounts.Granted(Set.of(Role.SPECIALIST), Set.of("Alder County")));
		return answer(get("/workshop").with(SecurityMockMvcRequestPostProcessors.authentication(before))).getStatus();
	}

	@Test
	void whoIsDeletedWhileSignedInIsAStrangerAtOnce() throws Exception {
		String secret = this.tokens.make(this.nora, "x", Set.of(Scope.READ), 1).secret();
		RequestPostProcessor session = signedIn(this.nora);
		assertThat(answer(get("/sites").with(session)).getStatus()).isEqualTo(200);
		expect("Bearer " + secret, 200);
		this.database.sql("delete from accounts.person where id = ?").param(this.nora.value()).update();
		assertThat(answer(get("/sites").with(session)).getRedirectedUrl()).endsWith("/sign-in");
		invalid("Bearer " + secret);
	}

	@Test
	void thingsOfOthersInsideACallAreNotThereEither() throws Exception {
		Having own = this.things.of(this.nora);
		Having another = this.things.of(this.things.person("Tomas Brook " + counter++));
		String secret = this.tokens.make(this.nora, "x", Set.of(Scope.READ, Scope.WRITE), 1).secret();
		MockHttpServletResponse both = answer(post("/tasks/skip").param("task", own.task() + "," + another.task())
			.param("reason", "wet")
			.with(signedIn(this.nora))
			.with(csrf()));
		assertThat(both.getStatus()).isEqualTo(404);
		for (Map.Entry<String, String> call : Map
			.of("waterings", "{\"day\":\"%s\",\"amount\":5,\"unit\":\"mm\",\"planting\":\"%s\"}", "log",
					"{\"day\":\"%s\",\"work\":\"mulch\",\"planting\":\"%s\"}", "observations",
					"{\"day\":\"%s\",\"kind\":\"phase\",\"name\":\"bloom-end\",\"planting\":\"%s\"}")
			.entrySet()) {
			String path = "/api/v1/sites/%s/%s".formatted(own.site(), call.getKey());
			LocalDate day = LocalDate.of(2026, 5, 19);
			assertThat(send(path, call.getValue().formatted(day, another.planting()), secret)).as(path).isEqualTo(400);
			assertThat(send(path, call.getValue().formatted(day, own.planting()), secret)).as(path).isEqualTo(201);
		}
		String site = "{\"owner\":%s,\"name\":\"x\",\"latitude\":1,\"longitude\":1,\"elevationMetres\":1,\"zone\":\"UTC\"}";
		assertThat(send("/api/v1/sites", site.formatted("\"" + another.owner() + "\""), secret)).isEqualTo(400);
		assertThat(send("/api/v1/sites", site.formatted("null"), secret)).isEqualTo(201);
		assertThat(send("/api/v1/sites", site.formatted("\"" + this.nora + "\""), secret)).isEqualTo(201);
		assertThat(send("/api/v1/sites", site.formatted("null"), OPERATOR)).isEqualTo(400);
		assertThat(send("/api/v1/sites", site.formatted("\"" + another.owner() + "\""), OPERATOR)).isEqualTo(201);
	}

	private int send(String path, String json, String secret) throws Exception {
		return answer(post(path).contentType(MediaType.APPLICATION_JSON)
			.content(json)
			.header("Authorization", "Bearer " + secret)).getStatus();
	}

	@Test
	void listsShowTheirOwnOnly() throws Exception {
		Having own = this.things.of(this.nora);
		Having another = this.things.of(this.things.person("Tomas Brook " + counter++));
		String secret = this.tokens.make(this.nora, "x", Set.of(Scope.READ), 1).secret();
		String mine = "Bearer " + secret;
		assertThat(sites(mine).getContentAsString()).contains(own.site().toString())
			.doesNotContain(another.site().toString());
		assertThat(sites("Bearer " + OPERATOR).getContentAsString()).contains(another.site().toString());
		for (String path : List.of("people", "tokens")) {
			String list = answer(get("/api/v1/" + path).header("Authorization", mine)).getContentAsString();
			assertThat(list).contains(this.nora.toString()).doesNotContain(another.owner().toString());
		}
	}

	@Test
	void aSecretHasThePrefixAnd256Bits() {
		String secret = this.tokens.make(this.nora, "x", Set.of(Scope.READ), 1).secret();
		assertThat(secret).matches("leafward_[A-Za-z0-9_-]{43}");
		assertThat(Secret.hash(secret)).hasSize(32);
	}

}
