package org.leafward.reminders.channel.push;

import com.nimbusds.jose.JWSAlgorithm;
import com.nimbusds.jose.crypto.ECDSAVerifier;
import com.nimbusds.jwt.JWTClaimsSet;
import com.nimbusds.jwt.SignedJWT;
import java.time.Instant;
import java.util.Date;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.leafward.reminders.core.PushEndpoint;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * The server's proof of who it is, read by Nimbus JOSE + JWT, which had no part in it.
 */
class ServerIdentityTests {

	private static final Instant NOW = Instant.parse("2026-11-12T12:00:00Z");

	/** RFC 8292, section 3. */
	private static final Pattern HEADER = Pattern.compile("vapid t=([A-Za-z0-9_.-]+), ?k=([A-Za-z0-9_-]+)");

	@Test
	void anotherLibraryAcceptsTheProof() throws Exception {
		byte[] stored = ServerIdentity.make();
		for (int i = 0; i < 20; i++) {
			ServerIdentity identity = ServerIdentity.of(stored, "mailto:garden@example.org");
			Matcher header = header(identity, "https://push.example.net:443/p/abc?d=e");
			assertThat(header.group(2)).isEqualTo(identity.publicKey()).hasSize(87);
			SignedJWT proof = SignedJWT.parse(header.group(1));
			assertThat(proof.getHeader().getAlgorithm()).isEqualTo(JWSAlgorithm.ES256);
			assertThat(proof.verify(new ECDSAVerifier(PushReceiver.key(PushReceiver.octets(header.group(2))))))
				.isTrue();
			JWTClaimsSet claims = proof.getJWTClaimsSet();
			// RFC 8292, section 2, and RFC 6454, section 6.2: no usual port in an origin.
			assertThat(claims.getAudience()).isEqualTo(List.of("https://push.example.net"));
			assertThat(claims.getSubject()).isEqualTo("mailto:garden@example.org");
			assertThat(claims.getExpirationTime()).isEqualTo(Date.from(NOW.plusSeconds(12 * 3600)));
		}
	}

	@Test
	void anotherServersKeyDoesNotFit() throws Exception {
		SignedJWT proof = SignedJWT.parse(header(identity(), "https://push.example.net/p").group(1));
		String other = identity().publicKey();
		assertThat(proof.verify(new ECDSAVerifier(PushReceiver.key(PushReceiver.octets(other))))).isFalse();
	}

	@Test
	void isForOnePushServiceOnly() throws Exception {
		SignedJWT proof = SignedJWT.parse(header(identity(), "https://PUSH.example.net:8443/p").group(1));
		assertThat(proof.getJWTClaimsSet().getAudience()).isEqualTo(List.of("https://push.example.net:8443"));
	}

	private static ServerIdentity identity() {
		return ServerIdentity.of(ServerIdentity.make(), "https://example.org");
	}

	private static Matcher header(ServerIdentity identity, String endpoint) {
		Matcher header = HEADER.matcher(identity.authorization(PushEndpoint.of(endpoint, false), NOW));
		assertThat(header.matches()).isTrue();
		return header;
	}

}
