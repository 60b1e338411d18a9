package org.leafward.counties.on;

import org.leafward.care.PlanChanged;
import org.leafward.counties.store.GardenTable;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

/**
 * Notes that the tasks of a garden changed. In the transaction that changes them and not
 * as a kept publication: that would be a row more for every change of every site, and few
 * of them are gardens.
 */
@Component
class CountyListeners {

	private final GardenTable gardens;

	CountyListeners(GardenTable gardens) {
		this.gardens = gardens;
	}

	@EventListener
	void on(PlanChanged event) {
		this.gardens.changed(event.site());
	}

}
