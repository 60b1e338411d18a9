package org.leafward.climate.store;

import javax.sql.DataSource;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * The tables of climate on a database, for tests.
 *
 * @param stations the stations
 * @param observations their records
 */
public record ClimateTables(StationTable stations, ObservationTable observations) {

	/**
	 * Opens the tables.
	 * @param source a migrated database
	 * @return the tables
	 */
	public static ClimateTables on(DataSource source) {
		return new ClimateTables(new StationTable(JdbcClient.create(source)),
				new ObservationTable(new JdbcTemplate(source)));
	}

}
