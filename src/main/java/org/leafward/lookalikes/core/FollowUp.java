package org.leafward.lookalikes.core;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.leafward.care.AddedTask;
import org.leafward.care.TaskKind;
import org.leafward.care.TaskText;
import org.leafward.care.core.rule.Work;
import org.leafward.measure.DayWindow;
import org.leafward.measure.DayWords;
import org.leafward.measure.Explanation;
import org.leafward.measure.Hemisphere;
import org.leafward.measure.Season;

/** What follows from a finding: remedies with their days, and a look a year on. Pure. */
public final class FollowUp {

	/** Key of the look a year on. */
	public static final String LOOK_AGAIN = "look-a-year-on";

	private static final int MOST_WINDOWS = 2;

	private static final int BEFORE_DAYS = 7;

	private static final int AFTER_DAYS = 21;

	/** What comes sooner than that was looked at already. */
	private static final int SOON_DAYS = 60;

	private FollowUp() {
	}

	/**
	 * What a follow-up hangs on.
	 *
	 * @param found the day of the finding at the place
	 * @param seen the day on which the injury was first seen
	 * @param hemisphere hemisphere of the place
	 * @param freezes the median freezes of seasons at the place, by year; a season that
	 * isn't there can't be dated
	 * @param asked what rules ask for already, {@code pack/rule|season}
	 */
	public record Facts(LocalDate found, LocalDate seen, Hemisphere hemisphere, Map<Integer, Span.Freezes> freezes,
			Set<String> asked) {
	}

	/**
	 * A follow-up.
	 *
	 * @param tasks what goes onto the calendar, by first day
	 * @param onCalendar titles of remedies that a care rule has put there already
	 * @param undated titles of remedies that can't be dated at this place
	 */
	public record Planned(List<AddedTask> tasks, List<String> onCalendar, List<String> undated) {
	}

	/**
	 * Plans a follow-up: what isn't over, this season and the next.
	 * @param cause what it is taken for
	 * @param facts what it hangs on
	 * @return never null
	 */
	public static Planned of(Cause cause, Facts facts) {
		List<AddedTask> tasks = new ArrayList<>();
		List<String> asked = new ArrayList<>();
		List<String> undated = new ArrayList<>();
		for (Remedy remedy : cause.remedies()) {
			List<AddedTask> own = new ArrayList<>();
			boolean known = false;
			boolean datable = remedy.span().anchor() == Span.Anchor.FINDING;
			int now = Season.containing(facts.found(), facts.hemisphere()).year();
			for (int season = now - 1; season <= now + 1 && own.size() < MOST_WINDOWS; season++) {
				Span.Freezes freezes = facts.freezes().get(season);
				boolean once = remedy.span().anchor() == Span.Anchor.FINDING;
				if (once ? season != now : freezes == null) {
					continue;
				}
				datable = true;
				String rule = remedy.rule();
				if (rule != null && facts.asked().contains(rule + "|" + season)) {
					known = true;
					continue;
				}
				List<Span.Freezes> one = (freezes != null) ? List.of(freezes) : List.of();
				for (DayWindow window : remedy.span().windows(facts.found(), one)) {
					own.add(task(cause, remedy, season, window, freezes, facts));
				}
			}
			tasks.addAll(own);
			if (known) {
				asked.add(remedy.title());
			}
			if (!datable) {
				undated.add(remedy.title());
			}
		}
		if (cause.kind() != Kind.NORMAL) {
			lookAgain(cause, facts, tasks);
		}
		tasks.sort(Comparator.comparing((AddedTask task) -> task.window().from()).thenComparing(AddedTask::key));
		return new Planned(List.copyOf(tasks), List.copyOf(asked), List.copyOf(undated));
	}

	private static AddedTask task(Cause cause, Remedy remedy, int season, DayWindow window,
			Span.@Nullable Freezes freezes, Facts facts) {
		return new AddedTask(remedy.id(), season, remedy.holdOff() ? TaskKind.HOLD_OFF : TaskKind.DO, remedy.work(),
				window, new TaskText(remedy.title(), remedy.text(), null, why(cause), null, remedy.caution()),
				Explanation.of("Finding", cause.title())
					.withDetail("It is the likeliest by the answers, the record or a test, and no certainty.")
					.withSteps(List.of(days(remedy.span(), freezes, facts.found()))));
	}

	private static String why(Cause cause) {
		return cause.laboratory() ? "It is suspected, not confirmed: " + cause.name() + "."
				: "What was found is taken for this: " + cause.name() + ".";
	}

	private static Explanation days(Span span, Span.@Nullable Freezes freezes, LocalDate found) {
		LocalDate from = switch (span.anchor()) {
			case FINDING -> found;
			case LAST_SPRING_FREEZE -> (freezes != null) ? freezes.lastOfSpring() : found;
			case FIRST_FALL_FREEZE -> (freezes != null) ? freezes.firstOfFall() : found;
		};
		String label = switch (span.anchor()) {
			case FINDING -> "Day of the finding";
			case LAST_SPRING_FREEZE -> "Median last freeze of spring, 32 °F (0 °C)";
			case FIRST_FALL_FREEZE -> "Median first freeze of fall, 32 °F (0 °C)";
		};
		return Explanation.of(label, DayWords.of(from))
			.withDetail("From %s to %s; what has begun already begins today.".formatted(offset(span.from()),
					offset(span.to())));
	}

	private static String offset(int days) {
		int many = Math.abs(days);
		String words = many + ((many == 1) ? " day" : " days");
		return (days == 0) ? "that day" : words + ((days < 0) ? " before it" : " after it");
	}

	private static void lookAgain(Cause cause, Facts facts, List<AddedTask> tasks) {
		LocalDate day = facts.seen().plusYears(1);
		while (day.minusDays(BEFORE_DAYS).isBefore(facts.found().plusDays(SOON_DAYS))) {
			day = day.plusYears(1);
		}
		int season = Season.containing(day, facts.hemisphere()).year();
		tasks.add(new AddedTask(LOOK_AGAIN, season, TaskKind.WATCH, Work.SCOUT, new DayWindow(day
			.minusDays(BEFORE_DAYS), day.plusDays(AFTER_DAYS)), new TaskText("Look at it again",
					"See whether the same comes again, where in the plant, and on how much more of it. Then open the case and look at it anew.",
					null, "Whether it comes again tells apart what one season can’t. " + why(cause), null, null),
				Explanation.of("First seen", DayWords.of(facts.seen()))
					.withDetail("A year on, from a week before that day to three weeks after it.")));
	}

}
