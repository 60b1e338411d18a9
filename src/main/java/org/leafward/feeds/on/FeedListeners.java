package org.leafward.feeds.on;

import org.leafward.care.PlanChanged;
import org.leafward.feeds.FeedDocuments;
import org.leafward.feeds.RebuildWorker;
import org.springframework.modulith.events.ApplicationModuleListener;
import org.springframework.stereotype.Component;

/** Keeps documents in step with the plan. */
@Component
class FeedListeners {

	private final FeedDocuments documents;

	private final RebuildWorker worker;

	FeedListeners(FeedDocuments documents, RebuildWorker worker) {
		this.documents = documents;
		this.worker = worker;
	}

	@ApplicationModuleListener(id = "feeds.plan-changed")
	void on(PlanChanged event) {
		this.documents.planChanged(event.site(), event.person());
		this.worker.soon();
	}

}
