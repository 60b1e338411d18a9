package org.leafward.reminders.channel.webhook;

import com.standardwebhooks.Webhook;
import com.standardwebhooks.exceptions.WebhookVerificationException;
import java.net.http.HttpHeaders;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledIfSystemProperty;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

/** Signatures, against the reference libraries of Standard Webhooks 1.0.0. */
@DisabledIfSystemProperty(named = "leafward.days-ahead", matches = "[1-9].*",
		disabledReason = "the library that verifies asks the machine’s clock")
class WebhookSecretTests {

	/** The example that all reference libraries are tested with. */
	@Test
	void signsThePublishedExample() {
		byte[] secret = Base64.getDecoder().decode("MfKQ9r8GKYqrTwjUPD8ILPZIo2LaLaSw");
		assertThat(WebhookSecret.sign(secret, "msg_p5jXN8AQM9LWM0D4loKWxJek", 1614265330,
				"{\"test\": 2432232314}".getBytes(StandardCharsets.UTF_8)))
			.isEqualTo("v1,g0hM9SsE+OTPJTGt/tmIKtSyZlE3uFJELVlNIOLJ1OE=");
	}

	/** The library for Java verifies what a receiver gets. */
	@ParameterizedTest
	@ValueSource(strings = { "{}", "{\"data\":\"Größe 🌱 \\u0000\"}", "{\"a\":\"1.2.3\"}" })
	void theLibraryAcceptsWhatWeSignAndNothingElse(String body) throws Exception {
		byte[] secret = WebhookSecret.make();
		Webhook library = new Webhook(WebhookSecret.shown(secret));
		long now = Instant.now().getEpochSecond();
		String signature = WebhookSecret.sign(secret, "m1", now, body.getBytes(StandardCharsets.UTF_8));
		assertThatCode(() -> library.verify(body, headers("m1", now, signature))).doesNotThrowAnyException();
		assertThatExceptionOfType(WebhookVerificationException.class)
			.isThrownBy(() -> library.verify(body + " ", headers("m1", now, signature)));
		assertThatExceptionOfType(WebhookVerificationException.class)
			.isThrownBy(() -> library.verify(body, headers("m2", now, signature)));
		assertThatExceptionOfType(WebhookVerificationException.class)
			.isThrownBy(() -> library.verify(body, headers("m1", now + 1, signature)));
		assertThat(library.sign("m1", now, body)).isEqualTo(signature);
	}

	private static HttpHeaders headers(String id, long at, String signature) {
		return HttpHeaders.of(Map.of("webhook-id", List.of(id), "webhook-timestamp", List.of(Long.toString(at)),
				"webhook-signature", List.of(signature)), (name, value) -> true);
	}

	/** The specification: whsec_ and base64, 24 to 64 octets. */
	@Test
	void isShownAsTheSpecificationSays() {
		byte[] secret = WebhookSecret.make();
		assertThat(secret).hasSize(32).isNotEqualTo(WebhookSecret.make());
		assertThat(WebhookSecret.shown(secret)).matches("whsec_[A-Za-z0-9+/]{43}=");
		assertThat(Base64.getDecoder().decode(WebhookSecret.shown(secret).substring(6))).isEqualTo(secret);
	}

	@Test
	void anIdentifierWithADotIsNotSigned() {
		assertThatExceptionOfType(IllegalArgumentException.class)
			.isThrownBy(() -> WebhookSecret.sign(new byte[32], "a.1", 1, new byte[0]));
	}

}
