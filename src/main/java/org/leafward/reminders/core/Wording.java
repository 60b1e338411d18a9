package org.leafward.reminders.core;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.leafward.language.Language;
import org.leafward.language.Phrasebook;
import org.leafward.language.Units;
import org.leafward.measure.DayWindow;

/**
 * Says whatever messages hold in the language and the units of a reader. All that comes
 * out is one line. Remembers what it said, as the same words go to many readers.
 */
public final class Wording {

	/** Longest name of a site or a planting, code points. */
	public static final int LONGEST_NAME = 120;

	/** Texts and names that are remembered, each; a bound for the memory. */
	private static final int KEPT = 4_000;

	/** Longest text, code points, which no text of a rule is; a bound for messages. */
	static final int LONGEST_TEXT = 2_000;

	private static final int FIRST_WORDS = 3;

	private final Phrasebook book;

	private final Units units;

	private final Words words;

	private final String contact;

	private final boolean asWritten;

	private final Set<String> leaving;

	private final Map<String, String> texts = new ConcurrentHashMap<>();

	private final Map<String, String> names = new ConcurrentHashMap<>();

	/**
	 * Creates the wording for readers who speak alike.
	 * @param book their language
	 * @param units their units
	 * @param words the words of messages in that language
	 * @param contact who sends the messages and how to reach them, for the last line;
	 * empty for nothing
	 */
	public Wording(Phrasebook book, Units units, Words words, String contact) {
		this.book = book;
		this.units = units;
		this.words = words;
		this.contact = OneLine.of(contact);
		this.asWritten = book.language() == Language.ENGLISH && units == Units.BOTH;
		this.leaving = Arrays.stream(words.say(Word.LEAVING).toLowerCase(book.language().locale()).split(" "))
			.collect(Collectors.toUnmodifiableSet());
	}

	/**
	 * The book it was made with.
	 * @return the book
	 */
	public Phrasebook book() {
		return this.book;
	}

	/**
	 * The language.
	 * @return its tag (BCP 47)
	 */
	public String language() {
		return this.book.language().code();
	}

	String contact() {
		return this.contact;
	}

	String say(Word word, String... values) {
		return this.words.say(word, values);
	}

	String count(Word word, int count, String... values) {
		return this.words.count(word, count, values);
	}

	/**
	 * Says words that the server wrote in English.
	 * @param english the words
	 * @return one line of at most {@value #LONGEST_TEXT} code points
	 */
	public String said(String english) {
		return this.asWritten ? OneLine.of(english, LONGEST_TEXT)
				: kept(this.texts, english, (text) -> OneLine.of(this.units.in(this.book.say(text)), LONGEST_TEXT));
	}

	/**
	 * Says words that somebody wrote in the reader's language.
	 * @param words the words, also several lines
	 * @return one line of at most {@value #LONGEST_TEXT} code points, in the units of the
	 * reader where both are given
	 */
	public String own(String words) {
		return OneLine.of((this.units == Units.BOTH) ? words : this.units.in(words), LONGEST_TEXT);
	}

	/**
	 * Says what readers call a planting. Their own name for it stays; the species in
	 * brackets behind it is said.
	 * @param words as in {@code CareTask.plant}
	 * @return one line, the own name shortened to {@value #LONGEST_NAME} code points
	 */
	public String plant(String words) {
		return kept(this.names, words, this::named);
	}

	private String named(String words) {
		String line = OneLine.of(words);
		int bracket = line.lastIndexOf(" (");
		if (bracket > 0 && line.endsWith(")")) {
			String species = line.substring(bracket + 2, line.length() - 1);
			if (species.length() <= LONGEST_NAME) {
				return OneLine.cut(line.substring(0, bracket), LONGEST_NAME) + " (" + this.book.say(species) + ")";
			}
		}
		return OneLine.cut((line.length() <= LONGEST_NAME) ? this.book.say(line) : line, LONGEST_NAME);
	}

	/**
	 * The name of a site.
	 * @param name as its owner wrote it
	 * @return one line of at most {@value #LONGEST_NAME} code points
	 */
	public String site(String name) {
		return OneLine.of(name, LONGEST_NAME);
	}

	/**
	 * A date.
	 * @param day the date
	 * @return with its weekday and year
	 */
	String day(LocalDate day) {
		return this.book.day(day);
	}

	/**
	 * Both ends of a window.
	 * @param window the window
	 * @return one date when it has one day
	 */
	String days(DayWindow window) {
		return this.book.days(window);
	}

	/**
	 * The title of a hold-off.
	 * @param title as said
	 * @return marked, unless its first words say that something is to be left
	 */
	String leave(String title) {
		String[] first = title.toLowerCase(this.book.language().locale()).split(" ", FIRST_WORDS + 1);
		for (int at = 0; at < Math.min(FIRST_WORDS, first.length); at++) {
			if (this.leaving.contains(first[at])) {
				return title;
			}
		}
		return say(Word.HOLD_OFF, title);
	}

	private static String kept(Map<String, String> memory, String words, UnaryOperator<String> sayer) {
		if (words.length() > LONGEST_TEXT) {
			return sayer.apply(words);
		}
		String known = memory.get(words);
		if (known != null) {
			return known;
		}
		if (memory.size() >= KEPT) {
			memory.clear();
		}
		String said = sayer.apply(words);
		memory.put(words, said);
		return said;
	}

}
