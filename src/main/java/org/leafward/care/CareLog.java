package org.leafward.care;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.care.core.rule.Rule;
import org.leafward.care.core.rule.Work;
import org.leafward.care.core.state.TaskCommand;
import org.leafward.care.store.LogTable;
import org.leafward.measure.BadInput;
import org.leafward.measure.Given;
import org.leafward.measure.NotThere;
import org.leafward.register.PlantingId;
import org.leafward.register.Site;
import org.leafward.register.SiteId;
import org.springframework.stereotype.Service;

/**
 * What people did: for a task or on their own account. Everything can be taken back. The
 * site is derived again in the same transaction. A person who is named must own the site;
 * none is an operator.
 */
@Service
public class CareLog {

	/** A bound against scripts. */
	private static final int MOST_A_DAY = 300;

	/** Tasks that are done together. */
	public static final int MOST_TOGETHER = 100;

	private static final int LONGEST_REASON = 300;

	private final SiteTurn turn;

	private final TaskMoves moves;

	private final LogTable log;

	private final LogWriter writer;

	private final RulePacks packs;

	CareLog(SiteTurn turn, TaskMoves moves, LogTable log, LogWriter writer, RulePacks packs) {
		this.turn = turn;
		this.moves = moves;
		this.log = log;
		this.writer = writer;
		this.packs = packs;
	}

	/**
	 * Notes tasks as done.
	 * @param tasks tasks of one site, 1 to {@value #MOST_TOGETHER}; of several those that
	 * can't be done are passed over
	 * @param done when and how much
	 * @param by who; null for an operator
	 * @return one entry for each task that was done
	 * @throws NotThere when there is no such task of theirs
	 * @throws BadInput when the day is to come or more than a year ago, or no task can be
	 * done: none begins within 30 days after that day, or all are done
	 */
	public List<Logged> done(List<TaskId> tasks, WorkDone done, @Nullable PersonId by) {
		return done(this.moves.siteOf(tasks, by), tasks, done, by);
	}

	/**
	 * Notes tasks as done by somebody whom the owner of the site lets work there. That
	 * they do is for the caller to know.
	 * @param at the site
	 * @param tasks as in {@link #done}, of that site
	 * @param done when and how much
	 * @param helper who
	 * @return one entry for each task that was done
	 * @throws NotThere when there is no such task at the site
	 * @throws BadInput as in {@link #done}
	 */
	public List<Logged> doneByHelper(SiteId at, List<TaskId> tasks, WorkDone done, PersonId helper) {
		return done(siteOf(at, tasks), tasks, done, helper);
	}

	/**
	 * Takes back what a helper said; the rest as in {@link #undo}.
	 * @param at the site
	 * @param tasks tasks of that site
	 * @param helper who takes it back
	 * @return how many went back
	 * @throws NotThere when there is no such task at the site
	 * @throws BadInput when there is nothing to take back
	 */
	public int undoByHelper(SiteId at, List<TaskId> tasks, PersonId helper) {
		Site site = siteOf(at, tasks);
		return this.turn.change(site, () -> undo(site, tasks, helper));
	}

	private Site siteOf(SiteId at, List<TaskId> tasks) {
		Site site = this.moves.siteOf(tasks, null);
		if (!site.id().equals(at)) {
			throw new NotThere("There are no such tasks at site " + at);
		}
		return site;
	}

	private List<Logged> done(Site site, List<TaskId> tasks, WorkDone done, @Nullable PersonId by) {
		this.turn.checkDay(site, done.day());
		return this.turn.change(site, () -> {
			List<Logged> logged = new ArrayList<>();
			for (CareTask task : this.moves.move(site, tasks, TaskCommand.DONE, done.day(), null, by)) {
				checkRoom(site, done);
				logged.add(this.writer.write(site, task.planting(), task, workOf(task), done, by));
			}
			return logged;
		});
	}

	private Work workOf(CareTask task) {
		return Optional.ofNullable(task.work())
			.or(() -> this.packs.find(task.rule()).map(Rule::work))
			.orElseThrow(() -> new BadInput("the task's kind of work is not known any more", "task",
					"log the work on its own account"));
	}

	/**
	 * Leaves tasks out this time.
	 * @param tasks tasks of one site, 1 to {@value #MOST_TOGETHER}; of several those that
	 * can't be skipped are passed over
	 * @param reason why, one line of 1 to 300 characters
	 * @param by who; null for an operator
	 * @return how many were skipped
	 * @throws NotThere when there is no such task of theirs
	 * @throws BadInput without a reason, or when no task can be skipped
	 */
	public int skip(List<TaskId> tasks, String reason, @Nullable PersonId by) {
		Site site = this.moves.siteOf(tasks, by);
		String because = Given.line("reason", Given.text("reason", reason));
		if (because.length() > LONGEST_REASON) {
			throw new BadInput(
					"the reason has %d characters; at most %d are allowed".formatted(because.length(), LONGEST_REASON),
					"reason", "shorten it");
		}
		return this.turn.change(site,
				() -> this.moves.move(site, tasks, TaskCommand.SKIP, this.turn.today(site), because, by).size());
	}

	/**
	 * Takes back what was last said of tasks: done or skipped.
	 * @param tasks tasks of one site, 1 to {@value #MOST_TOGETHER}; of several those with
	 * nothing to take back are passed over
	 * @param by who; null for an operator
	 * @return how many went back
	 * @throws NotThere when there is no such task of theirs
	 * @throws BadInput when there is nothing to take back
	 */
	public int undo(List<TaskId> tasks, @Nullable PersonId by) {
		Site site = this.moves.siteOf(tasks, by);
		return this.turn.change(site, () -> undo(site, tasks, by));
	}

	private int undo(Site site, List<TaskId> tasks, @Nullable PersonId by) {
		List<CareTask> back = this.moves.move(site, tasks, TaskCommand.UNDO, this.turn.today(site), null, by);
		// Only work is in the log; what was skipped isn't.
		List<TaskId> worked = back.stream().filter((task) -> task.state() == TaskState.DONE).map(CareTask::id).toList();
		this.log.ofTasks(worked).values().forEach(this.writer::takeBack);
		return back.size();
	}

	/**
	 * Logs work on one's own account.
	 * @param id the site
	 * @param planting what it was done for; null for the site as a whole
	 * @param work name of the kind of work, for example {@code prune}
	 * @param done when and how much
	 * @param by who; null for an operator
	 * @return the entry
	 * @throws NotThere when there is no such site of theirs
	 * @throws BadInput when the day is to come or more than a year ago, or planting or
	 * work are unknown
	 */
	public Logged log(SiteId id, @Nullable PlantingId planting, String work, WorkDone done, @Nullable PersonId by) {
		Site site = this.turn.open(id, by);
		Work kind = Given.word("work", work, Work.class);
		this.turn.checkDay(site, done.day());
		this.turn.checkPlanting(site, planting);
		return this.turn.change(site, () -> {
			checkRoom(site, done);
			return this.writer.write(site, planting, null, kind, done, by);
		});
	}

	private void checkRoom(Site site, WorkDone done) {
		if (this.log.count(site.id(), done.day()) >= MOST_A_DAY) {
			throw new BadInput("one site has at most %d entries for a day".formatted(MOST_A_DAY), "day",
					"put several into one");
		}
	}

	/**
	 * Takes an entry back, and the task that it was for with it.
	 * @param id the site
	 * @param entry the entry
	 * @param by who; null for an operator
	 * @throws NotThere when there is no such entry of theirs
	 */
	public void remove(SiteId id, LogId entry, @Nullable PersonId by) {
		Site site = this.turn.open(id, by);
		this.turn.change(site, () -> {
			LogEntry found = this.log.find(entry)
				.filter((one) -> one.site().equals(id))
				.orElseThrow(() -> new NotThere("There is no entry " + entry));
			TaskId task = found.task();
			if (task != null && this.moves.isDone(task)) {
				undo(site, List.of(task), by);
			}
			else {
				this.writer.takeBack(found);
			}
			return found;
		});
	}

	/**
	 * A page of a site's log, the latest day first.
	 * @param site the site
	 * @param planting only this planting; null for all
	 * @param page from 0
	 * @param size 1 to 200
	 * @return without what was taken back
	 */
	public List<LogEntry> latest(SiteId site, @Nullable PlantingId planting, int page, int size) {
		return this.log.latest(site, planting, page, size);
	}

	/**
	 * What was noted for a task.
	 * @param task the task
	 * @return empty when nothing was, or it was taken back
	 */
	public Optional<LogEntry> of(TaskId task) {
		return Optional.ofNullable(this.log.ofTasks(List.of(task)).get(task));
	}

}
