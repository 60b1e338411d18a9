package org.leafward.counties.core;

import java.time.Instant;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.leafward.care.CareTask;
import org.leafward.care.TaskId;
import org.leafward.counties.core.SharedTasks.Shared;
import org.leafward.feeds.core.FeedEntry;
import org.leafward.feeds.core.FeedWindow;
import org.leafward.calendars.PlainText;
import org.leafward.feeds.core.TaskEntries;

/** Words what the plants of a county share for the calendar of a reader. */
public final class CountyEntries {

	/** Names in a summary. */
	private static final int NAMED = 3;

	/** Code points of a summary that its title and the plants have together. */
	private static final int SUMMARY = 58;

	private static final int PLANTS_AT_LEAST = 24;

	private static final int PLANTS_OCTETS = 220;

	private final TaskEntries words;

	private final String county;

	private final String page;

	private final Map<String, Set<String>> kinds;

	/**
	 * Creates the words of a calendar.
	 * @param words words of tasks for the reader
	 * @param county name of the county
	 * @param page where the calendar is explained
	 * @param kinds codes of the species that grow there, by the title of their kind
	 */
	public CountyEntries(TaskEntries words, String county, String page, Map<String, Set<String>> kinds) {
		this.words = words;
		this.county = county;
		this.page = page;
		this.kinds = kinds;
	}

	/**
	 * The entries of a document.
	 * @param code code of the county
	 * @param tasks tasks of the plants in any order
	 * @param window which of them to show
	 * @param shown identifiers of the entries that the document showed before
	 * @return by first day, then identifier
	 */
	public List<FeedEntry> of(String code, Collection<Grown> tasks, FeedWindow window, Set<String> shown) {
		List<Grown> kept = tasks.stream().filter((one) -> window.keeps(one.task())).toList();
		return SharedTasks.of(code, kept, (id) -> shown.contains(id + TaskEntries.DOMAIN))
			.stream()
			.map(this::entry)
			.sorted(Comparator.comparing((FeedEntry entry) -> entry.window().from()).thenComparing(FeedEntry::uid))
			.toList();
	}

	private FeedEntry entry(Shared shared) {
		CareTask first = shared.members().get(0).task();
		List<String> names = shared.plants()
			.values()
			.stream()
			.map(this.words::said)
			.distinct()
			.sorted(String.CASE_INSENSITIVE_ORDER.thenComparing(Comparator.naturalOrder()))
			.toList();
		List<String> last = List.of(
				PlainText.cutOctets(this.words.said("Plants") + ": " + String.join(", ", names), PLANTS_OCTETS),
				this.words.said("Site") + ": " + this.county + ", " + this.words.said("average ground"),
				this.words.said("About this calendar") + ": " + this.page);
		return this.words.of(merged(shared, label(shared, names, first)), this.page, last);
	}

	/**
	 * Sequence numbers of the tasks don't count, as tasks come and go in an entry; those
	 * of the document do.
	 */
	private CareTask merged(Shared shared, String label) {
		CareTask first = shared.members().get(0).task();
		Instant created = shared.members().stream().map((one) -> one.task().createdAt()).min(Instant::compareTo).get();
		Instant changed = shared.members().stream().map((one) -> one.task().changedAt()).max(Instant::compareTo).get();
		return new CareTask(new TaskId(shared.id()), first.planting(), label, first.site(), this.county, first.person(),
				first.rule(), first.season(), first.occurrence(), first.kind(), first.window(), first.text(),
				first.state(), first.withdrawnBecause(), 0, created, changed, first.work(), first.packVersion());
	}

	private String label(Shared shared, List<String> names, CareTask task) {
		Set<String> codes = shared.plants().keySet();
		if (names.size() > NAMED) {
			String kind = this.kinds.entrySet()
				.stream()
				.filter((one) -> one.getValue().equals(codes))
				.map(Map.Entry::getKey)
				.findFirst()
				.orElse("");
			if (!kind.isEmpty()) {
				return this.words.said(kind);
			}
		}
		int room = Math.max(PLANTS_AT_LEAST, SUMMARY - PlainText.length(this.words.said(task.text().title())));
		for (int count = Math.min(NAMED, names.size()); count > 1; count--) {
			String label = label(names, count);
			if (PlainText.length(label) <= room) {
				return label;
			}
		}
		return label(names, 1);
	}

	private String label(List<String> names, int count) {
		String first = names.stream().limit(count).collect(Collectors.joining(", "));
		return (count == names.size()) ? first
				: first + " " + this.words.said("and %d more".formatted(names.size() - count));
	}

	/**
	 * The name of the calendar.
	 * @param titles titles of its kinds, English
	 * @return for example "Plant care: Bulbs, roses, Alder County"
	 */
	public String name(List<String> titles) {
		String kinds = titles.stream()
			.map(this.words::said)
			.map(CountyEntries::small)
			.collect(Collectors.joining(", "));
		return this.words
			.name(kinds.substring(0, 1).toUpperCase(Locale.ROOT) + kinds.substring(1) + ", " + this.county);
	}

	/** Kinds are no proper names, and stand in a row. */
	private static String small(String title) {
		return title.substring(0, 1).toLowerCase(Locale.ROOT) + title.substring(1);
	}

	/**
	 * What the calendar holds.
	 * @return some sentences
	 */
	public String about() {
		return this.words.about(this.county) + " "
				+ this.words.said("These are dates for average ground of the county; your own garden may differ.");
	}

	/**
	 * What an empty calendar shows.
	 * @param calendar identifier of the calendar
	 * @param since when the garden was made
	 * @return one entry
	 */
	public FeedEntry nothingPlanned(UUID calendar, Instant since) {
		return this.words.nothingPlanned(calendar, since);
	}

}
