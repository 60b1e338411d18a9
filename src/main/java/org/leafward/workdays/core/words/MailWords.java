package org.leafward.workdays.core.words;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.leafward.measure.DayWords;

/**
 * What mails about a workday say, in plain text. Paragraphs are parted by empty lines; an
 * address stands alone.
 *
 * @param group what the group is called
 * @param day the day
 * @param begins when it begins
 * @param ends when it ends
 * @param meetingPoint where to come to; may be empty
 * @param tasks what is to be done, a line each
 * @param answer address at which one answers without signing in
 * @param page address of the workday
 */
public record MailWords(String group, LocalDate day, LocalTime begins, LocalTime ends, String meetingPoint,
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

	private String on() {
		return DayWords.of(this.day);
	}

	/** The day with its times and place. */
	private String when() {
		String where = this.meetingPoint.isEmpty() ? "" : "\nMeeting point: " + this.meetingPoint;
		return "%s, %s to %s%s".formatted(on(), CLOCK.format(this.begins), CLOCK.format(this.ends), where);
	}

	private String work() {
		if (this.tasks.isEmpty()) {
			return "";
		}
		StringBuilder list = new StringBuilder("What we want to do:\n");
		this.tasks.stream().limit(MOST_TASKS).forEach((one) -> list.append("\n- ").append(one));
		if (this.tasks.size() > MOST_TASKS) {
			list.append("\n- and ").append(this.tasks.size() - MOST_TASKS).append(" more");
		}
		return list.append("\n\n").toString();
	}

	private String end() {
		return "\n\nYou get this as a member of %s. On the page of the workday you find the group, and how to leave it:\n\n%s\n"
			.formatted(this.group, this.page);
	}

	private String question() {
		return "Do you come? Say so here, or by the buttons of your calendar program:\n\n" + this.answer;
	}

	public Words invited() {
		return new Words("Workday on %s: %s".formatted(on(), this.group),
				"%s works on\n\n%s\n\n%s%s%s".formatted(this.group, when(), work(), question(), end()));
	}

	/**
	 * Something is otherwise.
	 * @param what what, a sentence
	 * @return the mail
	 */
	public Words changed(String what) {
		return new Words("Changed: workday on %s, %s".formatted(on(), this.group),
				"%s\n\nThe workday of %s is now on\n\n%s\n\n%s%s%s".formatted(what, this.group, when(), work(),
						question(), end()));
	}

	public Words placeFree() {
		return new Words("You have a place: workday on %s, %s".formatted(on(), this.group),
				("A place came free, and it is yours.\n\n%s\n\n%sCan’t you come after all? Then say so, so that the next "
						+ "one gets it:\n\n%s%s")
					.formatted(when(), work(), this.answer, end()));
	}

	/**
	 * It doesn't take place.
	 * @param because why, a sentence
	 * @param instead what takes its place; null for nothing yet
	 * @return the mail
	 */
	public Words calledOff(String because, @Nullable String instead) {
		return new Words("Called off: workday on %s, %s".formatted(on(), this.group),
				"The workday of %s on %s is called off: please don’t come.\n\n%s%s%s".formatted(this.group, on(),
						because, (instead != null) ? "\n\n" + instead : "", end()));
	}

	public Words left() {
		return new Words("No longer for you: workday on %s, %s".formatted(on(), this.group),
				("You no longer belong to %s, so its workday on %s is taken out of your calendar. Thank you for the time "
						+ "that you gave.\n")
					.formatted(this.group, on()));
	}

	/**
	 * Thanks afterwards.
	 * @param minutes how long they worked
	 * @param done how many tasks were done
	 * @return the mail
	 */
	public Words thanks(int minutes, int done) {
		String worked = (minutes > 0) ? " We noted %s for you.".formatted(hours(minutes)) : "";
		String tasks = (done == 1) ? "One task is"
				: (done == 0) ? "Nothing could be finished; the work is" : done + " tasks are";
		return new Words("Thank you for %s: %s".formatted(on(), this.group),
				"Thank you for working with %s on %s. %s %s.%s Is that not right? Tell those who lead the group.%s"
					.formatted(this.group, on(), tasks, (done == 0) ? "still in the plan" : "done", worked, end()));
	}

	/**
	 * What the weather has to say, for those who lead.
	 * @param warnings sentences, one at least
	 * @param instead what could be done; null when there is no other day
	 * @return the mail
	 */
	public Words weather(List<String> warnings, @Nullable String instead) {
		return new Words("Weather: workday on %s, %s".formatted(on(), this.group),
				"The forecast for the workday on\n\n%s\n\nsays:\n\n- %s\n\n%sCall it off, move it, or leave it here:\n\n%s\n"
					.formatted(when(), String.join("\n- ", warnings), (instead != null) ? instead + "\n\n" : "",
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
