package org.leafward.feeds.core;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.ToIntFunction;
import org.leafward.care.CareTask;
import org.leafward.care.TaskState;
import org.leafward.measure.DayWindow;

/**
 * Which tasks a feed holds, seen from one day. Clients show only what the document holds,
 * so the recent past stays with what was done and left out in it, and what is withdrawn
 * stays long enough for the slowest client to hear of it.
 *
 * @param day the day the document is built for, UTC
 * @param behind days kept behind
 * @param ahead days shown ahead
 */
public record FeedWindow(LocalDate day, int behind, int ahead) {

	/**
	 * Days that a withdrawn task is still shown. Some clients ask once a week; the rest
	 * is for people on holiday.
	 */
	static final int WITHDRAWN = 30;

	/**
	 * The days whose tasks are shown.
	 * @return from the days behind to the days ahead
	 */
	public DayWindow days() {
		return new DayWindow(this.day.minusDays(this.behind), this.day.plusDays(this.ahead));
	}

	/**
	 * Whether a task belongs in the document.
	 * @param task any task
	 * @return false outside the days, and for what was withdrawn more than 30 days ago
	 */
	public boolean keeps(CareTask task) {
		return shows(task.window()) && (task.state() != TaskState.WITHDRAWN
				|| !LocalDate.ofInstant(task.changedAt(), ZoneOffset.UTC).plusDays(WITHDRAWN).isBefore(this.day));
	}

	/** Without making the days anew for each task. */
	private boolean shows(DayWindow window) {
		return window.to().toEpochDay() >= this.day.toEpochDay() - this.behind
				&& window.from().toEpochDay() <= this.day.toEpochDay() + this.ahead;
	}

	/**
	 * As many entries as there is room for: the ones that begin farthest in the future
	 * are left out first.
	 * @param entries any order, kept
	 * @param octets size of an entry
	 * @param room octets for all of them, 0 or more
	 * @return the same list when all fit
	 */
	public static List<FeedEntry> fitting(List<FeedEntry> entries, ToIntFunction<FeedEntry> octets, long room) {
		long total = entries.stream().mapToLong(octets::applyAsInt).sum();
		if (total <= room) {
			return entries;
		}
		List<FeedEntry> farthestFirst = entries.stream()
			.sorted(Comparator.comparing((FeedEntry entry) -> entry.window().from())
				.thenComparing(FeedEntry::uid)
				.reversed())
			.toList();
		Set<String> left = new HashSet<>();
		for (FeedEntry entry : farthestFirst) {
			if (total <= room) {
				break;
			}
			left.add(entry.uid());
			total -= octets.applyAsInt(entry);
		}
		return entries.stream().filter((entry) -> !left.contains(entry.uid())).toList();
	}

}
