package org.leafward.reminders.on;

import org.leafward.advisories.AdvisoryCancelled;
import org.leafward.advisories.AdvisoryIssued;
import org.leafward.advisories.AdvisoryUpdated;
import org.leafward.reminders.dispatch.AdvisoryTelling;
import org.leafward.reminders.store.AdvisoryTable.Kind;
import org.springframework.modulith.events.ApplicationModuleListener;
import org.springframework.stereotype.Component;

/**
 * Notes which messages of advisories are to be told. One row each, whoever is concerned:
 * a job makes the rest.
 */
@Component
class AdvisoryListeners {

	private final AdvisoryTelling telling;

	AdvisoryListeners(AdvisoryTelling telling) {
		this.telling = telling;
	}

	@ApplicationModuleListener(id = "reminders.advisory-issued")
	void on(AdvisoryIssued event) {
		this.telling.begin(event.advisory(), event.message(), Kind.ISSUED, event.sent());
	}

	@ApplicationModuleListener(id = "reminders.advisory-updated")
	void on(AdvisoryUpdated event) {
		this.telling.begin(event.advisory(), event.message(), Kind.UPDATED, event.sent());
	}

	@ApplicationModuleListener(id = "reminders.advisory-cancelled")
	void on(AdvisoryCancelled event) {
		this.telling.begin(event.advisory(), event.message(), Kind.CANCELLED, event.sent());
	}

}
