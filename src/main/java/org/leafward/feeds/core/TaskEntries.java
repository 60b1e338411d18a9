package org.leafward.feeds.core;

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
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.leafward.calendars.PlainText;
import org.leafward.care.CareTask;
import org.leafward.care.TaskKind;
import org.leafward.care.TaskState;
import org.leafward.care.TaskText;
import org.leafward.feeds.core.FeedEntry.Standing;
import org.leafward.language.Phrasebook;
import org.leafward.language.Units;
import org.leafward.measure.DayWindow;
import org.leafward.measure.DayWords;

/** Words tasks and notices for the calendar of a reader. */
public final class TaskEntries {

	/** Constant, so that moving the server to another host changes no identifier. */
	public static final String DOMAIN = "@leafward";

	/** The order of entries in a document. */
	public static final Comparator<FeedEntry> ORDER = Comparator.comparing((FeedEntry entry) -> entry.window().from())
		.thenComparing(FeedEntry::uid);

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
	private static final Map<TaskState, String> MARKED = Map.of(TaskState.WITHDRAWN, "No longer needed", TaskState.DONE,
			"Done", TaskState.SKIPPED, "Left out");

	/** Beginnings that say by themselves that something is to be left alone. */
	private static final Pattern SAYS_LEAVE = Pattern.compile(
			"(hold|leave|do not|don['’]t|no|not|stop|keep|avoid|wait|pause|never|skip|deje|evite|espere|suspenda)\\b.*",
			Pattern.CASE_INSENSITIVE);

	private static final Pattern SPECIES = Pattern.compile("(.*) \\(([^()]*)\\)", Pattern.DOTALL);

	private static final Pattern IN_BRACKETS = Pattern.compile("(?<=\\S) \\([^()]*\\)$");

	/** Texts that are kept; a bound for the memory, about one kilobyte each. */
	private static final int KEPT = 4_000;

	private final Phrasebook book;

	private final Units units;

	private final String base;

	/** Many tasks have the same words, and many plantings the same plant. */
	private final Map<TaskText, Told> told = new ConcurrentHashMap<>();

	private final Map<String, String> plants = new ConcurrentHashMap<>();

	private final Map<TaskKind, List<String>> categories = new ConcurrentHashMap<>();

	/**
	 * The words of a task as the reader gets them, clean.
	 *
	 * @param title in one line
	 * @param what may be empty
	 * @param amount may be empty
	 * @param why may be empty
	 * @param caution cut; may be empty
	 */
	private record Told(String title, String what, String amount, String why, String caution) {
	}

	/**
	 * Creates the words for a reader.
	 * @param book their language
	 * @param units their units
	 * @param base address of the server, without a slash at the end
	 */
	public TaskEntries(Phrasebook book, Units units, String base) {
		this.book = book;
		this.units = units;
		this.base = base;
	}

	/**
	 * The entries of a document.
	 * @param tasks tasks in any order
	 * @param window which of them to show
	 * @return by first day, then identifier
	 */
	public List<FeedEntry> of(List<CareTask> tasks, FeedWindow window) {
		return tasks.stream().filter(window::keeps).map(this::of).sorted(ORDER).toList();
	}

	/**
	 * The entry of a task.
	 * @param task the task
	 * @return its entry
	 */
	public FeedEntry of(CareTask task) {
		String link = this.base + "/tasks/" + task.id();
		List<String> last = new ArrayList<>();
		add(last, "Site", clean(cutOrNull(task.siteName(), SITE_OCTETS)));
		last.add(said("Why this date") + ": " + link);
		return of(task, link, last);
	}

	/**
	 * The entry of a task that has no page of its own.
	 * @param task the task
	 * @param page address of the page about it
	 * @param last lines that its description ends with, in the language of the reader, at
	 * most 500 octets
	 * @return its entry
	 */
	public FeedEntry of(CareTask task, String page, List<String> last) {
		return new FeedEntry(task.id() + DOMAIN, task.sequence(), task.createdAt().truncatedTo(ChronoUnit.SECONDS),
				task.changedAt().truncatedTo(ChronoUnit.SECONDS), task.window(), summary(task), description(task, last),
				page, task.kind(), categories(task.kind()), standing(task));
	}

	private static Standing standing(CareTask task) {
		return switch (task.state()) {
			case PLANNED -> Standing.OPEN;
			case DONE -> Standing.DONE;
			case SKIPPED -> Standing.LEFT_OUT;
			case WITHDRAWN -> Standing.CANCELLED;
		};
	}

	private List<String> categories(TaskKind kind) {
		return this.categories.computeIfAbsent(kind, this::categoriesOf);
	}

	private List<String> categoriesOf(TaskKind kind) {
		return List.of(said("Plant care"), said(switch (kind) {
			case DO -> "To do";
			case HOLD_OFF -> "Hold-off";
			case RAMP_DAY -> "Hardening off";
			case WATCH -> "Look for";
		}));
	}

	/**
	 * What an empty calendar shows, so that a subscriber sees that it works and no client
	 * meets a calendar without a component (RFC 5545 section 3.6 wants one).
	 * @param feed identifier of the feed
	 * @param since when the feed was made; the entry stands on that day (UTC) for good
	 * @return one entry, always the same for a feed
	 */
	public FeedEntry nothingPlanned(UUID feed, Instant since) {
		Instant stamp = since.truncatedTo(ChronoUnit.SECONDS);
		return notice("nothing-planned-" + feed, 0, stamp, stamp, LocalDate.ofInstant(since, ZoneOffset.UTC),
				said("Nothing planned yet"),
				said("This calendar works. Tasks appear here once there are plants to look after."));
	}

	/**
	 * What a calendar says that ends soon. It stands on the last day; its date of change
	 * is the first day of the announcement, so that the same announcement is always the
	 * same entry, and a later one is newer.
	 * @param feed identifier of the feed
	 * @param life how long it lives
	 * @return an entry of one day
	 */
	public FeedEntry ending(UUID feed, FeedLife life) {
		LocalDate end = life.end();
		Instant said = end.minusDays(FeedLife.ANNOUNCED).atStartOfDay(ZoneOffset.UTC).toInstant();
		String day = DayWords.of(end);
		return notice("ends-" + feed, life.daysOfUse(), life.created().truncatedTo(ChronoUnit.SECONDS), said, end,
				said("This calendar ends on %s unless it is fetched".formatted(day)),
				said("No calendar program has asked for this calendar for a long time, so it ends on %s."
					.formatted(day)) + " "
						+ said("It goes on by itself as soon as a program fetches it, and this entry goes away.") + " "
						+ said("If it has ended, make a new one."));
	}

	private FeedEntry notice(String uid, int sequence, Instant created, Instant changed, LocalDate day, String summary,
			String description) {
		return new FeedEntry(uid + DOMAIN, sequence, created, changed, DayWindow.of(day),
				PlainText.cut(summary, SUMMARY), description, null, null, List.of(said("Plant care")), Standing.OPEN);
	}

	/**
	 * The name of a calendar.
	 * @param whose what it is about, such as a site's name
	 * @return for example "Plant care: Allotment 7"
	 */
	public String name(String whose) {
		return said("Plant care") + ": " + whose;
	}

	/**
	 * What a calendar holds.
	 * @param whose what it is about
	 * @return a sentence or two
	 */
	public String about(String whose) {
		return whose + ". " + said("What to do, what to leave, and when. Dates move with the weather.");
	}

	/**
	 * Says words of the server.
	 * @param english the words
	 * @return in the language and with the units of the reader
	 */
	public String said(String english) {
		return this.units.in(this.book.say(english));
	}

	private static boolean withdrawn(CareTask task) {
		return task.state() == TaskState.WITHDRAWN;
	}

	private String summary(CareTask task) {
		String title = told(task.text()).title();
		if (task.kind() == TaskKind.HOLD_OFF && !SAYS_LEAVE.matcher(title).matches()) {
			title = said("Hold off") + ": " + title;
		}
		String mark = MARKED.get(task.state());
		// Where a part was cut off or is empty, white space may be left.
		return PlainText.line(label(((mark != null) ? said(mark) + ": " : "") + title, plant(task.plant())));
	}

	private Told told(TaskText text) {
		Told known = this.told.get(text);
		if (known == null) {
			known = new Told(PlainText.line(said(text.title())), clean(told(text.what())), clean(told(text.amount())),
					clean(told(text.why())), clean(cutOrNull(told(text.caution()), CAUTION_OCTETS)));
			keep(this.told, text, known);
		}
		return known;
	}

	private static <K, V> void keep(Map<K, V> kept, K key, V value) {
		if (kept.size() >= KEPT) {
			kept.clear();
		}
		kept.put(key, value);
	}

	private String plant(String words) {
		String known = this.plants.get(words);
		if (known == null) {
			known = PlainText.line(plantOf(words));
			keep(this.plants, words, known);
		}
		return known;
	}

	/** What its people call it stays; the name of the species behind it is said. */
	private String plantOf(String words) {
		Matcher named = SPECIES.matcher(words);
		return (named.matches() && this.book.knows(named.group(2)))
				? named.group(1) + " (" + this.book.say(named.group(2)) + ")" : this.book.say(words);
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
		String label = IN_BRACKETS.matcher(plant).replaceFirst("");
		int room = SUMMARY - PlainText.length(title + between);
		String shorter = PlainText.cut(label, Math.max(room, PLANT_AT_LEAST));
		return PlainText.cut(title, SUMMARY - PlainText.length(between + shorter)) + between + shorter;
	}

	private String description(CareTask task, List<String> close) {
		List<String> last = new ArrayList<>();
		Told told = told(task.text());
		add(last, "Caution", told.caution());
		last.addAll(close);
		List<String> first = new ArrayList<>();
		String mark = MARKED.get(task.state());
		if (mark != null && task.state() != TaskState.DONE) {
			add(first, mark, clean(reason(task)));
		}
		add(first, "", told.what());
		add(first, (task.kind() == TaskKind.RAMP_DAY) ? "Place" : "Amount", told.amount());
		add(first, "Why", told.why());
		String end = String.join("\n", last);
		int room = DESCRIPTION - end.getBytes(StandardCharsets.UTF_8).length - 1;
		return first.isEmpty() ? end : PlainText.cutOctets(String.join("\n", first), room) + "\n" + end;
	}

	private String reason(CareTask task) {
		String reason = task.withdrawnBecause();
		return said((reason == null || reason.isBlank()) ? "no reason was given." : reason);
	}

	private @Nullable String told(@Nullable String english) {
		return (english != null) ? said(english) : null;
	}

	private static String clean(@Nullable String text) {
		return (text != null) ? PlainText.clean(text).strip() : "";
	}

	private static @Nullable String cutOrNull(@Nullable String text, int octets) {
		return (text != null) ? PlainText.cutOctets(PlainText.line(text), octets) : null;
	}

	private void add(List<String> lines, String label, String clean) {
		if (!clean.isEmpty()) {
			lines.add((label.isEmpty() ? "" : said(label) + ": ") + clean);
		}
	}

}
