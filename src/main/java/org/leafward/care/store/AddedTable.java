package org.leafward.care.store;

import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.care.AddedFor;
import org.leafward.care.AddedTask;
import org.leafward.care.TaskId;
import org.leafward.care.TaskKind;
import org.leafward.care.TaskState;
import org.leafward.care.core.plan.PlanDiff;
import org.leafward.measure.DayWindow;
import org.leafward.register.PlantingId;
import org.leafward.register.Site;
import org.leafward.register.SiteId;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/**
 * Those rows of {@code care.task} that no rule calls for. As with others the time of a
 * change always moves, since calendar clients take an entry as changed only when it is
 * newer.
 */
@Repository
public class AddedTable {

	private final JdbcClient database;

	private final JdbcTemplate batches;

	AddedTable(JdbcClient database, JdbcTemplate batches) {
		this.database = database;
		this.batches = batches;
	}

	/**
	 * A task to write.
	 *
	 * @param id its identifier
	 * @param site where
	 * @param planting for which planting; null for the site
	 * @param plant what readers call it
	 * @param origin what it is added for
	 * @param task the task
	 * @param wording name of its words
	 * @param explanation name of its explanation
	 */
	public record Row(TaskId id, Site site, @Nullable PlantingId planting, String plant, AddedFor origin,
			AddedTask task, UUID wording, UUID explanation) {
	}

	/**
	 * A task as it stands.
	 *
	 * @param id its identifier
	 * @param kind what is asked for
	 * @param window its days
	 * @param plant what readers call the planting
	 * @param wording name of its words
	 * @param state where it stands
	 */
	public record Stored(TaskId id, TaskKind kind, DayWindow window, String plant, UUID wording, TaskState state) {

		/**
		 * Whether it is nobody's but ours.
		 * @return false when somebody did or skipped it
		 */
		public boolean open() {
			return this.state == TaskState.PLANNED || this.state == TaskState.WITHDRAWN;
		}

		/**
		 * Whether a reader would see no difference.
		 * @param row what is wanted
		 * @return false for a withdrawn one
		 */
		public boolean looksLike(Row row) {
			return this.state == TaskState.PLANNED && this.kind == row.task().kind()
					&& this.window.equals(row.task().window()) && this.plant.equals(row.plant())
					&& this.wording.equals(row.wording());
		}

	}

	public List<Stored> of(UUID addedFor) {
		return this.database.sql("""
				select id, kind, from_day, to_day, plant, wording, state from care.task where added_for = ?
				order by from_day, id
				""")
			.param(addedFor)
			.query((row, number) -> new Stored(new TaskId(row.getObject("id", UUID.class)),
					TaskKind.valueOf(row.getString("kind")),
					new DayWindow(row.getObject("from_day", LocalDate.class), row.getObject("to_day", LocalDate.class)),
					row.getString("plant"), row.getObject("wording", UUID.class),
					TaskState.valueOf(row.getString("state"))))
			.list();
	}

	public Optional<String> link(TaskId task) {
		return this.database.sql("select link from care.task where id = ? and link is not null")
			.param(task.value())
			.query(String.class)
			.optional();
	}

	/**
	 * Open tasks of plantings that are gone.
	 * @param site the site
	 * @param there the plantings that there are
	 * @param today those that end before aren't told
	 * @return their identifiers
	 */
	public List<TaskId> withoutPlanting(SiteId site, Collection<UUID> there, LocalDate today) {
		return this.database.sql("""
				select id from care.task where site = ? and added_for is not null and state = 'PLANNED' and to_day >= ?
					and planting <> all (?) order by id
				""")
			.params(site.value(), today, there.toArray(UUID[]::new))
			.query((row, number) -> new TaskId(row.getObject("id", UUID.class)))
			.list();
	}

	/**
	 * Adds tasks.
	 * @param rows the tasks
	 * @param at when, whole seconds
	 */
	public void add(List<Row> rows, Instant at) {
		OffsetDateTime time = at.atOffset(ZoneOffset.UTC);
		this.batches.batchUpdate(
				"""
						insert into care.task (id, planting, plant, site, site_name, person, rule, season, occurrence, kind, work,
							from_day, to_day, wording, pack_version, state, sequence, explanation, added_for, link,
							created_at, changed_at)
						values (?, ?, ?, ?, ?, ?, ?, ?, 0, ?, ?, ?, ?, ?, 0, 'PLANNED', 0, ?, ?, ?, ?, ?)
						""",
				rows.stream()
					.map((row) -> new @Nullable Object[] { row.id().value(),
							(row.planting() != null) ? row.planting().value() : null, row.plant(),
							row.site().id().value(), row.site().name(), row.site().owner().value(),
							row.origin().rule(row.task().key()), row.task().season(), row.task().kind().name(),
							row.task().work().name(), row.task().window().from(), row.task().window().to(),
							row.wording(), row.explanation(), row.origin().id(), row.origin().link(), time, time })
					.toList());
	}

	/**
	 * Changes tasks that nobody did or skipped.
	 * @param rows what they are now
	 * @param at when, whole seconds
	 */
	public void change(List<Row> rows, Instant at) {
		this.batches.batchUpdate(
				"""
						update care.task set plant = ?, kind = ?, work = ?, from_day = ?, to_day = ?, wording = ?, explanation = ?,
							state = 'PLANNED', withdrawn_because = null, sequence = sequence + 1,
							changed_at = greatest(?, changed_at + interval '1 second')
						where id = ? and state in ('PLANNED', 'WITHDRAWN')
						""",
				rows.stream()
					.map((row) -> new Object[] { row.plant(), row.task().kind().name(), row.task().work().name(),
							row.task().window().from(), row.task().window().to(), row.wording(), row.explanation(),
							at.atOffset(ZoneOffset.UTC), row.id().value() })
					.toList());
	}

	/**
	 * Withdraws tasks that nobody did or skipped.
	 * @param gone which, and why
	 * @param at when, whole seconds
	 */
	public void withdraw(List<PlanDiff.Withdrawal> gone, Instant at) {
		this.batches.batchUpdate("""
				update care.task set state = 'WITHDRAWN', withdrawn_because = ?, sequence = sequence + 1,
					changed_at = greatest(?, changed_at + interval '1 second')
				where id = ? and state = 'PLANNED'
				""",
				gone.stream()
					.map((one) -> new Object[] { one.because(), at.atOffset(ZoneOffset.UTC), one.task().value() })
					.toList());
	}

}
