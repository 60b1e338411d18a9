package org.leafward;

import ch.qos.logback.classic.Level;
import ch.qos.logback.classic.Logger;
import ch.qos.logback.classic.LoggerContext;
import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.classic.spi.ThrowableProxyUtil;
import ch.qos.logback.core.AppenderBase;
import com.icegreen.greenmail.util.GreenMail;
import com.icegreen.greenmail.util.ServerSetup;
import io.micrometer.core.instrument.Meter;
import io.micrometer.core.instrument.MeterRegistry;
import jakarta.mail.BodyPart;
import jakarta.mail.Message.RecipientType;
import jakarta.mail.internet.MimeMessage;
import jakarta.mail.internet.MimeMultipart;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.Socket;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Base64;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Queue;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.UUID;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.GZIPInputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.leafward.accounts.People;
import org.leafward.accounts.PersonId;
import org.leafward.care.CareTask;
import org.leafward.care.NewObservation;
import org.leafward.care.Observation;
import org.leafward.care.PhenologyLog;
import org.leafward.care.TaskCalendar;
import org.leafward.measure.DayWindow;
import org.leafward.measure.GeoPoint;
import org.leafward.plants.SpeciesId;
import org.leafward.register.NewPlanting;
import org.leafward.register.NewSite;
import org.leafward.register.Placement;
import org.leafward.register.PlantingId;
import org.leafward.register.Register;
import org.leafward.register.SiteId;
import org.leafward.register.SoilTexture;
import org.leafward.register.Sun;
import org.leafward.register.Wind;
import org.leafward.reminders.Series;
import org.leafward.reminders.core.Links.Act;
import org.leafward.reminders.links.SignedLinks;
import org.leafward.support.LocalServer;
import org.leafward.support.SettableClock;
import org.leafward.support.TestDatabase;
import org.leafward.workdays.GroupDesk;
import org.leafward.workdays.GroupId;
import org.leafward.workdays.Groups;
import org.leafward.workdays.PlanTerms;
import org.leafward.workdays.PostRound;
import org.leafward.workdays.WorkdayDesk;
import org.leafward.workdays.WorkdayId;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest.WebEnvironment;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.context.TestConfiguration;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.ApplicationContextInitializer;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Primary;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.context.ContextConfiguration;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import org.springframework.web.util.HtmlUtils;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

/**
 * Secrets that get about. Every kind of secret is made, used, ended, misspelt and sent to
 * wrong addresses, over a real connection with a real SMTP conversation; then all that
 * the server wrote is searched: answers and their headers, log, access log, mails, every
 * column of every table, and what actuator would tell if all of it were opened.
 */
@SpringBootTest(webEnvironment = WebEnvironment.RANDOM_PORT,
		properties = { "leafward.operator-token=" + SecretLeakTests.OPERATOR, "leafward.rate-limits=false",
				"leafward.base-url=" + SecretLeakTests.BASE, "spring.quartz.auto-startup=false",
				"leafward.http.plain=true", "leafward.http.private-addresses=true", "logging.level.root=info",
				"logging.level.org.leafward=debug", "server.tomcat.accesslog.enabled=true",
				"server.tomcat.accesslog.buffered=false", "management.endpoints.web.exposure.include=*" })
@ContextConfiguration(initializers = { TestDatabase.class, SecretLeakTests.Lines.class })
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SecretLeakTests {

	/** With characters that look different in an address and on a page. */
	static final String OPERATOR = "Gk3+/=&%Wq8zLx2Vb7Nn5Tt+Yh4";

	static final String BASE = "https://plants.example.org";

	/** A part as long as this would help whoever guesses. */
	private static final int PART = 12;

	/** Runs before the context does, which an extension would not here. */
	private static final GreenMail MAIL = new GreenMail(new ServerSetup(0, "127.0.0.1", ServerSetup.PROTOCOL_SMTP));

	static {
		MAIL.start();
		// Otherwise the server writes of the first request only that it can't use.
		System.setProperty("org.apache.juli.logging.UserDataHelper.CONFIG", "INFO_ALL");
	}

	private static final Path ACCESS_LOG = Path.of("target", "access-log-" + System.nanoTime());

	private static final ZoneId CHICAGO = ZoneId.of("America/Chicago");

	private static final String FORM = "application/x-www-form-urlencoded";

	private final HttpClient http = HttpClient.newBuilder().followRedirects(HttpClient.Redirect.NEVER).build();

	/** Name to all forms of all parts. */
	private final Map<String, Set<String>> secrets = new LinkedHashMap<>();

	/** Name of a secret to the only address that its mail may go to. */
	private final Map<String, String> owners = new LinkedHashMap<>();

	/** Cookies, which let somebody in as well. */
	private final Set<String> cookies = new TreeSet<>();

	private final List<Exchange> exchanges = new ArrayList<>();

	private List<String> log = List.of();

	private Map<String, List<String>> mails = Map.of();

	@LocalServerPort
	private int port;

	@Autowired
	private SettableClock clock;

	@Autowired
	private JdbcClient database;

	@Autowired
	private MeterRegistry meters;

	@Autowired
	private People people;

	@Autowired
	private Register register;

	@Autowired
	private TaskCalendar calendar;

	@Autowired
	private PhenologyLog phenology;

	@Autowired
	private SignedLinks links;

	@Autowired
	private GroupDesk groups;

	@Autowired
	private Groups allGroups;

	@Autowired
	private WorkdayDesk workdays;

	@Autowired
	private PostRound post;

	@TestConfiguration(proxyBeanMethods = false)
	static class Time {

		@Bean
		@Primary
		SettableClock settableClock() {
			return new SettableClock(Instant.now());
		}

	}

	/** Hears the log from before the first bean is made. */
	static final class Lines implements ApplicationContextInitializer<ConfigurableApplicationContext> {

		private static final Queue<String> HEARD = new ConcurrentLinkedQueue<>();

		private static final AppenderBase<ILoggingEvent> EAR = new AppenderBase<>() {
			@Override
			protected void append(ILoggingEvent line) {
				if (line.getLoggerName().startsWith("com.icegreen.")) {
					// The other side of the mail.
					return;
				}
				String thrown = (line.getThrowableProxy() != null)
						? ThrowableProxyUtil.asString(line.getThrowableProxy()) : "";
				HEARD.add("%s %s %s %s %s".formatted(line.getLevel(), line.getLoggerName(), line.getFormattedMessage(),
						line.getMDCPropertyMap(), thrown));
			}
		};

		private static Logger root() {
			return ((LoggerContext) LoggerFactory.getILoggerFactory()).getLogger(org.slf4j.Logger.ROOT_LOGGER_NAME);
		}

		@Override
		public void initialize(ConfigurableApplicationContext context) {
			EAR.setContext(root().getLoggerContext());
			EAR.start();
			root().addAppender(EAR);
		}

	}

	/** A question and its answer, with the secrets that the answer is there to show. */
	private record Exchange(String what, String address, int status, Map<String, List<String>> headers, String body,
			Set<String> shows) {

		Exchange showing(String... names) {
			this.shows.addAll(List.of(names));
			return this;
		}

		Exchange answers(int... statuses) {
			assertThat(statuses).as(what() + ": " + body()).contains(status());
			return this;
		}

		Document page() {
			return Jsoup.parse(this.body);
		}

		String header(String name) {
			return this.headers.entrySet()
				.stream()
				.filter((one) -> one.getKey().equalsIgnoreCase(name))
				.flatMap((one) -> one.getValue().stream())
				.collect(Collectors.joining(", "));
		}

	}

	@DynamicPropertySource
	static void servers(DynamicPropertyRegistry properties) {
		properties.add("spring.mail.host", () -> "127.0.0.1");
		properties.add("spring.mail.port", () -> MAIL.getSmtp().getPort());
		properties.add("server.tomcat.accesslog.directory", () -> ACCESS_LOG.toAbsolutePath().toString());
	}

	@BeforeAll
	void everySecretIsUsedInEveryWay() throws Exception {
		know("operator token", OPERATOR);
		Browser somebody = somebodySignsIn();
		programsCallWithAToken(somebody);
		Browser operator = theOperatorSignsIn();
		feedsAreMadeAndEnd(somebody);
		aWebhookIsTold(somebody);
		messagesAreActedOn(somebody);
		aGroupIsJoinedAndAnInvitationAnswered(somebody);
		aQuickCalendarIsManaged();
		linksEnd();
		nothingIsWrittenOfWhatTheServerRefuses();
		actuatorTells(operator);
		this.mails = mails();
		this.log = List.copyOf(Lines.HEARD);
	}

	@AfterAll
	static void hush() {
		MAIL.stop();
		Lines.root().detachAppender(Lines.EAR);
		Lines.EAR.stop();
		Lines.HEARD.clear();
		Lines.root().setLevel(Level.WARN);
		Lines.root().getLoggerContext().getLogger("org.leafward").setLevel(null);
	}

	/** Secrets: link to sign in, its session. */
	private Browser somebodySignsIn() throws Exception {
		Browser browser = new Browser();
		browser.get("/sign-in").answers(200);
		browser.post("a link is asked for", "/sign-in/link", "email", "mara@example.org").answers(302);
		String link = linkFor("mara@example.org", 1);
		know("link", link);
		this.owners.put("link", "mara@example.org");
		for (String path : List.of("/sign-in/once?token=" + link, "/sign-in/once?x=1&token=" + link)) {
			browser.get(path).answers(200).showing("link");
		}
		for (String path : List.of("/sign-in/once?token=" + link.substring(0, 40), "/sign-in/once?token=" + link + "x",
				"/sign-in/once?token=%20" + link, "/sign-in?token=" + link, "/sign-in?failed&token=" + link)) {
			browser.get(path).answers(200);
		}
		wrongAddresses(browser, "/sign-in/once", "?token=" + link);
		wrongAddresses(browser, "/sign-in/once/" + link, "");
		wrongAddresses(browser, "/Sign-In/once", "?token=" + link);
		// A stranger at a closed page is sent to sign in, and back afterwards.
		for (String path : List.of("/sites?token=" + link, "/" + link, "/sites/" + link)) {
			new Browser().get(path).answers(302);
			browser.get(path).answers(302);
		}
		send("a form without its secret", browser.form("/sign-in/once", "token", link)).answers(403);
		browser.get("/sign-in").answers(200);
		Exchange in = browser.post("the link is followed", "/sign-in/once", "token", link).answers(302);
		assertThat(in.header("Location")).as("the page that was wanted, without its query").endsWith("/sites");
		browser.get("/me").answers(200);
		Browser again = new Browser();
		again.get("/sign-in/once?token=" + link).answers(200).showing("link");
		assertThat(again.post("the link is followed again", "/sign-in/once", "token", link).header("Location"))
			.endsWith("/sign-in?failed");
		again.post("in the address", "/sign-in/once?token=" + link, "x", "1").answers(302);
		return browser;
	}

	/** Secret: token of a program. */
	private void programsCallWithAToken(Browser browser) throws Exception {
		browser.get("/me/tokens").answers(200);
		browser.post("a token that can't be", "/me/tokens", "name", "", "scope", "read", "days", "0").answers(400);
		Exchange made = browser
			.post("a token is made", "/me/tokens", "name", "Sprinkler", "scope", "read", "scope", "write", "days", "30")
			.answers(200);
		String token = made.page().getElementById("token").text();
		know("token", token);
		made.showing("token");
		browser.get("/me/tokens").answers(200);
		send("called", api("GET", "/api/v1/sites").header("Authorization", "Bearer " + token)).answers(200);
		String basic = Base64.getEncoder().encodeToString((token + ":").getBytes(StandardCharsets.US_ASCII));
		for (String header : List.of("Bearer " + token + "x", "Bearer " + token.substring(0, 45), "Bearer" + token,
				"Token " + token, "Bearer \"" + token + "\"", token, "Basic " + basic, "Bearer " + OPERATOR + "x",
				"Bearer " + OPERATOR + " " + token)) {
			send("a wrong header", api("GET", "/api/v1/sites").header("Authorization", header)).answers(401);
			// Pages take no token: they send to the sign-in, and whatever was asked for
			// may be remembered.
			send("a wrong header at a page", api("GET", "/sites").header("Authorization", header)).answers(302);
			send("a wrong header at a feed", api("GET", "/f/x/tasks.ics").header("Authorization", header)).answers(404);
		}
		send("a token at a page", api("GET", "/sites").header("Authorization", "Bearer " + token)).answers(302);
		send("two headers", api("GET", "/api/v1/sites").header("Authorization", "Bearer " + token)
			.header("Authorization", "Bearer " + OPERATOR)).answers(400);
		String encoded = URLEncoder.encode(OPERATOR, StandardCharsets.UTF_8);
		for (String query : List.of("access_token=" + token, "access_token=" + encoded, "page=" + token,
				"page=" + encoded)) {
			send("in the address", api("GET", "/api/v1/sites?" + query)).answers(401);
			send("in the address, let in",
					api("GET", "/api/v1/sites?" + query).header("Authorization", "Bearer " + token))
				.answers(200, 400);
			send("in the address of a page", api("GET", "/sites?" + query)).answers(302);
		}
		String bearer = "Bearer " + token;
		send("no such address", api("GET", "/api/v1/nothing").header("Authorization", bearer)).answers(404);
		send("wrong method", api("DELETE", "/api/v1/sites").header("Authorization", bearer)).answers(405);
		send("wrong type",
				request("/api/v1/sites").POST(BodyPublishers.ofString("x"))
					.header("Content-Type", "text/plain")
					.header("Authorization", bearer))
			.answers(415);
		for (String body : List.of("{\"name\": \"" + token + "\", \"nickname\": 1}", token, "[\"" + token + "\"")) {
			send("a secret in a body that can't be read",
					request("/api/v1/sites").POST(BodyPublishers.ofString(body))
						.header("Content-Type", "application/json")
						.header("Authorization", bearer))
				.answers(400);
		}
		broken("accounts.token",
				() -> send("broken", api("GET", "/api/v1/sites").header("Authorization", bearer)).answers(500));
		String id = browser.get("/me/tokens").page().select("form[action$=/revoke]").attr("action");
		browser.post("a token is revoked", id).answers(302);
		send("revoked", api("GET", "/api/v1/sites").header("Authorization", bearer)).answers(401);
	}

	/** Secret: the operator's token. */
	private Browser theOperatorSignsIn() throws Exception {
		Browser browser = new Browser();
		browser.get("/sign-in").answers(200);
		for (String wrong : List.of(OPERATOR + "x", OPERATOR.substring(1), " ")) {
			browser.post("a wrong operator token", "/sign-in", "token", wrong).answers(401);
		}
		send("a form without its secret", browser.form("/sign-in", "token", OPERATOR)).answers(403);
		String encoded = URLEncoder.encode(OPERATOR, StandardCharsets.UTF_8);
		browser.get("/sign-in?token=" + encoded).answers(200);
		browser.get("/replanning?token=" + encoded).answers(302);
		browser.post("as the wrong field", "/sign-in/link", "email", OPERATOR).answers(400).showing("operator token");
		browser.post("the operator signs in", "/sign-in", "token", OPERATOR).answers(302);
		browser.get("/accounts").answers(200);
		for (String path : List.of("/api/v1/people", "/api/v1/nothing")) {
			send("the operator calls", api("GET", path).header("Authorization", "Bearer " + OPERATOR)).answers(200,
					404);
		}
		return browser;
	}

	/** Secrets: addresses of feeds. */
	private void feedsAreMadeAndEnd(Browser browser) throws Exception {
		PersonId mara = this.people.withAddress("mara@example.org").orElseThrow().id();
		SiteId site = this.register
			.addSite(mara,
					new NewSite("Mara's garden", "", new GeoPoint(42.1, -91.5, 230), CHICAGO, SoilTexture.LOAM,
							Sun.FULL_SUN, Wind.AVERAGE))
			.id();
		this.register.addPlantings(site, List.of(new NewPlanting(new SpeciesId("buxus-sempervirens"), "hedge", 3,
				LocalDate.of(2015, 4, 1), Placement.GROUND, false, true)));
		browser.get("/subscribe").answers(200);
		Exchange made = browser.post("a feed is made", "/subscribe", "what", "all").answers(200);
		String feed = feedIn(made.page().getElementById("main").text());
		know("feed", feed);
		made.showing("feed");
		Exchange byApi = send("a feed is made by API",
				request("/api/v1/sites/%s/feed".formatted(site)).POST(BodyPublishers.noBody())
					.header("Authorization", "Bearer " + OPERATOR))
			.answers(201);
		know("feed by API", feedIn(byApi.body()));
		byApi.showing("feed by API");
		send("feeds of a site",
				api("GET", "/api/v1/sites/%s/feeds".formatted(site)).header("Authorization", "Bearer " + OPERATOR))
			.answers(200);
		feedIsFetched(feed);
		browser.get("/subscribe").answers(200);
		browser.get("/outbox").answers(200);
		browser.get("/me").answers(200);
		browser.post("all of it is taken away", "/me/archive").answers(200);
		broken("feeds.feed", () -> {
			// Of to-dos nothing is in memory yet.
			send("broken", api("GET", "/f/" + feed + "/todo.ics")).answers(500);
			send("broken", api("HEAD", "/f/" + feed + "/todo.ics")).answers(500);
		});
		String stop = browser.get("/subscribe").page().select("form[action$=/stop]").attr("action");
		browser.post("a feed is stopped", stop).answers(302);
		browser.get("/subscribe").answers(200);
		String other = browser.get("/subscribe").page().select("form[action$=/stop]").attr("action");
		browser.post("the other is stopped", other).answers(302);
		send("revoked", api("GET", "/f/" + feed + "/tasks.ics")).answers(410);
		send("revoked", api("HEAD", "/f/" + feed + "/tasks.ics")).answers(410);
	}

	/** Secrets: what signs, and what stands in the address of the other server. */
	private void aWebhookIsTold(Browser browser) throws Exception {
		String page = "/reminders/webhook";
		String path = "q7Jx2Vb9Lk4Wm6Tz1Rp8Nc3Hd5Gs0Fy";
		know("webhook address", path);
		browser.get(page).answers(200);
		browser.post("a webhook that can't be", page, "address", "gopher://example.org/" + path)
			.answers(400)
			.showing("webhook address");
		try (LocalServer receiver = LocalServer.start()) {
			receiver.on("/" + path, LocalServer.status(204));
			Exchange made = browser.post("a webhook is made", page, "address", receiver.address("/" + path).toString())
				.answers(200);
			signs("webhook secret", made.page().getElementById("secret").text());
			made.showing("webhook address", "webhook secret");
			browser.get(page).answers(200).showing("webhook address");
			browser.post("a trial", page + "/trial").answers(302);
			receiver.on("/" + path, LocalServer.status(302, "Location", "/elsewhere/" + path));
			browser.post("a trial is sent elsewhere", page + "/trial").answers(302);
			assertThat(receiver.asked()).containsExactly("/" + path, "/" + path);
			Exchange renewed = browser.post("another secret", page + "/secret").answers(200);
			signs("other webhook secret", renewed.page().getElementById("secret").text());
			renewed.showing("webhook address", "other webhook secret");
		}
		browser.post("a trial that nobody hears", page + "/trial").answers(302);
		browser.get(page).answers(200).showing("webhook address");
		aWebhookByApi(browser);
		broken("reminders.webhook", () -> {
			browser.get(page).answers(500);
			browser.post("broken", page + "/trial").answers(500);
		});
		browser.post("all of it is taken away", "/me/archive").answers(200);
		browser.get("/me").answers(200);
	}

	private void aWebhookByApi(Browser browser) throws Exception {
		Exchange made = browser
			.post("another token is made", "/me/tokens", "name", "Hook", "scope", "read", "scope", "write", "days",
					"30")
			.answers(200);
		String token = made.page().getElementById("token").text();
		know("another token", token);
		made.showing("another token");
		String bearer = "Bearer " + token;
		String api = "/api/v1/reminders/webhook";
		send("looked at", api("GET", api).header("Authorization", bearer)).answers(200).showing("webhook address");
		send("misspelt",
				request(api)
					.PUT(BodyPublishers.ofString(
							"{\"url\": \"https://example.org/%s\"}".formatted(this.wholes.get("webhook address"))))
					.header("Content-Type", "application/json")
					.header("Authorization", bearer))
			.answers(400);
		Exchange renewed = send("another secret", api("POST", api + "/secret").header("Authorization", bearer))
			.answers(200);
		signs("webhook secret by API", found("\"secret\":\"([^\"]+)\"", renewed.body()));
		renewed.showing("webhook address", "webhook secret by API");
		send("a trial", api("POST", api + "/trial").header("Authorization", bearer)).answers(200)
			.showing("webhook address");
	}

	/** In the form in which it is shown, and as octets, as they are kept. */
	private void signs(String name, String secret) {
		know(name, secret);
		this.secrets.get(name)
			.add(HexFormat.of().formatHex(Base64.getDecoder().decode(secret.substring("whsec_".length()))));
	}

	private void feedIsFetched(String feed) throws Exception {
		String path = "/f/" + feed + "/tasks.ics";
		Exchange got = send("fetched", api("GET", path)).answers(200);
		assertThat(got.body()).startsWith("BEGIN:VCALENDAR");
		send("packed", api("GET", path).header("Accept-Encoding", "gzip")).answers(200);
		send("not modified", api("GET", path).header("If-None-Match", got.header("ETag"))).answers(304);
		send("head", api("HEAD", path)).answers(200);
		for (String method : List.of("POST", "PUT", "DELETE", "OPTIONS", "PROPFIND", "TRACK")) {
			send(method, request(path).method(method, BodyPublishers.noBody())).answers(405);
		}
		for (String wrong : List.of("/f/" + feed, "/f/" + feed + "x/tasks.ics",
				"/f/" + feed.substring(1) + "/tasks.ics", "/f/x/" + feed)) {
			send("unknown", api("GET", wrong)).answers(404);
		}
		wrongAddresses(new Browser(), "/f/" + feed, "");
		wrongAddresses(new Browser(), path, "?x=" + feed);
		wrongAddresses(new Browser(), "/F/" + feed + "/tasks.ics", "");
		wrongAddresses(new Browser(), "/feed/" + feed, "");
	}

	/** Secrets: a link that acts on a reminder, one that leaves a series. */
	private void aGroupIsJoinedAndAnInvitationAnswered(Browser browser) throws Exception {
		PersonId mara = this.people.withAddress("mara@example.org").orElseThrow().id();
		GroupId group = this.groups.make(new GroupDesk.Told("Crew", "", CHICAGO, "", Set.of(DayOfWeek.SATURDAY),
				LocalTime.of(9, 0), LocalTime.of(12, 0), 10, Set.of(), PlanTerms.USUAL), mara);
		browser.get("/groups/" + group).answers(200);
		Exchange made = browser.post("a link to a group is made", "/groups/%s/links".formatted(group), "x", "1")
			.answers(200);
		String link = made.page().getElementById("link").text();
		String join = URI.create(link).getPath();
		know("group link", join.substring(6));
		made.showing("group link");
		for (Browser one : List.of(browser, new Browser())) {
			one.get(join).answers(200);
			one.get(join + "?x=" + join.substring(6)).answers(200);
			wrongAddresses(one, join, "");
			one.get(join + "x").answers(404);
			wrongAddresses(one, "/Join/" + join.substring(6), "");
		}
		new Browser().get("/groups/" + join.substring(6)).answers(302);
		browser.get(join).answers(200);
		browser.post("joined", join, "x", "1").answers(302);
		String ended = browser.get("/groups/" + group).page().select("form[action$=/withdraw]").attr("action");
		browser.post("the link to a group is withdrawn", ended, "x", "1").answers(302);
		browser.get(join).answers(404);
		WorkdayId day = this.workdays.add(this.allGroups.find(group).orElseThrow(),
				new WorkdayDesk.Frame(LocalDate.ofInstant(this.clock.instant(), CHICAGO).plusDays(9),
						LocalTime.of(9, 0), LocalTime.of(12, 0), "", 10, null));
		this.workdays.fix(day);
		String body = this.database.sql("select body from workdays.message where workday = ?")
			.param(day.value())
			.query(String.class)
			.single();
		String token = body.replaceAll("(?s).*/w/([0-9a-f]{32}).*", "$1");
		know("answer link", token);
		assertThat(this.post.send(Duration.ofSeconds(20))).isEqualTo(1);
		assertThat(this.database
			.sql("select state || coalesce(': ' || because, '') from workdays.message where workday = ?")
			.param(day.value())
			.query(String.class)
			.single()).isEqualTo("SENT");
		this.owners.put("answer link", "mara@example.org");
		for (Browser one : List.of(browser, new Browser())) {
			one.get("/w/" + token).answers(200).showing("answer link");
			wrongAddresses(one, "/w/" + token, "");
			one.get("/w/" + token + "0").answers(404);
			one.get("/w/" + token.substring(1)).answers(404);
			one.post("neither yes nor no", "/w/" + token, "come", token).answers(200).showing("answer link");
			one.post("no", "/w/" + token, "come", "no").answers(200).showing("answer link");
		}
	}

	private void messagesAreActedOn(Browser browser) throws Exception {
		PersonId mara = this.people.withAddress("mara@example.org").orElseThrow().id();
		LocalDate today = LocalDate.ofInstant(this.clock.instant(), CHICAGO);
		SiteId site = this.register.sitesOf(mara).get(0).id();
		PlantingId lilac = this.register
			.addPlantings(site, List.of(new NewPlanting(new SpeciesId("syringa-vulgaris"), "lilac", 1,
					LocalDate.of(2015, 4, 1), Placement.GROUND, false, false)))
			.get(0)
			.id();
		// Without a station only what was seen gives dates.
		this.phenology.observe(site, new NewObservation(lilac, Observation.Kind.PHASE, "bloom-end", today.minusDays(2)),
				mara);
		CareTask task = this.calendar.ofPerson(mara, new DayWindow(today, today.plusYears(1))).get(0);
		UUID message = UUID.randomUUID();
		this.database.sql("""
				insert into reminders.message (id, person_id, sender, recipient, recipient_name, subject, body_text,
					body_html, message_id, state, created_at, series)
				values (?, ?, 'a@example.org', 'mara@example.org', 'Mara', 'Water', 'Water.', '', ?, 'SENT', now(),
					'morning')
				""").params(message, mara.value(), message.toString()).update();
		UUID reminder = UUID.randomUUID();
		this.database.sql("""
				insert into reminders.reminder (id, person_id, task_id, first_day, dedup_key, due_at, expires_at, state,
					next_try_at, message_id)
				values (?, ?, ?, ?, ?, now(), now(), 'SENT', now(), ?)
				""")
			.params(reminder, mara.value(), task.id().value(), today, "mail:%s@%s".formatted(reminder, today), message)
			.update();
		String act = URI.create(this.links.act(reminder, Act.DONE)).getPath();
		String stop = URI.create(this.links.stop(mara, "mail", Series.MORNING)).getPath();
		know("act link", act.substring(3));
		know("stop link", stop.substring(3));
		for (Browser one : List.of(browser, new Browser())) {
			one.get(act).answers(200).showing("act link", "stop link");
			one.get(stop).answers(200).showing("stop link");
			one.get(act + "?act=done&x=" + act.substring(3)).answers(200).showing("act link", "stop link");
			for (String path : List.of(act, stop)) {
				wrongAddresses(one, path, "");
				one.get(path + "x").answers(404);
				one.get(path.substring(0, path.length() - 1)).answers(404);
				one.get(path.substring(0, 3) + path.substring(4)).answers(404);
				one.post("nothing there", path + "x").answers(404);
			}
			wrongAddresses(one, "/R/" + act.substring(3), "");
			wrongAddresses(one, "/U/" + stop.substring(3), "");
			one.get("/r/" + stop.substring(3)).answers(404);
			one.get("/u/" + act.substring(3)).answers(404);
		}
		broken("reminders.reminder", () -> {
			browser.get(act).answers(500);
			browser.post("broken", act, "act", "later").answers(500);
		});
		broken("reminders.stopped", () -> {
			browser.get(stop).answers(500);
			browser.post("broken", stop).answers(500);
		});
		send("no such act", new Browser().form(act, "act", act.substring(3))).answers(400);
		for (String one : List.of("later", "undo", "skip", "undo")) {
			send(one, new Browser().form(act, "act", one)).answers(200).showing("act link", "stop link");
		}
		// RFC 8058, section 3.2: in either encoding.
		send("a mail service leaves", new Browser().form(stop, "List-Unsubscribe", "One-Click")).answers(200)
			.showing("stop link");
		send("a mail service leaves in parts",
				request(stop)
					.POST(BodyPublishers.ofString("--b\r\nContent-Disposition: form-data; name=\"List-Unsubscribe\""
							+ "\r\n\r\nOne-Click\r\n--b--\r\n"))
					.header("Content-Type", "multipart/form-data; boundary=b"))
			.answers(200)
			.showing("stop link");
		send("and comes back", new Browser().form(stop + "/back")).answers(200).showing("stop link");
		this.clock.advance(Duration.ofDays(61));
		browser.get(act).answers(410);
		this.clock.advance(Duration.ofDays(-61));
	}

	/** Secrets: address, another address, what manages it, the link of its owner. */
	private void aQuickCalendarIsManaged() throws Exception {
		Browser browser = new Browser();
		browser.get("/quick").answers(200);
		Exchange made = make(browser).answers(200);
		String manage = manageIn(made);
		know("manage", manage);
		know("quick feed", feedIn(made.page().getElementById("address").text()));
		made.showing("manage", "quick feed");
		feedIsFetched(feedIn(made.page().getElementById("address").text()));
		String path = "/quick/manage/" + manage;
		browser.get(path).answers(200).showing("manage");
		wrongAddresses(browser, path, "");
		wrongAddresses(browser, path + "/email", "?email=a@example.org");
		wrongAddresses(new Browser(), "/Quick/Manage/" + manage, "");
		browser.get(path + "x").answers(404);
		browser.get("/quick/manage/" + manage.substring(2)).answers(404);
		browser.get(path).showing("manage");
		for (String act : List.of("/email", "/address", "/delete", "/nothing", "")) {
			send("a form without its secret", browser.form(path + act, "email", "a@example.org")).answers(403);
			send("a wrong method", browser.request(path + act).method("PUT", BodyPublishers.noBody())).answers(403);
			browser.post("no such calendar", path + "x" + act, "email", "a@example.org").answers(404, 405);
		}
		browser.get(path).answers(200).showing("manage");
		browser.post("nothing there", path + "/nothing").answers(404);
		browser.post("a wrong method", path).answers(405);
		browser.post("no address", path + "/email", "email", "nobody").answers(400).showing("manage");
		browser.post("no address at all", path + "/email").answers(400).showing("manage");
		browser.post("too large", path + "/email", "email", "x".repeat(1_200_000)).answers(403, 413);
		send("no form",
				browser.request(path + "/email?_csrf=" + browser.secretOfForms)
					.POST(BodyPublishers.ofString("{"))
					.header("Content-Type", "application/json"))
			.answers(400, 415)
			.showing("manage");
		broken("quick.calendar", () -> {
			browser.get(path).answers(500);
			browser.post("broken", path + "/email", "email", "a@example.org").answers(500);
		});
		browser.get(path).answers(200).showing("manage");
		Exchange another = browser.post("another address", path + "/address").answers(200);
		String second = feedIn(another.page().getElementById("address").text());
		know("second quick feed", second);
		another.showing("manage", "second quick feed");
		send("fetched", api("GET", "/f/" + second + "/tasks.ics")).answers(200);
		browser.post("somebody adds an address", path + "/email", "email", "odo@example.org")
			.answers(200)
			.showing("manage");
		String confirm = linkFor("odo@example.org", 1);
		know("confirmation", confirm);
		this.owners.put("confirmation", "odo@example.org");
		browser.get(path).answers(200).showing("manage");
		Browser odo = new Browser();
		odo.get("/sign-in/once?token=" + confirm).answers(200).showing("confirmation");
		broken("accounts.one_time_link", () -> odo.post("broken", "/sign-in/once", "token", confirm).answers(500));
		odo.get("/sign-in/once?token=" + confirm).answers(200).showing("confirmation");
		odo.post("the address is confirmed", "/sign-in/once", "token", confirm).answers(302);
		odo.get("/sites").answers(200);
		odo.get("/subscribe").answers(200);
		odo.post("all of it is taken away", "/me/archive").answers(200);
		browser.get(path).answers(200);
		browser.post("it has an owner now", path + "/delete").answers(404);
		aQuickCalendarIsDeleted();
	}

	private void aQuickCalendarIsDeleted() throws Exception {
		Browser browser = new Browser();
		browser.get("/quick").answers(200);
		Exchange made = make(browser).answers(200);
		know("other manage", manageIn(made));
		know("other quick feed", feedIn(made.page().getElementById("address").text()));
		made.showing("other manage", "other quick feed");
		String path = "/quick/manage/" + manageIn(made);
		browser.get(path).answers(200).showing("other manage");
		browser.post("a calendar is deleted", path + "/delete").answers(200);
		browser.get(path).answers(404);
		send("gone", api("GET", URI.create(made.page().getElementById("address").text()).getPath())).answers(410);
	}

	private static Exchange make(Browser browser) throws Exception {
		return browser.post("a quick calendar is made", "/quick/calendar", "latitude", "42.08", "longitude", "-91.58",
				"elevation", "230", "unit", "m", "zone", "America/Chicago", "species", "acer-rubrum");
	}

	/** Secret: a link that nobody followed in time. */
	private void linksEnd() throws Exception {
		Browser browser = new Browser();
		browser.get("/sign-in").answers(200);
		browser.post("a link is asked for", "/sign-in/link", "email", "nils@example.org").answers(302);
		String link = linkFor("nils@example.org", 1);
		know("link that ends", link);
		this.owners.put("link that ends", "nils@example.org");
		this.clock.advance(Duration.ofMinutes(11));
		browser.get("/sign-in/once?token=" + link).answers(200).showing("link that ends");
		assertThat(browser.post("too late", "/sign-in/once", "token", link).header("Location"))
			.endsWith("/sign-in?failed");
		browser.get("/sign-in?failed").answers(200);
	}

	/** What a client would mend before it sends it; the server writes of some of it. */
	private void nothingIsWrittenOfWhatTheServerRefuses() throws Exception {
		String cookie = this.cookies.iterator().next();
		for (String secret : List.of(whole("feed"), whole("manage"), whole("link"), whole("token"), whole("act link"),
				whole("stop link"))) {
			for (String line : List.of("GET /f/%s/tasks.ics|x HTTP/1.1", "GET /f/%s/{x} HTTP/1.1",
					"GET /r/%s|x HTTP/1.1", "GET /u/%s%%zz HTTP/1.1", "POST /u/%s^ HTTP/1.1",
					"GET /quick/manage/%s\"<x> HTTP/1.1", "GET /quick/manage/%s^ HTTP/1.1",
					"GET /sign-in/once?token=%s{ HTTP/1.1", "GET /sign-in/once?token=%s%%zz HTTP/1.1",
					"GET /f/%s%%zz/tasks.ics HTTP/1.1", "GET /f/%s%%2F/tasks.ics HTTP/1.1",
					"GET /quick/manage/%s%%5C HTTP/1.1", "GET /f/%s/tasks.ics%%00 HTTP/1.1", "GET /f/%s/tasks.ics",
					"GET /f/%s/tasks.ics HTTP/9.9", "GE(T /f/%s/tasks.ics HTTP/1.1",
					"GET http://[/f/%s/tasks.ics HTTP/1.1", "GET /f/%s/../../%1$s HTTP/1.1",
					"GET /f/%s/tasks.ics HTTP/1.1\r\nHost: bad^host")) {
				raw(line.formatted(secret), "", "");
			}
			raw("GET /quick/manage/" + secret + "/" + "x".repeat(20_000) + " HTTP/1.1", "", "");
			for (String header : List.of("Bad(Header: " + secret, "Authorization : Bearer " + secret, secret,
					"Authorization: Bearer " + secret + "\u0001", "Cookie: SESSION=" + secret + "\u0001; a=b",
					"Cookie: a={\"" + secret, "Content-Length: " + secret, "Content-Type: " + secret,
					"Accept: " + secret, "Accept-Language: " + secret, "If-Modified-Since: " + secret,
					"Range: bytes=" + secret, "Origin: " + secret, "Expect: " + secret, "Forwarded: for=" + secret,
					"X-Forwarded-For: " + secret, "X-Forwarded-Port: " + secret, "X-Forwarded-Proto: " + secret,
					"Transfer-Encoding: " + secret, "Cookie: __Host-SESSION=" + cookie + "\u0001",
					"Cookie: x=\"; __Host-SESSION=" + cookie)) {
				raw("GET /api/v1/sites HTTP/1.1", header + "\r\n", "");
				raw("GET /sites HTTP/1.1", header + "\r\n", "");
			}
			for (String body : List.of("token=" + secret + "%zz", secret + "%", "%zz=" + secret, "token=%FF" + secret,
					"a=b&".repeat(1100) + "token=" + secret)) {
				raw("POST /sign-in/once HTTP/1.1",
						"Content-Type: %s\r\nContent-Length: %d\r\n".formatted(FORM, body.length()), body);
				raw("POST /quick/manage/" + secret + "/email HTTP/1.1",
						"Content-Type: %s\r\nContent-Length: %d\r\n".formatted(FORM, body.length()), body);
			}
			String parts = "--b\r\nContent-Disposition: form-data; name=\"token\"\r\n\r\n" + secret;
			raw("POST /sign-in/once HTTP/1.1",
					"Content-Type: multipart/form-data; boundary=b\r\nContent-Length: %d\r\n".formatted(parts.length()),
					parts);
			raw("POST /quick/manage/" + secret + "/email HTTP/1.1",
					"Content-Type: multipart/form-data\r\nContent-Length: %d\r\n".formatted(parts.length()), parts);
			raw("POST /sign-in/once HTTP/1.1", "Content-Type: %s\r\nTransfer-Encoding: chunked\r\n".formatted(FORM),
					secret + "\r\n");
		}
	}

	/** Nothing but health is open; if all were, it would tell no secret either. */
	private void actuatorTells(Browser operator) throws Exception {
		Exchange links = operator.get("/actuator").answers(200);
		Matcher paths = Pattern.compile("\"href\":\"[^\"]*(/actuator/[^\"{]+)\"").matcher(links.body());
		List<String> asked = new ArrayList<>();
		while (paths.find()) {
			// The heap holds whatever is being worked on.
			if (!paths.group(1).endsWith("/heapdump")) {
				asked.add(paths.group(1));
				operator.get(paths.group(1)).answers(200, 400, 404, 405);
			}
		}
		assertThat(asked).contains("/actuator/metrics", "/actuator/env", "/actuator/configprops");
		assertThat(operator.get("/actuator/metrics/http.server.requests").answers(200).body())
			.contains("/quick/manage/{secret}", "/f/{token}/tasks.ics", "/r/{token}", "/u/{token}");
	}

	/** Addresses around one that is right. */
	private void wrongAddresses(Browser browser, String path, String query) throws Exception {
		for (String wrong : List.of(path + "/nothing", path + "/", path + ";x", path + "//", path + "/../x", path + ".",
				path + ".html", path + "%20", "/" + path, path + "%252F", path + "/%2e%2e/x")) {
			Exchange got = browser.get(wrong + query);
			assertThat(got.status()).as(wrong).isBetween(300, 499);
		}
		for (String method : List.of("DELETE", "PATCH", "OPTIONS", "NONSENSE")) {
			assertThat(send(method, browser.request(path + query).method(method, BodyPublishers.noBody())).status())
				.as(method + " " + path)
				.isBetween(200, 499);
		}
		send("a type that isn't there", browser.request(path + "/nothing" + query).GET().header("Accept", "image/png"));
	}

	@Test
	void theLogHoldsNone() {
		assertThat(this.log).as("the log was heard, and its errors with it")
			.anyMatch((line) -> line.startsWith("INFO org.leafward.accounts") && line.contains(" signed in"))
			.anyMatch((line) -> line.contains("was answered with 500") && line.contains("SQLException"))
			.anyMatch((line) -> line.startsWith("INFO org.apache") || line.startsWith("INFO org.springframework"));
		assertThat(this.log.stream()
			.filter((line) -> !in(line).isEmpty() || holdsCookie(line) || line.contains("@example.org"))
			.distinct()
			.toList()).isEmpty();
	}

	@Test
	void noAccessLogHoldsOne() throws Exception {
		try (Stream<Path> files = Files.list(ACCESS_LOG)) {
			List<String> lines = files.flatMap((file) -> {
				try {
					return Files.readAllLines(file).stream();
				}
				catch (IOException ex) {
					throw new IllegalStateException(ex);
				}
			}).toList();
			assertThat(lines).hasSizeGreaterThan(200);
			assertThat(lines.stream().filter((line) -> !in(line).isEmpty() || holdsCookie(line)).toList()).isEmpty();
		}
	}

	@Test
	void answersShowOnlyWhatTheyAreThereToShow() {
		List<String> wrong = new ArrayList<>();
		for (Exchange one : this.exchanges) {
			Set<String> found = in(one.body());
			if (!found.equals(one.shows())) {
				wrong.add("%s, %s: %d shows %s and not %s".formatted(one.what(), one.address(), one.status(), found,
						one.shows()));
			}
			if (holdsCookie(one.body())) {
				wrong.add("%s, %s: shows a cookie".formatted(one.what(), one.address()));
			}
		}
		assertThat(wrong).isEmpty();
	}

	@Test
	void noHeaderTellsOne() {
		assertThat(this.exchanges.stream()
			.filter((one) -> !in(one.headers().toString()).isEmpty())
			.map((one) -> "%s, %s: %s".formatted(one.what(), one.address(), one.headers()))).isEmpty();
	}

	@Test
	void whatHasASecretInItIsKeptByNobodyAndLeadsNowhereElse() {
		List<String> wrong = new ArrayList<>();
		int looked = 0;
		for (Exchange one : this.exchanges) {
			if (one.shows().isEmpty() && in(one.address()).isEmpty()) {
				continue;
			}
			looked++;
			boolean feed = one.address().matches("/f/[^/]+/tasks\\.ics") && Set.of(200, 304).contains(one.status());
			String kept = one.header("Cache-Control");
			if (!one.header("Referrer-Policy").equals("no-referrer")
					|| !(feed ? kept.startsWith("private,") : kept.contains("no-store"))) {
				wrong.add("%s, %s: %d, Referrer-Policy %s, Cache-Control %s".formatted(one.what(), one.address(),
						one.status(), one.header("Referrer-Policy"), kept));
			}
			strangeLinks(one.page()).forEach((link) -> wrong.add(one.address() + " leads to " + link));
		}
		assertThat(looked).isGreaterThan(300);
		assertThat(wrong).isEmpty();
	}

	private static List<String> strangeLinks(Document page) {
		return Stream.of("href", "src", "action", "formaction", "data", "poster", "srcset", "background")
			.flatMap((name) -> page.select("[" + name + "]").stream().map((Element one) -> one.attr(name)))
			.filter((link) -> link.matches("(?i)([a-z][a-z0-9+.-]*:|//).*"))
			.filter((link) -> !link.startsWith(BASE + "/") && !link.startsWith(BASE.replace("https", "webcal") + "/"))
			.toList();
	}

	@Test
	void mailsTellOnlyTheirOwner() {
		assertThat(this.mails).containsOnlyKeys("mara@example.org", "odo@example.org", "nils@example.org");
		this.mails.forEach((to, texts) -> {
			Set<String> theirs = this.owners.entrySet()
				.stream()
				.filter((one) -> one.getValue().equals(to))
				.map(Map.Entry::getKey)
				.collect(Collectors.toSet());
			texts.forEach((text) -> assertThat(in(text)).as(to).hasSize(1).isSubsetOf(theirs));
			assertThat(texts.stream().flatMap((text) -> in(text).stream()).collect(Collectors.toSet())).as(to)
				.isEqualTo(theirs);
		});
	}

	@Test
	void theDatabaseHoldsNone() {
		assertThat(rowsWith(Set.of("mara@example.org"))).as("the walk finds words").contains("accounts.person");
		assertThat(rowsWith(Set.of("org.leafward.accounts.signin.SignedIn"))).as("the walk finds octets")
			.containsExactly("accounts.session_attributes");
		Map<String, List<String>> found = new TreeMap<>();
		this.secrets.forEach((name, parts) -> found.put(name, rowsWith(parts)));
		found.values().removeIf(List::isEmpty);
		// What signs can't be kept as a hash; the one that was replaced twice is gone.
		assertThat(found).isEqualTo(Map.of("webhook address", List.of("reminders.webhook"), "other webhook secret",
				List.of("reminders.webhook"), "webhook secret by API", List.of("reminders.webhook")));
	}

	@Test
	void noMeterIsNamedByOne() {
		List<Meter> all = this.meters.getMeters();
		assertThat(all).anyMatch((meter) -> "/quick/manage/{secret}".equals(meter.getId().getTag("uri")));
		assertThat(all.stream().map((meter) -> meter.getId().toString()).filter((id) -> !in(id).isEmpty())).isEmpty();
	}

	/** All tables of all schemas, every row as text, octets in hexadecimal. */
	private List<String> rowsWith(Set<String> parts) {
		String[] wanted = parts.stream()
			.flatMap((part) -> Stream.of(part, HexFormat.of().formatHex(part.getBytes(StandardCharsets.UTF_8))))
			.toArray(String[]::new);
		return this.database.sql("""
				select quote_ident(table_schema) || '.' || quote_ident(table_name) from information_schema.tables
				where table_type = 'BASE TABLE' and table_schema not in ('pg_catalog', 'information_schema')
				""").query(String.class).list().stream().filter((table) -> this.database.sql("""
				select exists (select from %s one, unnest(:wanted) part where strpos(one::text, part) > 0)
				""".formatted(table)).param("wanted", wanted).query(Boolean.class).single()).toList();
	}

	private boolean holdsCookie(String text) {
		return this.cookies.stream().anyMatch(text::contains);
	}

	/** Names of the secrets of which a part stands in a text. */
	private Set<String> in(String text) {
		return this.secrets.entrySet()
			.stream()
			.filter((one) -> one.getValue().stream().anyMatch(text::contains))
			.map(Map.Entry::getKey)
			.collect(Collectors.toSet());
	}

	private final Map<String, String> wholes = new LinkedHashMap<>();

	private String whole(String name) {
		return this.wholes.get(name);
	}

	private void know(String name, String secret) {
		assertThat(secret).as(name).hasSizeGreaterThan(20);
		this.wholes.put(name, secret);
		// The beginning of a token is the same for all.
		String random = secret.replaceFirst("^leafward_", "");
		Set<String> parts = new LinkedHashSet<>();
		for (String form : List.of(random, URLEncoder.encode(random, StandardCharsets.UTF_8),
				HtmlUtils.htmlEscape(random))) {
			for (int i = 0; i + PART <= form.length(); i++) {
				parts.add(form.substring(i, i + PART));
			}
		}
		this.secrets.put(name, parts);
	}

	private static String feedIn(String text) {
		return found("/f/([A-Za-z0-9_-]{32})/tasks\\.ics", text);
	}

	private static String manageIn(Exchange made) {
		return found("/quick/manage/([A-Za-z0-9_-]{43})$", made.page().select("#manage a").attr("href"));
	}

	private static String found(String pattern, String text) {
		Matcher found = Pattern.compile(pattern).matcher(text);
		assertThat(found.find()).as(text).isTrue();
		return found.group(1);
	}

	private static String linkFor(String address, int mails) {
		List<String> texts = new ArrayList<>();
		await().atMost(Duration.ofSeconds(20)).untilAsserted(() -> {
			texts.clear();
			texts.addAll(mails().getOrDefault(address, List.of()));
			assertThat(texts).hasSize(mails);
		});
		return found("/sign-in/once\\?token=([A-Za-z0-9_-]{43})", texts.get(mails - 1));
	}

	/** By recipient: headers and all parts, decoded. */
	private static Map<String, List<String>> mails() {
		Map<String, List<String>> all = new TreeMap<>();
		try {
			for (MimeMessage mail : MAIL.getReceivedMessages()) {
				StringBuilder text = new StringBuilder(java.util.Collections.list(mail.getAllHeaderLines()).toString());
				MimeMultipart parts = (MimeMultipart) mail.getContent();
				for (int i = 0; i < parts.getCount(); i++) {
					BodyPart part = parts.getBodyPart(i);
					Object content = part.getContent();
					if (content instanceof MimeMultipart inner) {
						for (int j = 0; j < inner.getCount(); j++) {
							text.append('\n')
								.append(new String(inner.getBodyPart(j).getInputStream().readAllBytes(),
										StandardCharsets.UTF_8));
						}
						continue;
					}
					text.append('\n').append(content);
				}
				for (var to : mail.getRecipients(RecipientType.TO)) {
					String address = ((jakarta.mail.internet.InternetAddress) to).getAddress();
					all.computeIfAbsent(address, (one) -> new ArrayList<>()).add(text.toString());
				}
			}
		}
		catch (Exception ex) {
			throw new IllegalStateException(ex);
		}
		return all;
	}

	private interface Steps {

		void take() throws Exception;

	}

	/** What goes wrong inside, with the words of a real database. */
	private void broken(String table, Steps steps) throws Exception {
		String name = table.substring(table.indexOf('.') + 1);
		this.database.sql("alter table %s rename to %s".formatted(table, name + "_away")).update();
		try {
			steps.take();
		}
		finally {
			this.database.sql("alter table %s rename to %s".formatted(table + "_away", name)).update();
		}
	}

	private HttpRequest.Builder request(String path) {
		return HttpRequest.newBuilder(URI.create("http://localhost:" + this.port + path))
			.timeout(Duration.ofSeconds(60));
	}

	private HttpRequest.Builder api(String method, String path) {
		return request(path).method(method, BodyPublishers.noBody());
	}

	private Exchange send(String what, HttpRequest.Builder builder) throws Exception {
		HttpRequest request = builder.build();
		HttpResponse<byte[]> answer = this.http.send(request, BodyHandlers.ofByteArray());
		String path = request.uri().toString().substring(("http://localhost:" + this.port).length());
		return keep(new Exchange(what + ", " + request.method(), path, answer.statusCode(), answer.headers().map(),
				text(answer), new TreeSet<>()));
	}

	private Exchange keep(Exchange exchange) {
		this.exchanges.add(exchange);
		return exchange;
	}

	private static String text(HttpResponse<byte[]> answer) throws IOException {
		byte[] octets = answer.body();
		if (octets.length > 0 && answer.headers().firstValue("Content-Encoding").orElse("").equals("gzip")) {
			octets = new GZIPInputStream(new ByteArrayInputStream(octets)).readAllBytes();
		}
		if (!answer.headers().firstValue("Content-Type").orElse("").startsWith("application/zip")) {
			return new String(octets, StandardCharsets.UTF_8);
		}
		StringBuilder all = new StringBuilder();
		try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(octets))) {
			for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
				all.append(entry.getName()).append('\n').append(new String(zip.readAllBytes(), StandardCharsets.UTF_8));
			}
		}
		assertThat(all).contains("leafward.json");
		return all.toString();
	}

	/** A client mends such requests before it sends them; a socket does not. */
	private void raw(String line, String header, String body) throws IOException {
		String host = line.contains("\r\nHost:") ? "" : "Host: localhost\r\n";
		String answer;
		try (Socket socket = new Socket("localhost", this.port)) {
			socket.setSoTimeout(20_000);
			socket.getOutputStream()
				.write("%s\r\n%sConnection: close\r\n%s\r\n%s".formatted(line, host, header, body)
					.getBytes(StandardCharsets.ISO_8859_1));
			socket.shutdownOutput();
			answer = new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
		}
		catch (IOException ex) {
			// The server may hang up on what it doesn't want to read.
			return;
		}
		int end = answer.indexOf("\r\n\r\n");
		if (end < 0) {
			return;
		}
		Map<String, List<String>> headers = new TreeMap<>();
		Arrays.stream(answer.substring(0, end).split("\r\n")).skip(1).forEach((one) -> {
			String[] parts = one.split(": ?", 2);
			headers.computeIfAbsent(parts[0].toLowerCase(Locale.ROOT), (name) -> new ArrayList<>()).add(parts[1]);
		});
		String address = line.contains(" ") ? line.substring(line.indexOf(' ') + 1).replaceFirst(" HTTP/.*", "") : line;
		keep(new Exchange("by hand, " + header.strip(), address, Integer.parseInt(answer.substring(9, 12)), headers,
				answer.substring(end + 4), new TreeSet<>()));
	}

	/** Keeps the cookie and the secret of forms, as a browser does. */
	private final class Browser {

		private String cookie = "";

		private String secretOfForms = "";

		HttpRequest.Builder request(String path) {
			HttpRequest.Builder request = SecretLeakTests.this.request(path);
			return this.cookie.isEmpty() ? request : request.header("Cookie", this.cookie);
		}

		Exchange get(String path) throws Exception {
			return seen(send("seen", request(path).GET()));
		}

		HttpRequest.Builder form(String path, String... fields) {
			StringBuilder body = new StringBuilder();
			for (int i = 0; i < fields.length; i += 2) {
				body.append('&')
					.append(fields[i])
					.append('=')
					.append(URLEncoder.encode(fields[i + 1], StandardCharsets.UTF_8));
			}
			return request(path).POST(BodyPublishers.ofString(body.isEmpty() ? "" : body.substring(1)))
				.header("Content-Type", FORM);
		}

		Exchange post(String what, String path, String... fields) throws Exception {
			List<String> all = new ArrayList<>(List.of("_csrf", this.secretOfForms));
			all.addAll(List.of(fields));
			return seen(send(what, form(path, all.toArray(String[]::new))));
		}

		private Exchange seen(Exchange answer) {
			Matcher set = Pattern.compile("(__Host-SESSION=([^;]+))").matcher(answer.header("Set-Cookie"));
			if (set.find()) {
				this.cookie = set.group(1);
				SecretLeakTests.this.cookies.add(set.group(2));
				SecretLeakTests.this.cookies
					.add(new String(Base64.getDecoder().decode(set.group(2)), StandardCharsets.UTF_8));
			}
			String given = answer.page().select("input[name=_csrf]").attr("value");
			if (!given.isEmpty()) {
				this.secretOfForms = given;
			}
			return answer;
		}

	}

}
