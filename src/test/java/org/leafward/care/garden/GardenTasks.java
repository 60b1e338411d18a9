package org.leafward.care.garden;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import org.leafward.accounts.PersonId;
import org.leafward.care.CareTask;
import org.leafward.care.RulePacks;
import org.leafward.care.TaskState;
import org.leafward.care.TaskText;
import org.leafward.care.core.plan.PlannedTask;
import org.leafward.care.core.plan.PlannedTask.Call;
import org.leafward.measure.DayWindow;
import org.leafward.register.SiteId;

/**
 * The plans of the twelve gardens as stored tasks, with what people might have done by
 * the day on which they are planned. The same on every run.
 */
public final class GardenTasks {

	/** Whose gardens they are. */
	public static final PersonId PERSON = new PersonId(UUID.fromString("5a5a5a5a-0000-4000-8000-00000000000c"));

	private static final Map<String, List<CareTask>> TASKS = new ConcurrentHashMap<>();

	private GardenTasks() {
	}

	public static List<String> gardens() {
		return Gardens.ALL.stream().map(Garden::name).toList();
	}

	/**
	 * The packs that they are planned with.
	 * @return as configured
	 */
	public static RulePacks packs() {
		return GardenPlanner.PACKS;
	}

	public static SiteId site(String garden) {
		return Gardens.named(garden).id();
	}

	/**
	 * The day on which a garden is planned.
	 * @param garden its name
	 * @return a day of 2026
	 */
	public static LocalDate today(String garden) {
		return Gardens.named(garden).today();
	}

	/**
	 * The tasks of a garden on that day, of three seasons.
	 * @param garden its name
	 * @return in the order of the plan
	 */
	public static List<CareTask> of(String garden) {
		return TASKS.computeIfAbsent(garden, (name) -> stored(Gardens.named(name)));
	}

	/**
	 * The tasks of a garden on the day after: some windows moved, some tasks were done,
	 * some rules are gone and some say something else.
	 * @param garden its name
	 * @return in the order of the plan
	 */
	public static List<CareTask> dayAfter(String garden) {
		Instant at = noon(today(garden).plusDays(1));
		List<CareTask> tasks = new ArrayList<>();
		int number = 0;
		for (CareTask task : of(garden)) {
			number++;
			boolean planned = task.state() == TaskState.PLANNED;
			DayWindow window = task.window();
			if (number % 13 == 0) {
				continue;
			}
			else if (planned && number % 7 == 0) {
				tasks.add(with(task, new DayWindow(window.from().plusDays(3), window.to().plusDays(3)), task.text(),
						task.state(), null, task.sequence() + 1, at));
			}
			else if (planned && number % 11 == 0) {
				tasks.add(with(task, window, task.text(), TaskState.DONE, null, task.sequence() + 1, at));
			}
			else if (planned && number % 17 == 0) {
				TaskText text = task.text();
				tasks.add(with(task, window,
						new TaskText(text.title(), text.what(), text.amount(), text.why() + " Said anew.",
								text.otherwise(), text.caution()),
						task.state(), null, task.sequence(), task.changedAt()));
			}
			else {
				tasks.add(task);
			}
		}
		return tasks;
	}

	private static List<CareTask> stored(Garden garden) {
		List<CareTask> tasks = new ArrayList<>();
		int past = 0;
		for (PlannedTask task : GardenPlanner.plan(garden).tasks()) {
			if (task.call() == Call.UNKNOWN) {
				continue;
			}
			TaskState state = (task.call() == Call.NEEDLESS) ? TaskState.WITHDRAWN : TaskState.PLANNED;
			String because = task.because();
			if (state == TaskState.PLANNED && task.window().to().isBefore(garden.today())) {
				past++;
				state = (past % 5 == 0) ? TaskState.SKIPPED : (past % 3 == 0) ? TaskState.PLANNED : TaskState.DONE;
				because = (past % 10 == 0) ? "The hose, it broke; twice." : null;
			}
			Instant changed = (state == TaskState.PLANNED) ? noon(garden.today().minusDays(40))
					: noon(garden.today().minusDays(2));
			tasks.add(new CareTask(task.id(), task.planting(), task.plant(), garden.id(), garden.name(), PERSON,
					task.rule(), task.season(), task.occurrence(), task.kind(), task.window(), task.text(), state,
					because, (state == TaskState.PLANNED) ? 0 : 1, noon(garden.today().minusDays(40)), changed));
		}
		return List.copyOf(tasks);
	}

	private static CareTask with(CareTask task, DayWindow window, TaskText text, TaskState state, String because,
			int sequence, Instant changed) {
		return new CareTask(task.id(), task.planting(), task.plant(), task.site(), task.siteName(), task.person(),
				task.rule(), task.season(), task.occurrence(), task.kind(), window, text, state, because, sequence,
				task.createdAt(), changed);
	}

	private static Instant noon(LocalDate day) {
		return day.atTime(12, 0).toInstant(ZoneOffset.UTC);
	}

}
