package org.leafward.climate.store;

import javax.sql.DataSource;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * The tables of what comes from outside, for tests.
 *
 * @param fetches how it stands with the sources
 * @param forecasts the forecasts
 */
public record OutsideTables(FetchTable fetches, ForecastTable forecasts) {

	/**
	 * Opens the tables.
	 * @param source a migrated database
	 * @return the tables
	 */
	public static OutsideTables on(DataSource source) {
		return new OutsideTables(new FetchTable(JdbcClient.create(source)),
				new ForecastTable(new JdbcTemplate(source)));
	}

}
