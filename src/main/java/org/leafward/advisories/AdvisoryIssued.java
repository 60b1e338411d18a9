package org.leafward.advisories;

import java.time.Instant;
import java.util.Set;
import java.util.UUID;

/**
 * An advisory was sent for the first time. Published once, in the transaction that writes
 * the message; who is concerned is asked in pages with {@link Advisories#concerned}.
 *
 * @param advisory the advisory
 * @param message its message
 * @param sent when it was sent
 * @param onset when what it speaks of begins
 * @param expires when it ends
 * @param severity by CAP's word
 * @param counties codes of the counties concerned, those of earlier messages included
 */
public record AdvisoryIssued(UUID advisory, UUID message, Instant sent, Instant onset, Instant expires, String severity,
		Set<String> counties) {

	public AdvisoryIssued {
		counties = Set.copyOf(counties);
	}

}
