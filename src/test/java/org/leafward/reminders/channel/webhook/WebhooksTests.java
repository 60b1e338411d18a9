package org.leafward.reminders.channel.webhook;

import com.standardwebhooks.Webhook;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledIfSystemProperty;
import org.leafward.measure.BadInput;
import org.leafward.measure.NotThere;
import org.leafward.reminders.store.WebhookRow;
import org.leafward.support.LocalServer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.leafward.reminders.channel.webhook.WebhookFixture.NORA;
import static org.leafward.reminders.channel.webhook.WebhookFixture.SECRET_PATH;

/** What people may do with their webhook. */
class WebhooksTests {

	private final WebhookFixture fixture = new WebhookFixture(true);

	private final Webhooks webhooks = this.fixture.webhooks;

	@AfterEach
	void close() {
		this.fixture.close();
	}

	@Test
	void theSecretIsShownWhenItIsMadeAndStaysWithAnotherAddress() {
		assertThat(this.webhooks.find(NORA)).isEmpty();
		String secret = this.fixture.set();
		assertThat(secret).startsWith("whsec_");
		assertThat(this.webhooks.set(NORA, "https://example.org/other")).isEqualTo(Optional.empty());
		WebhookRow row = this.fixture.table.find(NORA).orElseThrow();
		assertThat(WebhookSecret.shown(row.secret())).isEqualTo(secret);
		assertThat(row.address()).hasToString("https://example.org/other");
		assertThat(row.toString()).doesNotContain("example.org", secret.substring(6));
	}

	@Test
	void aBadAddressChangesNothing() {
		this.fixture.set();
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> this.webhooks.set(NORA, "gopher://example.org"));
		assertThat(this.webhooks.find(NORA).orElseThrow().address()).isEqualTo(this.fixture.address());
	}

	@Test
	void whatIsRemovedIsGoneWithItsSecret() {
		String secret = this.fixture.set();
		this.webhooks.remove(NORA);
		this.webhooks.remove(NORA);
		assertThat(this.webhooks.find(NORA)).isEmpty();
		assertThat(this.fixture.set()).isNotEqualTo(secret);
	}

	@Test
	void withoutAWebhookThereIsNothingToTryOrRenew() {
		assertThatExceptionOfType(NotThere.class).isThrownBy(() -> this.webhooks.trial(NORA));
		assertThatExceptionOfType(NotThere.class).isThrownBy(() -> this.webhooks.renewSecret(NORA));
	}

	@Test
	@DisabledIfSystemProperty(named = "leafward.days-ahead", matches = "[1-9].*",
			disabledReason = "the library that verifies asks the machine’s clock")
	void aTrialIsSignedAndItsOutcomeSeen() throws Exception {
		String secret = this.fixture.answering(LocalServer.text("text/plain", "thanks")).set();
		WebhookView view = this.webhooks.trial(NORA);
		assertThat(view.lastOutcome()).isEqualTo("taken, with status 200");
		assertThat(view.lastOkAt()).isEqualTo(view.lastTriedAt()).isNotNull();
		WebhookFixture.Call call = this.fixture.calls.get(0);
		new Webhook(secret).verify(call.body(), call.forLibrary());
		assertThat(call.body()).startsWith("{\"type\":\"reminders.trial\",").contains("Nothing is due.");
		this.fixture.answering(LocalServer.status(302, "Location", "/"));
		assertThat(this.webhooks.trial(NORA).lastOutcome())
			.isEqualTo("its server sent us elsewhere with status 302, which is not followed");
	}

	@Test
	void aTrialThatIsTakenSwitchesItOnAgain() {
		this.fixture.answering(LocalServer.status(410)).set();
		assertThat(this.webhooks.trial(NORA).on()).isFalse();
		this.fixture.answering(LocalServer.status(500));
		assertThat(this.webhooks.trial(NORA).on()).isFalse();
		this.fixture.answering(LocalServer.status(204));
		assertThat(this.webhooks.trial(NORA).on()).isTrue();
		assertThat(this.fixture.channel.addresses(List.of(WebhookFixture.nora()))).hasSize(1);
	}

	@Test
	void savingTheAddressSwitchesItOnAgain() {
		this.fixture.answering(LocalServer.status(410)).set();
		this.webhooks.trial(NORA);
		this.webhooks.set(NORA, this.fixture.address().toString());
		assertThat(this.webhooks.find(NORA).orElseThrow().on()).isTrue();
	}

	@Test
	void fiveTrialsAnHourAndNoMoreForAnotherWebhook() {
		this.fixture.answering(LocalServer.status(204)).set();
		for (int trial = 0; trial < 5; trial++) {
			this.webhooks.trial(NORA);
			this.fixture.clock.advance(Duration.ofMinutes(10));
		}
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> this.webhooks.trial(NORA))
			.withMessage("you have sent 5 trials within an hour");
		this.webhooks.remove(NORA);
		this.fixture.set();
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> this.webhooks.trial(NORA));
		assertThat(this.fixture.calls).hasSize(5);
		this.fixture.clock.advance(Duration.ofMinutes(11));
		assertThat(this.webhooks.trial(NORA).lastOkAt()).isEqualTo(this.fixture.clock.instant());
		assertThat(this.fixture.calls).hasSize(6);
		assertThat(this.fixture.server.asked()).allMatch((path) -> path.startsWith(SECRET_PATH));
	}

}
