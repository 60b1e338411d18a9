package org.leafward.accounts.signin;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.accounts.Secret;
import org.leafward.accounts.store.LinkTable;
import org.springframework.security.authentication.ott.DefaultOneTimeToken;
import org.springframework.security.authentication.ott.GenerateOneTimeTokenRequest;
import org.springframework.security.authentication.ott.OneTimeToken;
import org.springframework.security.authentication.ott.OneTimeTokenAuthenticationToken;
import org.springframework.security.authentication.ott.OneTimeTokenService;
import org.springframework.stereotype.Service;

/**
 * Links that work once. Spring Security's own service keeps the secrets themselves, so
 * that whoever reads the database could sign in as anybody; this one keeps hashes.
 */
@Service
public class OneTimeLinks implements OneTimeTokenService {

	/** How long a link to sign in works; the longest by OWASP ASVS 5.0.0, 6.5.5. */
	public static final Duration SIGN_IN = Duration.ofMinutes(10);

	/** How long a link works that confirms an address; people read such mail later. */
	public static final Duration CONFIRM = Duration.ofDays(3);

	private final LinkTable links;

	private final Clock clock;

	OneTimeLinks(LinkTable links, Clock clock) {
		this.links = links;
		this.clock = clock;
	}

	@Override
	public OneTimeToken generate(GenerateOneTimeTokenRequest request) {
		return make(request.getUsername(), null, SIGN_IN);
	}

	/**
	 * A link that confirms an address.
	 * @param email the address
	 * @param person who adds it to what they have
	 * @return the link's secret
	 */
	public OneTimeToken confirming(String email, PersonId person) {
		return make(email, person, CONFIRM);
	}

	private OneTimeToken make(String email, @Nullable PersonId person, Duration lasts) {
		Instant now = this.clock.instant();
		String secret = Secret.make();
		this.links.add(secret, email, person, now, now.plus(lasts));
		return new DefaultOneTimeToken(secret, email, now.plus(lasts));
	}

	@Override
	public @Nullable OneTimeToken consume(OneTimeTokenAuthenticationToken given) {
		Instant now = this.clock.instant();
		return this.links.take(String.valueOf(given.getTokenValue()), now)
			.map((link) -> new Taken(link, now))
			.orElse(null);
	}

	/** A link that was followed, with whoever adds the address. */
	record Taken(LinkTable.Followed link, Instant at) implements OneTimeToken {

		@Override
		public String getTokenValue() {
			return "";
		}

		@Override
		public String getUsername() {
			return this.link.email();
		}

		@Override
		public Instant getExpiresAt() {
			return this.at;
		}

	}

}
