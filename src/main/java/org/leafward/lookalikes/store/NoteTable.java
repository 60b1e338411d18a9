package org.leafward.lookalikes.store;

import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.UUID;
import org.leafward.accounts.PersonId;
import org.leafward.lookalikes.CaseId;
import org.leafward.lookalikes.CaseNote;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** What was written in cases. */
@Repository
public class NoteTable {

	private final JdbcClient database;

	NoteTable(JdbcClient database) {
		this.database = database;
	}

	public void add(CaseId id, CaseNote note) {
		PersonId person = note.person();
		this.database.sql("""
				insert into lookalikes.note (id, plant_case, person, from_desk, words, at)
				values (:id, :case, :person, :desk, :words, :at)
				""")
			.param("id", note.id())
			.param("case", id.value())
			.param("person", (person != null) ? person.value() : null)
			.param("desk", note.fromDesk())
			.param("words", note.words())
			.param("at", note.at().atOffset(ZoneOffset.UTC))
			.update();
	}

	public int count(CaseId id) {
		return this.database.sql("select count(*) from lookalikes.note where plant_case = ?")
			.param(id.value())
			.query(Integer.class)
			.single();
	}

	public List<CaseNote> of(CaseId id) {
		return this.database.sql("select * from lookalikes.note where plant_case = ? order by at, id")
			.param(id.value())
			.query((row, number) -> {
				UUID person = row.getObject("person", UUID.class);
				return new CaseNote(row.getObject("id", UUID.class), (person != null) ? new PersonId(person) : null,
						row.getBoolean("from_desk"), row.getString("words"),
						row.getObject("at", OffsetDateTime.class).toInstant());
			})
			.list();
	}

}
