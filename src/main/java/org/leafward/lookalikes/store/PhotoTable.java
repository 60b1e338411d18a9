package org.leafward.lookalikes.store;

import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.leafward.lookalikes.CaseId;
import org.leafward.lookalikes.CasePhoto;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The photos of cases. */
@Repository
public class PhotoTable {

	private final JdbcClient database;

	PhotoTable(JdbcClient database) {
		this.database = database;
	}

	public void add(CaseId id, CasePhoto photo, byte[] jpeg) {
		this.database
			.sql("""
					insert into lookalikes.photo (id, plant_case, content, width, height, words, at) values (?, ?, ?, ?, ?, ?, ?)
					""")
			.params(photo.id(), id.value(), jpeg, photo.width(), photo.height(), photo.words(),
					photo.at().atOffset(ZoneOffset.UTC))
			.update();
	}

	public List<CasePhoto> of(CaseId id) {
		return this.database.sql("""
				select id, width, height, words, at from lookalikes.photo where plant_case = ? order by at, id
				""")
			.param(id.value())
			.query((row, number) -> new CasePhoto(row.getObject("id", UUID.class), row.getInt("width"),
					row.getInt("height"), row.getString("words"),
					row.getObject("at", OffsetDateTime.class).toInstant()))
			.list();
	}

	public Optional<byte[]> content(CaseId id, UUID photo) {
		return this.database.sql("select content from lookalikes.photo where plant_case = ? and id = ?")
			.params(id.value(), photo)
			.query((row, number) -> row.getBytes(1))
			.optional();
	}

	public boolean remove(CaseId id, UUID photo) {
		return this.database.sql("delete from lookalikes.photo where plant_case = ? and id = ?")
			.params(id.value(), photo)
			.update() > 0;
	}

}
