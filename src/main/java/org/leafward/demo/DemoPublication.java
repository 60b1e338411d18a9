package org.leafward.demo;

import org.leafward.accounts.People;
import org.leafward.accounts.Person;
import org.leafward.care.PackVersion;
import org.leafward.care.workshop.Author;
import org.leafward.care.workshop.PackHistory;
import org.leafward.care.workshop.Workshop;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;

/**
 * A change that the invented specialist published, so that there is a history to look at.
 */
@Component
@Profile("demo")
class DemoPublication {

	private static final String PACK = "boxwood";

	private static final String BEFORE = "caution: Disinfect blades between plants.";

	private static final String AFTER = "caution: Disinfect blades between plants, and rinse and dry them afterwards.";

	private final People people;

	private final Workshop workshop;

	private final PackHistory history;

	DemoPublication(People people, Workshop workshop, PackHistory history) {
		this.people = people;
		this.workshop = workshop;
		this.history = history;
	}

	/** Publishes it, where the pack still has the sentence. */
	void publish() {
		PackVersion newest = this.history.newest(PACK).orElse(null);
		if (newest == null || !newest.content().contains(BEFORE)) {
			return;
		}
		Person odile = this.people.join("Odile Marsh", "odile.marsh@example.org", DemoRegion.zone());
		this.workshop.publish(PACK, newest.version(), newest.content().replace(BEFORE, AFTER),
				"Blades rust when the disinfectant stays on them", new Author(odile.name(), odile.id().value()));
	}

}
