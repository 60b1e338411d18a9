package org.leafward.workdays.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.care.TaskId;
import org.leafward.measure.DayWindow;
import org.leafward.register.SiteId;
import org.leafward.workdays.GroupId;
import org.leafward.workdays.WorkdayId;
import org.leafward.workdays.WorkdayState;
import org.leafward.workdays.WorkdayTask;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Workdays and what is to be done on them. */
@Repository
public class WorkdayTable {

	private static final String DAY = """
			select workday.id, group_id, day, workday.begins, workday.ends, workday.zone, workday.meeting_point,
				workday.capacity, state, sequence, locked, rain_day, called_off_because, warned, thanked_at,
				workday.created_at, changed_at, volunteer_group.name as group_name,
				(select coalesce(sum(1 + children), 0) from workdays.sign_up
					where workday = workday.id and sign_up.state = 'IN') as places,
				(select count(*) from workdays.sign_up
					where workday = workday.id and sign_up.state = 'WAITING') as waiting
			from workdays.workday join workdays.volunteer_group on volunteer_group.id = group_id
			""";

	private static final int MOST = 500;

	private final JdbcClient database;

	WorkdayTable(JdbcClient database) {
		this.database = database;
	}

	/**
	 * A workday as it is stored.
	 *
	 * @param id identifier
	 * @param group whose
	 * @param groupName what the group is called; not written
	 * @param day the day
	 * @param begins when it begins
	 * @param ends when it ends
	 * @param zone time zone of both
	 * @param meetingPoint where to come to
	 * @param capacity how many can come
	 * @param state where it stands
	 * @param sequence changes since it was published
	 * @param locked whether planning anew leaves it
	 * @param rainDay the day instead; null for none
	 * @param calledOffBecause why it was called off; null unless it was
	 * @param warned what was last warned of; null for nothing
	 * @param thankedAt when thanks went out; null until then
	 * @param createdAt when it was planned
	 * @param changedAt when members last saw something change
	 * @param places places that are taken; not written
	 * @param waiting people who wait; not written
	 */
	public record DayRow(WorkdayId id, GroupId group, String groupName, LocalDate day, LocalTime begins, LocalTime ends,
			ZoneId zone, String meetingPoint, int capacity, WorkdayState state, int sequence, boolean locked,
			@Nullable LocalDate rainDay, @Nullable String calledOffBecause, @Nullable String warned,
			@Nullable Instant thankedAt, Instant createdAt, Instant changedAt, int places, int waiting) {
	}

	/**
	 * A task of a workday.
	 *
	 * @param workday on which
	 * @param task what
	 */
	public record TaskRow(WorkdayId workday, WorkdayTask task) {
	}

	public Optional<DayRow> find(WorkdayId workday) {
		return this.database.sql(DAY + "where workday.id = ?")
			.param(workday.value())
			.query(WorkdayTable::day)
			.optional();
	}

	/**
	 * Workdays of groups.
	 * @param groups whose
	 * @param window on these days
	 * @param proposed whether also those that are not published
	 * @return by day and beginning, at most 500
	 */
	public List<DayRow> ofGroups(Collection<GroupId> groups, DayWindow window, boolean proposed) {
		return this.database.sql(DAY + """
				where group_id = any(?) and day between ? and ? and (? or state <> 'PROPOSED')
				order by day, workday.begins, workday.id limit ?
				""")
			.params(groups.stream().map(GroupId::value).toArray(UUID[]::new), window.from(), window.to(), proposed,
					MOST)
			.query(WorkdayTable::day)
			.list();
	}

	/**
	 * Fixed workdays of all groups on some days, for the watch.
	 * @param window the days
	 * @return by day, at most 10,000
	 */
	public List<DayRow> fixed(DayWindow window) {
		return this.database
			.sql(DAY + "where state = 'FIXED' and day between ? and ? order by day, workday.id limit 10000")
			.params(window.from(), window.to())
			.query(WorkdayTable::day)
			.list();
	}

	private static DayRow day(ResultSet row, int number) throws SQLException {
		return new DayRow(new WorkdayId(row.getObject("id", UUID.class)),
				new GroupId(row.getObject("group_id", UUID.class)), row.getString("group_name"),
				row.getObject("day", LocalDate.class), GroupTable.time(row, "begins"), GroupTable.time(row, "ends"),
				ZoneId.of(row.getString("zone")), row.getString("meeting_point"), row.getInt("capacity"),
				WorkdayState.valueOf(row.getString("state")), row.getInt("sequence"), row.getBoolean("locked"),
				row.getObject("rain_day", LocalDate.class), row.getString("called_off_because"),
				row.getString("warned"), instant(row, "thanked_at"),
				row.getObject("created_at", OffsetDateTime.class).toInstant(),
				row.getObject("changed_at", OffsetDateTime.class).toInstant(), row.getInt("places"),
				row.getInt("waiting"));
	}

	static @Nullable Instant instant(ResultSet row, String column) throws SQLException {
		OffsetDateTime time = row.getObject(column, OffsetDateTime.class);
		return (time != null) ? time.toInstant() : null;
	}

	/**
	 * Writes a workday, whether it is new or not.
	 * @param day the workday
	 */
	public void put(DayRow day) {
		this.database.sql("""
				insert into workdays.workday (id, group_id, day, begins, ends, zone, meeting_point, capacity, state,
					sequence, locked, rain_day, called_off_because, warned, thanked_at, created_at, changed_at)
				values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)
				on conflict (id) do update set day = excluded.day, begins = excluded.begins, ends = excluded.ends,
					meeting_point = excluded.meeting_point, capacity = excluded.capacity, state = excluded.state,
					sequence = excluded.sequence, locked = excluded.locked, rain_day = excluded.rain_day,
					called_off_because = excluded.called_off_because, warned = excluded.warned,
					thanked_at = excluded.thanked_at, changed_at = excluded.changed_at
				""")
			.params(Arrays.asList(day.id().value(), day.group().value(), day.day(), day.begins(), day.ends(),
					day.zone().getId(), day.meetingPoint(), day.capacity(), day.state().name(), day.sequence(),
					day.locked(), day.rainDay(), day.calledOffBecause(), day.warned(),
					(day.thankedAt() != null) ? day.thankedAt().atOffset(ZoneOffset.UTC) : null,
					day.createdAt().atOffset(ZoneOffset.UTC), day.changedAt().atOffset(ZoneOffset.UTC)))
			.update();
	}

	/**
	 * Notes what those who lead were warned of; nobody else sees it.
	 * @param workday which
	 * @param what a code
	 */
	public void warned(WorkdayId workday, String what) {
		this.database.sql("update workdays.workday set warned = ? where id = ?").params(what, workday.value()).update();
	}

	/**
	 * Notes where a workday goes when the weather forbids it, as nobody knows of it yet.
	 * @param workday which
	 * @param day the day; null for none
	 */
	public void rainDay(WorkdayId workday, @Nullable LocalDate day) {
		this.database.sql("update workdays.workday set rain_day = ? where id = ?")
			.params(Arrays.asList(day, workday.value()))
			.update();
	}

	public void remove(WorkdayId workday) {
		this.database.sql("delete from workdays.workday where id = ?").param(workday.value()).update();
	}

	/**
	 * Waits for whoever changes the workday in another transaction.
	 * @param workday which
	 */
	public void lock(WorkdayId workday) {
		this.database.sql("select 1 from workdays.workday where id = ? for update")
			.param(workday.value())
			.query()
			.listOfRows();
	}

	/**
	 * What is to be done on workdays.
	 * @param workdays which
	 * @return in no order that means something
	 */
	public List<TaskRow> tasks(Collection<WorkdayId> workdays) {
		return this.database.sql("""
				select workday, task, site, minutes, pinned, why, team, stop, done_at from workdays.workday_task
				where workday = any(?) order by team, stop, site, task
				""")
			.param(workdays.stream().map(WorkdayId::value).toArray(UUID[]::new))
			.query((row, number) -> new TaskRow(new WorkdayId(row.getObject("workday", UUID.class)),
					new WorkdayTask(new TaskId(row.getObject("task", UUID.class)),
							new SiteId(row.getObject("site", UUID.class)), row.getInt("minutes"),
							row.getBoolean("pinned"), row.getString("why"), row.getInt("team"), row.getInt("stop"),
							row.getObject("done_at") != null)))
			.list();
	}

	/**
	 * Puts a task on a workday, or changes it there.
	 * @param workday on which
	 * @param task what; whether it is done is not written
	 */
	public void put(WorkdayId workday, WorkdayTask task) {
		this.database.sql("""
				insert into workdays.workday_task (workday, task, site, minutes, pinned, why, team, stop)
				values (?, ?, ?, ?, ?, ?, ?, ?)
				on conflict (workday, task) do update set minutes = excluded.minutes, pinned = excluded.pinned,
					why = excluded.why, team = excluded.team, stop = excluded.stop
				""")
			.params(workday.value(), task.task().value(), task.site().value(), task.minutes(), task.pinned(),
					(task.why() != null) ? task.why() : "", task.team(), task.stop())
			.update();
	}

	public void removeTask(WorkdayId workday, TaskId task) {
		this.database.sql("delete from workdays.workday_task where workday = ? and task = ?")
			.params(workday.value(), task.value())
			.update();
	}

	/**
	 * Notes who did a task, or that nobody did.
	 * @param workday on which
	 * @param task what
	 * @param by who; null for nobody
	 * @param at when; null for nobody
	 * @return whether the task is on that workday
	 */
	public boolean done(WorkdayId workday, TaskId task, @Nullable PersonId by, @Nullable Instant at) {
		return this.database
			.sql("update workdays.workday_task set done_by = ?, done_at = ? where workday = ? and task = ?")
			.params(Arrays.asList((by != null) ? by.value() : null, (at != null) ? at.atOffset(ZoneOffset.UTC) : null,
					workday.value(), task.value()))
			.update() == 1;
	}

	/**
	 * Tasks that stand on a workday of a group.
	 * @param group whose
	 * @param from first day
	 * @return tasks of published and of proposed workdays
	 */
	public List<TaskId> taken(GroupId group, LocalDate from) {
		return this.database.sql("""
				select task from workdays.workday_task join workdays.workday on workday.id = workday_task.workday
				where group_id = ? and day >= ? and state in ('FIXED', 'PROPOSED')
				""")
			.params(group.value(), from)
			.query((row, number) -> new TaskId(row.getObject(1, UUID.class)))
			.list();
	}

	/**
	 * What the last plan left over, instead of what was left before.
	 * @param group whose
	 * @param why reasons by task
	 */
	public void leaveOver(GroupId group, Map<TaskId, String> why) {
		this.database.sql("delete from workdays.left_over where group_id = ?").param(group.value()).update();
		why.forEach((task, words) -> this.database
			.sql("insert into workdays.left_over (group_id, task, why) values (?, ?, ?)")
			.params(group.value(), task.value(), words)
			.update());
	}

	/**
	 * Leaves one more task over.
	 * @param group whose
	 * @param task which
	 * @param why it has no day
	 */
	public void alsoLeftOver(GroupId group, TaskId task, String why) {
		this.database.sql("""
				insert into workdays.left_over (group_id, task, why) values (?, ?, ?)
				on conflict (group_id, task) do update set why = excluded.why
				""").params(group.value(), task.value(), why).update();
	}

	/**
	 * A task has a day now.
	 * @param group whose
	 * @param task which
	 */
	public void notLeftOver(GroupId group, TaskId task) {
		this.database.sql("delete from workdays.left_over where group_id = ? and task = ?")
			.params(group.value(), task.value())
			.update();
	}

	public Map<TaskId, String> leftOver(GroupId group) {
		Map<TaskId, String> all = new LinkedHashMap<>();
		this.database.sql("select task, why from workdays.left_over where group_id = ? order by task")
			.param(group.value())
			.query((row) -> {
				all.put(new TaskId(row.getObject("task", UUID.class)), row.getString("why"));
			});
		return all;
	}

}
