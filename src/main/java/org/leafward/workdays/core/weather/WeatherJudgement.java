package org.leafward.workdays.core.weather;

import java.time.LocalDate;
import java.util.List;

/**
 * What the weather means for a workday. It advises; the coordinator decides.
 *
 * @param day the day
 * @param advice the gravest of what was found
 * @param findings what was found, the gravest first
 * @param reminders what to keep in mind besides, as sentences
 */
public record WeatherJudgement(LocalDate day, Advice advice, List<Finding> findings, List<String> reminders) {

	public WeatherJudgement {
		findings = List.copyOf(findings);
		reminders = List.copyOf(reminders);
	}

	/** What to do, mildest first. */
	public enum Advice {

		/** No forecast reaches the day. */
		UNKNOWN,

		/** Nothing speaks against it. */
		GO,

		/** It can take place, with care. */
		CARE,

		/** Better on another day. */
		PUT_OFF

	}

	/** What a finding is about. */
	public enum Kind {

		/** Rain. */
		RAIN,

		/** New snow. */
		SNOW,

		/** Ground that no spade enters. */
		FROZEN_GROUND,

		/** The heat index. */
		HEAT,

		/** The wind chill. */
		COLD

	}

	/**
	 * Something that was found.
	 *
	 * @param kind what it is about
	 * @param advice {@code CARE} or {@code PUT_OFF}
	 * @param words sentences
	 */
	public record Finding(Kind kind, Advice advice, String words) {
	}

}
