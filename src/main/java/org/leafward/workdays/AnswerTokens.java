package org.leafward.workdays;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.time.Instant;
import java.util.Arrays;
import java.util.Base64;
import java.util.HexFormat;
import java.util.Locale;
import java.util.Optional;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;
import org.leafward.accounts.PersonId;
import org.leafward.accounts.Secret;
import org.leafward.workdays.store.DayMailTable;
import org.leafward.workdays.store.SignUpTable;
import org.leafward.workdays.store.SignUpTable.Asked;
import org.springframework.stereotype.Component;
import org.springframework.util.function.SingletonSupplier;

/**
 * What stands in the link and in the organizer's address of an invitation, so that
 * whoever answers is known without signing in. It is made of a key of the server, so
 * every mail to somebody about a workday has the same; only its hash is stored.
 */
@Component
class AnswerTokens {

	private static final int OCTETS = 16;

	private final SignUpTable table;

	private final SingletonSupplier<SecretKeySpec> key;

	AnswerTokens(SignUpTable table, DayMailTable messages) {
		this.table = table;
		this.key = SingletonSupplier
			.of(() -> new SecretKeySpec(messages.key(Base64.getUrlDecoder().decode(Secret.make())), "HmacSHA256"));
	}

	/**
	 * The token of an invitation, whose hash is stored with it.
	 * @param workday to what
	 * @param person who
	 * @param now when
	 * @return 32 hexadecimal digits in lower case, as addresses of mail don't keep case
	 */
	String ask(WorkdayId workday, PersonId person, Instant now) {
		String token = token(workday, person);
		this.table.ask(new Asked(workday, person), Secret.hash(token), now);
		return token;
	}

	private String token(WorkdayId workday, PersonId person) {
		try {
			Mac mac = Mac.getInstance("HmacSHA256");
			mac.init(this.key.obtain());
			byte[] whole = mac.doFinal("answer|%s|%s".formatted(workday, person).getBytes(StandardCharsets.UTF_8));
			return HexFormat.of().formatHex(Arrays.copyOf(whole, OCTETS));
		}
		catch (GeneralSecurityException ex) {
			throw new IllegalStateException("every Java has HmacSHA256", ex);
		}
	}

	/**
	 * Who was asked to what.
	 * @param token what came back
	 * @return empty when it is none
	 */
	Optional<Asked> find(String token) {
		return token.matches("(?i)[0-9a-f]{32}") ? this.table.askedBy(Secret.hash(token.toLowerCase(Locale.ROOT)))
				: Optional.empty();
	}

}
