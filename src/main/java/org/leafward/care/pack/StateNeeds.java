package org.leafward.care.pack;

import java.util.Arrays;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.leafward.care.pack.PackDraft.StateDraft;

/** What must be written with each state of the weather. */
enum StateNeeds {

	LOW_AHEAD("at-most", "a temperature", "at-most: 34F", Forms.TEMPERATURE),

	HIGH_AHEAD("at-least", "a temperature", "at-least: 85F", Forms.TEMPERATURE),

	COOL_DAYS("at-most", "a temperature", "at-most: 45F", Forms.TEMPERATURE),

	WIND_AHEAD("at-least", "a speed", "at-least: 15mph", Forms.SPEED),

	HOT_DRY_WIND,

	DRY_DAYS("days", "a number of days", "days: 14", Forms.NONE),

	DROUGHT("at-least", "a drought class", "at-least: D1", Forms.DROUGHT),

	HEAT_INDEX("at-least", "a temperature", "at-least: 91F", Forms.TEMPERATURE),

	THAW_DAY,

	NEW_SNOW("at-least", "a depth", "at-least: 3in", Forms.DEPTH),

	RAIN_WEEK("at-least", "a depth", "at-least: 25mm", Forms.DEPTH),

	ROOT_ZONE_DRY,

	ROOT_ZONE_MOIST,

	GROUND_FROZEN;

	/** The forms that bounds are written in. */
	private static final class Forms {

		static final Predicate<String> TEMPERATURE = Pattern.compile("[CF]$").asPredicate();

		static final Predicate<String> SPEED = Pattern.compile("(mph|m/s)$").asPredicate();

		static final Predicate<String> DROUGHT = Pattern.compile("^D").asPredicate();

		static final Predicate<String> DEPTH = Pattern.compile("(in|mm|cm)$").asPredicate();

		static final Predicate<String> NONE = (written) -> true;

	}

	private final String entry;

	private final String what;

	private final String example;

	private final Predicate<String> form;

	StateNeeds(String entry, String what, String example, Predicate<String> form) {
		this.entry = entry;
		this.what = what;
		this.example = example;
		this.form = form;
	}

	StateNeeds() {
		this("", "", "", Forms.NONE);
	}

	static StateNeeds of(String code) {
		return Arrays.stream(values()).filter((state) -> state.code().equals(code)).findFirst().orElseThrow();
	}

	String code() {
		return name().toLowerCase(Locale.ROOT).replace('_', '-');
	}

	/** Complains of what is wrong, and tells whether nothing is. */
	boolean check(StateDraft draft, String path, Complaints complaints) {
		boolean most = entry("at-most", draft.atMost(), path, complaints);
		boolean least = entry("at-least", draft.atLeast(), path, complaints);
		return entry("days", draft.days(), path, complaints) && most && least;
	}

	private boolean entry(String name, @Nullable Object written, String path, Complaints complaints) {
		if (!name.equals(this.entry)) {
			if (written == null) {
				return true;
			}
			complaints.add(path + "/" + name, "'%s' takes no '%s'".formatted(code(), name),
					this.entry.isEmpty() ? "remove it" : "write %s, such as %s".formatted(this.what, this.example));
		}
		else if (written == null) {
			complaints.add(path, "'%s' needs %s".formatted(code(), this.what),
					"add '%s', for example %s".formatted(name, this.example));
		}
		else if (!this.form.test(written.toString())) {
			complaints.add(path + "/" + name, "'%s' is not %s".formatted(written, this.what),
					"write %s, such as %s".formatted(this.what, this.example));
		}
		else {
			return true;
		}
		return false;
	}

}
