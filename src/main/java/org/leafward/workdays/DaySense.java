package org.leafward.workdays;

import java.time.LocalDate;
import java.util.Optional;
import org.leafward.care.CareTask;
import org.leafward.care.TaskCalendar;
import org.leafward.measure.BadInput;
import org.leafward.measure.DayWindow;
import org.leafward.measure.DayWords;
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
	 * The hold-off that forbids a task on a day of its window.
	 * @param task what is to be done
	 * @param day when
	 * @return empty when none does
	 */
	Optional<HoldOff> heldOff(CareTask task, LocalDate day) {
		return this.work.holdOffs(task, this.calendar.ofSite(task.site(), DayWindow.of(day)))
			.stream()
			.filter((one) -> one.window().contains(day))
			.findFirst();
	}

	/**
	 * Why a task makes no sense on the day to which its workday moved.
	 * @param task what is to be done
	 * @param day the new day
	 * @return a sentence; empty when it does
	 */
	Optional<String> lostBy(CareTask task, LocalDate day) {
		if (!task.window().contains(day)) {
			return Optional.of("Its workday was moved to %s, and its window is %s to %s.".formatted(DayWords.of(day),
					DayWords.of(task.window().from()), DayWords.of(task.window().to())));
		}
		return heldOff(task, day)
			.map((held) -> "A hold-off covers %s: %s.".formatted(DayWords.of(day), held.because()));
	}

	/**
	 * Refuses a workday for a task that makes no sense on it.
	 * @param task what is to be done
	 * @param day of the workday
	 * @throws BadInput in field {@code to}
	 */
	void check(CareTask task, LocalDate day) {
		if (!task.window().contains(day)) {
			throw new BadInput("the workday lies outside of the days on which this makes sense", "to",
					"choose another workday, or leave it to the garden’s owner");
		}
		heldOff(task, day).ifPresent((held) -> {
			throw new BadInput("a hold-off covers %s: %s".formatted(DayWords.of(day), held.because()), "to",
					"choose another workday, or leave it to the garden’s owner");
		});
	}

}
