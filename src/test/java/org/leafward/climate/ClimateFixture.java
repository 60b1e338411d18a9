package org.leafward.climate;

import java.util.ArrayList;
import java.util.List;
import javax.sql.DataSource;
import org.leafward.climate.store.ClimateTables;
import org.springframework.jdbc.support.JdbcTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * The services of climate on a database, wired by hand for tests.
 *
 * @param tables the tables
 * @param stations the stations
 * @param observations takes records in
 * @param climate answers
 * @param events what was announced, in order
 */
public record ClimateFixture(ClimateTables tables, Stations stations, Observations observations, LocalClimate climate,
		List<Object> events) {

	/**
	 * Wires the services, as one node of several.
	 * @param source a migrated database
	 * @return the services
	 */
	public static ClimateFixture on(DataSource source) {
		ClimateTables tables = ClimateTables.on(source);
		List<Object> events = new ArrayList<>();
		Stations stations = new Stations(tables.stations());
		return new ClimateFixture(tables, stations,
				new Observations(tables.stations(), tables.observations(), events::add,
						new TransactionTemplate(new JdbcTransactionManager(source))),
				new LocalClimate(stations, tables.stations(), tables.observations()), events);
	}

}
