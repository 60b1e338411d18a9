package org.leafward.reminders.core;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Each thing that messages say and that is no task's own word, with the places that it
 * has. The words themselves are in {@code config/messages/<language>/messages.yaml}. A
 * word with two forms has one for a count of one and one for all other counts; the count
 * itself is the place {n}.
 */
public enum Word {

	/** Subject of tasks; of one and of several, named by the first. */
	SUBJECT_TASKS("day task", "day n task"),

	/** Subject when one task moved. */
	SUBJECT_MOVED("day task"),

	/** Subject when one task fell away; the day is the one that was told. */
	SUBJECT_NOT_NEEDED("day task"),

	/** Subject of several changes. */
	SUBJECT_CHANGES("day n task"),

	/** Subject of a cold night; of one planting and of several. */
	SUBJECT_NIGHT("day task", "day n"),

	/** Subject of an outlook. */
	SUBJECT_OUTLOOK("day", "day n"),

	/** Subject of an outlook in which no task begins this week. */
	SUBJECT_QUIET("day"),

	/** First line about a task. */
	OPENING_DO("days"),

	/** First line about a hold-off. */
	OPENING_HOLD_OFF("days"),

	/** First line about a day of a ramp. */
	OPENING_RAMP("days"),

	/** First line about something to look for. */
	OPENING_WATCH("days"),

	/** First line about several tasks that begin on one day. */
	OPENING_TASKS("n day"),

	/** First line about several tasks with several first days. */
	OPENING_SPREAD("n first last"),

	/** First line about changes, or the second after tasks. */
	OPENING_CHANGES("", "n"),

	/** First line about a cold night. */
	OPENING_NIGHT("day next", "day next n"),

	/** First line of an outlook. */
	OPENING_OUTLOOK("first last"),

	/** A task and its plant. */
	HEADING_ONE("task plant"),

	/** A task of several plantings. */
	HEADING_MANY("task n"),

	/** Marks the title of a hold-off that doesn't say by itself that it is one. */
	HOLD_OFF("task"),

	/**
	 * Not shown: words parted by spaces. A title with one of them among its first three
	 * words says by itself that something is to be left.
	 */
	LEAVING(""),

	LABEL_PLANTS(""),

	LABEL_WHEN(""),

	LABEL_WHERE(""),

	LABEL_RAMP(""),

	LABEL_WHAT(""),

	/** In place of {@link #LABEL_WHAT} for a hold-off. */
	LABEL_LEAVE(""),

	LABEL_AMOUNT(""),

	/** In place of {@link #LABEL_AMOUNT} for a day of a ramp. */
	LABEL_PLACE(""),

	LABEL_WHY(""),

	LABEL_OTHERWISE(""),

	LABEL_CAUTION(""),

	/** The new days of a task that moved. */
	LABEL_MOVED(""),

	/** The first day that was told before. */
	LABEL_BEFORE(""),

	/** Why a task fell away. */
	LABEL_NOT_NEEDED(""),

	/** Of some of the plantings. */
	AMOUNT_OF("plants amount"),

	/** Which day of a ramp. */
	RAMP_DAY("day days"),

	RAMP_ONE(""),

	LINK_DETAILS(""),

	LINK_DONE(""),

	LINK_LATER(""),

	LINK_SKIP(""),

	/** In place of {@link #LINK_SKIP} where a task comes several times a year. */
	LINK_SKIP_TURN(""),

	/** What a list leaves off. */
	MORE("", "n"),

	PART_CHANGES(""),

	/** What is due now, in an outlook. */
	PART_NOW(""),

	PART_THIS_WEEK(""),

	PART_NEXT_WEEK(""),

	PART_OPEN(""),

	PART_HOLD_OFFS(""),

	PART_NOT_NEEDED(""),

	PART_COVER(""),

	PART_CAUTIONS(""),

	PART_HOW(""),

	/** A task in an outlook. */
	ENTRY("days task site"),

	/** A task that began before the outlook. */
	ENTRY_OPEN("day task site"),

	/** A task that fell away. */
	ENTRY_NOT_NEEDED("task site reason"),

	/** What to cover at a site. */
	ENTRY_COVER("site plants"),

	/** In place of all lists of an outlook. */
	NOTHING(""),

	/** In place of a reason that nobody gave. */
	NO_REASON(""),

	/** Why somebody gets the message. */
	FOOT_SITES("sites"),

	/** The same when there is no task in it. */
	FOOT_PLANTS(""),

	FOOT_WISHES(""),

	FOOT_STOP_MORNING(""),

	FOOT_STOP_OUTLOOK(""),

	FOOT_STOP_TONIGHT(""),

	FOOT_STOP_SINGLE(""),

	FOOT_STOP_ADVISORY(""),

	/** Why somebody gets an advisory. */
	FOOT_ADVISORY(""),

	/** Subject of an advisory that says something else now. */
	SUBJECT_ADVISORY_CHANGED("headline"),

	/** Subject of an advisory that was called off. */
	SUBJECT_ADVISORY_OFF("headline"),

	/** Subject of several advisories, named by the first. */
	SUBJECT_ADVISORIES("n headline"),

	/** Subject of something else that goes out with an advisory. */
	SUBJECT_ADVISORY_TOO("subject headline"),

	PART_ADVISORIES(""),

	/** What an advisory says will come. */
	LABEL_COMES(""),

	/** In place of {@link #LABEL_COMES} for what was called off. */
	LABEL_NOW(""),

	/** What that does to plants. */
	LABEL_IMPACTS(""),

	LABEL_TO_DO(""),

	/** Why an advisory changed. */
	LABEL_NEWS(""),

	/** Why an advisory was called off. */
	LABEL_OFF(""),

	/** First sentence about an advisory that was called off. */
	ADVISORY_OFF(""),

	/** What goes before any plant. */
	ADVISORY_CAUTION(""),

	/** Of an advisory that nobody translated. */
	ADVISORY_ENGLISH(""),

	LINK_ADVISORY(""),

	/** Who sends it; the server's address stands beside it. */
	FOOT_FROM("");

	private final Set<String> one;

	private final @Nullable Set<String> other;

	private final List<String> given;

	Word(String places) {
		this(places, null);
	}

	Word(String one, @Nullable String other) {
		this.one = split(one);
		this.other = (other != null) ? split(other) : null;
		Set<String> all = new LinkedHashSet<>(this.one);
		if (this.other != null) {
			all.addAll(this.other);
			all.remove("n");
		}
		this.given = List.copyOf(all);
	}

	private static Set<String> split(String places) {
		return new LinkedHashSet<>(places.isEmpty() ? List.of() : List.of(places.split(" ")));
	}

	/**
	 * Its name in files.
	 * @return lower case with hyphens
	 */
	public String key() {
		return name().toLowerCase(Locale.ROOT).replace('_', '-');
	}

	/**
	 * Whether it has two forms.
	 * @return true when it depends on a count
	 */
	public boolean counted() {
		return this.other != null;
	}

	/**
	 * The places that a form must have, no more and no fewer.
	 * @param many the form for counts other than one
	 * @return names without braces
	 */
	List<String> places(boolean many) {
		return new ArrayList<>((many && this.other != null) ? this.other : this.one);
	}

	/**
	 * What is given to fill it with, besides the count.
	 * @return names of places, in the order of what is given
	 */
	List<String> given() {
		return this.given;
	}

}
