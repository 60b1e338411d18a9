package org.leafward.counties.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.leafward.counties.Garden;
import org.leafward.register.SiteId;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Model gardens. */
@Repository
public class GardenTable {

	private final JdbcClient database;

	GardenTable(JdbcClient database) {
		this.database = database;
	}

	/**
	 * Lets nobody else tend a garden before this transaction ends.
	 * @param county code of its county
	 */
	public void lock(String county) {
		this.database.sql("select pg_advisory_xact_lock(hashtextextended(?, 80))")
			.param(county)
			.query((row, number) -> true)
			.single();
	}

	public Optional<Garden> find(String county) {
		return this.database.sql("select * from counties.garden where county = ?")
			.param(county)
			.query(GardenTable::garden)
			.optional();
	}

	public List<Garden> all() {
		return this.database.sql("select * from counties.garden order by county").query(GardenTable::garden).list();
	}

	/**
	 * Writes a garden that is new.
	 * @param county code of its county
	 * @param site its site
	 * @param day the day
	 * @param at when
	 */
	public void add(String county, SiteId site, LocalDate day, Instant at) {
		this.database
			.sql("insert into counties.garden (county, site, version, tended_on, made_at) values (?, ?, 1, ?, ?)")
			.params(county, site.value(), day, at.atOffset(ZoneOffset.UTC))
			.update();
	}

	/**
	 * Notes that a garden was tended.
	 * @param county code of its county
	 * @param day the day
	 * @param changed whether plants came or went, which is another version
	 */
	public void tended(String county, LocalDate day, boolean changed) {
		this.database.sql("update counties.garden set tended_on = ?, version = version + ? where county = ?")
			.params(day, changed ? 1 : 0, county)
			.update();
	}

	/**
	 * Notes that the tasks of a site changed. Other sites than those of gardens cost one
	 * look into an index.
	 * @param site any site
	 */
	public void changed(UUID site) {
		this.database.sql("update counties.garden set version = version + 1 where site = ?").param(site).update();
	}

	private static Garden garden(ResultSet row, int number) throws SQLException {
		return new Garden(row.getString("county"), new SiteId(row.getObject("site", UUID.class)),
				row.getLong("version"), row.getObject("tended_on", LocalDate.class),
				row.getObject("made_at", OffsetDateTime.class).toInstant());
	}

}
