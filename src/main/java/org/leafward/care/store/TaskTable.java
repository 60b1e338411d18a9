package org.leafward.care.store;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.leafward.care.CareTask;
import org.leafward.care.TaskId;
import org.leafward.care.core.plan.Gap;
import org.leafward.care.core.plan.PlanDiff;
import org.leafward.care.core.plan.PlannedTask;
import org.leafward.care.core.plan.StoredTask;
import org.leafward.measure.DayWindow;
import org.leafward.register.PlantingId;
import org.leafward.register.Site;
import org.leafward.register.SiteId;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The stored tasks, read and written in batches. */
@Repository
public class TaskTable {

	/** Bound on what one look-up answers. */
	static final int MOST_ROWS = 20_000;

	private static final String ORDER = " order by from_day, title, id limit " + MOST_ROWS;

	private final JdbcClient database;

	private final JdbcTemplate batches;

	TaskTable(JdbcClient database, JdbcTemplate batches) {
		this.database = database;
		this.batches = batches;
	}

	/**
	 * Lets one transaction at a time derive the tasks of a site, on whatever node.
	 * @param site the site
	 */
	public void lock(SiteId site) {
		this.database.sql("select pg_advisory_xact_lock(hashtextextended(?, 40))")
			.param("care.plan " + site)
			.query((row, number) -> number)
			.single();
	}

	/**
	 * The tasks of a site for comparing.
	 * @param site the site
	 * @return all of them
	 */
	public List<StoredTask> stored(SiteId site) {
		return this.database.sql("select * from care.task where site = ?")
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
		return this.database
			.sql("select * from care.task where " + column + " = ? and to_day >= ? and from_day <= ?" + ORDER)
			.params(value, window.from(), window.to())
			.query(TaskRows::task)
			.list();
	}

	public List<CareTask> ofSite(SiteId site, DayWindow window) {
		return by("site", site.value(), window);
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
		return this.database.sql("select * from care.task where site = ? and season = ?" + ORDER)
			.params(site.value(), season)
			.query(TaskRows::task)
			.list();
	}

	public Optional<CareTask> find(TaskId id) {
		return this.database.sql("select * from care.task where id = ?")
			.param(id.value())
			.query(TaskRows::task)
			.optional();
	}

	/**
	 * Writes tasks that are new.
	 * @param site where they are
	 * @param added the tasks
	 * @param explanations names of their explanations, in the same order
	 * @param at the time of the change, whole seconds
	 */
	public void add(Site site, List<PlannedTask> added, List<UUID> explanations, Instant at) {
		List<Object[]> rows = new ArrayList<>(added.size());
		for (int i = 0; i < added.size(); i++) {
			PlannedTask task = added.get(i);
			rows.add(new Object[] { task.id().value(), task.planting().value(), task.plant(), site.id().value(),
					site.name(), site.owner().value(), task.rule(), task.season(), task.occurrence(),
					task.kind().name(), task.window().from(), task.window().to(), task.text().title(),
					task.text().what(), task.text().amount(), task.text().why(), task.text().otherwise(),
					task.text().caution(), explanations.get(i), utc(at), utc(at) });
		}
		this.batches.batchUpdate("""
				insert into care.task (id, planting, plant, site, site_name, person, rule, season, occurrence, kind,
					from_day, to_day, title, what, amount, why, otherwise, caution, state, sequence, explanation,
					created_at, changed_at)
				values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, 'PLANNED', 0, ?, ?, ?)
				""", rows);
	}

	/**
	 * Writes tasks that look different now; each goes up by one in its sequence. The time
	 * of a change never goes back and always moves, since calendar clients take an entry
	 * as changed only when it is newer.
	 * @param changed the tasks
	 * @param explanations names of their explanations, in the same order
	 * @param at the time of the change, whole seconds
	 */
	public void change(List<PlannedTask> changed, List<UUID> explanations, Instant at) {
		List<Object[]> rows = new ArrayList<>(changed.size());
		for (int i = 0; i < changed.size(); i++) {
			PlannedTask task = changed.get(i);
			rows.add(new Object[] { task.plant(), task.kind().name(), task.window().from(), task.window().to(),
					task.text().title(), task.text().what(), task.text().amount(), task.text().why(),
					task.text().otherwise(), task.text().caution(), explanations.get(i), utc(at), task.id().value() });
		}
		this.batches.batchUpdate("""
				update care.task set plant = ?, kind = ?, from_day = ?, to_day = ?, title = ?, what = ?, amount = ?,
					why = ?, otherwise = ?, caution = ?, explanation = ?, state = 'PLANNED', withdrawn_because = null,
					sequence = sequence + 1, changed_at = greatest(?, changed_at + interval '1 second')
				where id = ?
				""", rows);
	}

	/**
	 * Points tasks to another explanation; no reader of a calendar sees that.
	 * @param tasks the tasks
	 * @param explanations names of their explanations, in the same order
	 */
	public void explain(List<PlannedTask> tasks, List<UUID> explanations) {
		List<Object[]> rows = new ArrayList<>(tasks.size());
		for (int i = 0; i < tasks.size(); i++) {
			rows.add(new Object[] { explanations.get(i), tasks.get(i).id().value() });
		}
		this.batches.batchUpdate("update care.task set explanation = ? where id = ?", rows);
	}

	/**
	 * Withdraws tasks; each goes up by one in its sequence.
	 * @param withdrawals the tasks and why
	 * @param at the time of the change, whole seconds
	 */
	public void withdraw(Collection<PlanDiff.Withdrawal> withdrawals, Instant at) {
		List<Object[]> rows = withdrawals.stream()
			.map((gone) -> new Object[] { gone.because(), utc(at), gone.task().value() })
			.toList();
		this.batches.batchUpdate("""
				update care.task set state = 'WITHDRAWN', withdrawn_because = ?, sequence = sequence + 1,
					changed_at = greatest(?, changed_at + interval '1 second')
				where id = ? and state = 'PLANNED'
				""", rows);
	}

	/**
	 * The rules of a site that could not be dated.
	 * @param site the site
	 * @return in the order of {@link Gap#ORDER}
	 */
	public List<Gap> gaps(SiteId site) {
		return this.database.sql("select * from care.gap where site = ?")
			.param(site.value())
			.query((row, number) -> new Gap(new PlantingId(row.getObject("planting", UUID.class)),
					row.getString("rule"), row.getString("title"), row.getInt("season"), row.getString("reason")))
			.list()
			.stream()
			.sorted(Gap.ORDER)
			.toList();
	}

	/**
	 * Replaces the gaps of a site.
	 * @param site the site
	 * @param gaps what could not be dated
	 */
	public void replaceGaps(SiteId site, List<Gap> gaps) {
		this.database.sql("delete from care.gap where site = ?").param(site.value()).update();
		this.batches.batchUpdate("""
				insert into care.gap (site, planting, rule, title, season, reason) values (?, ?, ?, ?, ?, ?)
				on conflict do nothing
				""",
				gaps.stream()
					.map((gap) -> new Object[] { site.value(), gap.planting().value(), gap.rule(), gap.title(),
							gap.season(), gap.reason() })
					.toList());
	}

	private static OffsetDateTime utc(Instant at) {
		return at.atOffset(ZoneOffset.UTC);
	}

}
