package org.leafward.care;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.care.store.NewsTable;
import org.leafward.measure.DayWindow;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What is new about a person's tasks, and what comes next. */
@Service
@Transactional(readOnly = true)
public class TaskNews {

	/** How far ahead a change matters now, days. */
	private static final int AHEAD = 56;

	private final NewsTable table;

	private final Clock clock;

	TaskNews(NewsTable table, Clock clock) {
		this.table = table;
		this.clock = clock;
	}

	/**
	 * A task that changed by planning, not by people. With neither of the two it was
	 * withdrawn; the reason stands in the task.
	 *
	 * @param task the task as it is now
	 * @param was its days before they moved by three or more; null when they didn't
	 * @param backAt when it was called for again; null when it wasn't withdrawn
	 */
	public record News(CareTask task, @Nullable DayWindow was, @Nullable Instant backAt) {
	}

	/**
	 * What changed in the last seven days about tasks of the next eight weeks.
	 * @param person whose
	 * @param today the day where the person is
	 * @return by first day, at most 1,000
	 */
	public List<News> of(PersonId person, LocalDate today) {
		return this.table.of(person, this.clock.instant().minus(Duration.ofDays(NewsTable.WEEK)),
				new DayWindow(today, today.plusDays(AHEAD)));
	}

	/**
	 * Why tasks moved, as far as the steps behind their days tell.
	 * @param tasks tasks that moved, some dozens
	 * @return a sentence for each where it is known
	 */
	public Map<TaskId, String> why(Collection<TaskId> tasks) {
		return this.table.why(tasks);
	}

	/**
	 * The first work that begins on some days.
	 * @param person whose
	 * @param days the days
	 * @return empty when none does
	 */
	public Optional<CareTask> next(PersonId person, DayWindow days) {
		return this.table.next(person, days);
	}

}
