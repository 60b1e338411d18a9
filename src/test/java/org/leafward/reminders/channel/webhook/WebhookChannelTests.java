package org.leafward.reminders.channel.webhook;

import com.standardwebhooks.Webhook;
import com.standardwebhooks.exceptions.WebhookVerificationException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledIfSystemProperty;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.leafward.accounts.Letter;
import org.leafward.reminders.Message;
import org.leafward.reminders.channel.Delivery;
import org.leafward.reminders.channel.Delivery.Outcome;
import org.leafward.reminders.channel.webhook.WebhookFixture.Call;
import org.leafward.support.LocalServer;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.leafward.reminders.channel.webhook.WebhookFixture.NORA;
import static org.leafward.reminders.channel.webhook.WebhookFixture.SECRET_PATH;

/**
 * Messages to webhooks, over real connections; signatures are checked by a reference
 * library.
 */
@DisabledIfSystemProperty(named = "leafward.days-ahead", matches = "[1-9].*",
		disabledReason = "the library that verifies asks the machine’s clock")
class WebhookChannelTests {

	private static final JsonMapper JSON = JsonMapper.builder().build();

	private WebhookFixture fixture = new WebhookFixture(true);

	@AfterEach
	void close() {
		this.fixture.close();
	}

	private void fixture(boolean privateToo, Duration patience) {
		this.fixture.close();
		this.fixture = new WebhookFixture(privateToo, patience);
	}

	private Delivery deliver() {
		return deliver(message());
	}

	private Delivery deliver(Message message) {
		Delivery delivery = this.fixture.channel.deliver(message);
		assertThat(delivery.toString()).doesNotContain(SECRET_PATH.substring(1));
		return delivery;
	}

	private static Message message() {
		return WebhookFixture.message("one", "{\"items\":[{\"title\":\"Größe 🌱\"}]}");
	}

	@Test
	void theReferenceLibraryTakesWhatArrivesAndNothingElse() throws Exception {
		String secret = this.fixture.answering(LocalServer.status(204)).set();
		assertThat(deliver()).isEqualTo(Delivery.of(Outcome.TAKEN));
		Call call = this.fixture.calls.get(0);
		new Webhook(secret).verify(call.body(), call.forLibrary());
		assertThatExceptionOfType(WebhookVerificationException.class)
			.isThrownBy(() -> new Webhook(secret).verify(call.body().replace("due", "duo"), call.forLibrary()));
		assertThatExceptionOfType(WebhookVerificationException.class).isThrownBy(
				() -> new Webhook(WebhookSecret.shown(WebhookSecret.make())).verify(call.body(), call.forLibrary()));
		assertThat(call.header("Content-Type")).isEqualTo("application/json");
		assertThat(call.header("User-Agent")).startsWith("Leafward");
	}

	/** The specification's payload structure, and its bound. */
	@Test
	void theBodyHasTypeTimeAndData() {
		this.fixture.answering(LocalServer.status(200)).set();
		deliver();
		JsonNode body = JSON.readTree(this.fixture.calls.get(0).body());
		assertThat(body.propertyNames()).containsExactlyInAnyOrder("type", "timestamp", "data");
		assertThat(body.get("type").stringValue()).matches("[a-z0-9_]+(\\.[a-z0-9_]+)*").isEqualTo("reminders.due");
		assertThat(Instant.parse(body.get("timestamp").stringValue())).isEqualTo(message().createdAt());
		assertThat(body.get("data").get("items").get(0).get("title").stringValue()).isEqualTo("Größe 🌱");
	}

	@Test
	void whatIsTooLongIsCutToTheLink() {
		this.fixture.answering(LocalServer.status(200)).set();
		deliver(WebhookFixture.message("fits", "{\"a\":\"%s\"}".formatted("x".repeat(15_000))));
		assertThat(this.fixture.calls.get(0).body()).hasSizeGreaterThan(15_000);
		// Three octets each.
		deliver(WebhookFixture.message("long", "{\"a\":\"%s\"}".formatted("水".repeat(15_000))));
		String body = this.fixture.calls.get(1).body();
		assertThat(body.getBytes(StandardCharsets.UTF_8)).hasSizeLessThan(20_000);
		assertThat(JSON.readTree(body).get("data").get("link").stringValue())
			.isEqualTo("https://plants.example.org/tasks/1");
		assertThat(JSON.readTree(body).get("data").get("cut").booleanValue()).isTrue();
	}

	@Test
	void aSecondTryHasTheSameIdentifierAndAnotherTime() throws Exception {
		String secret = this.fixture.answering(LocalServer.status(500)).set();
		long from = this.fixture.clock.instant().getEpochSecond();
		assertThat(deliver().outcome()).isEqualTo(Outcome.LATER);
		// The library takes times up to five minutes from now.
		this.fixture.clock.advance(Duration.ofSeconds(90));
		deliver();
		deliver(WebhookFixture.message("another", "{}"));
		String id = message().id().toString();
		assertThat(this.fixture.calls).extracting((call) -> call.header("webhook-id"))
			.startsWith(id, id)
			.last()
			.isNotEqualTo(id);
		assertThat(this.fixture.calls).extracting((call) -> Long.parseLong(call.header("webhook-timestamp")))
			.containsExactly(from, from + 90, from + 90);
		for (Call call : this.fixture.calls) {
			new Webhook(secret).verify(call.body(), call.forLibrary());
		}
	}

	@ParameterizedTest
	@ValueSource(ints = { 200, 201, 202, 204, 299 })
	void twoHundredsAreTaken(int status) {
		this.fixture.answering(LocalServer.status(status)).set();
		assertThat(deliver().outcome()).isEqualTo(Outcome.TAKEN);
		assertThat(this.fixture.webhooks.find(NORA).orElseThrow().lastOkAt()).isNotNull();
	}

	/** The specification: any other status is a failure, 3xx too, and is tried again. */
	@ParameterizedTest
	@ValueSource(ints = { 300, 301, 302, 303, 304, 307, 308, 400, 401, 403, 404, 413, 429, 500, 502, 503, 504 })
	void otherStatusesAreTriedAgain(int status) {
		this.fixture
			.answering(LocalServer.status(status, "Location", this.fixture.server.address("/elsewhere").toString()))
			.set();
		Delivery delivery = deliver();
		assertThat(delivery.outcome()).isEqualTo(Outcome.LATER);
		assertThat(delivery.reason()).contains("status " + status);
		assertThat(this.fixture.webhooks.find(NORA).orElseThrow().on()).isTrue();
		assertThat(this.fixture.server.asked()).hasSize(1).noneMatch((path) -> path.contains("elsewhere"));
	}

	@Test
	void goneSwitchesItOffAtOnceAndTellsItsOwner() {
		this.fixture.answering(LocalServer.status(410)).set();
		assertThat(deliver().outcome()).isEqualTo(Outcome.REFUSED);
		WebhookView off = this.fixture.webhooks.find(NORA).orElseThrow();
		assertThat(off.on()).isFalse();
		assertThat(off.disabledBecause()).contains("410");
		assertThat(deliver()).isEqualTo(new Delivery(Outcome.REFUSED, "the webhook was removed or is off"));
		assertThat(this.fixture.calls).hasSize(1);
		assertThat(this.fixture.channel.addresses(List.of(WebhookFixture.nora()))).isEmpty();
		assertThat(this.fixture.letters).hasSize(1);
		Letter letter = this.fixture.letters.get(0);
		assertThat(letter.to()).isEqualTo("nora@example.org");
		assertThat(letter.text()).contains("410", "https://plants.example.org/reminders/webhook")
			.doesNotContain(SECRET_PATH.substring(1));
	}

	@Test
	void aServerThatAsksToWaitIsLeftAloneSoLong() {
		this.fixture.answering(LocalServer.status(429, "Retry-After", "120")).set();
		assertThat(deliver().outcome()).isEqualTo(Outcome.LATER);
		assertThat(deliver().reason()).startsWith("its server asked to be left alone until ");
		this.fixture.clock.advance(Duration.ofSeconds(119));
		assertThat(deliver().outcome()).isEqualTo(Outcome.LATER);
		assertThat(this.fixture.calls).hasSize(1);
		this.fixture.clock.advance(Duration.ofSeconds(2));
		this.fixture.answering(LocalServer.status(204));
		assertThat(deliver().outcome()).isEqualTo(Outcome.TAKEN);
		assertThat(this.fixture.calls).hasSize(2);
	}

	@Test
	void whoHangsIsNotWaitedForLong() {
		fixture(true, Duration.ofMillis(500));
		this.fixture.answering(this.fixture.server.silence()).set();
		assertThat(deliver()).isEqualTo(new Delivery(Outcome.LATER, "its server did not answer in time"));
	}

	@Test
	void aHugeAnswerIsNotRead() {
		this.fixture.answering(LocalServer.flood("text/plain", 100_000_000)).set();
		long from = System.nanoTime();
		assertThat(deliver().outcome()).isEqualTo(Outcome.TAKEN);
		assertThat(Duration.ofNanos(System.nanoTime() - from)).isLessThan(Duration.ofSeconds(5));
	}

	@Test
	void whereNobodyListensIsNoTroubleOfOthers() {
		this.fixture.webhooks.set(NORA, LocalServer.nobody() + SECRET_PATH);
		assertThat(deliver()).isEqualTo(new Delivery(Outcome.LATER, "nobody answered at this address"));
	}

	/**
	 * Without the operator's leave this machine is none that a stranger may have us call.
	 */
	@ParameterizedTest
	@ValueSource(strings = { "localhost", "127.0.0.1", "[::1]", "[::ffff:127.0.0.1]", "0.0.0.0", "169.254.169.254",
			"10.0.0.1", "[fd00:ec2::254]" })
	void nobodyHereIsCalled(String host) {
		fixture(false, Duration.ofSeconds(10));
		this.fixture.answering(LocalServer.status(204));
		this.fixture.webhooks.set(NORA,
				"http://%s:%d%s".formatted(host, this.fixture.server.address("/").getPort(), SECRET_PATH));
		assertThat(deliver()).isEqualTo(new Delivery(Outcome.LATER, "no server in the public Internet has this name"));
		assertThat(this.fixture.server.asked()).isEmpty();
	}

	@Test
	void fiveDaysOfFailuresSwitchItOff() {
		this.fixture.answering(LocalServer.status(500)).set();
		for (int day = 0; day < 5; day++) {
			assertThat(deliver().outcome()).isEqualTo(Outcome.LATER);
			assertThat(this.fixture.webhooks.find(NORA).orElseThrow().on()).as("day %d", day).isTrue();
			this.fixture.clock.advance(Duration.ofDays(1));
		}
		deliver();
		WebhookView off = this.fixture.webhooks.find(NORA).orElseThrow();
		assertThat(off.on()).isFalse();
		assertThat(off.disabledBecause())
			.isEqualTo("its server took nothing for 5 days; the last time: its server answered with status 500");
		assertThat(this.fixture.letters).hasSize(1);
		deliver();
		assertThat(this.fixture.letters).hasSize(1);
	}

	@Test
	void aSuccessInBetweenAndAFewFailuresDont() {
		this.fixture.answering(LocalServer.status(500)).set();
		for (int day = 0; day < 4; day++) {
			deliver();
			this.fixture.clock.advance(Duration.ofDays(1));
		}
		this.fixture.answering(LocalServer.status(200));
		deliver();
		this.fixture.answering(LocalServer.status(500));
		for (int fail = 0; fail < 4; fail++) {
			deliver();
			this.fixture.clock.advance(Duration.ofDays(3));
		}
		assertThat(this.fixture.webhooks.find(NORA).orElseThrow().on()).as("four failures in nine days").isTrue();
		deliver();
		assertThat(this.fixture.webhooks.find(NORA).orElseThrow().on()).isFalse();
	}

	@Test
	void bothSecretsSignForADay() throws Exception {
		String former = this.fixture.answering(LocalServer.status(204)).set();
		String secret = this.fixture.webhooks.renewSecret(NORA);
		assertThat(secret).isNotEqualTo(former);
		deliver();
		Call both = this.fixture.calls.get(0);
		assertThat(both.header("webhook-signature").split(" ")).hasSize(2);
		new Webhook(former).verify(both.body(), both.forLibrary());
		new Webhook(secret).verify(both.body(), both.forLibrary());
		this.fixture.clock.advance(Duration.ofHours(24));
		deliver();
		Call one = this.fixture.calls.get(1);
		assertThat(one.header("webhook-signature")).isEqualTo(new Webhook(secret).sign(one.header("webhook-id"),
				Long.parseLong(one.header("webhook-timestamp")), one.body()));
		assertThat(this.fixture.webhooks.find(NORA).orElseThrow().formerUntil()).isNull();
	}

	@Test
	void withoutAWebhookNothingGoesOut() {
		assertThat(deliver().outcome()).isEqualTo(Outcome.REFUSED);
		assertThat(this.fixture.channel.addresses(List.of(WebhookFixture.nora()))).isEmpty();
		assertThat(this.fixture.channel.addresses(List.of())).isEmpty();
	}

	@Test
	void addressesNameTheServerOnly() {
		this.fixture.set();
		assertThat(this.fixture.channel.addresses(List.of(WebhookFixture.nora())))
			.isEqualTo(Map.of(NORA, "http://127.0.0.1:%d".formatted(this.fixture.server.address("/").getPort())));
		assertThat(this.fixture.channel.code()).isEqualTo("webhook");
	}

	/** What came of a call to the old address is no news of the new one. */
	@Test
	void anAddressThatChangedMeanwhileIsNotJudged() {
		this.fixture.answering((exchange) -> {
			this.fixture.webhooks.set(NORA, "https://example.org/new");
			LocalServer.status(410).send(exchange);
		}).set();
		deliver();
		WebhookView view = this.fixture.webhooks.find(NORA).orElseThrow();
		assertThat(view.on()).isTrue();
		assertThat(view.lastTriedAt()).isNull();
		assertThat(this.fixture.letters).isEmpty();
	}

}
