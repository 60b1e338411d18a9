package org.leafward.advisories.core.watch;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.leafward.advisories.DraftText;
import org.leafward.advisories.Figure;
import org.leafward.language.Language;
import org.leafward.language.Phrasebook;
import org.leafward.measure.DayWindow;

/** Fills the places of a text with the figures of the counties that were hit. */
public final class Drafts {

	private static final Pattern PLACE = Pattern.compile("\\{([a-z-]+)}");

	/** Counties that a sentence names; of more it says how many. */
	private static final int MOST_NAMES = 8;

	private final WatchCondition condition;

	private final List<CountyHit> hits;

	private final Phrasebook book;

	private Drafts(WatchCondition condition, List<CountyHit> hits, Phrasebook book) {
		this.condition = condition;
		this.hits = hits;
		this.book = book;
	}

	/**
	 * Drafts a text.
	 * @param condition the condition
	 * @param hits the counties, at least one
	 * @param book says days in the language of the text
	 * @return the text
	 */
	public static DraftText of(WatchCondition condition, List<CountyHit> hits, Phrasebook book) {
		return new Drafts(condition, hits, book).draft();
	}

	private DraftText draft() {
		WatchCondition.TextTemplate text = Objects
			.requireNonNull(this.condition.texts().get(this.book.language().code()));
		Map<String, String> places = places();
		return new DraftText(filled(text.headline(), places), filled(text.what(), places),
				String.join(", ", names()) + ".", when(), filled(text.impacts(), places), filled(text.toDo(), places));
	}

	private static String filled(String text, Map<String, String> places) {
		Matcher matcher = PLACE.matcher(text);
		StringBuilder filled = new StringBuilder();
		while (matcher.find()) {
			matcher.appendReplacement(filled,
					Matcher.quoteReplacement(places.getOrDefault(matcher.group(1), matcher.group())));
		}
		return matcher.appendTail(filled).toString().replace("..", ".");
	}

	private Map<String, String> places() {
		Map<String, String> places = new LinkedHashMap<>();
		places.put("where", where());
		places.put("when", this.book.days(window()));
		Set<String> crops = new LinkedHashSet<>();
		this.hits.forEach((one) -> one.hit().crops().forEach((crop) -> crops.add(crop.in(language()))));
		places.put("crops", capital(String.join("; ", crops)));
		Map<String, List<Figure>> figures = new LinkedHashMap<>();
		for (CountyHit hit : this.hits) {
			Set<String> told = new LinkedHashSet<>();
			hit.hit().figures().forEach((figure) -> {
				if (told.add(figure.code())) {
					figures.computeIfAbsent(figure.code(), (code) -> new ArrayList<>()).add(figure);
				}
			});
		}
		figures.forEach((code, all) -> {
			List<Double> values = all.stream().map(Figure::value).toList();
			places.put(code, FigureWords.range(Collections.min(values), Collections.max(values),
					ThresholdUnit.Kind.valueOf(all.get(0).unit()), language()));
		});
		return places;
	}

	private Language language() {
		return this.book.language();
	}

	private List<String> names() {
		return this.hits.stream().map(CountyHit::name).sorted().toList();
	}

	private String where() {
		List<String> names = names();
		boolean spanish = language() == Language.SPANISH;
		if (names.size() > MOST_NAMES) {
			return names.size() + (spanish ? " condados" : " counties");
		}
		if (names.size() == 1) {
			return names.get(0);
		}
		String last = names.get(names.size() - 1);
		String and = !spanish ? " and " : last.toLowerCase(Locale.ROOT).matches("h?i[^aeou].*") ? " e " : " y ";
		return String.join(", ", names.subList(0, names.size() - 1)) + and + last;
	}

	private DayWindow window() {
		return new DayWindow(
				this.hits.stream().map((one) -> one.hit().from()).min(Comparator.naturalOrder()).orElseThrow(),
				this.hits.stream().map((one) -> one.hit().to()).max(Comparator.naturalOrder()).orElseThrow());
	}

	private String when() {
		DayWindow window = window();
		LocalDate from = window.from();
		LocalDate to = window.to();
		boolean spanish = language() == Language.SPANISH;
		OneDay oneDay = this.condition.oneDay();
		if (oneDay != null && oneDay.night()) {
			boolean one = from.plusDays(1).equals(to);
			return (spanish ? (one ? "La noche del %s al %s." : "Las noches del %s al %s.")
					: (one ? "The night from %s to %s." : "The nights from %s to %s."))
				.formatted(this.book.day(from), this.book.day(to));
		}
		if (from.equals(to)) {
			return (spanish ? "El %s." : "On %s.").formatted(this.book.day(from));
		}
		return (spanish ? "Del %s al %s." : "From %s to %s.").formatted(this.book.day(from), this.book.day(to));
	}

	private static String capital(String text) {
		return text.isEmpty() ? text : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
	}

}
