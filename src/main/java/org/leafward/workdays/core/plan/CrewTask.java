package org.leafward.workdays.core.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.leafward.measure.DayWindow;

/**
 * A piece of work that is done by one team on one day.
 *
 * @param id identifier
 * @param site identifier of its site
 * @param title what readers call it
 * @param window first and last day on which it makes sense
 * @param holdOffs days on which it must not be done, whoever asks
 * @param personMinutes effort, 1 to 100,000: two people need half the time of one
 * @param skills what those who do it need; all of its minutes are theirs
 * @param tools what the team brings for it
 * @param importance 1 (nice to have) to 100 (harm if it isn't done)
 * @param pinned the day on which the coordinator wants it; null leaves it open
 * @param notOn days that the coordinator ruled out
 */
public record CrewTask(String id, String site, String title, DayWindow window, List<HoldOff> holdOffs,
		int personMinutes, Set<String> skills, Set<String> tools, int importance, @Nullable LocalDate pinned,
		Set<LocalDate> notOn) {

	public CrewTask {
		if (personMinutes < 1 || personMinutes > 100_000) {
			throw new IllegalArgumentException("%d person-minutes for '%s'".formatted(personMinutes, title));
		}
		if (importance < 1 || importance > 100) {
			throw new IllegalArgumentException("importance %d of '%s'".formatted(importance, title));
		}
		holdOffs = List.copyOf(holdOffs);
		skills = Set.copyOf(skills);
		tools = Set.copyOf(tools);
		notOn = Set.copyOf(notOn);
	}

	/**
	 * The hold-off that forbids a day.
	 * @param day the day
	 * @return the first one; null when none does
	 */
	public @Nullable HoldOff heldOff(LocalDate day) {
		return this.holdOffs.stream().filter((one) -> one.window().contains(day)).findFirst().orElse(null);
	}

	/**
	 * The same task where the coordinator wants it.
	 * @param day the day; null takes the pin away
	 * @return the task
	 */
	public CrewTask pinnedTo(@Nullable LocalDate day) {
		return new CrewTask(this.id, this.site, this.title, this.window, this.holdOffs, this.personMinutes, this.skills,
				this.tools, this.importance, day, this.notOn);
	}

}
