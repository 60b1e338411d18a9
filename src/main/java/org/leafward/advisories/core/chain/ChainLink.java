package org.leafward.advisories.core.chain;

import java.time.Instant;
import java.util.Set;

/**
 * A message of an advisory, as far as later ones depend on it.
 *
 * @param type what it did
 * @param sender who sent it, as it stands in the message
 * @param identifier of the message, unique for ever
 * @param sent when, letter by letter as it stands in the message
 * @param sentAt the same as an instant, whole seconds
 * @param onset when what it speaks of begins
 * @param expires when it ends
 * @param counties codes of its counties
 */
public record ChainLink(MessageType type, String sender, String identifier, String sent, Instant sentAt, Instant onset,
		Instant expires, Set<String> counties) {

	public ChainLink {
		counties = Set.copyOf(counties);
	}

	/**
	 * What later messages call it by (CAP 1.2, section 3.2.1, references).
	 * @return sender, identifier and time of sending
	 */
	public String triple() {
		return this.sender + "," + this.identifier + "," + this.sent;
	}

}
