package org.leafward.accounts.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.AuditLog;
import org.leafward.accounts.Deed;
import org.leafward.accounts.PersonId;
import org.leafward.pages.Viewers;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;

/** The audit log in the database. */
@Service
class StoredAuditLog implements AuditLog {

	private final JdbcClient database;

	private final Viewers viewers;

	private final Clock clock;

	StoredAuditLog(JdbcClient database, Viewers viewers, Clock clock) {
		this.database = database;
		this.viewers = viewers;
		this.clock = clock;
	}

	@Override
	public void note(Deed deed, @Nullable PersonId concerns, String what) {
		this.database.sql("insert into accounts.audit (at, actor, deed, concerns, what) values (?, ?, ?, ?, ?)")
			.param(this.clock.instant().atOffset(ZoneOffset.UTC))
			.param(this.viewers.current().person())
			.param(deed.name())
			.param((concerns != null) ? concerns.value() : null)
			.param(what)
			.update();
	}

	@Override
	public List<Entry> all(int page, int size) {
		return this.database.sql("select * from accounts.audit order by id desc limit ? offset ?")
			.params(size, (long) page * size)
			.query(StoredAuditLog::entry)
			.list();
	}

	@Override
	public List<Entry> of(PersonId person, int page, int size) {
		return this.database
			.sql("select * from accounts.audit where actor = ? or concerns = ? order by id desc limit ? offset ?")
			.params(person.value(), person.value(), size, (long) page * size)
			.query(StoredAuditLog::entry)
			.list();
	}

	private static Entry entry(ResultSet row, int number) throws SQLException {
		return new Entry(row.getObject("at", OffsetDateTime.class).toInstant(), person(row, "actor"),
				Deed.valueOf(row.getString("deed")), person(row, "concerns"), row.getString("what"));
	}

	private static @Nullable PersonId person(ResultSet row, String column) throws SQLException {
		UUID id = row.getObject(column, UUID.class);
		return (id != null) ? new PersonId(id) : null;
	}

}
