package org.leafward.care.store;

import java.sql.Array;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.leafward.care.PackVersion;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The versions of the rule packs. */
@Repository
public class PackTable {

	private static final long TURN = 4042;

	private final JdbcClient database;

	PackTable(JdbcClient database) {
		this.database = database;
	}

	/** Lets one transaction at a time write versions, on whatever node. */
	public void lock() {
		this.database.sql("select pg_advisory_xact_lock(?)").param(TURN).query((row, number) -> number).list();
	}

	/**
	 * A number that rises with every version written.
	 * @return 0 when there is none
	 */
	public long latest() {
		return this.database.sql("select coalesce(max(id), 0) from care.pack_version").query(Long.class).single();
	}

	/**
	 * The newest version of each pack.
	 * @return by id of the pack
	 */
	public List<PackVersion> newest() {
		return this.database.sql("select distinct on (pack) * from care.pack_version order by pack, version desc")
			.query(PackTable::version)
			.list();
	}

	/**
	 * The newest version of a pack.
	 * @param pack id of the pack
	 * @return empty when there is none
	 */
	public Optional<PackVersion> newest(String pack) {
		return of(pack, 0, 1).stream().findFirst();
	}

	/**
	 * Versions of a pack, newest first.
	 * @param pack id of the pack
	 * @param offset how many to leave out
	 * @param most how many at most
	 * @return never null
	 */
	public List<PackVersion> of(String pack, int offset, int most) {
		return this.database
			.sql("select * from care.pack_version where pack = ? order by version desc offset ? limit ?")
			.params(pack, offset, most)
			.query(PackTable::version)
			.list();
	}

	/**
	 * One version.
	 * @param pack id of the pack
	 * @param version its version
	 * @return empty when there is none
	 */
	public Optional<PackVersion> find(String pack, int version) {
		return this.database.sql("select * from care.pack_version where pack = ? and version = ?")
			.params(pack, version)
			.query(PackTable::version)
			.optional();
	}

	/**
	 * The version before another.
	 * @param pack id of the pack
	 * @param version the other
	 * @return empty when it is the first that is known
	 */
	public Optional<PackVersion> before(String pack, int version) {
		return this.database
			.sql("select * from care.pack_version where pack = ? and version < ? order by version desc limit 1")
			.params(pack, version)
			.query(PackTable::version)
			.optional();
	}

	/**
	 * Versions in which a rule changed, newest first.
	 * @param pack id of the pack
	 * @param rule id of the rule
	 * @param most how many at most
	 * @return never null
	 */
	public List<PackVersion> changing(String pack, String rule, int most) {
		return this.database.sql("""
				select * from care.pack_version where pack = ? and ? = any(changed) order by version desc limit ?
				""").params(pack, rule, most).query(PackTable::version).list();
	}

	/**
	 * When rules last changed.
	 * @return by pack and rule, the version
	 */
	public Map<String, Map<String, Integer>> changed() {
		Map<String, Map<String, Integer>> all = new HashMap<>();
		this.database.sql("""
				select pack, rule, max(version) from care.pack_version, unnest(changed) as rule group by pack, rule
				""").query((row) -> {
			all.computeIfAbsent(row.getString(1), (pack) -> new HashMap<>()).put(row.getString(2), row.getInt(3));
		});
		return all;
	}

	/**
	 * Writes a version; one of the same number is replaced.
	 * @param version the version
	 */
	public void write(PackVersion version) {
		this.database.sql("delete from care.pack_version where pack = ? and version = ?")
			.params(version.pack(), version.version())
			.update();
		this.database.sql("""
				insert into care.pack_version (pack, version, origin, content, note, changed, by_name, by_person, at)
				values (?, ?, ?, ?, ?, ?, ?, ?, ?)
				""")
			.param(version.pack())
			.param(version.version())
			.param(version.origin().name())
			.param(version.content())
			.param(version.note())
			.param(version.changed().toArray(String[]::new))
			.param(version.by())
			.param(version.person())
			.param(version.at().atOffset(ZoneOffset.UTC))
			.update();
	}

	private static PackVersion version(ResultSet row, int number) throws SQLException {
		Array changed = row.getArray("changed");
		return new PackVersion(row.getString("pack"), row.getInt("version"),
				PackVersion.Origin.valueOf(row.getString("origin")), row.getString("content"), row.getString("note"),
				List.of((String[]) changed.getArray()), row.getString("by_name"),
				row.getObject("by_person", UUID.class), row.getObject("at", OffsetDateTime.class).toInstant());
	}

}
