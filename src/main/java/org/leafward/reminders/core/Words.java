package org.leafward.reminders.core;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The words of messages in one language. */
public final class Words {

	private final Map<Word, Saying> ones = new EnumMap<>(Word.class);

	private final Map<Word, Saying> others = new EnumMap<>(Word.class);

	/**
	 * A word with two forms.
	 *
	 * @param one for a count of one
	 * @param other for all others, also for none
	 */
	public record Counted(String one, String other) {
	}

	/**
	 * Something wrong with words.
	 *
	 * @param path where, for example {@code /words/label-when}
	 * @param what what is wrong
	 * @param mend what to write instead
	 */
	public record Fault(String path, String what, String mend) {
	}

	/**
	 * Makes words ready.
	 * @param words those with one form, by key
	 * @param counts those with two
	 * @throws IllegalArgumentException when {@link #faults} finds something
	 */
	public Words(Map<String, String> words, Map<String, Counted> counts) {
		List<Fault> faults = faults(words, counts);
		if (!faults.isEmpty()) {
			throw new IllegalArgumentException(faults.toString());
		}
		for (Word word : Word.values()) {
			Counted counted = counts.get(word.key());
			String plain = words.get(word.key());
			if (counted != null) {
				this.ones.put(word, saying(word, counted.one()));
				this.others.put(word, saying(word, counted.other()));
			}
			else if (plain != null) {
				this.ones.put(word, saying(word, plain));
			}
		}
	}

	private static Saying saying(Word word, String text) {
		return Saying.of(OneLine.of(text), word.given());
	}

	/**
	 * Looks for mistakes.
	 * @param words those with one form, by key
	 * @param counts those with two
	 * @return keys that are missing or not known, and places that are
	 */
	public static List<Fault> faults(Map<String, String> words, Map<String, Counted> counts) {
		List<Fault> faults = new ArrayList<>();
		unknown("words", words.keySet(), false, faults);
		unknown("counts", counts.keySet(), true, faults);
		for (Word word : Word.values()) {
			String key = word.key();
			Counted counted = counts.get(key);
			String plain = words.get(key);
			if (word.counted() ? counted == null : plain == null) {
				String under = word.counted() ? "counts" : "words";
				faults.add(new Fault("/" + under, "'%s' is missing".formatted(key),
						"add it, as the file that comes with the server has it"));
			}
			else if (counted != null) {
				places("/counts/" + key + "/one", word.places(false), counted.one(), faults);
				places("/counts/" + key + "/other", word.places(true), counted.other(), faults);
			}
			else if (plain != null) {
				places("/words/" + key, word.places(false), plain, faults);
			}
		}
		return faults;
	}

	private static void unknown(String under, Iterable<String> keys, boolean counted, List<Fault> faults) {
		List<String> known = Arrays.stream(Word.values())
			.filter((word) -> word.counted() == counted)
			.map(Word::key)
			.toList();
		for (String key : keys) {
			if (!known.contains(key)) {
				faults.add(new Fault("/" + under + "/" + key, "no message says '%s' here".formatted(key),
						"remove it, or see how the file that comes with the server calls it"));
			}
		}
	}

	private static void places(String path, List<String> wanted, String text, List<Fault> faults) {
		if (!Saying.places(text).equals(new TreeSet<>(wanted))) {
			String list = wanted.isEmpty() ? "no places"
					: wanted.stream().map((place) -> "{" + place + "}").collect(Collectors.joining(", "));
			faults.add(new Fault(path, "'%s' has other places than %s".formatted(text, list),
					"write " + (wanted.isEmpty() ? "it without braces" : "each of them, and no others")));
		}
	}

	/**
	 * A word with one form.
	 * @param word which
	 * @param values what to put into its places, in their order
	 * @return the words
	 */
	public String say(Word word, String... values) {
		return filled(this.ones.get(word), word, 0, values);
	}

	/**
	 * A word with two forms.
	 * @param word which
	 * @param count the count
	 * @param values what to put into its other places, in their order
	 * @return the words
	 */
	public String count(Word word, int count, String... values) {
		return filled((count == 1) ? this.ones.get(word) : this.others.get(word), word, count, values);
	}

	private static String filled(@Nullable Saying saying, Word word, int count, String... values) {
		if (saying == null || values.length != word.given().size()) {
			throw new IllegalArgumentException("%s has %s to fill".formatted(word, word.given()));
		}
		return saying.fill(count, values);
	}

}
