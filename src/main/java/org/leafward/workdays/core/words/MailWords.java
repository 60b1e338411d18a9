package org.leafward.workdays.core.words;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import org.leafward.measure.DayWords;

/**
 * What mails about a workday say, in plain text and in the reader's words. Paragraphs are
 * parted by empty lines; an address stands alone.
 *
 * @param voice says it to the reader
 * @param group what the group is called
 * @param day the day
 * @param begins when it begins
 * @param ends when it ends
 * @param meetingPoint where to come to; may be empty
 * @param tasks what is to be done, a line each, as the reader is to read it
 * @param answer address at which one answers without signing in
 * @param page address of the workday
 */
public record MailWords(Voice voice, String group, LocalDate day, LocalTime begins, LocalTime ends, String meetingPoint,
		List<String> tasks, String answer, String page) {

	/** Lines of tasks in a mail; the page has all. */
	private static final int MOST_TASKS = 30;

	private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

	public MailWords {
		tasks = List.copyOf(tasks);
	}

	/**
	 * A mail.
	 *
	 * @param subject one line
	 * @param body plain text
	 */
	public record Words(String subject, String body) {
	}

	private String say(String english, Object... places) {
		return this.voice.say(english.formatted(places));
	}

	private String on() {
		return DayWords.of(this.day);
	}

	/** What a calendar calls the workday. */
	public String title() {
		return say("Workday: %s", this.group);
	}

	/** The day with its times and place. */
	private String when() {
		String where = this.meetingPoint.isEmpty() ? "" : "\n\n" + say("Meeting point:") + " " + this.meetingPoint;
		return say("%s, %s to %s", on(), CLOCK.format(this.begins), CLOCK.format(this.ends)) + where;
	}

	private String work() {
		if (this.tasks.isEmpty()) {
			return "";
		}
		StringBuilder list = new StringBuilder(say("What we want to do:")).append('\n');
		this.tasks.stream().limit(MOST_TASKS).forEach((one) -> list.append("\n- ").append(one));
		if (this.tasks.size() > MOST_TASKS) {
			list.append("\n- ").append(say("and %d more", this.tasks.size() - MOST_TASKS));
		}
		return list.append("\n\n").toString();
	}

	private String end() {
		return "\n\n%s %s\n\n%s\n".formatted(say("You get this as a member of %s.", this.group),
				say("On the page of the workday you find the group, and how to leave it:"), this.page);
	}

	private String question() {
		return say("Do you come? Say so here, or by the buttons of your calendar program:") + "\n\n" + this.answer;
	}

	public Words invited() {
		return new Words(say("Workday on %s: %s", on(), this.group),
				"%s\n\n%s\n\n%s%s%s".formatted(say("%s works on", this.group), when(), work(), question(), end()));
	}

	/**
	 * Something is otherwise.
	 * @param what what, a sentence in English
	 * @return the mail
	 */
	public Words changed(String what) {
		return new Words(say("Changed: workday on %s, %s", on(), this.group), "%s\n\n%s\n\n%s\n\n%s%s%s"
			.formatted(say(what), say("The workday of %s is now on", this.group), when(), work(), question(), end()));
	}

	public Words placeFree() {
		return new Words(say("You have a place: workday on %s, %s", on(), this.group),
				"%s\n\n%s\n\n%s%s\n\n%s%s".formatted(say("A place came free, and it is yours."), when(), work(),
						say("Can’t you come after all? Then say so, so that the next one gets it:"), this.answer,
						end()));
	}

	/**
	 * It doesn't take place.
	 * @param because why, a sentence; words of a person stay as they are
	 * @return the mail
	 */
	public Words calledOff(String because) {
		return new Words(say("Called off: workday on %s, %s", on(), this.group),
				"%s\n\n%s%s".formatted(
						say("The workday of %s on %s is called off: please don’t come.", this.group, on()),
						say(because), end()));
	}

	public Words left() {
		return new Words(say("No longer for you: workday on %s, %s", on(), this.group),
				"%s %s\n"
					.formatted(say("You no longer belong to %s, so its workday on %s is taken out of your calendar.",
							this.group, on()), say("Thank you for the time that you gave.")));
	}

	/**
	 * Thanks afterwards.
	 * @param minutes how long they worked
	 * @param done how many tasks were done
	 * @return the mail
	 */
	public Words thanks(int minutes, int done) {
		String tasks = (done == 1) ? say("One task is done.") : (done == 0)
				? say("Nothing could be finished; the work is still in the plan.") : say("%d tasks are done.", done);
		String worked = (minutes > 0) ? " " + say("We noted %s for you.", hours(minutes)) : "";
		return new Words(say("Thank you for %s: %s", on(), this.group),
				"%s %s%s %s%s".formatted(say("Thank you for working with %s on %s.", this.group, on()), tasks, worked,
						say("Is that not right? Tell those who lead the group."), end()));
	}

	/**
	 * What the weather has to say, for those who lead.
	 * @param warnings sentences in English, one at least
	 * @param instead what could be done, in English
	 * @return the mail
	 */
	public Words weather(List<String> warnings, String instead) {
		List<String> said = warnings.stream().map(this.voice::measured).toList();
		return new Words(say("Weather: workday on %s, %s", on(), this.group),
				"%s\n\n- %s\n\n%s\n\n%s\n\n%s\n".formatted(
						say("The forecast for the workday on %s, %s to %s, says:", on(), CLOCK.format(this.begins),
								CLOCK.format(this.ends)),
						String.join("\n- ", said), say(instead), say("Call it off, move it, or leave it here:"),
						this.page));
	}

	/**
	 * A span of working time.
	 * @param minutes 0 or more
	 * @return for example "2 h 30 min"
	 */
	public static String hours(int minutes) {
		int whole = minutes / 60;
		int rest = minutes % 60;
		return (whole == 0) ? rest + " min" : (rest == 0) ? whole + " h" : "%d h %d min".formatted(whole, rest);
	}

}
