package org.leafward.care.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.care.AmountUnit;
import org.leafward.care.LogEntry;
import org.leafward.care.LogId;
import org.leafward.care.TaskId;
import org.leafward.care.core.rule.Work;
import org.leafward.register.PlantingId;
import org.leafward.register.SiteId;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The care log. What is taken back stays as a row and is not read any more. */
@Repository
public class LogTable {

	private static final String LIVE = """
			select l.*, w.title as hold_off from care.log l
			left join care.task h on h.id = l.inside_hold_off left join care.wording w on w.id = h.wording
			where l.undone_at is null and\s""";

	private final JdbcClient database;

	LogTable(JdbcClient database) {
		this.database = database;
	}

	/**
	 * Adds an entry.
	 * @param entry the entry
	 */
	public void add(LogEntry entry) {
		PlantingId planting = entry.planting();
		TaskId task = entry.task();
		PersonId by = entry.by();
		AmountUnit unit = entry.unit();
		TaskId hold = entry.insideHoldOff();
		this.database.sql("""
				insert into care.log (id, site, planting, task, work, day, person, amount, unit, note, entered_at,
					inside_hold_off)
				values (:id, :site, :planting, :task, :work, :day, :person, :amount, :unit, :note, :at, :hold)
				""")
			.param("id", entry.id().value())
			.param("site", entry.site().value())
			.param("planting", (planting != null) ? planting.value() : null)
			.param("task", (task != null) ? task.value() : null)
			.param("work", entry.work().name())
			.param("day", entry.day())
			.param("person", (by != null) ? by.value() : null)
			.param("amount", entry.amount())
			.param("unit", (unit != null) ? unit.name() : null)
			.param("note", entry.note())
			.param("at", entry.enteredAt().atOffset(ZoneOffset.UTC))
			.param("hold", (hold != null) ? hold.value() : null)
			.update();
	}

	/**
	 * One entry.
	 * @param id its identifier
	 * @return empty when there is none or it was taken back
	 */
	public Optional<LogEntry> find(LogId id) {
		return this.database.sql(LIVE + "l.id = ?").param(id.value()).query(LogTable::entry).optional();
	}

	/**
	 * A page of a site's entries, the latest day first.
	 * @param site the site
	 * @param planting only this planting; null for all
	 * @param page from 0
	 * @param size 1 to 200
	 * @return never null
	 */
	public List<LogEntry> latest(SiteId site, @Nullable PlantingId planting, int page, int size) {
		return this.database.sql(LIVE + """
				l.site = :site and (cast(:planting as uuid) is null or l.planting = cast(:planting as uuid))
				order by l.day desc, l.entered_at desc, l.id limit :size offset :skip
				""")
			.param("site", site.value())
			.param("planting", (planting != null) ? planting.value() : null)
			.param("size", size)
			.param("skip", (long) page * size)
			.query(LogTable::entry)
			.list();
	}

	/**
	 * The entries of a period.
	 * @param site the site
	 * @param from first day
	 * @param to last day
	 * @param most how many at most
	 * @return by day, then as they were entered
	 */
	public List<LogEntry> between(SiteId site, LocalDate from, LocalDate to, int most) {
		return this.database
			.sql(LIVE + "l.site = :site and l.day between :from and :to order by l.day, l.entered_at, l.id limit :most")
			.param("site", site.value())
			.param("from", from)
			.param("to", to)
			.param("most", most)
			.query(LogTable::entry)
			.list();
	}

	/**
	 * The entries for tasks.
	 * @param tasks the tasks
	 * @return the latest entry of each, without the tasks that have none
	 */
	public Map<TaskId, LogEntry> ofTasks(Collection<TaskId> tasks) {
		Map<TaskId, LogEntry> entries = new HashMap<>();
		this.database.sql(LIVE + "l.task = any(?::uuid[]) order by l.entered_at, l.id")
			.param(tasks.stream().map(TaskId::value).toArray(UUID[]::new))
			.query(LogTable::entry)
			.list()
			.forEach((entry) -> {
				TaskId task = entry.task();
				if (task != null) {
					entries.put(task, entry);
				}
			});
		return entries;
	}

	/**
	 * How many entries a site has for a day.
	 * @param site the site
	 * @param day the day
	 * @return 0 or more, without those taken back
	 */
	public int count(SiteId site, LocalDate day) {
		return this.database.sql("select count(*) from care.log where site = ? and day = ? and undone_at is null")
			.params(site.value(), day)
			.query(Integer.class)
			.single();
	}

	/**
	 * Takes an entry back.
	 * @param id the entry
	 * @param at when
	 */
	public void undo(LogId id, Instant at) {
		this.database.sql("update care.log set undone_at = ? where id = ? and undone_at is null")
			.params(at.atOffset(ZoneOffset.UTC), id.value())
			.update();
	}

	private static LogEntry entry(ResultSet row, int number) throws SQLException {
		UUID task = row.getObject("task", UUID.class);
		UUID person = row.getObject("person", UUID.class);
		UUID hold = row.getObject("inside_hold_off", UUID.class);
		String unit = row.getString("unit");
		String note = row.getString("note");
		return new LogEntry(new LogId(row.getObject("id", UUID.class)), new SiteId(row.getObject("site", UUID.class)),
				TaskRows.planting(row), (task != null) ? new TaskId(task) : null, Work.valueOf(row.getString("work")),
				row.getObject("day", LocalDate.class), (person != null) ? new PersonId(person) : null,
				row.getObject("amount", Double.class), (unit != null) ? AmountUnit.valueOf(unit) : null,
				(note != null) ? note : "", row.getObject("entered_at", OffsetDateTime.class).toInstant(),
				(hold != null) ? new TaskId(hold) : null, row.getString("hold_off"));
	}

}
