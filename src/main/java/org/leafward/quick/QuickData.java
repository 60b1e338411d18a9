package org.leafward.quick;

import java.util.List;
import java.util.Map;
import org.leafward.accounts.PersonId;
import org.leafward.accounts.PersonalData;
import org.leafward.quick.store.QuickTable;
import org.springframework.stereotype.Component;

/** What this module keeps about people. */
@Component
class QuickData implements PersonalData {

	private final QuickTable table;

	QuickData(QuickTable table) {
		this.table = table;
	}

	@Override
	public int order() {
		return 0;
	}

	@Override
	public Map<String, List<Map<String, Object>>> of(PersonId person) {
		return Map.of("quickCalendars",
				this.table.ofPerson(person)
					.stream()
					.map((one) -> Map.<String, Object>of("site", one.site().toString()))
					.toList());
	}

	@Override
	public void forget(PersonId person) {
		this.table.forget(person);
	}

	@Override
	public void handOver(PersonId from, PersonId into) {
		this.table.handOver(from, into);
	}

}
