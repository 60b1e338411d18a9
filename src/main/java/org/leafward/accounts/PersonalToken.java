package org.leafward.accounts;

import java.time.Instant;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A token by which a program acts for a person; the secret itself is kept nowhere.
 *
 * @param id identifier
 * @param person for whom
 * @param name what they call it
 * @param scopes what it may be used for
 * @param createdAt when it was made
 * @param expiresAt from when on it opens nothing
 * @param lastUsedAt when it was last used, to the hour; null for never
 * @param revokedAt when somebody ended it; null while nobody did
 */
public record PersonalToken(UUID id, PersonId person, String name, Set<Scope> scopes, Instant createdAt,
		Instant expiresAt, @Nullable Instant lastUsedAt, @Nullable Instant revokedAt) {

	public PersonalToken {
		scopes = Set.copyOf(scopes);
	}

	/**
	 * Whether it opens anything.
	 * @param now the time
	 * @return false once it has expired or was revoked
	 */
	public boolean works(Instant now) {
		return this.revokedAt == null && now.isBefore(this.expiresAt);
	}

}
