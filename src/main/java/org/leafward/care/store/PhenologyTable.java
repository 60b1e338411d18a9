package org.leafward.care.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.leafward.accounts.PersonId;
import org.leafward.care.Observation;
import org.leafward.care.ObservationId;
import org.leafward.register.PlantingId;
import org.leafward.register.SiteId;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Observations as people enter them; {@link SeenTable} reads them for planning. */
@Repository
public class PhenologyTable {

	private final JdbcClient database;

	PhenologyTable(JdbcClient database) {
		this.database = database;
	}

	/**
	 * Adds an observation.
	 * @param seen the observation
	 */
	public void add(Observation seen) {
		PlantingId planting = seen.planting();
		PersonId by = seen.by();
		this.database.sql("""
				insert into care.observation (id, site, planting, kind, name, day, season, person, entered_at)
				values (:id, :site, :planting, :kind, :name, :day, :season, :person, :at)
				""")
			.param("id", seen.id().value())
			.param("site", seen.site().value())
			.param("planting", (planting != null) ? planting.value() : null)
			.param("kind", seen.kind().name())
			.param("name", seen.name())
			.param("day", seen.day())
			.param("season", seen.season())
			.param("person", (by != null) ? by.value() : null)
			.param("at", seen.enteredAt().atOffset(ZoneOffset.UTC))
			.update();
	}

	/**
	 * One observation.
	 * @param id its identifier
	 * @return empty when there is none or it was taken back
	 */
	public Optional<Observation> find(ObservationId id) {
		return this.database.sql("select * from care.observation where id = ? and undone_at is null")
			.param(id.value())
			.query(PhenologyTable::seen)
			.optional();
	}

	/**
	 * A page of a site's observations, the latest day first.
	 * @param site the site
	 * @param page from 0
	 * @param size 1 to 200
	 * @return never null
	 */
	public List<Observation> latest(SiteId site, int page, int size) {
		return this.database.sql("""
				select * from care.observation where site = ? and undone_at is null
				order by day desc, entered_at desc, id limit ? offset ?
				""").params(site.value(), size, (long) page * size).query(PhenologyTable::seen).list();
	}

	/**
	 * How many observations a site has for a day.
	 * @param site the site
	 * @param day the day
	 * @return 0 or more, without those taken back
	 */
	public int count(SiteId site, LocalDate day) {
		return this.database
			.sql("select count(*) from care.observation where site = ? and day = ? and undone_at is null")
			.params(site.value(), day)
			.query(Integer.class)
			.single();
	}

	/**
	 * Takes an observation back.
	 * @param id the observation
	 * @param at when
	 */
	public void undo(ObservationId id, Instant at) {
		this.database.sql("update care.observation set undone_at = ? where id = ?")
			.params(at.atOffset(ZoneOffset.UTC), id.value())
			.update();
	}

	private static Observation seen(ResultSet row, int number) throws SQLException {
		UUID person = row.getObject("person", UUID.class);
		return new Observation(new ObservationId(row.getObject("id", UUID.class)),
				new SiteId(row.getObject("site", UUID.class)), TaskRows.planting(row),
				Observation.Kind.valueOf(row.getString("kind")), row.getString("name"),
				row.getObject("day", LocalDate.class), row.getInt("season"),
				(person != null) ? new PersonId(person) : null,
				row.getObject("entered_at", OffsetDateTime.class).toInstant());
	}

}
