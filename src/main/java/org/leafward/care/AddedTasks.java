package org.leafward.care;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.leafward.care.core.plan.PlanDiff;
import org.leafward.care.core.plan.Subject;
import org.leafward.care.core.plan.TaskIdentity;
import org.leafward.care.core.plan.Wording;
import org.leafward.care.store.AddedTable;
import org.leafward.care.store.ExplanationTable;
import org.leafward.care.store.HistoryTable;
import org.leafward.care.store.SitePlanTable;
import org.leafward.care.store.WordingTable;
import org.leafward.measure.BadInput;
import org.leafward.measure.NotThere;
import org.leafward.plants.Catalogue;
import org.leafward.plants.Species;
import org.leafward.register.Planting;
import org.leafward.register.PlantingId;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.leafward.register.SiteId;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/**
 * Tasks that other modules call for, beside those of the rules. They stand in the same
 * table, so calendars, reminders and pages show them like any other, and people do or
 * skip them. Planning leaves them alone; whoever added them says what becomes of them.
 */
@Service
public class AddedTasks {

	/** More than one thing can ask for. */
	private static final int MOST = 40;

	private final AddedTable table;

	private final WordingTable wordings;

	private final ExplanationTable explanations;

	private final HistoryTable history;

	private final SitePlanTable plans;

	private final Register register;

	private final Catalogue catalogue;

	private final ApplicationEventPublisher events;

	private final Clock clock;

	AddedTasks(AddedTable table, WordingTable wordings, ExplanationTable explanations, HistoryTable history,
			SitePlanTable plans, Register register, Catalogue catalogue, ApplicationEventPublisher events,
			Clock clock) {
		this.table = table;
		this.wordings = wordings;
		this.explanations = explanations;
		this.history = history;
		this.plans = plans;
		this.register = register;
		this.catalogue = catalogue;
		this.events = events;
		this.clock = clock;
	}

	/**
	 * The identifier of a task that is added.
	 * @param origin what it is added for
	 * @param key which of its tasks
	 * @param season year of the season
	 * @return the same for the same arguments
	 */
	public static TaskId idOf(AddedFor origin, String key, int season) {
		return TaskIdentity.of(origin.id(), origin.rule(key), season, 0);
	}

	/**
	 * Puts the tasks of one thing onto the calendar. Those that are there and not wanted
	 * any more are withdrawn; asking twice for the same writes nothing. What is over, and
	 * what people did or skipped, stays as it is.
	 * @param origin what they are added for
	 * @param siteId where
	 * @param plantingId for which planting; null for the site as a whole
	 * @param tasks what is wanted now, at most {@value #MOST}
	 * @param because why those that are left out aren't wanted any more, a sentence
	 * @return how many were written
	 * @throws NotThere when there is no such site
	 * @throws BadInput when the planting is none of the site's, a key comes twice, or
	 * there are too many
	 */
	@Transactional
	public int put(AddedFor origin, SiteId siteId, @Nullable PlantingId plantingId, List<AddedTask> tasks,
			String because) {
		check(tasks);
		this.plans.lock(List.of(siteId));
		Site site = this.register.require(siteId);
		Planting planting = (plantingId != null) ? this.register.find(plantingId)
			.filter((found) -> found.site().equals(siteId))
			.orElseThrow(() -> new BadInput("%s is not a planting of this site".formatted(plantingId), "planting",
					"choose one of its plantings, or none for the whole site"))
				: null;
		Instant now = this.clock.instant().truncatedTo(ChronoUnit.SECONDS);
		LocalDate today = LocalDate.ofInstant(now, site.zone());
		Map<TaskId, AddedTable.Stored> before = this.table.of(origin.id())
			.stream()
			.collect(Collectors.toMap(AddedTable.Stored::id, Function.identity()));
		this.wordings.keep(tasks.stream().map((task) -> Wording.of(task.text())).toList());
		this.explanations.keep(tasks.stream().map(AddedTask::explanation).toList(), this.explanations::nameOf);
		String plant = (planting != null) ? words(planting) : Subject.WHOLE_SITE;
		List<AddedTable.Row> added = new ArrayList<>();
		List<AddedTable.Row> changed = new ArrayList<>();
		List<TaskChange> states = new ArrayList<>();
		Set<TaskId> wanted = new HashSet<>();
		for (AddedTask task : tasks) {
			AddedTable.Row row = new AddedTable.Row(idOf(origin, task.key(), task.season()), site, plantingId, plant,
					origin, task, Wording.of(task.text()).name(), this.explanations.nameOf(task.explanation()));
			wanted.add(row.id());
			AddedTable.Stored old = before.get(row.id());
			if (old == null && !task.window().to().isBefore(today)) {
				added.add(row);
			}
			else if (old != null && old.open() && !old.window().to().isBefore(today) && !old.looksLike(row)) {
				changed.add(row);
				if (old.state() == TaskState.WITHDRAWN) {
					states.add(new TaskChange(row.id(), now, TaskState.WITHDRAWN, TaskState.PLANNED,
							"It is called for again.", null));
				}
			}
		}
		List<PlanDiff.Withdrawal> gone = before.values()
			.stream()
			.filter((old) -> old.state() == TaskState.PLANNED && !wanted.contains(old.id())
					&& !old.window().to().isBefore(today))
			.map((old) -> new PlanDiff.Withdrawal(old.id(), because))
			.toList();
		this.table.add(added, now);
		this.table.change(changed, now);
		withdraw(gone, states, now);
		int written = added.size() + changed.size() + gone.size();
		if (written > 0) {
			this.events.publishEvent(new PlanChanged(siteId.value(), site.owner().value(), added.size(), changed.size(),
					gone.size(), now));
		}
		return written;
	}

	private static void check(List<AddedTask> tasks) {
		if (tasks.size() > MOST) {
			throw new BadInput("%d tasks are too many".formatted(tasks.size()), "tasks",
					"add at most %d".formatted(MOST));
		}
		if (tasks.stream().map((task) -> task.key() + "|" + task.season()).distinct().count() < tasks.size()) {
			throw new BadInput("a key comes twice in a season", "tasks", "name the tasks apart");
		}
	}

	private void withdraw(List<PlanDiff.Withdrawal> gone, List<TaskChange> states, Instant now) {
		this.table.withdraw(gone, now);
		gone.forEach((one) -> states
			.add(new TaskChange(one.task(), now, TaskState.PLANNED, TaskState.WITHDRAWN, one.because(), null)));
		this.history.note(states);
	}

	private String words(Planting planting) {
		return "%s (%s)".formatted(planting.label(),
				this.catalogue.find(planting.species()).map(Species::commonName).orElse(planting.species().value()));
	}

	/**
	 * What was added for something.
	 * @param id what the tasks were added for
	 * @return their identifiers, by first day
	 */
	@Transactional(readOnly = true)
	public List<TaskId> of(UUID id) {
		return this.table.of(id).stream().map(AddedTable.Stored::id).toList();
	}

	/**
	 * The page that says why a task was added.
	 * @param task a task
	 * @return empty for tasks of rules
	 */
	@Transactional(readOnly = true)
	public Optional<String> link(TaskId task) {
		return this.table.link(task);
	}

	/**
	 * Withdraws what was added for plantings that are no more, in a transaction of its
	 * own, as it is called when that of a change has ended.
	 * @param id the site
	 */
	@Transactional(propagation = Propagation.REQUIRES_NEW)
	public void tidy(SiteId id) {
		Site site = this.register.find(id).orElse(null);
		if (site == null) {
			return;
		}
		this.plans.lock(List.of(id));
		Instant now = this.clock.instant().truncatedTo(ChronoUnit.SECONDS);
		Collection<UUID> there = this.register.plantingsOf(id).stream().map((one) -> one.id().value()).toList();
		List<PlanDiff.Withdrawal> gone = this.table.withoutPlanting(id, there, LocalDate.ofInstant(now, site.zone()))
			.stream()
			.map((task) -> new PlanDiff.Withdrawal(task, "The planting is no longer in the register."))
			.toList();
		withdraw(gone, new ArrayList<>(), now);
		if (!gone.isEmpty()) {
			this.events.publishEvent(new PlanChanged(id.value(), site.owner().value(), 0, 0, gone.size(), now));
		}
	}

}
