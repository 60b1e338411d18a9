package org.leafward.advisories.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import org.leafward.advisories.Decider;
import org.leafward.advisories.ThresholdChange;
import org.leafward.advisories.core.watch.WatchCondition.Moved;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Thresholds that specialists moved; no row is ever changed. */
@Repository
public class ThresholdTable {

	private final JdbcClient database;

	ThresholdTable(JdbcClient database) {
		this.database = database;
	}

	/**
	 * What holds now.
	 * @param condition code of the condition
	 * @return the values that were set and not taken back
	 */
	public List<Moved> set(String condition) {
		return this.database.sql("""
				select * from (select distinct on (threshold, scope) threshold, scope, value
					from advisories.threshold_change where condition = ? order by threshold, scope, id desc) latest
				where value is not null
				""")
			.param(condition)
			.query((row, number) -> new Moved(row.getString("threshold"), row.getString("scope"),
					row.getDouble("value")))
			.list();
	}

	/**
	 * The latest changes of a condition.
	 * @param condition its code
	 * @param most how many at most
	 * @return the latest first
	 */
	public List<ThresholdChange> history(String condition, int most) {
		return this.database
			.sql("select * from advisories.threshold_change where condition = ? order by id desc limit ?")
			.params(condition, most)
			.query(ThresholdTable::change)
			.list();
	}

	private static ThresholdChange change(ResultSet row, int number) throws SQLException {
		double value = row.getDouble("value");
		Double set = row.wasNull() ? null : value;
		return new ThresholdChange(row.getString("condition"), row.getString("threshold"), row.getString("scope"), set,
				row.getString("note"), row.getString("changed_by"),
				row.getObject("changed_at", OffsetDateTime.class).toInstant());
	}

	/**
	 * Notes a change.
	 * @param change what changed; its name is that of the decider
	 * @param by who changed it
	 */
	public void add(ThresholdChange change, Decider by) {
		this.database.sql("""
				insert into advisories.threshold_change (condition, threshold, scope, value, note, changed_by,
					changed_person, changed_at)
				values (:condition, :threshold, :scope, :value, :note, :by, :person, :at)
				""")
			.param("condition", change.condition())
			.param("threshold", change.threshold())
			.param("scope", change.scope())
			.param("value", change.value())
			.param("note", change.note())
			.param("by", by.name())
			.param("person", by.person())
			.param("at", change.at().atOffset(ZoneOffset.UTC))
			.update();
	}

}
