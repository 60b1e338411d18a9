package org.leafward.advisories.on;

import org.leafward.advisories.AdvisoryCancelled;
import org.leafward.advisories.AdvisoryIssued;
import org.leafward.advisories.AdvisoryUpdated;
import org.leafward.advisories.desk.ReachCounting;
import org.springframework.scheduling.annotation.Async;
import org.springframework.stereotype.Component;
import org.springframework.transaction.event.TransactionalEventListener;

/** Counts whom a message concerned, once it was sent. */
@Component
class SentListeners {

	private final ReachCounting counting;

	SentListeners(ReachCounting counting) {
		this.counting = counting;
	}

	@Async
	@TransactionalEventListener(id = "advisories.issued")
	void on(AdvisoryIssued event) {
		this.counting.count(event.advisory(), event.message());
	}

	@Async
	@TransactionalEventListener(id = "advisories.updated")
	void on(AdvisoryUpdated event) {
		this.counting.count(event.advisory(), event.message());
	}

	@Async
	@TransactionalEventListener(id = "advisories.cancelled")
	void on(AdvisoryCancelled event) {
		this.counting.count(event.advisory(), event.message());
	}

}
