package org.leafward.register.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.leafward.accounts.PersonId;
import org.leafward.register.PlantPhoto;
import org.leafward.register.PlantingId;
import org.leafward.register.SiteId;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The photos of plantings. */
@Repository
public class PlantPhotoTable {

	private final JdbcClient database;

	PlantPhotoTable(JdbcClient database) {
		this.database = database;
	}

	/**
	 * How many photos there are.
	 *
	 * @param ofPlanting of the planting
	 * @param ofSite of all plantings of its site
	 */
	public record Count(int ofPlanting, int ofSite) {
	}

	/**
	 * Counts photos. Whoever counts for the same site at the same time waits for the end
	 * of this transaction, so that no bound is passed by two at once.
	 * @param site the site
	 * @param planting one of its plantings
	 * @return empty when the planting is gone
	 */
	public Optional<Count> hold(SiteId site, PlantingId planting) {
		this.database.sql("select id from register.site where id = ? for no key update")
			.param(site.value())
			.query(UUID.class)
			.optional();
		return this.database.sql("""
				select (select count(*) from register.photo photo where photo.planting = one.id) as planting,
					(select count(*) from register.photo photo join register.planting other on other.id = photo.planting
						where other.site = one.site) as site
				from register.planting one where one.id = ? and one.site = ?
				""")
			.params(planting.value(), site.value())
			.query((row, number) -> new Count(row.getInt("planting"), row.getInt("site")))
			.optional();
	}

	public void add(PlantPhoto photo, byte[] jpeg) {
		this.database
			.sql("""
					insert into register.photo (id, planting, content, width, height, words, day, at) values (?, ?, ?, ?, ?, ?, ?, ?)
					""")
			.params(photo.id(), photo.planting().value(), jpeg, photo.width(), photo.height(), photo.words(),
					photo.day(), photo.at().atOffset(ZoneOffset.UTC))
			.update();
	}

	/**
	 * The photos of a planting.
	 * @param planting which
	 * @return the latest day first
	 */
	public List<PlantPhoto> of(PlantingId planting) {
		return this.database.sql("""
				select id, planting, width, height, words, day, at from register.photo
				where planting = ? order by day desc, at desc, id
				""").param(planting.value()).query((row, number) -> photo(row)).list();
	}

	/**
	 * The photos of a site.
	 * @param site which
	 * @return by planting, day and moment
	 */
	public List<PlantPhoto> of(SiteId site) {
		return this.database.sql("""
				select photo.id, planting, width, height, words, day, at
				from register.photo photo join register.planting one on one.id = photo.planting
				where one.site = ? order by planting, day, at, photo.id
				""").param(site.value()).query((row, number) -> photo(row)).list();
	}

	private static PlantPhoto photo(ResultSet row) throws SQLException {
		return new PlantPhoto(row.getObject("id", UUID.class), new PlantingId(row.getObject("planting", UUID.class)),
				row.getInt("width"), row.getInt("height"), row.getString("words"),
				row.getObject("day", LocalDate.class), row.getObject("at", OffsetDateTime.class).toInstant());
	}

	public Optional<byte[]> content(PlantingId planting, UUID photo) {
		return this.database.sql("select content from register.photo where planting = ? and id = ?")
			.params(planting.value(), photo)
			.query((row, number) -> row.getBytes(1))
			.optional();
	}

	/**
	 * The pictures of a person's plants.
	 * @param person who
	 * @param most how many, the latest first
	 * @return JPEG by identifier
	 */
	public Map<UUID, byte[]> contentsOf(PersonId person, int most) {
		Map<UUID, byte[]> all = new LinkedHashMap<>();
		this.database.sql("""
				select photo.id, photo.content
				from register.photo photo join register.planting one on one.id = photo.planting
					join register.site site on site.id = one.site
				where site.owner = ? order by photo.at desc, photo.id limit ?
				""").params(person.value(), most).query((row) -> {
			all.put(row.getObject("id", UUID.class), row.getBytes("content"));
		});
		return all;
	}

	public boolean remove(PlantingId planting, UUID photo) {
		return this.database.sql("delete from register.photo where planting = ? and id = ?")
			.params(planting.value(), photo)
			.update() > 0;
	}

}
