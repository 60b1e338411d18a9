package org.leafward.lookalikes.store;

import java.sql.Array;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.lookalikes.Basis;
import org.leafward.lookalikes.CaseId;
import org.leafward.lookalikes.CaseState;
import org.leafward.lookalikes.FoundCount;
import org.leafward.lookalikes.NewCase;
import org.leafward.lookalikes.PlantCase;
import org.leafward.lookalikes.core.Answers;
import org.leafward.plants.SpeciesId;
import org.leafward.register.PlantingId;
import org.leafward.register.SiteId;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.json.JsonMapper;

/** The cases. */
@Repository
public class CaseTable {

	private static final TypeReference<LinkedHashMap<String, LinkedHashSet<String>>> ANSWERS = new TypeReference<>() {
	};

	private final JdbcClient database;

	private final JsonMapper json;

	CaseTable(JdbcClient database, JsonMapper json) {
		this.database = database;
		this.json = json;
	}

	public void add(CaseId id, PersonId person, NewCase one, Instant at) {
		this.database
			.sql("""
					insert into lookalikes.plant_case (id, person, site, planting, species, plant, county, zone, seen, state, answers,
						follows, opened_at, changed_at)
					values (:id, :person, :site, :planting, :species, :plant, :county, :zone, :seen, 'OPEN', '{}', :follows, :at, :at)
					""")
			.param("id", id.value())
			.param("person", person.value())
			.param("site", (one.site() != null) ? one.site().value() : null)
			.param("planting", (one.planting() != null) ? one.planting().value() : null)
			.param("species", (one.species() != null) ? one.species().value() : null)
			.param("plant", one.plant())
			.param("county", one.county())
			.param("zone", one.zone().getId())
			.param("seen", one.seen())
			.param("follows", (one.follows() != null) ? one.follows().value() : null)
			.param("at", at.atOffset(ZoneOffset.UTC))
			.update();
	}

	public Optional<PlantCase> find(CaseId id) {
		return this.database.sql("select * from lookalikes.plant_case where id = ?")
			.param(id.value())
			.query(this::row)
			.optional();
	}

	/**
	 * A case that nobody else changes until the transaction ends.
	 * @param id which
	 * @return empty when there is none
	 */
	public Optional<PlantCase> lock(CaseId id) {
		return this.database.sql("select * from lookalikes.plant_case where id = ? for update")
			.param(id.value())
			.query(this::row)
			.optional();
	}

	public List<PlantCase> ofPerson(PersonId person, int page, int size) {
		return this.database.sql("""
				select * from lookalikes.plant_case where person = ? order by opened_at desc, id limit ? offset ?
				""").params(person.value(), size, (long) page * size).query(this::row).list();
	}

	public List<PlantCase> ofPlanting(PlantingId planting, int size) {
		return this.database
			.sql("select * from lookalikes.plant_case where planting = ? order by opened_at desc, id limit ?")
			.params(planting.value(), size)
			.query(this::row)
			.list();
	}

	public int count(PersonId person, Instant since) {
		return this.database.sql("select count(*) from lookalikes.plant_case where person = ? and opened_at >= ?")
			.params(person.value(), since.atOffset(ZoneOffset.UTC))
			.query(Integer.class)
			.single();
	}

	/**
	 * How many cases the help desk was asked of.
	 * @param counties names in lower case
	 * @param from since when
	 * @param to until when, exclusive
	 * @return 0 or more
	 */
	public long asked(Collection<String> counties, Instant from, Instant to) {
		return this.database.sql("""
				select count(*) from lookalikes.plant_case
				where lower(county) = any(:counties) and help_wanted_at >= :from and help_wanted_at < :to
				""")
			.param("counties", counties.toArray(String[]::new))
			.param("from", from.atOffset(ZoneOffset.UTC))
			.param("to", to.atOffset(ZoneOffset.UTC))
			.query(Long.class)
			.single();
	}

	/**
	 * Cases of which the help desk was asked, the open ones first, the longest waiting
	 * first.
	 * @param counties of which counties, and
	 * @param assigned those that are somebody's; null for none
	 * @param closed whether closed ones are wanted rather than the others
	 * @param page from 0
	 * @param size how many
	 * @return never null
	 */
	public List<PlantCase> desk(Collection<String> counties, @Nullable PersonId assigned, boolean closed, int page,
			int size) {
		return this.database.sql("""
				select * from lookalikes.plant_case
				where help_wanted_at is not null and (state = 'CLOSED') = :closed
					and (lower(county) = any(:counties) or assigned = cast(:assigned as uuid))
				order by case when :closed then changed_at end desc, help_wanted_at, id limit :size offset :skip
				""")
			.param("closed", closed)
			.param("counties", lower(counties))
			.param("assigned", (assigned != null) ? assigned.value() : null)
			.param("size", size)
			.param("skip", (long) page * size)
			.query(this::row)
			.list();
	}

	/**
	 * Closed cases by county and cause, asked for or not: numbers tell nobody's garden.
	 * @param counties of which counties
	 * @param since closed on this day or later
	 * @return the most frequent first
	 */
	public List<FoundCount> counts(Collection<String> counties, LocalDate since) {
		return this.database.sql("""
				select min(county) as county, cause, count(*) as cases from lookalikes.plant_case
				where state = 'CLOSED' and cause is not null and closed_on >= ? and lower(county) = any(?)
				group by lower(county), cause order by count(*) desc, 1, 2
				""")
			.params(since, lower(counties))
			.query((row, number) -> new FoundCount(row.getString("county"), row.getString("cause"),
					row.getInt("cases")))
			.list();
	}

	/**
	 * The latest answered cases, those that were closed with a cause first.
	 * @param most how many at most
	 * @return never null
	 */
	public List<PlantCase> answered(int most) {
		return this.database
			.sql("""
					select * from lookalikes.plant_case where likeliest is not null or (state = 'CLOSED' and cause is not null)
					order by state = 'CLOSED' and cause is not null desc, changed_at desc, id limit ?
					""")
			.param(most)
			.query(this::row)
			.list();
	}

	/**
	 * The latest cases that were closed with a cause.
	 * @param since first seen on this day or later
	 * @param most how many at most
	 * @return never null
	 */
	public List<PlantCase> closedSince(LocalDate since, int most) {
		return this.database.sql("""
				select * from lookalikes.plant_case where state = 'CLOSED' and cause is not null and seen >= ?
				order by seen desc, id limit ?
				""").params(since, most).query(this::row).list();
	}

	private static String[] lower(Collection<String> counties) {
		return counties.stream().map((one) -> one.toLowerCase(Locale.ROOT)).toArray(String[]::new);
	}

	/**
	 * Writes what can change of a case.
	 * @param one the case, locked
	 * @param at when
	 */
	public void write(PlantCase one, Instant at) {
		this.database
			.sql("""
					update lookalikes.plant_case set state = :state, answers = cast(:answers as json), struck = :struck,
						likeliest = :leading, cause = :cause, basis = :basis, result = nullif(:result, ''), sampled_on = :sampled,
						help_wanted_at = :wanted, assigned = :assigned, changed_at = :at, closed_on = :closed
					where id = :id
					""")
			.param("state", one.state().name())
			.param("answers", this.json.writeValueAsString(one.answers().given()))
			.param("struck", one.struck().stream().sorted().toArray(String[]::new))
			.param("leading", one.leading())
			.param("cause", one.cause())
			.param("basis", (one.basis() != null) ? one.basis().name() : null)
			.param("result", one.result())
			.param("sampled", one.sampledOn())
			.param("wanted", (one.helpWantedAt() != null) ? one.helpWantedAt().atOffset(ZoneOffset.UTC) : null)
			.param("assigned", (one.assigned() != null) ? one.assigned().value() : null)
			.param("at", at.atOffset(ZoneOffset.UTC))
			.param("closed", one.closedOn())
			.param("id", one.id().value())
			.update();
	}

	public void delete(CaseId id) {
		this.database.sql("delete from lookalikes.plant_case where id = ?").param(id.value()).update();
	}

	private PlantCase row(ResultSet row, int number) throws SQLException {
		UUID site = row.getObject("site", UUID.class);
		UUID planting = row.getObject("planting", UUID.class);
		String species = row.getString("species");
		String basis = row.getString("basis");
		UUID assigned = row.getObject("assigned", UUID.class);
		UUID follows = row.getObject("follows", UUID.class);
		OffsetDateTime wanted = row.getObject("help_wanted_at", OffsetDateTime.class);
		String result = row.getString("result");
		return new PlantCase(new CaseId(row.getObject("id", UUID.class)),
				new PersonId(row.getObject("person", UUID.class)), (site != null) ? new SiteId(site) : null,
				(planting != null) ? new PlantingId(planting) : null, (species != null) ? new SpeciesId(species) : null,
				row.getString("plant"), row.getString("county"), ZoneId.of(row.getString("zone")),
				row.getObject("seen", LocalDate.class), CaseState.valueOf(row.getString("state")),
				answers(row.getString("answers")), struck(row.getArray("struck")), row.getString("likeliest"),
				row.getString("cause"), (basis != null) ? Basis.valueOf(basis) : null, (result != null) ? result : "",
				row.getObject("sampled_on", LocalDate.class), (wanted != null) ? wanted.toInstant() : null,
				(assigned != null) ? new PersonId(assigned) : null, (follows != null) ? new CaseId(follows) : null,
				row.getObject("opened_at", OffsetDateTime.class).toInstant(),
				row.getObject("changed_at", OffsetDateTime.class).toInstant(),
				row.getObject("closed_on", LocalDate.class));
	}

	private Answers answers(String json) {
		Map<String, Set<String>> given = new LinkedHashMap<>(this.json.readValue(json, ANSWERS));
		return new Answers(given);
	}

	private static Set<String> struck(Array lines) throws SQLException {
		return Set.of((String[]) lines.getArray());
	}

}
