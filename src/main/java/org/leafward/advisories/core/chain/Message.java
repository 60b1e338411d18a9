package org.leafward.advisories.core.chain;

import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.advisories.Advisory;
import org.leafward.advisories.AdvisoryId;
import org.leafward.advisories.AdvisoryState;

/**
 * A message that was sent, without its document.
 *
 * @param seq rises with every message of the server
 * @param id identifier
 * @param advisory the advisory that it belongs to
 * @param number from 1 within the advisory
 * @param link what later messages depend on
 * @param content what it says
 * @param reason why it changed or called off; null otherwise
 * @param writer who wrote it; null for the operator token
 * @param approver who approved it; null for nobody
 */
public record Message(long seq, UUID id, UUID advisory, int number, ChainLink link, Content content,
		@Nullable String reason, @Nullable UUID writer, @Nullable UUID approver) {

	/**
	 * The advisory as this message says it.
	 * @param state where it stands
	 * @param first when its first message was sent
	 * @return as everybody may read it
	 */
	public Advisory asAdvisory(AdvisoryState state, Instant first) {
		return new Advisory(new AdvisoryId(this.advisory), this.id, this.number, state, this.content.condition(),
				this.content.event(), this.content.facts(), this.content.area(), this.content.plants(),
				this.content.works(), first, this.link.sentAt(), this.content.onset(), this.content.expires(),
				this.content.zone(), this.content.english(), this.content.spanish(), this.reason);
	}

}
