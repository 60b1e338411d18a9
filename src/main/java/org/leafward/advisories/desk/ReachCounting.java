package org.leafward.advisories.desk;

import java.time.Clock;
import java.util.UUID;
import org.leafward.advisories.core.chain.Message;
import org.leafward.advisories.shelf.Counts;
import org.leafward.advisories.shelf.Chains;
import org.leafward.advisories.store.SentTable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Counts whom a message concerned, behind its sending. */
@Service
public class ReachCounting {

	private final Chains chains;

	private final SentTable table;

	private final ReachPreview preview;

	private final Clock clock;

	ReachCounting(Chains chains, SentTable table, ReachPreview preview, Clock clock) {
		this.chains = chains;
		this.table = table;
		this.preview = preview;
		this.clock = clock;
	}

	/**
	 * Counts and keeps it; the second time nothing happens.
	 * @param advisory the advisory
	 * @param message its message
	 */
	@Transactional
	public void count(UUID advisory, UUID message) {
		if (this.table.reach(message).isPresent()) {
			return;
		}
		this.table.of(advisory).stream().filter((one) -> one.id().equals(message)).findFirst().ifPresent(this::count);
		this.chains.look();
	}

	private void count(Message message) {
		ReachPreview.Reach reach = this.preview.of(message.content().area(), message.content().plants());
		this.table.reached(message.id(), new Counts(reach.people(), reach.sites(), reach.plantings()),
				this.clock.instant());
	}

}
