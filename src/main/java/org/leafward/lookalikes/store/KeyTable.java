package org.leafward.lookalikes.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.leafward.accounts.PersonId;
import org.leafward.lookalikes.KeyVersion;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The published versions of the key's files. */
@Repository
public class KeyTable {

	private static final long TURN = 4090;

	private final JdbcClient database;

	KeyTable(JdbcClient database) {
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
		return this.database.sql("select coalesce(max(id), 0) from lookalikes.key_version").query(Long.class).single();
	}

	/**
	 * The newest version of each file.
	 * @return by name of the file
	 */
	public List<KeyVersion> newest() {
		return this.database.sql("select distinct on (file) * from lookalikes.key_version order by file, version desc")
			.query(KeyTable::version)
			.list();
	}

	/**
	 * Versions of a file, newest first.
	 * @param file name of the file
	 * @param offset how many to leave out
	 * @param most how many at most
	 * @return never null
	 */
	public List<KeyVersion> of(String file, int offset, int most) {
		return this.database
			.sql("select * from lookalikes.key_version where file = ? order by version desc offset ? limit ?")
			.params(file, offset, most)
			.query(KeyTable::version)
			.list();
	}

	/**
	 * One version.
	 * @param file name of the file
	 * @param version its version
	 * @return empty when there is none
	 */
	public Optional<KeyVersion> find(String file, int version) {
		return this.database.sql("select * from lookalikes.key_version where file = ? and version = ?")
			.params(file, version)
			.query(KeyTable::version)
			.optional();
	}

	/**
	 * Writes a new version.
	 * @param version the version
	 */
	public void write(KeyVersion version) {
		PersonId by = version.by();
		this.database.sql("""
				insert into lookalikes.key_version (file, version, content, note, by_person, at)
				values (?, ?, ?, ?, ?, ?)
				""")
			.param(version.file())
			.param(version.version())
			.param(version.content())
			.param(version.note())
			.param((by != null) ? by.value() : null)
			.param(version.at().atOffset(ZoneOffset.UTC))
			.update();
	}

	private static KeyVersion version(ResultSet row, int number) throws SQLException {
		UUID by = row.getObject("by_person", UUID.class);
		return new KeyVersion(row.getString("file"), row.getInt("version"), row.getString("content"),
				row.getString("note"), (by != null) ? new PersonId(by) : null,
				row.getObject("at", OffsetDateTime.class).toInstant());
	}

}
