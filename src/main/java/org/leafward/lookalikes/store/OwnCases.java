package org.leafward.lookalikes.store;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.leafward.accounts.PersonId;
import org.leafward.accounts.PersonalData;
import org.leafward.accounts.Rows;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** What is kept about a person in cases: their own, and what they wrote in others'. */
@Component
class OwnCases implements PersonalData {

	private static final int MOST_PHOTOS = 20;

	private final JdbcClient database;

	OwnCases(JdbcClient database) {
		this.database = database;
	}

	/** Before care, whose tasks came of cases. */
	@Override
	public int order() {
		return 25;
	}

	@Override
	public Map<String, List<Map<String, Object>>> of(PersonId person) {
		Map<String, List<Map<String, Object>>> all = new LinkedHashMap<>();
		all.put("cases", this.database.sql("""
				select id, site, planting, species, plant, county, zone, seen, state, answers::text as answers,
					array_to_string(struck, ' ') as struck, likeliest, cause, basis, result, sampled_on as "sampledOn",
					help_wanted_at as "helpWantedAt", follows, opened_at as "openedAt", changed_at as "changedAt",
					closed_on as "closedOn"
				from lookalikes.plant_case where person = ? order by opened_at, id""")
			.param(person.value())
			.query(Rows::plain)
			.list());
		all.put("case-notes",
				this.database.sql("""
						select note.id, note.plant_case as "case", note.from_desk as "fromDesk", note.words, note.at
						from lookalikes.note note join lookalikes.plant_case one on one.id = note.plant_case
						where note.person = ? or one.person = ? order by note.at, note.id""")
					.params(person.value(), person.value())
					.query(Rows::plain)
					.list());
		all.put("case-photos", this.database.sql("""
				select photo.id, photo.plant_case as "case", photo.width, photo.height, photo.words, photo.at
				from lookalikes.photo photo join lookalikes.plant_case one on one.id = photo.plant_case
				where one.person = ? order by photo.at, photo.id""").param(person.value()).query(Rows::plain).list());
		return all;
	}

	@Override
	public Map<String, byte[]> files(PersonId person) {
		Map<String, byte[]> files = new LinkedHashMap<>();
		this.database.sql("""
				select photo.id, photo.content
				from lookalikes.photo photo join lookalikes.plant_case one on one.id = photo.plant_case
				where one.person = ? order by photo.at desc, photo.id limit ?""")
			.params(person.value(), MOST_PHOTOS)
			.query((row) -> {
				files.put("case-photo-%s.jpg".formatted(row.getObject("id", UUID.class)), row.getBytes("content"));
			});
		return files;
	}

	@Override
	public void forget(PersonId person) {
		this.database.sql("delete from lookalikes.plant_case where person = ?").param(person.value()).update();
		this.database.sql("update lookalikes.plant_case set assigned = null where assigned = ?")
			.param(person.value())
			.update();
		this.database.sql("update lookalikes.note set person = null where person = ?").param(person.value()).update();
	}

	@Override
	public void handOver(PersonId from, PersonId into) {
		for (String column : List.of("plant_case set person", "plant_case set assigned", "note set person")) {
			this.database
				.sql("update lookalikes.%s = ? where %s = ?".formatted(column,
						column.substring(column.lastIndexOf(' ') + 1)))
				.params(into.value(), from.value())
				.update();
		}
	}

}
