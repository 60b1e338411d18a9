package org.leafward.language.core;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Whole texts and patterns with places. A text is said when a whole text or a pattern
 * fits, or when each of its sentences can be said; a place of a pattern takes only what
 * its kind takes. So a text is said whole or not at all.
 * <p>
 * Kinds of places: {@code {n}} a number, {@code {date}} a date as
 * {@link org.leafward.measure.DayWords} writes it, also without weekday or year, or two
 * of them as a span, {@code {clock}} a time of the day, {@code {text}} what can be said
 * itself, {@code {own}} words of a person, which stay as they are, {@code {name}} a name,
 * which stays too and is no sentence, and {@code {g}} one of the group called g. In the
 * translation {@code {1}} is the first place.
 * <p>
 * Only whole texts are said at any length: what people wrote themselves comes here too,
 * and patterns would take long for a text that was made to keep them busy.
 */
public final class Phrases {

	/** Deeper than any sentence of ours is nested. */
	private static final int DEEPEST = 6;

	/** Longer than any text that is not whole in a file; bounds the work of patterns. */
	private static final int LONGEST = 1_500;

	/** More sentences than a text of a file has. */
	private static final int TOGETHER = 8;

	private static final Pattern PLACE = Pattern.compile("\\{([a-z][a-z-]*)\\}");

	private static final Pattern TARGET = Pattern.compile("\\{(\\d)\\}");

	private static final Pattern SENTENCES = Pattern.compile("(?<=[.!?”])\\s+(?=[\\p{Lu}\\d“¿¡])");

	private static final String DAY = "(?:[A-Z][a-z]{2} )?\\d{1,2} [A-Z][a-z]{2}(?: \\d{4})?";

	/** Anything but the mark of an element, as pages number theirs. */
	private static final String WORDS = "(?:(?!</?\\d).)+?";

	/** As much of it as there is: words that have in them what stands between places. */
	private static final String MOST_WORDS = "(?:(?!</?\\d).)+";

	private static final Map<String, String> BUILT_IN = Map.of("n", "[−-]?\\d[\\d,]*(?:\\.\\d+)?", "date",
			DAY + "(?: (?:–|to) " + DAY + ")?", "text", WORDS, "own", WORDS, "name",
			"(?:St\\. |[^.:;!?()\\d\\n]){1,80}?", "clock", "\\d{2}:\\d{2}");

	/** Of English and another language. */
	public record Pair(String english, String other) {
	}

	/**
	 * A pattern ready to be tried, with what a text begins and ends with that can fit.
	 */
	private record Shape(String begin, String end, List<Pattern> patterns, List<String> kinds, String other) {

		boolean canFit(String english) {
			return english.startsWith(this.begin) && english.endsWith(this.end);
		}

	}

	private final Map<String, String> texts;

	private final Function<String, @Nullable String> dates;

	private final Map<String, List<Shape>> groups = new HashMap<>();

	private final List<Shape> shapes = new ArrayList<>();

	/**
	 * Makes the patterns ready.
	 * @param texts whole texts by the English one
	 * @param groups what may stand in places, by name of the group; a group may use those
	 * before it
	 * @param phrases patterns; of two that fit the first one counts
	 * @param dates says a date, or null what is none
	 * @throws IllegalArgumentException for a place of a kind that there is not, or a
	 * translation with a place that the English has not; the message names it
	 */
	public Phrases(Map<String, String> texts, Map<String, List<Pair>> groups, List<Pair> phrases,
			Function<String, @Nullable String> dates) {
		this.texts = new HashMap<>(texts);
		this.dates = dates;
		Map<String, String> kinds = new LinkedHashMap<>(BUILT_IN);
		groups.forEach((name, members) -> {
			List<Shape> shapes = members.stream().map((pair) -> shape(pair, kinds)).toList();
			this.groups.put(name, shapes);
			kinds.put(name, anyOf(members, kinds));
		});
		for (Pair pair : phrases) {
			if (PLACE.matcher(pair.english()).find()) {
				this.shapes.add(shape(pair, kinds));
			}
			else {
				this.texts.putIfAbsent(pair.english(), pair.other());
			}
		}
	}

	private static String anyOf(List<Pair> members, Map<String, String> kinds) {
		List<String> all = members.stream()
			.map(Pair::english)
			// The longest first, or "no" would win over "northern".
			.sorted((one, other) -> other.length() - one.length())
			.map((english) -> regex(english, kinds, false))
			.toList();
		return "(?:" + String.join("|", all) + ")";
	}

	private static Shape shape(Pair pair, Map<String, String> kinds) {
		List<String> found = new ArrayList<>();
		Matcher places = PLACE.matcher(pair.english());
		while (places.find()) {
			found.add(places.group(1));
		}
		Matcher targets = TARGET.matcher(pair.other());
		while (targets.find()) {
			int place = Integer.parseInt(targets.group(1));
			if (place < 1 || place > found.size()) {
				throw new IllegalArgumentException(
						"'%s' has no place {%d} in '%s'".formatted(pair.other(), place, pair.english()));
			}
		}
		String english = pair.english();
		int first = english.length();
		int last = 0;
		places.reset();
		while (places.find()) {
			first = Math.min(first, places.start());
			last = places.end();
		}
		List<Pattern> patterns = new ArrayList<>();
		patterns.add(Pattern.compile(regex(english, kinds, true), Pattern.DOTALL));
		int text = found.indexOf("text");
		if (text >= 0 && text < found.size() - 1) {
			Map<String, String> most = new HashMap<>(kinds);
			most.put("text", MOST_WORDS);
			patterns.add(Pattern.compile(regex(english, most, true), Pattern.DOTALL));
		}
		return new Shape(english.substring(0, first), english.substring(last), List.copyOf(patterns),
				List.copyOf(found), pair.other());
	}

	private static String regex(String english, Map<String, String> kinds, boolean capture) {
		StringBuilder regex = new StringBuilder();
		Matcher places = PLACE.matcher(english);
		int end = 0;
		while (places.find()) {
			String kind = kinds.get(places.group(1));
			if (kind == null) {
				throw new IllegalArgumentException(
						"there is no kind of place {%s}, in '%s'".formatted(places.group(1), english));
			}
			regex.append(literal(english.substring(end, places.start())))
				.append(capture ? "(" : "(?:")
				.append(kind)
				.append(')');
			end = places.end();
		}
		return regex.append(literal(english.substring(end))).toString();
	}

	private static String literal(String text) {
		return text.isEmpty() ? "" : Pattern.quote(text);
	}

	/**
	 * Says a text.
	 * @param english the text
	 * @return null when a part of it can't be said
	 */
	public @Nullable String say(String english) {
		return say(english, 0);
	}

	private @Nullable String say(String english, int depth) {
		String whole = this.texts.get(english);
		if (whole != null) {
			return whole;
		}
		if (english.isBlank() || english.length() > LONGEST || depth > DEEPEST) {
			return null;
		}
		String fitting = fitting(this.shapes, english, depth);
		return (fitting != null) ? fitting : sentences(english, depth);
	}

	private @Nullable String sentences(String english, int depth) {
		String[] parts = SENTENCES.split(english);
		if (parts.length < 2) {
			return null;
		}
		List<String> said = new ArrayList<>();
		int part = 0;
		while (part < parts.length) {
			// As many sentences at once as a text or a pattern takes.
			int upTo = Math.min(part + TOGETHER, parts.length - ((part == 0) ? 1 : 0));
			String found = null;
			for (; upTo > part && found == null; upTo--) {
				String together = String.join(" ", List.of(parts).subList(part, upTo));
				found = this.texts.get(together);
				if (found == null) {
					found = fitting(this.shapes, together, depth + 1);
				}
				if (found != null) {
					part = upTo - 1;
				}
			}
			if (found == null) {
				return null;
			}
			said.add(found);
			part++;
		}
		return String.join(" ", said);
	}

	private @Nullable String fitting(List<Shape> candidates, String english, int depth) {
		for (Shape shape : candidates) {
			if (!shape.canFit(english)) {
				continue;
			}
			for (Pattern pattern : shape.patterns()) {
				Matcher matcher = pattern.matcher(english);
				String said = matcher.matches() ? filled(shape, matcher, depth) : null;
				if (said != null) {
					return said;
				}
			}
		}
		return null;
	}

	private @Nullable String filled(Shape shape, Matcher matcher, int depth) {
		List<String> places = new ArrayList<>();
		for (int place = 0; place < shape.kinds().size(); place++) {
			String said = place(shape.kinds().get(place), matcher.group(place + 1), depth);
			if (said == null) {
				return null;
			}
			places.add(said);
		}
		return TARGET.matcher(shape.other())
			.replaceAll((target) -> Matcher.quoteReplacement(places.get(Integer.parseInt(target.group(1)) - 1)));
	}

	private @Nullable String place(String kind, String english, int depth) {
		return switch (kind) {
			case "n", "own", "name", "clock" -> english;
			case "date" -> this.dates.apply(english);
			case "text" -> say(english, depth + 1);
			default -> fitting(this.groups.getOrDefault(kind, List.of()), english, depth + 1);
		};
	}

}
