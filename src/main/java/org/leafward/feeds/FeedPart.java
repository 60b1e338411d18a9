package org.leafward.feeds;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.leafward.care.TaskKind;

/** What a calendar may hold. */
public enum FeedPart {

	/** What to do. */
	TASKS(TaskKind.DO, "to do"),

	/** What to leave alone. */
	HOLD_OFFS(TaskKind.HOLD_OFF, "hold-offs"),

	/** The days of a hardening-off. */
	RAMP_DAYS(TaskKind.RAMP_DAY, "hardening-off days"),

	/** What to look for. */
	LOOK_FOR(TaskKind.WATCH, "what to look for"),

	/** Days on which groups work. */
	WORKDAYS(null, "workdays of groups"),

	/** Regional alerts. */
	ADVISORIES(null, "advisories for the county");

	private final @Nullable TaskKind kind;

	private final String words;

	FeedPart(@Nullable TaskKind kind, String words) {
		this.kind = kind;
		this.words = words;
	}

	/**
	 * Of which kind its tasks are.
	 * @return null where it holds no tasks
	 */
	public @Nullable TaskKind kind() {
		return this.kind;
	}

	public String words() {
		return this.words;
	}

	/**
	 * Its name in forms and in the API.
	 * @return for example {@code hold-offs}
	 */
	public String code() {
		return name().toLowerCase(Locale.ROOT).replace('_', '-');
	}

}
