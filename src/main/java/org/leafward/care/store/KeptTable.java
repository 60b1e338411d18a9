package org.leafward.care.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.leafward.accounts.PersonId;
import org.leafward.care.KeptCalculation;
import org.leafward.register.PlantingId;
import org.leafward.register.SiteId;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Calculations that were kept for plantings. */
@Repository
public class KeptTable {

	private final JdbcClient database;

	KeptTable(JdbcClient database) {
		this.database = database;
	}

	/**
	 * Adds one, unless the same was kept on that day.
	 * @param one the calculation
	 * @return whether it is new
	 */
	public boolean add(KeptCalculation one) {
		PersonId by = one.by();
		return this.database.sql("""
				insert into care.kept_calculation (id, site, planting, person, calculator, inputs, words, day, kept_at)
				values (:id, :site, :planting, :person, :calculator, :inputs, :words, :day, :at)
				on conflict (planting, calculator, day, md5(inputs)) do nothing
				""")
			.param("id", one.id())
			.param("site", one.site().value())
			.param("planting", one.planting().value())
			.param("person", (by != null) ? by.value() : null)
			.param("calculator", one.calculator())
			.param("inputs", one.inputs())
			.param("words", one.words())
			.param("day", one.day())
			.param("at", one.keptAt().atOffset(ZoneOffset.UTC))
			.update() == 1;
	}

	/**
	 * A page of a planting's calculations, the latest first.
	 * @param planting the planting
	 * @param page from 0
	 * @param size 1 to 200
	 * @return never null
	 */
	public List<KeptCalculation> latest(PlantingId planting, int page, int size) {
		return this.database.sql("""
				select * from care.kept_calculation where planting = :planting
				order by kept_at desc, id limit :size offset :skip
				""")
			.param("planting", planting.value())
			.param("size", size)
			.param("skip", (long) page * size)
			.query(KeptTable::one)
			.list();
	}

	/**
	 * How many a planting has.
	 * @param planting the planting
	 * @return 0 or more
	 */
	public int count(PlantingId planting) {
		return this.database.sql("select count(*) from care.kept_calculation where planting = ?")
			.param(planting.value())
			.query(Integer.class)
			.single();
	}

	/**
	 * Deletes one.
	 * @param site of which site
	 * @param id which
	 * @return its planting; empty when the site has none such
	 */
	public Optional<PlantingId> remove(SiteId site, UUID id) {
		return this.database.sql("delete from care.kept_calculation where site = ? and id = ? returning planting")
			.params(site.value(), id)
			.query(UUID.class)
			.optional()
			.map(PlantingId::new);
	}

	/**
	 * Deletes those of plantings that are no more.
	 * @param site of which site
	 * @param there the plantings that it has
	 */
	public void keepOnly(SiteId site, Collection<PlantingId> there) {
		this.database.sql("delete from care.kept_calculation where site = ? and not planting = any(?::uuid[])")
			.param(site.value())
			.param(there.stream().map(PlantingId::value).toArray(UUID[]::new))
			.update();
	}

	private static KeptCalculation one(ResultSet row, int number) throws SQLException {
		UUID person = row.getObject("person", UUID.class);
		return new KeptCalculation(row.getObject("id", UUID.class), new SiteId(row.getObject("site", UUID.class)),
				new PlantingId(row.getObject("planting", UUID.class)), (person != null) ? new PersonId(person) : null,
				row.getString("calculator"), row.getString("inputs"), row.getString("words"),
				row.getObject("day", LocalDate.class), row.getObject("kept_at", OffsetDateTime.class).toInstant());
	}

}
