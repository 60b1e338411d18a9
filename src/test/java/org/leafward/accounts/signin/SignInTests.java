package org.leafward.accounts.signin;

import com.icegreen.greenmail.junit5.GreenMailExtension;
import com.icegreen.greenmail.util.ServerSetup;
import com.nimbusds.jose.JOSEException;
import com.nimbusds.jose.JWSAlgorithm;
import com.nimbusds.jose.JWSHeader;
import com.nimbusds.jose.crypto.RSASSASigner;
import com.nimbusds.jose.jwk.JWKSet;
import com.nimbusds.jose.jwk.RSAKey;
import com.nimbusds.jose.jwk.gen.RSAKeyGenerator;
import com.nimbusds.jwt.JWTClaimsSet;
import com.nimbusds.jwt.SignedJWT;
import jakarta.mail.internet.MimeMessage;
import jakarta.mail.internet.MimeMultipart;
import jakarta.servlet.http.Cookie;
import java.net.URI;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.Date;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.leafward.accounts.Confirmations;
import org.leafward.accounts.People;
import org.leafward.accounts.Person;
import org.leafward.accounts.PersonalRecords;
import org.leafward.accounts.Role;
import org.leafward.accounts.Roles;
import org.leafward.support.LocalServer;
import org.leafward.support.SettableClock;
import org.leafward.support.TestDatabase;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.context.TestConfiguration;
import org.springframework.boot.test.system.CapturedOutput;
import org.springframework.boot.test.system.OutputCaptureExtension;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Primary;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.context.ContextConfiguration;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.springframework.web.util.UriComponentsBuilder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

/**
 * Signing in, with links that a real SMTP conversation carries to another implementation
 * of SMTP (GreenMail), and by OpenID Connect with a provider on this machine whose tokens
 * Nimbus signs.
 */
@SpringBootTest(properties = "logging.level.org.leafward.accounts=info")
@AutoConfigureMockMvc
@ContextConfiguration(initializers = TestDatabase.class)
@ExtendWith(OutputCaptureExtension.class)
class SignInTests {

	@RegisterExtension
	static final GreenMailExtension MAIL = new GreenMailExtension(
			new ServerSetup(0, "127.0.0.1", ServerSetup.PROTOCOL_SMTP))
		.withPerMethodLifecycle(false);

	private static final Pattern LINK = Pattern.compile("http://\\S+/sign-in/once\\?token=([A-Za-z0-9_-]{43})");

	private static final LocalServer PROVIDER = LocalServer.start();

	private static final RSAKey KEY = key();

	@Autowired
	private MockMvc web;

	@Autowired
	private People people;

	@Autowired
	private Roles roles;

	@Autowired
	private PersonalRecords records;

	@Autowired
	private Confirmations confirmations;

	@Autowired
	private SettableClock clock;

	@Autowired
	private JdbcClient database;

	@TestConfiguration
	static class Time {

		@Bean
		@Primary
		SettableClock settableClock() {
			return new SettableClock(Instant.parse("2026-11-26T08:00:00Z"));
		}

	}

	@DynamicPropertySource
	static void servers(DynamicPropertyRegistry properties) {
		String client = "spring.security.oauth2.client.";
		properties.add("spring.mail.host", () -> "127.0.0.1");
		properties.add("spring.mail.port", () -> MAIL.getSmtp().getPort());
		properties.add(client + "registration.county.client-id", () -> "leafward");
		properties.add(client + "registration.county.client-secret", () -> "not a secret");
		properties.add(client + "registration.county.client-name", () -> "County network");
		properties.add(client + "registration.county.authorization-grant-type", () -> "authorization_code");
		properties.add(client + "registration.county.scope", () -> "openid,email");
		properties.add(client + "registration.county.redirect-uri",
				() -> "{baseUrl}/login/oauth2/code/{registrationId}");
		properties.add(client + "provider.county.authorization-uri", () -> PROVIDER.address("/authorize"));
		properties.add(client + "provider.county.token-uri", () -> PROVIDER.address("/token"));
		properties.add(client + "provider.county.jwk-set-uri", () -> PROVIDER.address("/keys"));
		properties.add(client + "provider.county.user-name-attribute", () -> "sub");
	}

	@AfterAll
	static void close() {
		PROVIDER.close();
	}

	@BeforeEach
	void empty() throws Exception {
		MAIL.purgeEmailFromAllMailboxes();
	}

	@Test
	void aLinkMakesAnAccountAndWorksOnce(CapturedOutput output) throws Exception {
		MockHttpServletResponse asked = ask("mara.holt@example.org");
		assertThat(asked.getRedirectedUrl()).isEqualTo("/sign-in/sent");
		String secret = secret(1);
		// Programs that look at mail follow links; that must not use them up.
		for (int i = 0; i < 2; i++) {
			MockHttpServletResponse page = answer(get("/sign-in/once").param("token", secret));
			assertThat(page.getHeader("Referrer-Policy")).isEqualTo("no-referrer");
			assertThat(Jsoup.parse(page.getContentAsString()).select("main form input[name=token]").val())
				.isEqualTo(secret);
		}
		MockHttpServletResponse in = follow(secret);
		assertThat(in.getRedirectedUrl()).isEqualTo("/");
		Cookie session = in.getCookie("SESSION");
		assertThat(in.getHeaders("Set-Cookie")).anyMatch((cookie) -> cookie.startsWith("SESSION=")
				&& cookie.contains("; HttpOnly") && cookie.contains("; SameSite=Lax"));
		assertThat(answer(get("/sites").cookie(session)).getStatus()).isEqualTo(200);
		Person mara = this.people.withAddress("MARA.holt@example.org").orElseThrow();
		assertThat(mara.mailbox()).contains("mara.holt@example.org");
		assertThat(follow(secret).getRedirectedUrl()).isEqualTo("/sign-in?failed");
		assertThat(output.getAll()).doesNotContain(secret).doesNotContain("mara.holt@example.org");
		assertThat(rowsWith(secret)).as("the secret is kept nowhere").isEmpty();
		assertThat(this.database.sql("select principal_name from accounts.session where session_id = ?")
			.param(new String(java.util.Base64.getDecoder().decode(session.getValue())))
			.query(String.class)
			.single()).as("another node can serve her").isEqualTo(mara.id().toString());
	}

	@Test
	void aLinkEndsAndAWholeOneIsNeeded() throws Exception {
		ask("nils@example.org");
		String secret = secret(1);
		this.clock.advance(OneTimeLinks.SIGN_IN.plusSeconds(1));
		assertThat(follow(secret).getRedirectedUrl()).isEqualTo("/sign-in?failed");
		assertThat(this.people.withAddress("nils@example.org")).isEmpty();
		MockHttpServletResponse broken = answer(get("/sign-in/once").param("token", secret.substring(0, 30)));
		assertThat(broken.getContentAsString()).contains("not whole").doesNotContain(secret.substring(0, 30));
		assertThat(answer(get("/sign-in").param("failed", "")).getContentAsString()).contains("doesn’t work any more");
	}

	@Test
	void whatIsNoAddressIsSaidAndKept() throws Exception {
		MockHttpServletResponse wrong = ask("mara at example");
		assertThat(wrong.getStatus()).isEqualTo(400);
		assertThat(Jsoup.parse(wrong.getContentAsString()).getElementById("email").val()).isEqualTo("mara at example");
		assertThat(ask("a@b.example\r\nBcc: eve@example.org").getStatus()).isEqualTo(400);
		assertThat(MAIL.getReceivedMessages()).isEmpty();
	}

	@Test
	void nobodyIsFloodedWithLinks() throws Exception {
		for (int i = 0; i < 4; i++) {
			assertThat(ask("much@example.org", "192.0.2." + i).getStatus()).isEqualTo(302);
		}
		MockHttpServletResponse fifth = ask("Much@example.org", "192.0.2.77");
		assertThat(fifth.getStatus()).isEqualTo(429);
		assertThat(Integer.parseInt(fifth.getHeader("Retry-After"))).isBetween(1, 1800);
		for (int i = 0; i < 10; i++) {
			assertThat(ask("from" + i + "@example.org", "192.0.2.200").getStatus()).isEqualTo(302);
		}
		assertThat(ask("from10@example.org", "192.0.2.200").getStatus()).as("from one place").isEqualTo(429);
	}

	@Test
	void guessersHaveToWait() throws Exception {
		for (int i = 0; i < 30; i++) {
			assertThat(follow("guess" + i, "198.51.100.9").getRedirectedUrl()).isEqualTo("/sign-in?failed");
		}
		assertThat(follow("guess30", "198.51.100.9").getStatus()).isEqualTo(429);
		assertThat(follow("guess30", "198.51.100.10").getStatus()).as("others go on").isEqualTo(302);
	}

	@Test
	void aRoleEndsAtOnceAndSoDoesAnAccount() throws Exception {
		ask("odd@example.org");
		Cookie session = follow(secret(1)).getCookie("SESSION");
		Person person = this.people.withAddress("odd@example.org").orElseThrow();
		assertThat(answer(get("/workshop").cookie(session)).getStatus()).isEqualTo(403);
		this.roles.grant(person.id(), Role.SPECIALIST, "Alder County");
		assertThat(answer(get("/workshop").cookie(session)).getStatus()).isEqualTo(200);
		assertThat(answer(get("/accounts").cookie(session)).getStatus()).isEqualTo(403);
		this.roles.withdraw(person.id(), Role.SPECIALIST, "alder county");
		assertThat(answer(get("/workshop").cookie(session)).getStatus()).isEqualTo(403);
		this.database.sql("delete from accounts.person where id = ?").param(person.id().value()).update();
		assertThat(answer(get("/sites").cookie(session)).getRedirectedUrl()).endsWith("/sign-in");
	}

	@Test
	void whoSeesAStrangeSessionEndsIt() throws Exception {
		ask("two@example.org");
		Cookie here = follow(secret(1)).getCookie("SESSION");
		ask("two@example.org", "203.0.113.2");
		Cookie there = follow(secret(2)).getCookie("SESSION");
		assertThat(Jsoup.parse(answer(get("/me/sessions").cookie(here)).getContentAsString()).select("main ul li"))
			.hasSize(2);
		assertThat(answer(post("/me/sessions/ended").cookie(here).with(csrf())).getStatus()).isEqualTo(302);
		assertThat(answer(get("/sites").cookie(there)).getRedirectedUrl()).endsWith("/sign-in");
		assertThat(answer(get("/sites").cookie(here)).getStatus()).isEqualTo(200);
		MockHttpServletResponse out = answer(post("/sign-out").cookie(here).with(csrf()).secure(true));
		assertThat(out.getHeader("Clear-Site-Data")).contains("\"cookies\"");
		assertThat(answer(get("/sites").cookie(here)).getRedirectedUrl()).endsWith("/sign-in");
	}

	@Test
	void aSessionIsNeverInherited() throws Exception {
		Cookie before = answer(get("/sites")).getCookie("SESSION");
		assertThat(before).isNotNull();
		ask("fix@example.org");
		Cookie after = answer(post("/sign-in/once").param("token", secret(1)).cookie(before).with(csrf()))
			.getCookie("SESSION");
		assertThat(after.getValue()).isNotEqualTo(before.getValue());
		assertThat(answer(get("/me/sessions").cookie(before)).getRedirectedUrl()).endsWith("/sign-in");
	}

	@Test
	void operatorsEndSessions() throws Exception {
		ask("gone@example.org");
		Cookie theirs = follow(secret(1)).getCookie("SESSION");
		ask("runs@example.org");
		Cookie operators = follow(secret(2)).getCookie("SESSION");
		this.roles.grant(this.people.withAddress("runs@example.org").orElseThrow().id(), Role.OPERATOR, "");
		String id = this.people.withAddress("gone@example.org").orElseThrow().id().toString();
		assertThat(answer(post("/accounts/" + id + "/sessions/ended").cookie(theirs).with(csrf())).getStatus())
			.isEqualTo(403);
		assertThat(answer(post("/accounts/" + id + "/sessions/ended").cookie(operators).with(csrf())).getStatus())
			.isEqualTo(302);
		assertThat(answer(get("/me/sessions").cookie(theirs)).getRedirectedUrl()).endsWith("/sign-in");
		assertThat(answer(get("/audit").cookie(operators)).getContentAsString()).contains("ended all sessions");
	}

	@Test
	void signInsAreLogged(CapturedOutput output) throws Exception {
		ask("logged@example.org");
		follow(secret(1));
		follow("not-a-link", "198.51.100.77");
		assertThat(output.getAll())
			.contains(this.people.withAddress("logged@example.org").orElseThrow().id() + " signed in")
			.contains("a sign-in was refused")
			.doesNotContain("logged@example.org");
	}

	@Test
	void nobodyStaysSignedInForEver() throws Exception {
		ask("long@example.org");
		Cookie session = follow(secret(1)).getCookie("SESSION");
		Instant now = this.clock.instant();
		this.clock.set(Instant.now().plus(Duration.ofDays(89)));
		assertThat(answer(get("/sites").cookie(session)).getStatus()).isEqualTo(200);
		this.clock.set(Instant.now().plus(Duration.ofDays(91)));
		assertThat(answer(get("/sites").cookie(session)).getRedirectedUrl()).endsWith("/sign-in");
		this.clock.set(now);
	}

	@Test
	void whoLeavesTakesAllAlongAndIsGone() throws Exception {
		ask("leaver@example.org");
		Cookie session = follow(secret(1)).getCookie("SESSION");
		Person leaver = this.people.withAddress("leaver@example.org").orElseThrow();
		MockHttpServletResponse zip = answer(post("/me/archive").cookie(session).with(csrf()));
		assertThat(zip.getContentType()).isEqualTo("application/zip");
		assertThat(zip.getHeader("Content-Disposition")).startsWith("attachment; filename=\"leafward-");
		assertThat(answer(post("/me/end").param("name", "somebody").cookie(session).with(csrf())).getStatus())
			.isEqualTo(400);
		assertThat(this.people.find(leaver.id())).isPresent();
		MockHttpServletResponse gone = answer(
				post("/me/end").param("name", leaver.name()).cookie(session).with(csrf()));
		assertThat(gone.getStatus()).isEqualTo(200);
		assertThat(gone.getContentAsString()).contains("All of it is gone");
		assertThat(this.people.find(leaver.id())).isEmpty();
		assertThat(answer(get("/sites").cookie(session)).getRedirectedUrl()).endsWith("/sign-in");
		assertThat(this.database.sql("select count(*) from accounts.audit where deed = 'DELETED' and actor is null")
			.query(Long.class)
			.single()).isPositive();
	}

	@Test
	void whereNobodyNewMayJoinOnlyThoseWhoAreKnownGetLinks() {
		Arrivals closed = new Arrivals(this.people, this.roles, this.records, false);
		assertThat(closed.welcome("stranger@example.org")).isFalse();
		assertThat(closed.arrive("stranger@example.org", null)).isEmpty();
		this.people.join("Known", "known@example.org", ZoneId.of("America/Chicago"));
		assertThat(closed.welcome("KNOWN@example.org")).isTrue();
		assertThat(closed.arrive("known@example.org", null)).isPresent();
	}

	@Test
	void nobodyIsTurnedAwayForAName() {
		Arrivals open = new Arrivals(this.people, this.roles, this.records, true);
		assertThat(open.arrive("lines@example.org", "Ada\r\nBcc: eve \u202elast")).get()
			.extracting(SignedIn::called)
			.isEqualTo("Ada Bcc: eve  last");
		assertThat(open.arrive("\u202e@example.org", null)).get().extracting(SignedIn::called).isEqualTo("Gardener");
		assertThat(open.arrive("long@example.net", "x".repeat(300))).get()
			.extracting((one) -> one.called().length())
			.isEqualTo(100);
	}

	@Test
	void anAddressIsAddedOnceItsOwnerHasSaidSo() throws Exception {
		Person quick = this.people.withoutAddress("A quick calendar", ZoneId.of("America/Chicago"));
		assertThat(this.confirmations.ask(quick.id(), "later@example.org")).isEqualTo(Confirmations.Outcome.SENT);
		assertThat(this.people.find(quick.id()).flatMap(Person::mailbox)).isEmpty();
		String secret = secret(1);
		this.clock.advance(Duration.ofDays(2));
		assertThat(follow(secret).getRedirectedUrl()).isEqualTo("/");
		assertThat(this.people.find(quick.id()).flatMap(Person::mailbox)).contains("later@example.org");
	}

	@Test
	void browsersAreToldToStayOnTlsWhereThereIsSome() throws Exception {
		assertThat(answer(get("/sign-in").secure(true)).getHeader("Strict-Transport-Security"))
			.contains("max-age=31536000");
		MockHttpServletResponse plain = answer(get("/sign-in"));
		assertThat(plain.getHeader("Strict-Transport-Security")).isNull();
		assertThat(plain.getHeader("X-Content-Type-Options")).isEqualTo("nosniff");
		assertThat(plain.getHeader("Content-Security-Policy")).contains("default-src 'none'", "frame-ancestors 'none'")
			.doesNotContain("unsafe");
	}

	@Test
	void anotherServerVouchesForAnAddressThatItHasVerified() throws Exception {
		assertThat(answer(get("/sign-in")).getContentAsString()).contains("County network");
		MockHttpServletResponse in = openId(Map.of("email", "vouched@example.org", "email_verified", true));
		assertThat(in.getRedirectedUrl()).isEqualTo("/");
		Optional<Person> vouched = this.people.withAddress("vouched@example.org");
		assertThat(vouched).isPresent();
		assertThat(answer(get("/sites").cookie(in.getCookie("SESSION"))).getStatus()).isEqualTo(200);
		assertThat(openId(Map.of("email", "other@example.org", "email_verified", false)).getRedirectedUrl())
			.as("an address that anybody could have typed there")
			.isEqualTo("/sign-in?failed");
		assertThat(openId(Map.of("email", "other@example.org")).getRedirectedUrl()).isEqualTo("/sign-in?failed");
		assertThat(this.people.withAddress("other@example.org")).isEmpty();
	}

	@Test
	void anotherServersTokenIsMeantForUs() throws Exception {
		assertThat(openId(Map.of("email", "aimed@example.org", "email_verified", true, "aud", "somebody else"))
			.getRedirectedUrl()).isEqualTo("/sign-in?failed");
		assertThat(openId(Map.of("email", "aimed@example.org", "email_verified", true, "nonce", "of another session"))
			.getRedirectedUrl()).isEqualTo("/sign-in?failed");
		assertThat(this.people.withAddress("aimed@example.org")).isEmpty();
	}

	/**
	 * The code flow of OpenID Connect Core 1.0, section 3.1, as a browser would walk it.
	 */
	private MockHttpServletResponse openId(Map<String, Object> claims) throws Exception {
		MockHttpServletResponse begin = answer(get("/oauth2/authorization/county"));
		Map<String, String> asked = UriComponentsBuilder.fromUri(URI.create(begin.getRedirectedUrl()))
			.build(true)
			.getQueryParams()
			.toSingleValueMap();
		assertThat(begin.getRedirectedUrl()).startsWith(PROVIDER.address("/authorize").toString());
		AtomicReference<String> token = new AtomicReference<>(token(asked.get("nonce"), claims));
		PROVIDER.on("/keys", LocalServer.text("application/json", new JWKSet(KEY.toPublicJWK()).toString()));
		PROVIDER.on("/token", LocalServer.text("application/json", """
				{"access_token":"x","token_type":"Bearer","expires_in":60,"id_token":"%s"}""".formatted(token.get())));
		return answer(get("/login/oauth2/code/county").param("code", "once")
			.param("state", java.net.URLDecoder.decode(asked.get("state"), java.nio.charset.StandardCharsets.UTF_8))
			.cookie(begin.getCookie("SESSION")));
	}

	private static String token(String nonce, Map<String, Object> claims) throws JOSEException {
		JWTClaimsSet.Builder set = new JWTClaimsSet.Builder().subject("7")
			.issuer("https://id.example.org")
			.audience("leafward")
			.issueTime(Date.from(Instant.now()))
			.expirationTime(Date.from(Instant.now().plusSeconds(60)))
			.claim("nonce", nonce);
		claims.forEach(set::claim);
		SignedJWT token = new SignedJWT(new JWSHeader.Builder(JWSAlgorithm.RS256).keyID(KEY.getKeyID()).build(),
				set.build());
		token.sign(new RSASSASigner(KEY));
		return token.serialize();
	}

	private static RSAKey key() {
		try {
			return new RSAKeyGenerator(2048).keyID("one").generate();
		}
		catch (JOSEException ex) {
			throw new IllegalStateException(ex);
		}
	}

	private MockHttpServletResponse ask(String email) throws Exception {
		return ask(email, "203.0.113." + (1 + Math.abs(email.hashCode()) % 200));
	}

	private MockHttpServletResponse ask(String email, String network) throws Exception {
		return answer(post("/sign-in/link").param("email", email).with(csrf()).with((request) -> {
			request.setRemoteAddr(network);
			return request;
		}));
	}

	private MockHttpServletResponse follow(String secret) throws Exception {
		return follow(secret, "203.0.113.1");
	}

	private MockHttpServletResponse follow(String secret, String network) throws Exception {
		return answer(post("/sign-in/once").param("token", secret).with(csrf()).with((request) -> {
			request.setRemoteAddr(network);
			return request;
		}));
	}

	private MockHttpServletResponse answer(MockHttpServletRequestBuilder request) throws Exception {
		return this.web.perform(request).andReturn().getResponse();
	}

	/** What stands in the link of the latest mail. */
	private static String secret(int mails) throws Exception {
		await().atMost(Duration.ofSeconds(10)).until(() -> MAIL.getReceivedMessages().length >= mails);
		MimeMessage[] received = MAIL.getReceivedMessages();
		MimeMessage mail = received[received.length - 1];
		assertThat(mail.getHeader("Auto-Submitted")).containsExactly("auto-generated");
		MimeMultipart parts = (MimeMultipart) mail.getContent();
		String text = parts.getBodyPart(0).getContent().toString();
		Matcher link = LINK.matcher(text);
		assertThat(link.find()).as(text).isTrue();
		assertThat(parts.getBodyPart(1).getContent().toString()).contains(link.group(0));
		return link.group(1);
	}

	/** Tables with a row in which a text stands. */
	private List<String> rowsWith(String text) {
		return this.database.sql("""
				select table_schema || '.' || table_name from information_schema.tables
				where table_type = 'BASE TABLE' and table_schema not in ('pg_catalog', 'information_schema')
				""").query(String.class).list().stream().filter((table) -> {
			String[] parts = table.split("\\.");
			return this.database
				.sql("select count(*) from \"%s\".\"%s\" one where one::text like ?".formatted(parts[0], parts[1]))
				.param("%" + text + "%")
				.query(Long.class)
				.single() > 0;
		}).toList();
	}

}
