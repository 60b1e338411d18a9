package org.leafward.feeds.core;

import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.leafward.calendars.PlainText;
import org.leafward.feeds.core.FeedEntry.Meeting;
import org.leafward.feeds.core.FeedEntry.Standing;
import org.leafward.measure.DayWindow;
import org.leafward.measure.DayWords;
import org.leafward.workdays.GroupSite;
import org.leafward.workdays.SignUpState;
import org.leafward.workdays.Workday;
import org.leafward.workdays.WorkdayState;

/** Words workdays of groups for the calendar of a reader. */
public final class WorkdayEntries {

	private static final int SITES = 200;

	private final TaskEntries words;

	private final String base;

	/**
	 * Creates the words for a reader.
	 * @param words their language and units
	 * @param base address of the server, without a slash at the end
	 */
	public WorkdayEntries(TaskEntries words, String base) {
		this.words = words;
		this.base = base;
	}

	/**
	 * The entry of a workday. Its identifier is that of the invitation by mail, so that
	 * programs which compare them see one event.
	 * @param day a published workday
	 * @param state how the reader stands to it; null when they never answered
	 * @return with its hours; cancelled when it was called off
	 */
	public FeedEntry of(Workday day, @Nullable SignUpState state) {
		boolean off = day.state() == WorkdayState.CALLED_OFF;
		String title = said(off ? "Called off" : "Workday") + ": " + PlainText.line(day.groupName());
		return new FeedEntry(day.uid(), day.sequence(), day.createdAt().truncatedTo(ChronoUnit.SECONDS),
				day.changedAt().truncatedTo(ChronoUnit.SECONDS), DayWindow.of(day.day()),
				PlainText.cut(title, TaskEntries.SUMMARY), description(day, state, off),
				this.base + "/workdays/" + day.id(), null, List.of(said("Workday")),
				off ? Standing.CANCELLED : Standing.OPEN,
				new Meeting(day.start(), day.end(), day.meetingPoint(), !off && state == SignUpState.IN));
	}

	private String description(Workday day, @Nullable SignUpState state, boolean off) {
		List<String> lines = new ArrayList<>();
		String because = day.calledOffBecause();
		if (off) {
			lines.add(said("Called off") + ((because != null && !because.isBlank()) ? ": " + because : ""));
		}
		else if (state != null || day.state() == WorkdayState.FIXED) {
			lines.add(said(standing(state)));
		}
		String sites = day.sites().stream().map(GroupSite::name).collect(Collectors.joining(" · "));
		if (!sites.isEmpty()) {
			lines.add(said("Sites") + ": " + PlainText.cutOctets(PlainText.line(sites), SITES));
		}
		if (!day.tasks().isEmpty()) {
			lines.add(said("%d tasks".formatted(day.tasks().size())));
		}
		if (day.rainDay() != null && !off) {
			lines.add(said("If the weather forbids it: %s".formatted(DayWords.of(day.rainDay()))));
		}
		String end = said("Answer, tasks and tools") + ": " + this.base + "/workdays/" + day.id();
		return PlainText.cutOctets(PlainText.clean(String.join("\n", lines)),
				TaskEntries.DESCRIPTION - end.length() - 1) + "\n" + end;
	}

	private static String standing(@Nullable SignUpState state) {
		if (state == null) {
			return "You have not answered yet.";
		}
		return switch (state) {
			case IN -> "You have a place.";
			case WAITING -> "You wait for a place.";
			case OUT -> "You said no.";
		};
	}

	private String said(String english) {
		return this.words.said(english);
	}

}
