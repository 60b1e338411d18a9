package org.leafward.demo;

import java.time.LocalDate;
import java.time.Month;
import java.util.List;
import org.leafward.accounts.PersonId;
import org.leafward.care.CareLog;
import org.leafward.care.CareTask;
import org.leafward.care.NewObservation;
import org.leafward.care.Observation;
import org.leafward.care.PhenologyLog;
import org.leafward.care.TaskCalendar;
import org.leafward.care.TaskKind;
import org.leafward.care.TaskState;
import org.leafward.care.WorkDone;
import org.leafward.measure.DayWindow;
import org.leafward.register.Planting;
import org.leafward.register.Site;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;

/**
 * What the invented people did, left out and saw; all of it is made up. Which tasks there
 * are hangs on the day on which the demo is started.
 */
@Component
@Profile("demo")
class DemoCare {

	private final TaskCalendar calendar;

	private final CareLog log;

	private final PhenologyLog phenology;

	DemoCare(TaskCalendar calendar, CareLog log, PhenologyLog phenology) {
		this.calendar = calendar;
		this.log = log;
		this.phenology = phenology;
	}

	/**
	 * Tells what happened at a site.
	 * @param site the site, with its tasks
	 * @param plantings what grows there
	 * @param by who looks after it
	 * @param today the day
	 */
	void tell(Site site, List<Planting> plantings, PersonId by, LocalDate today) {
		switch (site.name()) {
			case "Farrow house" -> {
				done(site, by, today, "before breakfast");
				skip(site, by, today, "Away until the weekend");
			}
			case "Millrace Park" -> {
				done(site, by, today, "with the Tuesday crew\nhalf of it; the rest is still too wet");
				done(site, by, today, "");
				saw(site, "leaf-drop", "old elm", plantings, latest(today, Month.OCTOBER, 29), by);
			}
			case "Tamsin Library garden" -> {
				saw(site, "bloom-start", "forsythia", plantings, latest(today, Month.APRIL, 17), by);
				insideAHoldOff(site, by, today);
			}
			case "Larkmoor demonstration garden" -> insideAHoldOff(site, by, today);
			default -> {
				// Nobody has written anything down here yet.
			}
		}
	}

	private List<CareTask> due(Site site, LocalDate today, TaskKind kind) {
		return this.calendar.ofSite(site.id(), DayWindow.of(today))
			.stream()
			.filter((task) -> task.kind() == kind && task.state() == TaskState.PLANNED)
			.toList();
	}

	private void done(Site site, PersonId by, LocalDate today, String note) {
		due(site, today, TaskKind.DO).stream()
			.findFirst()
			.ifPresent((task) -> this.log.done(List.of(task.id()), WorkDone.on(yesterday(task, today), note), by));
	}

	private void skip(Site site, PersonId by, LocalDate today, String reason) {
		due(site, today, TaskKind.DO).stream()
			.findFirst()
			.ifPresent((task) -> this.log.skip(List.of(task.id()), reason, by));
	}

	private void insideAHoldOff(Site site, PersonId by, LocalDate today) {
		due(site, today, TaskKind.HOLD_OFF).stream()
			.filter((task) -> task.rule().contains("prun") && task.planting() != null)
			.findFirst()
			.ifPresent((task) -> this.log.log(site.id(), task.planting(), "prune",
					WorkDone.on(yesterday(task, today), "a branch had broken over the path; the rest came off with it"),
					by));
	}

	private void saw(Site site, String phase, String label, List<Planting> plantings, LocalDate day, PersonId by) {
		Planting on = plantings.stream().filter((one) -> one.label().equals(label)).findFirst().orElseThrow();
		this.phenology.observe(site.id(), new NewObservation(on.id(), Observation.Kind.PHASE, phase, day), by);
	}

	private static LocalDate yesterday(CareTask task, LocalDate today) {
		LocalDate yesterday = today.minusDays(1);
		return task.window().contains(yesterday) ? yesterday : today;
	}

	/** The last such day that is not to come. */
	private static LocalDate latest(LocalDate today, Month month, int day) {
		LocalDate thisYear = LocalDate.of(today.getYear(), month, day);
		return thisYear.isAfter(today) ? thisYear.minusYears(1) : thisYear;
	}

}
