package org.leafward.workdays;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.leafward.care.CareTask;
import org.leafward.care.TaskCalendar;
import org.leafward.measure.BadInput;
import org.leafward.measure.DayWindow;
import org.leafward.measure.DayWords;
import org.leafward.register.SiteId;
import org.leafward.workdays.core.plan.HoldOff;
import org.springframework.stereotype.Component;

/**
 * Whether work makes sense on a day that somebody chose by hand: within its window, and
 * under no hold-off. What a plan places is judged alike, by {@code core.board.Admission}.
 */
@Component
class DaySense {

	private final OpenWork work;

	private final TaskCalendar calendar;

	DaySense(OpenWork work, TaskCalendar calendar) {
		this.work = work;
		this.calendar = calendar;
	}

	/**
	 * What makes sense on a day, as care has planned it now.
	 * @param day the day
	 * @return to ask about several tasks, soon
	 */
	OnDay on(LocalDate day) {
		return new OnDay(day);
	}

	/** What makes sense on one day; what is planned at a site is read once. */
	final class OnDay {

		private final LocalDate day;

		private final Map<SiteId, List<CareTask>> planned = new HashMap<>();

		private OnDay(LocalDate day) {
			this.day = day;
		}

		/**
		 * What care has planned for a site on this day.
		 * @param site which
		 * @return tasks whose windows hold the day
		 */
		List<CareTask> at(SiteId site) {
			return this.planned.computeIfAbsent(site,
					(one) -> DaySense.this.calendar.ofSite(one, DayWindow.of(this.day)));
		}

		/**
		 * The hold-off that forbids a task.
		 * @param task what is to be done
		 * @return empty when none does
		 */
		Optional<HoldOff> heldOff(CareTask task) {
			return DaySense.this.work.holdOffs(task, at(task.site()))
				.stream()
				.filter((one) -> one.window().contains(this.day))
				.findFirst();
		}

		/**
		 * Why a task is lost by a workday that moved to this day.
		 * @param task what is to be done
		 * @return a sentence; empty when it makes sense here
		 */
		Optional<String> lost(CareTask task) {
			if (!task.window().contains(this.day)) {
				return Optional.of("Its workday was moved to %s, and its window is %s to %s.".formatted(
						DayWords.of(this.day), DayWords.of(task.window().from()), DayWords.of(task.window().to())));
			}
			return heldOff(task)
				.map((held) -> "A hold-off covers %s: %s.".formatted(DayWords.of(this.day), held.because()));
		}

		/**
		 * Refuses a task that makes no sense here.
		 * @param task what is to be done
		 * @throws BadInput in field {@code to}
		 */
		void check(CareTask task) {
			if (!task.window().contains(this.day)) {
				throw new BadInput("the workday lies outside of the days on which this makes sense", "to",
						"choose another workday, or leave it to the garden’s owner");
			}
			heldOff(task).ifPresent((held) -> {
				throw new BadInput("a hold-off covers %s: %s".formatted(DayWords.of(this.day), held.because()), "to",
						"choose another workday, or leave it to the garden’s owner");
			});
		}

	}

}
