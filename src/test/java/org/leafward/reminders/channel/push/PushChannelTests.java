package org.leafward.reminders.channel.push;

import com.sun.net.httpserver.Headers;
import com.zaxxer.hikari.HikariDataSource;
import java.net.URI;
import java.net.http.HttpClient;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.CopyOnWriteArrayList;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.leafward.accounts.Person;
import org.leafward.accounts.PersonId;
import org.leafward.reminders.Message;
import org.leafward.reminders.MessageState;
import org.leafward.reminders.MessageText;
import org.leafward.reminders.PushSubscription;
import org.leafward.reminders.Series;
import org.leafward.reminders.TaskFixture;
import org.leafward.reminders.channel.Delivery;
import org.leafward.reminders.channel.Delivery.Outcome;
import org.leafward.reminders.store.PushTable;
import org.leafward.reminders.store.ServerKeyTable;
import org.leafward.support.LocalServer;
import org.leafward.support.SettableClock;
import org.leafward.support.TestDatabase;
import org.springframework.http.client.JdkClientHttpRequestFactory;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.web.client.RestClient;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.leafward.reminders.TaskFixture.ADA;

/**
 * The channel in conversation with a push service on this machine, and with real tables.
 */
class PushChannelTests {

	private static final Instant NOW = Instant.parse("2026-11-12T12:00:00Z");

	private static final PersonId BEN = new PersonId(TaskFixture.id("ben"));

	private final LocalServer service = LocalServer.start();

	private final SettableClock clock = new SettableClock(NOW);

	private final List<Pushed> pushed = new CopyOnWriteArrayList<>();

	private HikariDataSource source;

	private PushTable table;

	private PushChannel channel;

	/** What the push service got. */
	private record Pushed(String path, Headers headers, byte[] body) {
	}

	@BeforeEach
	void open() {
		this.source = TestDatabase.fresh();
		JdbcClient database = JdbcClient.create(this.source);
		this.table = new PushTable(database);
		JdkClientHttpRequestFactory http = new JdkClientHttpRequestFactory(
				HttpClient.newBuilder().connectTimeout(Duration.ofSeconds(2)).build());
		http.setReadTimeout(Duration.ofSeconds(3));
		this.channel = new PushChannel(this.table, new PushPost(RestClient.builder().requestFactory(http).build(),
				new ServerKeyTable(database), "mailto:garden@example.org", this.clock), this.clock);
	}

	@AfterEach
	void close() {
		this.source.close();
		this.service.close();
	}

	private PushReceiver browser(PersonId person, String path, int status) {
		this.service.on(path, (exchange) -> {
			this.pushed.add(new Pushed(path, exchange.getRequestHeaders(), exchange.getRequestBody().readAllBytes()));
			LocalServer.status(status, "Retry-After", "120").send(exchange);
		});
		return browser(person, this.service.address(path), path.substring(1));
	}

	private PushReceiver browser(PersonId person, URI endpoint, String label) {
		PushReceiver receiver = PushReceiver.make();
		this.table.save(new PushSubscription(UUID.randomUUID(), person, endpoint.toString(), receiver.keys(), label,
				this.clock.instant(), null, 0));
		this.clock.advance(Duration.ofSeconds(1));
		return receiver;
	}

	private static Message message(Series series, String subject, String brief) {
		return new Message(TaskFixture.id("message"), ADA, PushChannel.CODE, series, "Leafward <reminders@example.org>",
				"phone", "Ada",
				new MessageText(subject, "text", "<p>html</p>", brief, "https://example.org/tasks/1", "{}"), null,
				"<1@example.org>", MessageState.WAITING, NOW, null, null, 0);
	}

	private static Message morning() {
		return message(Series.MORNING, "Thu 12 Nov: water deeply", "Water deeply: hedge. And 2 more.");
	}

	@Test
	void saysWhatIsDueSoThatTheBrowserCanReadIt() throws Exception {
		PushReceiver phone = browser(ADA, "/phone", 201);
		PushReceiver laptop = browser(ADA, "/laptop", 201);
		browser(BEN, "/bens", 201);
		assertThat(this.channel.deliver(morning())).isEqualTo(Delivery.of(Outcome.TAKEN));
		assertThat(this.pushed).extracting(Pushed::path).containsExactly("/phone", "/laptop");
		for (PushReceiver one : List.of(phone, laptop)) {
			byte[] body = this.pushed.get((one == phone) ? 0 : 1).body();
			JsonNode note = new JsonMapper().readTree(one.open(body));
			assertThat(note.propertyNames()).containsExactly("title", "body", "link", "tag");
			assertThat(note.get("title").asString()).isEqualTo("Thu 12 Nov: water deeply");
			assertThat(note.get("body").asString()).isEqualTo("Water deeply: hedge. And 2 more.");
			assertThat(note.get("link").asString()).isEqualTo("https://example.org/tasks/1");
		}
		assertThat(this.table.of(ADA)).allMatch((one) -> one.failures() == 0 && one.lastOkAt() != null);
	}

	/** RFC 8030, sections 5.2 to 5.4, and RFC 8291, section 4. */
	@Test
	void headersAreThoseOfTheProtocol() {
		browser(ADA, "/phone", 201);
		this.clock.set(NOW.plus(Duration.ofHours(5)));
		this.channel.deliver(morning());
		this.channel.deliver(message(Series.TONIGHT, "Frost tonight", "Cover the dahlias."));
		Headers first = this.pushed.get(0).headers();
		Headers second = this.pushed.get(1).headers();
		assertThat(first.getFirst("TTL")).isEqualTo(Integer.toString(19 * 3600));
		assertThat(second.getFirst("TTL")).isEqualTo(Integer.toString(7 * 3600));
		assertThat(first.getFirst("Urgency")).isEqualTo("normal");
		assertThat(second.getFirst("Urgency")).isEqualTo("high");
		assertThat(first.getFirst("Content-Encoding")).isEqualTo("aes128gcm");
		assertThat(first.getFirst("Content-Type")).isEqualTo("application/octet-stream");
		assertThat(first.getFirst("Authorization")).startsWith("vapid t=");
		// The same message again takes the place of the first one.
		assertThat(first.getFirst("Topic")).matches("[A-Za-z0-9_-]{32}").isEqualTo(second.getFirst("Topic"));
		this.clock.set(NOW.plus(Duration.ofDays(3)));
		this.channel.deliver(morning());
		assertThat(this.pushed.get(2).headers().getFirst("TTL")).isEqualTo("0");
	}

	@Test
	void theLongestWordsFit() throws Exception {
		PushReceiver phone = browser(ADA, "/phone", 201);
		Message longest = new Message(UUID.randomUUID(), ADA, PushChannel.CODE, Series.SINGLE, "a@example.org", "phone",
				"Ada",
				new MessageText("🌱".repeat(5000), "", "", "\"\u0001\\🌱".repeat(5000), "/" + "x".repeat(5000), "{}"),
				null, "<1@example.org>", MessageState.WAITING, NOW, null, null, 0);
		assertThat(this.channel.deliver(longest).outcome()).isEqualTo(Outcome.TAKEN);
		JsonNode note = new JsonMapper().readTree(phone.open(this.pushed.get(0).body()));
		assertThat(note.get("title").asString()).isEqualTo("🌱".repeat(119) + "…");
		assertThat(note.get("link").asString()).isEqualTo("/");
		assertThat(this.pushed.get(0).body().length).isLessThan(4096);
	}

	@ParameterizedTest
	@ValueSource(ints = { 404, 410 })
	void aBrowserThatIsGoneIsForgotten(int status) {
		browser(ADA, "/old", status);
		Delivery delivery = this.channel.deliver(morning());
		assertThat(delivery.outcome()).isEqualTo(Outcome.REFUSED);
		assertThat(delivery.reason()).contains("127.0.0.1", Integer.toString(status)).doesNotContain("/old");
		assertThat(this.table.of(ADA)).isEmpty();
		// Nobody is asked when there is no browser any more.
		assertThat(this.channel.deliver(morning()).outcome()).isEqualTo(Outcome.REFUSED);
		assertThat(this.pushed).hasSize(1);
	}

	@ParameterizedTest
	@ValueSource(ints = { 429, 500, 502, 503 })
	void troubleThatPassesIsForLater(int status) {
		browser(ADA, "/busy", status);
		Delivery delivery = this.channel.deliver(morning());
		assertThat(delivery.outcome()).isEqualTo(Outcome.LATER);
		assertThat(delivery.reason()).isEqualTo("127.0.0.1 answered " + status);
		assertThat(this.table.of(ADA)).extracting(PushSubscription::failures).containsExactly(1);
	}

	@ParameterizedTest
	@ValueSource(ints = { 301, 400, 403, 413 })
	void whatWillNeverBeTakenIsRefusedAndTheBrowserStays(int status) {
		browser(ADA, "/no", status);
		assertThat(this.channel.deliver(morning()).outcome()).isEqualTo(Outcome.REFUSED);
		assertThat(this.table.of(ADA)).extracting(PushSubscription::failures).containsExactly(1);
	}

	@Test
	void oneBrowserThatTakesItIsEnough() {
		browser(ADA, "/old", 410);
		browser(ADA, "/busy", 503);
		browser(ADA, "/good", 202);
		assertThat(this.channel.deliver(morning()).outcome()).isEqualTo(Outcome.TAKEN);
		assertThat(this.table.of(ADA)).extracting(PushSubscription::label).containsExactly("busy", "good");
		this.service.on("/good", LocalServer.status(410));
		// One is gone and one is busy, so it is not over.
		assertThat(this.channel.deliver(morning()).outcome()).isEqualTo(Outcome.LATER);
	}

	/** Somebody's dead address must not hold up what goes to others. */
	@Test
	void silenceAndRefusedConnectionsAreForLater() {
		this.service.on("/silent", this.service.silence());
		browser(ADA, this.service.address("/silent?secret"), "silent");
		browser(ADA, URI.create(LocalServer.nobody() + "/p?secret"), "nobody");
		Delivery delivery = this.channel.deliver(morning());
		assertThat(delivery.outcome()).isEqualTo(Outcome.LATER);
		assertThat(delivery.reason()).startsWith("no answer from 127.0.0.1").doesNotContain("secret");
		assertThat(this.table.of(ADA)).extracting(PushSubscription::failures).containsExactly(1, 1);
	}

	/**
	 * Twenty failures in a row are a bad day; over more than a month they are the end.
	 */
	@Test
	void aBrowserThatNeverAnswersIsGivenUpAfterAMonth() {
		browser(ADA, "/dead", 500);
		for (int i = 0; i < 25; i++) {
			this.channel.deliver(morning());
		}
		assertThat(this.table.of(ADA)).hasSize(1);
		this.clock.advance(Duration.ofDays(31));
		this.channel.deliver(morning());
		assertThat(this.table.of(ADA)).isEmpty();
	}

	@Test
	void theLabelsStandForTheAddress() {
		browser(ADA, "/phone", 201);
		browser(ADA, "/laptop", 201);
		Person ada = new Person(ADA, "Ada", "ada@example.org", ZoneId.of("America/Chicago"));
		Person ben = new Person(BEN, "Ben", null, ZoneId.of("America/Chicago"), false);
		assertThat(this.channel.addresses(List.of(ada, ben))).isEqualTo(Map.of(ADA, "phone, laptop"));
		assertThat(this.channel.addresses(List.of())).isEmpty();
		assertThat(this.channel.code()).isEqualTo("push");
	}

	@Test
	void aTrialIsShownAtOnceOrNever() throws Exception {
		PushReceiver phone = browser(ADA, "/phone", 201);
		assertThat(this.channel.trial(ADA).outcome()).isEqualTo(Outcome.TAKEN);
		assertThat(phone.open(this.pushed.get(0).body())).contains("A trial message");
		assertThat(this.pushed.get(0).headers().getFirst("TTL")).isEqualTo("300");
		assertThat(this.channel.trial(BEN).outcome()).isEqualTo(Outcome.REFUSED);
	}

	/**
	 * The key that browsers were told is the one that is used, on all nodes and after a
	 * restart.
	 */
	@Test
	void theServersKeyStays() {
		browser(ADA, "/phone", 201);
		this.channel.deliver(morning());
		String key = this.channel.publicKey();
		assertThat(this.pushed.get(0).headers().getFirst("Authorization")).endsWith("k=" + key);
		PushPost other = new PushPost(RestClient.create(), new ServerKeyTable(JdbcClient.create(this.source)),
				"mailto:garden@example.org", this.clock);
		assertThat(other.identity().publicKey()).isEqualTo(key);
	}

}
