package org.leafward.workdays.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.leafward.accounts.PersonId;
import org.leafward.workdays.GroupId;
import org.leafward.workdays.GroupLink;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Links by which people join; their secrets are kept as hashes only. */
@Repository
public class InvitationTable {

	private final JdbcClient database;

	InvitationTable(JdbcClient database) {
		this.database = database;
	}

	public void add(GroupLink link, byte[] hash, PersonId by) {
		this.database.sql("""
				insert into workdays.invitation (id, group_id, hash, made_by, made_at, expires_at)
				values (?, ?, ?, ?, ?, ?)
				""")
			.params(link.id(), link.group().value(), hash, by.value(), link.madeAt().atOffset(ZoneOffset.UTC),
					link.expiresAt().atOffset(ZoneOffset.UTC))
			.update();
	}

	/**
	 * Links of a group that still work.
	 * @param group which
	 * @param now until when they must work
	 * @return the newest first
	 */
	public List<GroupLink> of(GroupId group, Instant now) {
		return this.database.sql("""
				select id, group_id, made_at, expires_at from workdays.invitation
				where group_id = ? and expires_at > ? order by made_at desc, id
				""").params(group.value(), now.atOffset(ZoneOffset.UTC)).query(InvitationTable::link).list();
	}

	public Optional<GroupLink> find(byte[] hash, Instant now) {
		return this.database
			.sql("select id, group_id, made_at, expires_at from workdays.invitation where hash = ? and expires_at > ?")
			.params(hash, now.atOffset(ZoneOffset.UTC))
			.query(InvitationTable::link)
			.optional();
	}

	/**
	 * Ends a link, and clears away those that ended by themselves.
	 * @param group of which
	 * @param id which
	 * @param now when
	 */
	public void remove(GroupId group, UUID id, Instant now) {
		this.database.sql("delete from workdays.invitation where group_id = ? and (id = ? or expires_at <= ?)")
			.params(group.value(), id, now.atOffset(ZoneOffset.UTC))
			.update();
	}

	private static GroupLink link(ResultSet row, int number) throws SQLException {
		return new GroupLink(row.getObject("id", UUID.class), new GroupId(row.getObject("group_id", UUID.class)),
				row.getObject("made_at", OffsetDateTime.class).toInstant(),
				row.getObject("expires_at", OffsetDateTime.class).toInstant());
	}

}
