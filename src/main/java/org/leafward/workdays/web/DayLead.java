package org.leafward.workdays.web;

import org.jspecify.annotations.Nullable;
import org.leafward.measure.DayWords;
import org.leafward.workdays.SignUp;
import org.leafward.workdays.SignUpState;
import org.leafward.workdays.Workday;
import org.leafward.workdays.WorkdayState;

/** The first sentence of a workday's page. */
final class DayLead {

	private DayLead() {
	}

	static String of(Workday day, @Nullable SignUp mine, boolean open) {
		String on = DayWords.of(day.day());
		if (day.state() == WorkdayState.CALLED_OFF) {
			return "The workday on %s is called off.".formatted(on);
		}
		if (day.state() == WorkdayState.PROPOSED) {
			return "This workday on %s is proposed; only those who lead the group see it.".formatted(on);
		}
		if (mine != null && mine.state() == SignUpState.IN) {
			return open ? "You come on %s.".formatted(on) : "You had a place on %s.".formatted(on);
		}
		if (!open) {
			return "The workday on %s is over.".formatted(on);
		}
		if (mine != null && mine.state() == SignUpState.WAITING) {
			return "You wait for a place on %s.".formatted(on);
		}
		return switch (day.free()) {
			case 0 -> "The workday on %s is full; you can wait for a place.".formatted(on);
			case 1 -> "The workday on %s has one place left.".formatted(on);
			default -> "The workday on %s has %d places left.".formatted(on, day.free());
		};
	}

}
