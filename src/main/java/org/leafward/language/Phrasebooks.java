package org.leafward.language;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
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

	/** The same with what stands on pages only: mails needn't try those patterns. */
	private final Map<Language, Patterns> onPages = new EnumMap<>(Language.class);

	private final Map<Language, Made> books = new ConcurrentHashMap<>();

	private final Map<Language, Made> pageBooks = new ConcurrentHashMap<>();

	/** What the files of a language hold. */
	private record Patterns(Map<String, List<Phrases.Pair>> groups, List<Phrases.Pair> phrases) {

		static final Patterns NONE = new Patterns(Map.of(), List.of());

	}

	/** A book and what it was made of. */
	private record Made(Phrasebook book, List<Object> of) {
	}

	/**
	 * Reads the files in {@code messages/<code>/phrases} and
	 * {@code messages/<code>/pages}.
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
				Patterns all = read(files.of("messages/" + language.code() + "/phrases"), Patterns.NONE, reader,
						problems);
				this.patterns.put(language, all);
				this.onPages.put(language,
						read(files.of("messages/" + language.code() + "/pages"), all, reader, problems));
			}
		}
		if (!problems.isEmpty()) {
			throw new BrokenKnowledge(problems);
		}
	}

	private static Patterns read(List<KnowledgeFile> files, Patterns below, KnowledgeReader reader,
			List<Problem> problems) {
		Map<String, List<Phrases.Pair>> groups = new LinkedHashMap<>(below.groups);
		List<Phrases.Pair> phrases = new ArrayList<>();
		for (KnowledgeFile file : files) {
			Reading<PhraseFile> reading = reader.read(file, SCHEMA, PhraseFile.class);
			problems.addAll(reading.problems());
			PhraseFile content = reading.value();
			if (content == null) {
				continue;
			}
			content.allGroups().forEach((group) -> {
				if (groups.putIfAbsent(group.name(), pairs(group.members())) != null) {
					problems.add(reading.places()
						.problem("", "the group '%s' is there already".formatted(group.name()),
								"give it a name of its own"));
				}
			});
			List<Phrases.Pair> own = pairs(content.allPhrases());
			phrases.addAll(own);
			try {
				new Phrases(Map.of(), groups, own, (date) -> date);
			}
			catch (IllegalArgumentException ex) {
				problems.add(reading.places()
					.problem("", String.valueOf(ex.getMessage()), "write its places as the other phrases do"));
			}
		}
		phrases.addAll(below.phrases);
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
		return of(language, this.patterns, this.books);
	}

	/**
	 * The book of a language with the words of pages.
	 * @param language any
	 * @return as of now
	 */
	public Phrasebook ofPages(Language language) {
		return of(language, this.onPages, this.pageBooks);
	}

	private Phrasebook of(Language language, Map<Language, Patterns> written, Map<Language, Made> books) {
		if (language == Language.ENGLISH) {
			return English.BOOK;
		}
		List<Object> now = this.sources.stream().map(PhraseSource::version).toList();
		Made made = books.get(language);
		if (made == null || !made.of.equals(now)) {
			made = new Made(make(language, written.getOrDefault(language, Patterns.NONE)), now);
			books.put(language, made);
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

	private Phrasebook make(Language language, Patterns written) {
		Map<String, String> texts = new HashMap<>();
		this.sources.forEach((source) -> texts.putAll(source.texts(language)));
		SpokenDates dates = new SpokenDates(language.locale());
		return new Other(language, new Phrases(texts, written.groups, written.phrases, dates::say), dates);
	}

	/** Says what it is told. */
	private enum English implements Phrasebook {

		BOOK;

		@Override
		public Language language() {
			return Language.ENGLISH;
		}

		@Override
		public String say(String english) {
			return english;
		}

		@Override
		public Optional<String> find(String english) {
			return Optional.of(english);
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

		private final SpokenDates dates;

		private final Map<String, Optional<String>> said = new ConcurrentHashMap<>();

		Other(Language language, Phrases phrases, SpokenDates dates) {
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
			return find(english).orElse(english);
		}

		@Override
		public Optional<String> find(String english) {
			if (this.said.size() > KEPT) {
				this.said.clear();
			}
			return this.said.computeIfAbsent(english, (text) -> Optional.ofNullable(this.phrases.say(text)));
		}

		@Override
		public boolean knows(String english) {
			return find(english).isPresent();
		}

		@Override
		public String day(LocalDate day) {
			return this.dates.of(day);
		}

		@Override
		public String days(DayWindow window) {
			return (window.days() == 1) ? day(window.from()) : say(DayWords.of(window));
		}

	}

}
