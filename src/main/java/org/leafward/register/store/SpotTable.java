package org.leafward.register.store;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.measure.GeoPoint;
import org.leafward.register.SiteId;
import org.leafward.register.SpotInArea;
import org.leafward.register.SpotsInArea;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Sites within a part of the map. */
@Repository
public class SpotTable {

	private final JdbcClient database;

	SpotTable(JdbcClient database) {
		this.database = database;
	}

	/**
	 * Sites in a box, without the server's own.
	 * @param southWest one corner
	 * @param northEast the other
	 * @param species what has to grow there; null for whatever does
	 * @return with the number of such plantings
	 */
	public List<SpotInArea> in(GeoPoint southWest, GeoPoint northEast, String @Nullable [] species) {
		return this.database
			.sql("""
					select s.id, s.owner, s.county, s.region, s.latitude, s.longitude, s.elevation_metres,
						(select count(*) from register.planting p
							where p.site = s.id and (:species::text[] is null or p.species = any(:species::text[]))) as plantings
					from register.site s
					where s.latitude between :south and :north and s.longitude between :west and :east and s.owner <> :server
					order by s.id limit :most
					""")
			.param("species", species)
			.param("south", southWest.latitude())
			.param("north", northEast.latitude())
			.param("west", southWest.longitude())
			.param("east", northEast.longitude())
			.param("server", PersonId.SERVER.value())
			.param("most", SpotsInArea.MOST)
			.query((row, number) -> new SpotInArea(new SiteId(row.getObject("id", UUID.class)),
					new PersonId(row.getObject("owner", UUID.class)), row.getString("county"), row.getString("region"),
					new GeoPoint(row.getDouble("latitude"), row.getDouble("longitude"),
							row.getDouble("elevation_metres")),
					row.getLong("plantings")))
			.stream()
			.filter((spot) -> species == null || spot.plantings() > 0)
			.toList();
	}

}
