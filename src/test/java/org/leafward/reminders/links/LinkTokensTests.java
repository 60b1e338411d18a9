package org.leafward.reminders.links;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Base64;
import java.util.HexFormat;
import java.util.List;
import java.util.UUID;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.leafward.accounts.PersonId;
import org.leafward.reminders.Series;
import org.leafward.reminders.core.Links.Act;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

class LinkTokensTests {

	private static final byte[] KEY = new byte[32];

	static {
		for (int i = 0; i < KEY.length; i++) {
			KEY[i] = (byte) (i * 7);
		}
	}

	private static final UUID ID = UUID.fromString("6f8d0a52-6b1e-5c0e-9d57-0d6e7d1f2a34");

	private static final ActLink ACT = new ActLink(ID, Act.DONE);

	private static final StopLink STOP = new StopLink(new PersonId(ID), "mail", Series.MORNING);

	private final LinkTokens tokens = new LinkTokens(KEY);

	@ParameterizedTest
	@EnumSource
	void whatIsSignedIsRead(Act act) {
		String token = this.tokens.of(new ActLink(ID, act));
		// RFC 4648, section 5; nothing in it needs escaping in an address.
		assertThat(token).matches("[A-Za-z0-9_-]{44}");
		assertThat(this.tokens.act(token)).contains(new ActLink(ID, act));
		assertThat(new LinkTokens(KEY.clone()).act(token)).as("on another node").contains(new ActLink(ID, act));
	}

	@ParameterizedTest
	@EnumSource
	void aSeriesThatIsSignedIsRead(Series series) {
		for (String channel : List.of("mail", "push", "webhook", "a", "abcdefghijklmnopqrst")) {
			StopLink link = new StopLink(new PersonId(ID), channel, series);
			String token = this.tokens.of(link);
			assertThat(token).matches("[A-Za-z0-9_-]{46,71}");
			assertThat(this.tokens.stop(token)).contains(link);
		}
		assertThat("/u/" + this.tokens.of(STOP)).as("List-Unsubscribe stays on one line").hasSizeLessThan(60);
	}

	@ParameterizedTest
	@ValueSource(strings = { "", "Mail", "mail2", "mail\r\nBcc: x", "abcdefghijklmnopqrstu", "ma il" })
	void aChannelThatIsNoneIsNotSigned(String channel) {
		assertThatIllegalArgumentException()
			.isThrownBy(() -> this.tokens.of(new StopLink(new PersonId(ID), channel, Series.MORNING)));
	}

	@Test
	void aTokenIsWhatAnybodyGetsWhoFollowsTheStandard() throws Exception {
		// The function below gives what RFC 4231, sections 4.3 and 4.6, print: the
		// second is cut to 128 bits there.
		assertThat(HexFormat.of().formatHex(hmac(ascii("Jefe"), ascii("what do ya want for nothing?"))))
			.isEqualTo("5bdcc146bf60754e6a042426089575c75a003f089d2739839dec58b964ec3843");
		byte[] twelve = new byte[20];
		Arrays.fill(twelve, (byte) 0x0c);
		assertThat(HexFormat.of().formatHex(hmac(twelve, ascii("Test With Truncation"))).substring(0, 32))
			.isEqualTo("a3b6167473100ee06e0c796c2955552b");
		byte[] payload = ByteBuffer.allocate(17)
			.put((byte) 1)
			.putLong(ID.getMostSignificantBits())
			.putLong(ID.getLeastSignificantBits())
			.array();
		byte[] seal = Arrays.copyOf(hmac(KEY, joined(ascii("leafward act\0"), payload)), 16);
		assertThat(this.tokens.of(ACT))
			.isEqualTo(Base64.getUrlEncoder().withoutPadding().encodeToString(joined(payload, seal)));
		byte[] stop = joined(payload, ascii("mail"));
		byte[] stopSeal = Arrays.copyOf(hmac(KEY, joined(ascii("leafward stop\0"), stop)), 16);
		assertThat(this.tokens.of(STOP))
			.isEqualTo(Base64.getUrlEncoder().withoutPadding().encodeToString(joined(stop, stopSeal)));
	}

	@Test
	void everyBitCounts() {
		for (String token : List.of(this.tokens.of(ACT), this.tokens.of(STOP))) {
			byte[] octets = Base64.getUrlDecoder().decode(token);
			for (int bit = 0; bit < octets.length * 8; bit++) {
				byte[] other = octets.clone();
				other[bit / 8] ^= (byte) (1 << (bit % 8));
				refused(Base64.getUrlEncoder().withoutPadding().encodeToString(other));
			}
		}
	}

	@Test
	void everyCharacterCounts() {
		String alphabet = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_";
		for (String token : List.of(this.tokens.of(ACT), this.tokens.of(STOP))) {
			for (int at = 0; at < token.length(); at++) {
				refused(token.substring(0, at) + token.substring(at + 1));
				for (char other : alphabet.toCharArray()) {
					if (other != token.charAt(at)) {
						// Of the last character of a stop token four bits are past the
						// end.
						refused(token.substring(0, at) + other + token.substring(at + 1));
					}
				}
			}
		}
	}

	@Test
	void aTokenOfOneKindIsNoneOfAnother() {
		assertThat(this.tokens.stop(this.tokens.of(ACT))).isEmpty();
		assertThat(this.tokens.act(this.tokens.of(STOP))).isEmpty();
	}

	@Test
	void anotherKeyOpensNothing() {
		byte[] other = KEY.clone();
		other[31] ^= 1;
		assertThat(new LinkTokens(other).act(this.tokens.of(ACT))).isEmpty();
		assertThat(new LinkTokens(other).stop(this.tokens.of(STOP))).isEmpty();
		assertThatIllegalArgumentException().isThrownBy(() -> new LinkTokens(new byte[31]));
	}

	@Test
	void whatIsNoTokenIsNone() {
		String act = this.tokens.of(ACT);
		String stop = this.tokens.of(STOP);
		List<String> none = new ArrayList<>(List.of("", "=", "A", "AA", "AAAA", "A".repeat(44), "A".repeat(50),
				"_".repeat(44), "x".repeat(100_000), "é".repeat(44), "\u0000".repeat(44), act + "=", act + "A",
				act + "AAAA", " " + act, act + " ", act + "\n", act.toLowerCase(), stop + "==", stop + "A", act + stop,
				act.replace('-', '+').replace('_', '/') + "!", "../" + act));
		none.forEach(this::refused);
	}

	/** All ways to refuse are one, and it compares all octets whatever the first are. */
	@Test
	void comparesInTheSameTime() {
		JavaClasses all = new ClassFileImporter().importClasses(LinkTokens.class, SignedLinks.class);
		noClasses().should()
			.callMethod(Arrays.class, "equals", byte[].class, byte[].class)
			.orShould()
			.callMethod(String.class, "equals", Object.class)
			.orShould()
			.callMethod(Arrays.class, "compare", byte[].class, byte[].class)
			.check(all);
		classes().that()
			.haveSimpleName("LinkTokens")
			.should()
			.callMethod(MessageDigest.class, "isEqual", byte[].class, byte[].class)
			.check(all);
	}

	private void refused(String token) {
		assertThat(this.tokens.act(token)).as(token).isEmpty();
		assertThat(this.tokens.stop(token)).as(token).isEmpty();
	}

	private static byte[] ascii(String text) {
		return text.getBytes(StandardCharsets.US_ASCII);
	}

	private static byte[] joined(byte[] first, byte[] second) {
		byte[] both = Arrays.copyOf(first, first.length + second.length);
		System.arraycopy(second, 0, both, first.length, second.length);
		return both;
	}

	/** RFC 2104, section 2, word for word, for keys of up to 64 octets. */
	private static byte[] hmac(byte[] key, byte[] text) throws Exception {
		byte[] inner = Arrays.copyOf(key, 64);
		byte[] outer = inner.clone();
		for (int i = 0; i < 64; i++) {
			inner[i] ^= 0x36;
			outer[i] ^= 0x5c;
		}
		MessageDigest hash = MessageDigest.getInstance("SHA-256");
		byte[] first = hash.digest(joined(inner, text));
		return hash.digest(joined(outer, first));
	}

}
