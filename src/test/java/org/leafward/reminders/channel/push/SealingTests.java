package org.leafward.reminders.channel.push;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.KeyPair;
import java.util.Arrays;
import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.leafward.measure.BadInput;
import org.leafward.reminders.PushKeys;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

/** What is sealed can be opened by the browser and by nobody else. */
class SealingTests {

	/** RFC 8291, section 5 and Appendix A: what came over the wire. */
	private static final String PUBLISHED = "DGv6ra1nlYgDCS1FRnbzlwAAEABBBP4z9KsN6nGRTbVYI_c7VJSPQTBtkgcy27mlmlMoZIIgDll6"
			+ "e3vCYLocInmYWAmS6TlzAC8wEqKK6PBru3jl7A_yl95bQpu6cVPTpK4Mqgkf1CXztLVBSt2Ks3oZwbuwXPXLWyouBWLVWGNWQexSgSxs"
			+ "j_Qulcy4a-fN";

	/** Of the same place: the receiver's keys and the authentication secret. */
	private static final PushReceiver PUBLISHED_RECEIVER = new PushReceiver(
			"q1dXpw3UpT5VOmu_cf_v6ih07Aems3njxI-JWgLcM94",
			"BCVxsr7N_eNgVRqvHtD0zTZsEc6-VV-JvLexhqUzORcxaOzi6-AYWXvTBHm4bjyPjs7Vd8pZGH6SRpkNtoIAiw4",
			"BTBZMqHH6r4Tts7J_aSIgg");

	@Test
	void theReceiverOpensThePublishedExamples() throws Exception {
		assertThat(PUBLISHED_RECEIVER.open(PushReceiver.octets(PUBLISHED)))
			.isEqualTo("When I grow up, I want to be a watermelon");
		// RFC 8188, section 3.1.
		byte[] walrus = PushReceiver.decode(PushReceiver.octets("yqdlZ-tYemfogSmv7Ws5PQ"),
				PushReceiver.octets("I1BsxtFttlv3u_Oo94xnmwAAEAAA-NAVub2qFgBEuQKRapoZu-IxkIva3MEB1PD-ly8Thjg"));
		assertThat(new String(walrus, StandardCharsets.UTF_8)).isEqualTo("I am the walrus");
	}

	@Test
	void sealsThePublishedExampleToTheOctet() throws Exception {
		// RFC 8291, Appendix A: the sender's keys for this message, and the salt.
		KeyPair sender = new KeyPair(
				PushReceiver.key(PushReceiver
					.octets("BP4z9KsN6nGRTbVYI_c7VJSPQTBtkgcy27mlmlMoZIIgDll6e3vCYLocInmYWAmS6TlzAC8wEqKK6PBru3jl7A8")),
				PushReceiver.secret("yfWPiYE-n46HLnH0KqZOF1fJJU3MYrct3AELtAQ-oRw"));
		byte[] sealed = Sealing.seal(PUBLISHED_RECEIVER.keys(),
				"When I grow up, I want to be a watermelon".getBytes(StandardCharsets.UTF_8), sender,
				PushReceiver.octets("DGv6ra1nlYgDCS1FRnbzlw"));
		assertThat(PushReceiver.base64url(sealed)).isEqualTo(PUBLISHED);
	}

	@ParameterizedTest
	@ValueSource(ints = { 0, 1, 15, 16, 17, 255, 256, 2999, 3000 })
	void whatIsSealedIsOpened(int length) throws Exception {
		String message = "x".repeat(length);
		byte[] sealed = Sealing.seal(PUBLISHED_RECEIVER.keys(), message.getBytes(StandardCharsets.UTF_8));
		assertThat(PUBLISHED_RECEIVER.open(sealed)).isEqualTo(message);
		// RFC 8188, sections 2 and 2.1: salt, record size, length of the key, key; the
		// delimiter and 16 octets of authentication.
		assertThat(sealed).hasSize(16 + 4 + 1 + 65 + length + 1 + 16).hasSizeLessThan(4096);
		PushReceiver other = PushReceiver.make();
		byte[] ours = Sealing.seal(other.keys(), "Größe 🌱".getBytes(StandardCharsets.UTF_8));
		assertThat(other.open(ours)).isEqualTo("Größe 🌱");
	}

	@Test
	void anotherBrowserOrAChangedOctetOpensNothing() {
		PushReceiver mine = PushReceiver.make();
		byte[] sealed = Sealing.seal(mine.keys(), "for one only".getBytes(StandardCharsets.UTF_8));
		assertThatExceptionOfType(GeneralSecurityException.class).isThrownBy(() -> PushReceiver.make().open(sealed));
		byte[] changed = sealed.clone();
		changed[changed.length - 20] ^= 1;
		assertThatExceptionOfType(GeneralSecurityException.class).isThrownBy(() -> mine.open(changed));
	}

	/** RFC 8291, section 3.1: a key pair of its own for each message; so for the salt. */
	@Test
	void nothingIsUsedTwice() {
		Set<String> salts = new HashSet<>();
		Set<String> points = new HashSet<>();
		PushKeys keys = PushReceiver.make().keys();
		for (int i = 0; i < 20; i++) {
			byte[] sealed = Sealing.seal(keys, new byte[] { 'a' });
			salts.add(PushReceiver.base64url(Arrays.copyOf(sealed, 16)));
			points.add(PushReceiver.base64url(Arrays.copyOfRange(sealed, 21, 86)));
		}
		assertThat(salts).hasSize(20);
		assertThat(points).hasSize(20);
	}

	@Test
	void isBounded() {
		PushKeys keys = PushReceiver.make().keys();
		assertThatExceptionOfType(IllegalArgumentException.class)
			.isThrownBy(() -> Sealing.seal(keys, new byte[Sealing.MOST + 1]));
	}

	/**
	 * RFC 8291, section 7, and NIST SP 800-56A, section 5.6.2.3: the point is checked.
	 */
	@Test
	void aPointOffTheCurveIsNoKey() {
		byte[] point = PushReceiver.octets(PUBLISHED_RECEIVER.p256dh());
		byte[] auth = PushReceiver.octets(PUBLISHED_RECEIVER.auth());
		Sealing.check(new PushKeys(point, auth));
		byte[] off = point.clone();
		off[64] ^= 1;
		byte[] packed = point.clone();
		packed[0] = 2;
		byte[] zero = new byte[65];
		zero[0] = 4;
		byte[] beyond = new byte[65];
		Arrays.fill(beyond, (byte) 0xff);
		beyond[0] = 4;
		for (byte[] bad : new byte[][] { off, packed, zero, beyond }) {
			assertThatExceptionOfType(BadInput.class).isThrownBy(() -> Sealing.check(new PushKeys(bad, auth)))
				.matches((ex) -> ex.where().equals("p256dh"));
		}
	}

}
