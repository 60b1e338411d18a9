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
import org.leafward.care.CareTask;
import org.leafward.care.TaskId;
import org.leafward.care.TaskNews.News;
import org.leafward.care.TaskState;
import org.leafward.care.core.WhyMoved;
import org.leafward.measure.DayWindow;
import org.leafward.measure.Explanation;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import tools.jackson.databind.json.JsonMapper;

/** What changed about tasks, read for those who want to know. */
@Repository
public class NewsTable {

	/** Moves of fewer days are no news. */
	public static final int FAR_DAYS = 3;

	/** How long a change is news, days. */
	public static final int WEEK = 7;

	/** Bound on what one look-up answers. */
	private static final int MOST = 1_000;

	private final JdbcClient database;

	private final JsonMapper json;

	NewsTable(JdbcClient database, JsonMapper json) {
		this.database = database;
		this.json = json;
	}

	/**
	 * Tasks that moved far, fell away or came back by planning.
	 * @param person whose
	 * @param since from when on
	 * @param days those that begin, or began before they moved, on these days or earlier,
	 * and are not over
	 * @return by first day, at most 1,000
	 */
	public List<News> of(PersonId person, Instant since, DayWindow days) {
		return this.database.sql("""
				select t.*, w.title, w.what, w.amount, w.why, w.otherwise, w.caution,
					(select max(h.at) from care.task_history h where h.task = t.id and h.at >= :since
						and h.from_state = 'WITHDRAWN' and h.to_state = 'PLANNED') as back_at
				from care.task t join care.wording w on w.id = t.wording
				where t.person = :person and t.to_day >= :from and least(t.from_day, t.was_from) <= :to
					and t.changed_at >= :since and t.state in ('PLANNED', 'WITHDRAWN')
				order by t.from_day, w.title, t.id limit :most
				""")
			.param("person", person.value())
			.param("since", since.atOffset(ZoneOffset.UTC))
			.param("from", days.from())
			.param("to", days.to())
			.param("most", MOST)
			.query((row, number) -> Optional.ofNullable(news(row, number, since)))
			.list()
			.stream()
			.flatMap(Optional::stream)
			.toList();
	}

	private static @Nullable News news(ResultSet row, int number, Instant since) throws SQLException {
		CareTask task = TaskRows.task(row, number);
		if (task.state() == TaskState.WITHDRAWN) {
			return new News(task, null, null);
		}
		OffsetDateTime back = row.getObject("back_at", OffsetDateTime.class);
		if (back != null) {
			return new News(task, null, back.toInstant());
		}
		OffsetDateTime until = row.getObject("was_until", OffsetDateTime.class);
		if (until == null || until.toInstant().isBefore(since)) {
			return null;
		}
		DayWindow was = new DayWindow(row.getObject("was_from", LocalDate.class),
				row.getObject("was_to", LocalDate.class));
		return far(was, task.window()) ? new News(task, was, null) : null;
	}

	private static boolean far(DayWindow was, DayWindow now) {
		return Math.abs(was.from().toEpochDay() - now.from().toEpochDay()) >= FAR_DAYS
				|| Math.abs(was.to().toEpochDay() - now.to().toEpochDay()) >= FAR_DAYS;
	}

	/**
	 * Why tasks moved.
	 * @param tasks tasks that moved
	 * @return a sentence for each where it is known
	 */
	public Map<TaskId, String> why(Collection<TaskId> tasks) {
		Map<TaskId, String> why = new HashMap<>();
		if (tasks.isEmpty()) {
			return why;
		}
		this.database.sql("""
				select t.id, b.content::text as before, n.content::text as now from care.task t
					join care.explanation b on b.id = t.was_explanation
					join care.explanation n on n.id = t.explanation
				where t.id = any(?)
				""")
			.param(tasks.stream().map(TaskId::value).toArray(UUID[]::new))
			.query((row, number) -> Map.entry(new TaskId(row.getObject("id", UUID.class)),
					WhyMoved.between(read(row.getString("before")), read(row.getString("now")))))
			.list()
			.forEach((entry) -> entry.getValue().ifPresent((words) -> why.put(entry.getKey(), words)));
		return why;
	}

	private Explanation read(String content) {
		return this.json.readValue(content, Explanation.class);
	}

	/**
	 * The first work that begins on some days.
	 * @param person whose
	 * @param days the days
	 * @return empty when none does
	 */
	public Optional<CareTask> next(PersonId person, DayWindow days) {
		return this.database.sql(TaskTable.TASKS + """
				where t.person = ? and t.to_day >= ? and t.from_day between ? and ? and t.state = 'PLANNED'
					and t.kind <> 'HOLD_OFF'
				order by t.from_day, w.title, t.id limit 1
				""").params(person.value(), days.from(), days.from(), days.to()).query(TaskRows::task).optional();
	}

}
