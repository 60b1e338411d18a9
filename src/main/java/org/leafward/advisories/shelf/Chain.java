package org.leafward.advisories.shelf;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.leafward.advisories.Advisory;
import org.leafward.advisories.AdvisoryState;
import org.leafward.advisories.core.chain.Message;
import org.leafward.advisories.core.chain.MessageChain;

/**
 * An advisory with all of its messages.
 *
 * @param messages by number, at least one
 */
public record Chain(List<Message> messages) {

	public Chain {
		messages = List.copyOf(messages);
	}

	/**
	 * Which advisory it is.
	 * @return its identifier
	 */
	public UUID advisory() {
		return this.messages.get(0).advisory();
	}

	public Message latest() {
		return this.messages.get(this.messages.size() - 1);
	}

	/**
	 * What later messages depend on.
	 * @return by number
	 */
	public MessageChain links() {
		return new MessageChain(this.messages.stream().map(Message::link).toList());
	}

	public AdvisoryState state(Instant now) {
		return links().state(now);
	}

	/**
	 * The advisory as its latest message says it.
	 * @param now the moment
	 * @return as everybody may read it
	 */
	public Advisory at(Instant now) {
		return latest().asAdvisory(state(now), this.messages.get(0).link().sentAt());
	}

}
