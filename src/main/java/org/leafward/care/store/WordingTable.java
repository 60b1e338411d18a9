package org.leafward.care.store;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import org.leafward.care.core.plan.Wording;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Repository;

/** The words of tasks under a name made from them, each kept once. */
@Repository
public class WordingTable {

	private final JdbcTemplate batches;

	WordingTable(JdbcTemplate batches) {
		this.batches = batches;
	}

	/**
	 * Keeps words that are not kept yet.
	 * @param wordings any number
	 */
	public void keep(Collection<Wording> wordings) {
		// In the order of their names, so that two nodes never wait for each other.
		List<Object[]> rows = wordings.stream()
			.distinct()
			.sorted(Comparator.comparing(Wording::name))
			.map((wording) -> new Object[] { wording.name(), wording.text().title(), wording.text().what(),
					wording.text().amount(), wording.text().why(), wording.text().otherwise(),
					wording.text().caution() })
			.toList();
		this.batches.batchUpdate("""
				insert into care.wording (id, title, what, amount, why, otherwise, caution) values (?, ?, ?, ?, ?, ?, ?)
				on conflict (id) do nothing
				""", rows);
	}

	/**
	 * Forgets words that no task has any more.
	 * @return how many
	 */
	public int forgetUnused() {
		return this.batches
			.update("delete from care.wording w where not exists (select from care.task t where t.wording = w.id)");
	}

}
