package org.leafward.language;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import org.leafward.knowledge.BrokenKnowledge;
import org.leafward.knowledge.KnowledgeFile;
import org.leafward.knowledge.KnowledgeFiles;
import org.leafward.knowledge.KnowledgeReader;
import org.leafward.knowledge.Problem;
import org.leafward.knowledge.Reading;
import org.leafward.language.PhraseFile.Phrase;
import org.leafward.language.core.Phrases;
import org.leafward.measure.DayWindow;
import org.leafward.measure.DayWords;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.stereotype.Service;

/** The phrasebook of each language, made anew when what it is made of has changed. */
@Service
public class Phrasebooks {

	private static final String SCHEMA = "schema/phrases-1.json";

	/** Texts that are asked again and again; a bound for the memory. */
	private static final int KEPT = 20_000;

	private final List<PhraseSource> sources;

	private final Map<Language, Patterns> patterns = new EnumMap<>(Language.class);

	private final Map<Language, Made> books = new ConcurrentHashMap<>();

	/** What the files of a language hold. */
	private record Patterns(Map<String, List<Phrases.Pair>> groups, List<Phrases.Pair> phrases) {
	}

	/** A book and what it was made of. */
	private record Made(Phrasebook book, List<Object> of) {
	}

	/**
	 * Reads the files in {@code messages/<code>}.
	 * @param files finds the files
	 * @param reader reads them
	 * @param sources further texts
	 * @throws BrokenKnowledge with every problem of every file
	 */
	@Autowired
	public Phrasebooks(KnowledgeFiles files, KnowledgeReader reader, ObjectProvider<PhraseSource> sources) {
		this(files, reader, sources.orderedStream().toList());
	}

	/**
	 * The same with what is at hand.
	 * @param files finds the files
	 * @param reader reads them
	 * @param sources further texts
	 */
	public Phrasebooks(KnowledgeFiles files, KnowledgeReader reader, List<? extends PhraseSource> sources) {
		this.sources = List.copyOf(sources);
		List<Problem> problems = new ArrayList<>();
		for (Language language : Language.values()) {
			if (language != Language.ENGLISH) {
				this.patterns.put(language,
						read(files.of("messages/" + language.code() + "/phrases"), reader, problems));
			}
		}
		if (!problems.isEmpty()) {
			throw new BrokenKnowledge(problems);
		}
	}

	private static Patterns read(List<KnowledgeFile> files, KnowledgeReader reader, List<Problem> problems) {
		Map<String, List<Phrases.Pair>> groups = new LinkedHashMap<>();
		List<Phrases.Pair> phrases = new ArrayList<>();
		for (KnowledgeFile file : files) {
			Reading<PhraseFile> reading = reader.read(file, SCHEMA, PhraseFile.class);
			problems.addAll(reading.problems());
			PhraseFile content = reading.value();
			if (content == null) {
				continue;
			}
			content.allGroups().forEach((group) -> groups.put(group.name(), pairs(group.members())));
			phrases.addAll(pairs(content.allPhrases()));
			try {
				new Phrases(Map.of(), groups, phrases, (date) -> date);
			}
			catch (IllegalArgumentException ex) {
				problems.add(reading.places()
					.problem("", String.valueOf(ex.getMessage()), "write its places as the other phrases do"));
			}
		}
		return new Patterns(groups, phrases);
	}

	private static List<Phrases.Pair> pairs(List<Phrase> phrases) {
		return phrases.stream().map((one) -> new Phrases.Pair(one.en(), one.say())).toList();
	}

	/**
	 * The book of a language.
	 * @param language any
	 * @return as of now
	 */
	public Phrasebook of(Language language) {
		if (language == Language.ENGLISH) {
			return English.BOOK;
		}
		List<Object> now = this.sources.stream().map(PhraseSource::version).toList();
		Made made = this.books.get(language);
		if (made == null || !made.of.equals(now)) {
			made = new Made(make(language), now);
			this.books.put(language, made);
		}
		return made.book;
	}

	/**
	 * The book of what is written as it stands.
	 * @return never changes
	 */
	public static Phrasebook english() {
		return English.BOOK;
	}

	/**
	 * Tells when a book may say something else.
	 * @return equal as long as no book has changed
	 */
	public Object version() {
		return this.sources.stream().map(PhraseSource::version).toList();
	}

	private Phrasebook make(Language language) {
		Patterns written = this.patterns.getOrDefault(language, new Patterns(Map.of(), List.of()));
		Map<String, String> texts = new HashMap<>();
		this.sources.forEach((source) -> texts.putAll(source.texts(language)));
		DateTimeFormatter dates = DateTimeFormatter.ofPattern("EEE d MMM yyyy", language.locale());
		return new Other(language, new Phrases(texts, written.groups, written.phrases, (date) -> date(date, dates)),
				dates);
	}

	private static @Nullable String date(String english, DateTimeFormatter dates) {
		try {
			return dates.format(LocalDate.parse(english, English.DATES)).replace(".", "");
		}
		catch (DateTimeException ex) {
			// Words of a person may look like a date.
			return null;
		}
	}

	/** Says what it is told. */
	private enum English implements Phrasebook {

		BOOK;

		private static final DateTimeFormatter DATES = DateTimeFormatter.ofPattern("EEE d MMM yyyy", Locale.ENGLISH);

		@Override
		public Language language() {
			return Language.ENGLISH;
		}

		@Override
		public String say(String english) {
			return english;
		}

		@Override
		public boolean knows(String english) {
			return true;
		}

		@Override
		public String day(LocalDate day) {
			return DayWords.of(day);
		}

		@Override
		public String days(DayWindow window) {
			return DayWords.of(window);
		}

	}

	/** Remembers what it said. */
	private static final class Other implements Phrasebook {

		private final Language language;

		private final Phrases phrases;

		private final DateTimeFormatter dates;

		private final Map<String, String> said = new ConcurrentHashMap<>();

		Other(Language language, Phrases phrases, DateTimeFormatter dates) {
			this.language = language;
			this.phrases = phrases;
			this.dates = dates;
		}

		@Override
		public Language language() {
			return this.language;
		}

		@Override
		public String say(String english) {
			if (this.said.size() > KEPT) {
				this.said.clear();
			}
			return this.said.computeIfAbsent(english, (text) -> {
				String other = this.phrases.say(text);
				return (other != null) ? other : text;
			});
		}

		@Override
		public boolean knows(String english) {
			return this.phrases.say(english) != null;
		}

		@Override
		public String day(LocalDate day) {
			return this.dates.format(day).replace(".", "");
		}

		@Override
		public String days(DayWindow window) {
			return (window.days() == 1) ? day(window.from()) : say(DayWords.of(window));
		}

	}

}
