package org.leafward.care.store;

import java.util.List;
import org.leafward.care.core.plan.Gap;
import org.leafward.register.SiteId;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** What the rules of a site could not give days to. */
@Repository
public class GapTable {

	private final JdbcClient database;

	private final JdbcTemplate batches;

	GapTable(JdbcClient database, JdbcTemplate batches) {
		this.database = database;
		this.batches = batches;
	}

	/**
	 * The gaps of a site.
	 * @param site the site
	 * @return in the order of {@link Gap#ORDER}
	 */
	public List<Gap> of(SiteId site) {
		return this.database.sql("select * from care.gap where site = ?")
			.param(site.value())
			.query((row, number) -> new Gap(TaskRows.planting(row), row.getString("rule"), row.getString("title"),
					row.getInt("season"), row.getString("reason")))
			.list()
			.stream()
			.sorted(Gap.ORDER)
			.toList();
	}

	/**
	 * Replaces the gaps of a site.
	 * @param site the site
	 * @param gaps what has no days
	 */
	public void replace(SiteId site, List<Gap> gaps) {
		this.database.sql("delete from care.gap where site = ?").param(site.value()).update();
		this.batches.batchUpdate(
				"insert into care.gap (site, planting, rule, title, season, reason) values (?, ?, ?, ?, ?, ?)",
				gaps.stream()
					.map((gap) -> new Object[] { site.value(), (gap.planting() != null) ? gap.planting().value() : null,
							gap.rule(), gap.title(), gap.season(), gap.reason() })
					.toList());
	}

}
