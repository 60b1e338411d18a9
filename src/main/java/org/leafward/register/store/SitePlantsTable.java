package org.leafward.register.store;

import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.plants.SpeciesId;
import org.leafward.regions.County;
import org.leafward.register.CountyPlants.Visitor;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The table that has a row of plants for each site; triggers keep it (V0104). */
@Repository
public class SitePlantsTable {

	/** Counties that are asked for at once. */
	private static final String OF_COUNTIES = """
			join unnest(:counties::text[], :regions::text[], :codes::text[]) c(county, region, code)
				on s.county = c.county and (s.region = c.region or s.region = '')
			""";

	private final JdbcClient database;

	SitePlantsTable(JdbcClient database) {
		this.database = database;
	}

	/**
	 * The codes of species.
	 * @return species by code
	 */
	public Map<Short, SpeciesId> codes() {
		Map<Short, SpeciesId> codes = new HashMap<>();
		this.database.sql("select code, species from register.species_code").query((row) -> {
			codes.put(row.getShort(1), new SpeciesId(row.getString(2)));
		});
		return codes;
	}

	/**
	 * Goes through the sites of counties. As text an array is read in a third of the
	 * time.
	 * @param counties which
	 * @param but whose sites are left out
	 * @param visitor is told of each
	 */
	public void walk(Collection<County> counties, PersonId but, Visitor visitor) {
		of(counties, "select s.owner, c.code, s.plants::text from register.site_plants s " + OF_COUNTIES
				+ " where s.owner <> :but")
			.param("but", but.value())
			.query((row) -> {
				visitor.site(row.getObject(1, UUID.class), row.getString(2), plants(row.getString(3)));
			});
	}

	/** Reads {@code {3,3,17}}. */
	private static short[] plants(String text) {
		short[] plants = new short[text.length() / 2];
		int count = 0;
		int number = 0;
		for (int at = 1; at < text.length(); at++) {
			char one = text.charAt(at);
			if (one >= '0' && one <= '9') {
				number = 10 * number + one - '0';
			}
			else if (text.length() > 2) {
				plants[count++] = (short) number;
				number = 0;
			}
		}
		return Arrays.copyOf(plants, count);
	}

	/**
	 * People with sites in counties.
	 * @param counties which
	 * @param species with one of these, or null
	 * @param but who is left out
	 * @param after the last one of the step before, or null
	 * @param most how many at most
	 * @return by identifier
	 */
	public List<PersonId> people(Collection<County> counties, @Nullable Set<SpeciesId> species, PersonId but,
			@Nullable PersonId after, int most) {
		String plants = (species != null)
				? " and s.plants && array(select code from register.species_code where species = any(:species))" : "";
		String from = (after != null) ? " and s.owner > :after" : "";
		JdbcClient.StatementSpec statement = of(counties, "select distinct s.owner from register.site_plants s "
				+ OF_COUNTIES + " where s.owner <> :but" + plants + from + " order by s.owner limit :most")
			.param("but", but.value())
			.param("most", most);
		if (species != null) {
			statement = statement.param("species", species.stream().map(SpeciesId::value).toArray(String[]::new));
		}
		if (after != null) {
			statement = statement.param("after", after.value());
		}
		return statement.query((row, number) -> new PersonId(row.getObject(1, UUID.class))).list();
	}

	private JdbcClient.StatementSpec of(Collection<County> counties, String sql) {
		return this.database.sql(sql)
			.param("counties",
					counties.stream().map((one) -> one.name().toLowerCase(Locale.ROOT)).toArray(String[]::new))
			.param("regions", counties.stream().map(County::region).toArray(String[]::new))
			.param("codes", counties.stream().map(County::code).toArray(String[]::new));
	}

}
