package org.leafward.quick;

import java.util.LinkedHashMap;
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
	public String part() {
		return "quickCalendars";
	}

	@Override
	public int order() {
		return 0;
	}

	@Override
	public Map<String, Object> of(PersonId person) {
		Map<String, Object> kept = new LinkedHashMap<>();
		kept.put("sites", this.table.ofPerson(person).stream().map((one) -> one.site().toString()).toList());
		return kept;
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
