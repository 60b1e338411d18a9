package org.leafward.advisories.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.advisories.core.chain.MessageType;
import org.leafward.advisories.desk.Draft;
import org.leafward.advisories.desk.DraftFields;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.json.JsonMapper;

/** Messages that are being written. */
@Repository
public class DraftTable {

	private static final TypeReference<Map<String, List<String>>> FIELDS = new TypeReference<>() {
	};

	private final JdbcClient database;

	private final JsonMapper json;

	DraftTable(JdbcClient database, JsonMapper json) {
		this.database = database;
		this.json = json;
	}

	/**
	 * Writes a draft, unless somebody else did meanwhile.
	 * @param draft the draft; its version is that which it is based on
	 * @return whether it was written, with the next version
	 */
	public boolean put(Draft draft) {
		return this.database
			.sql("""
					insert into advisories.draft as d (id, advisory, type, proposal, condition, counties, fields, state, send_at,
						written_by, approved_by, version, changed_at, trouble, message)
					values (:id, :advisory, :type, :proposal, :condition, :counties, :fields::jsonb, :state, :sendAt, :writer,
						:approver, :version + 1, :changedAt, :trouble, :message)
					on conflict (id) do update set counties = excluded.counties, fields = excluded.fields,
						state = excluded.state, send_at = excluded.send_at, written_by = excluded.written_by,
						approved_by = excluded.approved_by, version = excluded.version, changed_at = excluded.changed_at,
						trouble = excluded.trouble, message = excluded.message
					where d.version = :version
					""")
			.param("id", draft.id())
			.param("advisory", draft.advisory())
			.param("type", draft.type().name())
			.param("proposal", draft.proposal())
			.param("condition", draft.condition())
			.param("counties", draft.counties().stream().sorted().toArray(String[]::new))
			.param("fields", this.json.writeValueAsString(draft.fields().values()))
			.param("state", draft.state().name())
			.param("sendAt", at(draft.sendAt()))
			.param("writer", draft.writer())
			.param("approver", draft.approver())
			.param("version", draft.version())
			.param("changedAt", at(draft.changedAt()))
			.param("trouble", draft.trouble())
			.param("message", draft.message())
			.update() == 1;
	}

	private static @Nullable OffsetDateTime at(@Nullable Instant time) {
		return (time != null) ? time.atOffset(ZoneOffset.UTC) : null;
	}

	/**
	 * A draft.
	 * @param id its identifier
	 * @return empty when there is none
	 */
	public Optional<Draft> find(UUID id) {
		return this.database.sql("select * from advisories.draft where id = ?").param(id).query(this::draft).optional();
	}

	/**
	 * A draft, held until the end of the transaction.
	 * @param id its identifier
	 * @return empty when there is none, or somebody else holds it
	 */
	public Optional<Draft> hold(UUID id) {
		return this.database.sql("select * from advisories.draft where id = ? for update skip locked")
			.param(id)
			.query(this::draft)
			.optional();
	}

	/**
	 * Drafts of which something may still become.
	 * @param counties codes of counties, all of which a draft's have to be; null for any
	 * @return latest first, at most 100
	 */
	public List<Draft> open(@Nullable Collection<String> counties) {
		return this.database.sql("""
				select * from advisories.draft where state in ('WRITING', 'WAITING', 'SCHEDULED')
					and (?::text[] is null or counties <@ ?::text[])
				order by changed_at desc limit 100
				""")
			.param((counties != null) ? counties.toArray(String[]::new) : null)
			.param((counties != null) ? counties.toArray(String[]::new) : null)
			.query(this::draft)
			.list();
	}

	/**
	 * Drafts whose time has come.
	 * @param now the moment
	 * @return their identifiers, at most 100
	 */
	public List<UUID> due(Instant now) {
		return this.database.sql("""
				select id from advisories.draft where state = 'SCHEDULED' and send_at <= ? order by send_at limit 100
				""").param(at(now)).query(UUID.class).list();
	}

	private Draft draft(ResultSet row, int number) throws SQLException {
		OffsetDateTime sendAt = row.getObject("send_at", OffsetDateTime.class);
		return new Draft(row.getObject("id", UUID.class), row.getObject("advisory", UUID.class),
				MessageType.valueOf(row.getString("type")), row.getObject("proposal", UUID.class),
				row.getString("condition"), SentTable.texts(row.getArray("counties")),
				new DraftFields(this.json.readValue(row.getString("fields"), FIELDS)),
				Draft.State.valueOf(row.getString("state")), (sendAt != null) ? sendAt.toInstant() : null,
				row.getObject("written_by", UUID.class), row.getObject("approved_by", UUID.class),
				row.getInt("version"), SentTable.instant(row, "changed_at"), row.getString("trouble"),
				row.getObject("message", UUID.class));
	}

}
