package org.leafward.reminders.on;

import org.leafward.accounts.AddressConfirmed;
import org.leafward.accounts.PersonId;
import org.leafward.care.PlanChanged;
import org.leafward.reminders.dispatch.Materialiser;
import org.springframework.modulith.events.ApplicationModuleListener;
import org.springframework.stereotype.Component;

/** Keeps the reminder rows in line with the plan. */
@Component
class ReminderListeners {

	private final Materialiser materialiser;

	ReminderListeners(Materialiser materialiser) {
		this.materialiser = materialiser;
	}

	@ApplicationModuleListener(id = "reminders.plan-changed")
	void on(PlanChanged event) {
		this.materialiser.person(new PersonId(event.person()));
	}

	@ApplicationModuleListener(id = "reminders.address-confirmed")
	void on(AddressConfirmed event) {
		this.materialiser.person(new PersonId(event.person()));
	}

}
