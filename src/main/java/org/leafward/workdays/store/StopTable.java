package org.leafward.workdays.store;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import org.leafward.register.PlantingId;
import org.leafward.register.SiteId;
import org.leafward.workdays.WalkStop;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Where plantings stand when one walks through a site. */
@Repository
public class StopTable {

	private final JdbcClient database;

	StopTable(JdbcClient database) {
		this.database = database;
	}

	public Map<PlantingId, WalkStop> of(SiteId site) {
		Map<PlantingId, WalkStop> stops = new HashMap<>();
		this.database.sql("select planting, place, square from workdays.stop where site = ?")
			.param(site.value())
			.query((row) -> {
				stops.put(new PlantingId(row.getObject("planting", UUID.class)),
						new WalkStop(row.getInt("place"), row.getObject("square", Integer.class)));
			});
		return stops;
	}

	/**
	 * Says anew where everything stands.
	 * @param site where
	 * @param stops by planting
	 */
	public void put(SiteId site, Map<PlantingId, WalkStop> stops) {
		this.database.sql("delete from workdays.stop where site = ?").param(site.value()).update();
		stops.forEach((planting, stop) -> this.database
			.sql("insert into workdays.stop (site, planting, place, square) values (?, ?, ?, ?)")
			.params(Arrays.asList(site.value(), planting.value(), stop.place(), stop.square()))
			.update());
	}

}
