package org.leafward.climate.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.leafward.climate.Station;
import org.leafward.climate.StationId;
import org.leafward.measure.GeoPoint;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Reads and writes {@code climate.station}. */
@Component
public class StationTable {

	private static final String COLUMNS = "select id, name, latitude, longitude, elevation_metres, invented, record_version from climate.station ";

	private final JdbcClient jdbc;

	StationTable(JdbcClient jdbc) {
		this.jdbc = jdbc;
	}

	/**
	 * Writes a station, new or changed.
	 * @param station the station
	 * @return whether it is new
	 */
	public boolean save(Station station) {
		return this.jdbc.sql("""
				insert into climate.station (id, name, latitude, longitude, elevation_metres, invented)
				values (:id, :name, :latitude, :longitude, :elevation, :invented)
				on conflict (id) do update set name = excluded.name, latitude = excluded.latitude,
					longitude = excluded.longitude, elevation_metres = excluded.elevation_metres,
					invented = excluded.invented
				returning xmax = 0""")
			.param("id", station.id().value())
			.param("name", station.name())
			.param("latitude", station.point().latitude())
			.param("longitude", station.point().longitude())
			.param("elevation", station.point().elevationMetres())
			.param("invented", station.invented())
			.query(Boolean.class)
			.single();
	}

	public Optional<StoredStation> find(StationId id) {
		return this.jdbc.sql(COLUMNS + "where id = :id").param("id", id.value()).query(StationTable::row).optional();
	}

	/**
	 * Finds a station and keeps others from loading its record until the transaction
	 * ends.
	 * @param id which station
	 * @return the station, if it is there
	 */
	public Optional<StoredStation> lock(StationId id) {
		return this.jdbc.sql(COLUMNS + "where id = :id for update")
			.param("id", id.value())
			.query(StationTable::row)
			.optional();
	}

	public List<StoredStation> page(int offset, int size) {
		return this.jdbc.sql(COLUMNS + "order by id offset :offset limit :size")
			.param("offset", offset)
			.param("size", size)
			.query(StationTable::row)
			.list();
	}

	public long count() {
		return this.jdbc.sql("select count(*) from climate.station").query(Long.class).single();
	}

	/**
	 * A part of the earth between two parallels and two meridians, degrees.
	 *
	 * @param south degrees north
	 * @param north degrees north
	 * @param west degrees east, -180 to 180
	 * @param east degrees east, -180 to 180; less than {@code west} where the meridian of
	 * 180 degrees lies between the two
	 */
	public record Box(double south, double north, double west, double east) {
	}

	/**
	 * The stations in some parts of the earth.
	 * @param boxes the parts
	 * @return each once, in no order
	 */
	public List<StoredStation> between(List<Box> boxes) {
		List<StoredStation> found = this.jdbc.sql(COLUMNS + """
				join unnest(?::float8[], ?::float8[], ?::float8[], ?::float8[]) as box (south, north, west, east)
					on latitude between south and north and case when west <= east then longitude between west and east
						else longitude >= west or longitude <= east end
				""")
			.params(degrees(boxes, Box::south), degrees(boxes, Box::north), degrees(boxes, Box::west),
					degrees(boxes, Box::east))
			.query(StationTable::row)
			.list();
		return (boxes.size() > 1) ? found.stream().distinct().toList() : found;
	}

	private static Double[] degrees(List<Box> boxes, Function<Box, Double> side) {
		return boxes.stream().map(side).toArray(Double[]::new);
	}

	/**
	 * Notes that the record of a station changed.
	 * @param id which station
	 */
	public void recordChanged(StationId id) {
		this.jdbc.sql("update climate.station set record_version = record_version + 1 where id = :id")
			.param("id", id.value())
			.update();
	}

	private static StoredStation row(ResultSet row, int number) throws SQLException {
		GeoPoint point = new GeoPoint(row.getDouble("latitude"), row.getDouble("longitude"),
				row.getDouble("elevation_metres"));
		return new StoredStation(new Station(new StationId(row.getString("id")), row.getString("name"), point,
				row.getBoolean("invented")), row.getLong("record_version"));
	}

}
