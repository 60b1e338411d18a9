package org.leafward.workdays.web;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Locale;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.workdays.SignUpState;
import org.leafward.workdays.Workday;

/**
 * A workday as answered.
 *
 * @param id identifier
 * @param group identifier of its group
 * @param groupName what the group is called
 * @param day the day
 * @param begins when it begins
 * @param ends when it ends
 * @param zone time zone of both
 * @param meetingPoint where to come to; may be empty
 * @param state "proposed", "fixed", "called-off" or "held"
 * @param calledOffBecause why it is called off; null unless it is
 * @param rainDay the day instead; null for none
 * @param capacity how many can come, children included
 * @param places how many places are taken
 * @param waiting how many people wait
 * @param tasks how many tasks are to be done
 * @param done how many of them are done
 * @param mine how who asks stands to it: "in", "waiting" or "out"; null when they never
 * answered, or where it isn't told
 */
record WorkdayAnswer(UUID id, UUID group, String groupName, LocalDate day, LocalTime begins, LocalTime ends,
		String zone, String meetingPoint, String state, @Nullable String calledOffBecause, @Nullable LocalDate rainDay,
		int capacity, int places, int waiting, int tasks, int done, @Nullable String mine) {

	static WorkdayAnswer of(Workday day, @Nullable SignUpState mine) {
		return new WorkdayAnswer(day.id().value(), day.group().value(), day.groupName(), day.day(), day.begins(),
				day.ends(), day.zone().getId(), day.meetingPoint(), code(day.state()), day.calledOffBecause(),
				day.rainDay(), day.capacity(), day.places(), day.waiting(), day.tasks().size(),
				(int) day.tasks().stream().filter((one) -> one.done()).count(), (mine != null) ? code(mine) : null);
	}

	static String code(Enum<?> value) {
		return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
	}

}
