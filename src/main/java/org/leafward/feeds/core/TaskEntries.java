package org.leafward.feeds.core;

import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.leafward.care.CareTask;
import org.leafward.care.TaskKind;
import org.leafward.care.TaskState;
import org.leafward.measure.DayWindow;

/** Words a task for a calendar. */
public final class TaskEntries {

	/**
	 * When the wording of this class last changed. A client that looks at LAST-MODIFIED
	 * keeps the old words otherwise, so raise this with every change of wording.
	 */
	static final Instant WORDED = Instant.parse("2026-11-25T20:00:00Z");

	/** Constant, so that moving the server to another host changes no identifier. */
	static final String DOMAIN = "@leafward";

	/** Longest summary that common clients show whole, code points. */
	static final int SUMMARY = 60;

	/** Octets of a description; a year of tasks then stays below a feed's limit. */
	static final int DESCRIPTION = 1000;

	private static final int PLANT_AT_LEAST = 12;

	private static final int CAUTION_OCTETS = 320;

	private static final int SITE_OCTETS = 120;

	/**
	 * Clients hide or strike out what is cancelled, and none shows an event as done, so
	 * the words at the beginning have to say it.
	 */
	private static final Map<TaskState, String> MARKED = Map.of(TaskState.WITHDRAWN, "No longer needed: ",
			TaskState.DONE, "Done: ", TaskState.SKIPPED, "Left out: ");

	private static final String HOLD_OFF = "Hold off: ";

	/** Beginnings that say by themselves that something is to be left alone. */
	private static final Pattern SAYS_LEAVE = Pattern.compile(
			"(hold|leave|do not|don['’]t|no|not|stop|keep|avoid|wait|pause|never|skip)\\b.*", Pattern.CASE_INSENSITIVE);

	private TaskEntries() {
	}

	/**
	 * The entries of a document.
	 * @param tasks tasks in any order
	 * @param window which of them to show
	 * @param base address of the server, without a slash at the end
	 * @return by first day, then identifier
	 */
	public static List<FeedEntry> of(List<CareTask> tasks, FeedWindow window, String base) {
		return tasks.stream()
			.filter(window::keeps)
			.map((task) -> of(task, base))
			.sorted(Comparator.comparing((FeedEntry entry) -> entry.window().from()).thenComparing(FeedEntry::uid))
			.toList();
	}

	/**
	 * The entry of a task.
	 * @param task the task
	 * @param base address of the server, without a slash at the end
	 * @return its entry
	 */
	public static FeedEntry of(CareTask task, String base) {
		String link = base + "/tasks/" + task.id();
		Instant changed = task.changedAt().isBefore(WORDED) ? WORDED : task.changedAt();
		return new FeedEntry(task.id() + DOMAIN, task.sequence(), task.createdAt().truncatedTo(ChronoUnit.SECONDS),
				changed.truncatedTo(ChronoUnit.SECONDS), task.window(), summary(task), description(task, link),
				URI.create(link), task.kind(), withdrawn(task));
	}

	/**
	 * What an empty calendar shows, so that a subscriber sees that it works and no client
	 * meets a calendar without a component (RFC 5545 section 3.6 wants one).
	 * @param feed identifier of the feed
	 * @param since when the feed was made; the entry stands on that day (UTC) for good
	 * @return one entry, always the same for a feed
	 */
	public static FeedEntry nothingPlanned(UUID feed, Instant since) {
		Instant stamp = since.truncatedTo(ChronoUnit.SECONDS);
		return new FeedEntry("nothing-planned-" + feed + DOMAIN, 0, stamp, stamp,
				DayWindow.of(LocalDate.ofInstant(since, ZoneOffset.UTC)), "Nothing planned yet",
				"This calendar works. Tasks appear here once there are plants to look after.", null, null, false);
	}

	private static boolean withdrawn(CareTask task) {
		return task.state() == TaskState.WITHDRAWN;
	}

	private static String summary(CareTask task) {
		String title = PlainText.line(task.text().title());
		if (task.kind() == TaskKind.HOLD_OFF && !SAYS_LEAVE.matcher(title).matches()) {
			title = HOLD_OFF + title;
		}
		return label(MARKED.getOrDefault(task.state(), "") + title, PlainText.line(task.plant()));
	}

	private static String label(String title, String plant) {
		if (plant.isEmpty()) {
			return PlainText.cut(title, SUMMARY);
		}
		String between = title.contains(":") ? " – " : ": ";
		String whole = title + between + plant;
		if (PlainText.length(whole) <= SUMMARY) {
			return whole;
		}
		String label = plant.replaceFirst("(?<=\\S) \\([^()]*\\)$", "");
		int room = SUMMARY - PlainText.length(title + between);
		String shorter = PlainText.cut(label, Math.max(room, PLANT_AT_LEAST));
		return PlainText.cut(title, SUMMARY - PlainText.length(between + shorter)) + between + shorter;
	}

	private static String description(CareTask task, String link) {
		List<String> last = new ArrayList<>();
		add(last, "Caution: ", cutOrNull(task.text().caution(), CAUTION_OCTETS));
		add(last, "Site: ", cutOrNull(task.siteName(), SITE_OCTETS));
		last.add("Why this date: " + link);
		List<String> first = new ArrayList<>();
		if (withdrawn(task) || task.state() == TaskState.SKIPPED) {
			add(first, MARKED.getOrDefault(task.state(), ""), reason(task));
		}
		add(first, "", task.text().what());
		add(first, (task.kind() == TaskKind.RAMP_DAY) ? "Place: " : "Amount: ", task.text().amount());
		add(first, "Why: ", task.text().why());
		String end = String.join("\n", last);
		int room = DESCRIPTION - end.getBytes(StandardCharsets.UTF_8).length - 1;
		return first.isEmpty() ? end : PlainText.cutOctets(String.join("\n", first), room) + "\n" + end;
	}

	private static String reason(CareTask task) {
		String reason = task.withdrawnBecause();
		return (reason == null || reason.isBlank()) ? "no reason was given." : reason;
	}

	private static @Nullable String cutOrNull(@Nullable String text, int octets) {
		return (text != null) ? PlainText.cutOctets(PlainText.line(text), octets) : null;
	}

	private static void add(List<String> lines, String label, @Nullable String text) {
		String clean = (text != null) ? PlainText.clean(text).strip() : "";
		if (!clean.isEmpty()) {
			lines.add(label + clean);
		}
	}

}
