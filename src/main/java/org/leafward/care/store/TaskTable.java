package org.leafward.care.store;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.leafward.accounts.PersonId;
import org.leafward.care.Beginning;
import org.leafward.care.CareTask;
import org.leafward.care.TaskId;
import org.leafward.care.TaskText;
import org.leafward.care.store.TaskRows.Unworded;
import org.leafward.care.core.plan.RampDay;
import org.leafward.care.core.plan.StoredTask;
import org.leafward.measure.DayWindow;
import org.leafward.register.PlantingId;
import org.leafward.register.SiteId;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The stored tasks, read. */
@Repository
public class TaskTable {

	/** Bound on what one look-up answers. */
	static final int MOST_ROWS = 20_000;

	static final String TASKS = """
			select t.*, w.title, w.what, w.amount, w.why, w.otherwise, w.caution
			from care.task t join care.wording w on w.id = t.wording
			""";

	private static final String ROWS = "select t.* from care.task t ";

	/** What the limit leaves out is what comes last. */
	private static final String LIMIT = " order by t.from_day, t.id limit " + MOST_ROWS;

	private static final Comparator<CareTask> ORDER = Comparator.comparing((CareTask task) -> task.window().from())
		.thenComparing((task) -> task.text().title())
		.thenComparing((task) -> task.id().toString());

	private final JdbcClient database;

	private final Wordings wordings;

	TaskTable(JdbcClient database, Wordings wordings) {
		this.database = database;
		this.wordings = wordings;
	}

	/**
	 * The tasks of a site for comparing.
	 * @param site the site
	 * @return all that come from rules
	 */
	public List<StoredTask> stored(SiteId site) {
		return this.database.sql("select * from care.task where site = ? and added_for is null")
			.param(site.value())
			.query(TaskRows::stored)
			.list();
	}

	/**
	 * Tasks by one column.
	 * @param column {@code site} or {@code person}
	 * @param value its value
	 * @param window tasks that overlap these days
	 * @return at most {@value #MOST_ROWS}
	 */
	private List<CareTask> by(String column, UUID value, DayWindow window) {
		return list("where t." + column + " = ? and t.to_day >= ? and t.from_day <= ?", value, window.from(),
				window.to());
	}

	private List<CareTask> list(String where, Object... values) {
		List<Unworded> rows = this.database.sql(ROWS + where + LIMIT).params(values).query(TaskRows::unworded).list();
		Map<UUID, TaskText> words = this.wordings.of(rows.stream().map(Unworded::wording).toList());
		if (rows.stream().anyMatch((row) -> !words.containsKey(row.wording()))) {
			// A task got others and its old ones were tidied away between the two looks.
			return this.database.sql(TASKS + where + LIMIT)
				.params(values)
				.query(TaskRows::task)
				.list()
				.stream()
				.sorted(ORDER)
				.toList();
		}
		return rows.stream()
			.map((row) -> row.with().apply(Objects.requireNonNull(words.get(row.wording()))))
			.sorted(ORDER)
			.toList();
	}

	public List<CareTask> ofSite(SiteId site, DayWindow window) {
		return by("site", site.value(), window);
	}

	/**
	 * Tasks of some plantings of a site.
	 * @param site the site
	 * @param plantings some of its plantings
	 * @param window tasks that overlap these days
	 * @return at most {@value #MOST_ROWS}
	 */
	public List<CareTask> ofPlantings(SiteId site, Collection<PlantingId> plantings, DayWindow window) {
		return list("where t.site = ? and t.planting = any(?) and t.to_day >= ? and t.from_day <= ?", site.value(),
				plantings.stream().map(PlantingId::value).toArray(UUID[]::new), window.from(), window.to());
	}

	public List<CareTask> ofPerson(UUID person, DayWindow window) {
		return by("person", person, window);
	}

	/**
	 * Tasks of a site in a season.
	 * @param site the site
	 * @param season year of the season
	 * @return at most {@value #MOST_ROWS}
	 */
	public List<CareTask> ofSeason(SiteId site, int season) {
		return list("where t.site = ? and t.season = ?", site.value(), season);
	}

	/**
	 * The days of a ramp of light, told and to come.
	 * @param site where
	 * @param planting for which planting
	 * @param rule the ramp, {@code pack/rule}
	 * @param season year of the season
	 * @return by number; empty for other ramps
	 */
	public List<RampDay> rampDays(SiteId site, PlantingId planting, String rule, int season) {
		return this.database
			.sql("""
					select occurrence, from_day, ramp_step, ramp_held, state from care.task
					where site = ? and planting = ? and rule = ? and season = ? and ramp_step is not null and state <> 'WITHDRAWN'
					order by occurrence
					""")
			.params(site.value(), planting.value(), rule, season)
			.query((row, number) -> TaskRows.rampDay(row))
			.list();
	}

	public Optional<CareTask> find(TaskId id) {
		return this.database.sql(TASKS + "where t.id = ?").param(id.value()).query(TaskRows::task).optional();
	}

	/**
	 * Several tasks.
	 * @param ids their identifiers
	 * @return those that are there
	 */
	public Map<TaskId, CareTask> find(Collection<TaskId> ids) {
		if (ids.isEmpty()) {
			return Map.of();
		}
		return this.database.sql(TASKS + "where t.id = any(?)")
			.param(ids.stream().map(TaskId::value).toArray(UUID[]::new))
			.query(TaskRows::task)
			.list()
			.stream()
			.collect(Collectors.toMap(CareTask::id, (task) -> task));
	}

	/**
	 * Tasks that begin, of many people at once.
	 * @param people whose
	 * @param firstDays when they begin
	 * @param also tasks to tell of whenever they begin
	 * @return in no order
	 */
	public List<Beginning> beginning(Collection<PersonId> people, DayWindow firstDays, Collection<TaskId> also) {
		String columns = "select id, person, kind, from_day, to_day, occurrence, ramp_held, work, state from care.task ";
		return this.database
			.sql(columns + "where person = any(:people) and to_day >= :from and from_day between :from and :to union "
					+ columns + "where id = any(:also)")
			.param("people", people.stream().map(PersonId::value).toArray(UUID[]::new))
			.param("from", firstDays.from())
			.param("to", firstDays.to())
			.param("also", also.stream().map(TaskId::value).toArray(UUID[]::new))
			.query(TaskRows::beginning)
			.list();
	}

}
