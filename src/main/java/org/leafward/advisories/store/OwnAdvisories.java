package org.leafward.advisories.store;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.leafward.accounts.PersonId;
import org.leafward.accounts.PersonalData;
import org.leafward.accounts.Rows;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/**
 * What the watch keeps about specialists: what they decided and which limits they set.
 */
@Component
class OwnAdvisories implements PersonalData {

	private static final int ORDER = 25;

	private final JdbcClient database;

	OwnAdvisories(JdbcClient database) {
		this.database = database;
	}

	@Override
	public int order() {
		return ORDER;
	}

	@Override
	public Map<String, List<Map<String, Object>>> of(PersonId person) {
		Map<String, List<Map<String, Object>>> all = new LinkedHashMap<>();
		all.put("alert-decisions", this.database.sql("""
				select proposal, county, standing, decided_at as "at", why from advisories.proposal_county
				where decided_person = ? order by decided_at, proposal, county
				""").param(person.value()).query(Rows::plain).list());
		all.put("alert-limits", this.database.sql("""
				select condition, threshold, scope, value, note, changed_at as "at" from advisories.threshold_change
				where changed_person = ? order by id
				""").param(person.value()).query(Rows::plain).list());
		return all;
	}

	/** What was decided holds for others, so it stays without the person. */
	@Override
	public void forget(PersonId person) {
		this.database.sql("""
				update advisories.proposal_county set decided_by = 'a specialist', decided_person = null, why = ''
				where decided_person = ?
				""").param(person.value()).update();
		this.database.sql("""
				update advisories.threshold_change set changed_by = 'a specialist', changed_person = null, note = ''
				where changed_person = ?
				""").param(person.value()).update();
	}

	@Override
	public void handOver(PersonId from, PersonId into) {
		this.database.sql("update advisories.proposal_county set decided_person = ? where decided_person = ?")
			.params(into.value(), from.value())
			.update();
		this.database.sql("update advisories.threshold_change set changed_person = ? where changed_person = ?")
			.params(into.value(), from.value())
			.update();
	}

}
