package org.leafward.reminders.words;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import org.leafward.knowledge.BrokenKnowledge;
import org.leafward.knowledge.KnowledgeFile;
import org.leafward.knowledge.KnowledgeFiles;
import org.leafward.knowledge.KnowledgeReader;
import org.leafward.knowledge.Problem;
import org.leafward.knowledge.Reading;
import org.leafward.language.Language;
import org.leafward.language.Phrasebook;
import org.leafward.language.Phrasebooks;
import org.leafward.language.Speech;
import org.leafward.reminders.MessageText;
import org.leafward.reminders.core.Content;
import org.leafward.reminders.core.Links;
import org.leafward.reminders.core.MessageWriter;
import org.leafward.reminders.core.Wording;
import org.leafward.reminders.core.Words;
import org.leafward.reminders.core.Words.Counted;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Service;

/**
 * Writes messages in the language and the units of whoever gets them. The words of each
 * language are read at the start from {@code messages/<code>/messages.yaml}.
 */
@Service
public class MessageWords {

	private static final String SCHEMA = "schema/messages-1.json";

	private static final int LONGEST_CONTACT = 200;

	private final Phrasebooks books;

	private final String contact;

	private final Map<Language, Words> words = new EnumMap<>(Language.class);

	private final Map<Speech, Wording> wordings = new ConcurrentHashMap<>();

	private final MessageWriter writer = new MessageWriter(new ContentJson());

	/**
	 * Reads the files.
	 * @param files finds the files
	 * @param reader reads them
	 * @param books say the words of tasks
	 * @param contact who sends the messages and how to reach them, the last line of each;
	 * empty for nothing, at most {@value #LONGEST_CONTACT} characters
	 * @throws BrokenKnowledge with every problem of every file
	 */
	public MessageWords(KnowledgeFiles files, KnowledgeReader reader, Phrasebooks books,
			@Value("${leafward.mail.contact:}") String contact) {
		if (contact.length() > LONGEST_CONTACT) {
			throw new IllegalArgumentException("leafward.mail.contact has %d characters, %d are allowed; shorten it"
				.formatted(contact.length(), LONGEST_CONTACT));
		}
		this.books = books;
		this.contact = contact;
		List<Problem> problems = new ArrayList<>();
		for (Language language : Language.values()) {
			Words read = read(files, reader, "messages/" + language.code(), problems);
			if (read != null) {
				this.words.put(language, read);
			}
		}
		if (!problems.isEmpty()) {
			throw new BrokenKnowledge(problems);
		}
	}

	private static @Nullable Words read(KnowledgeFiles files, KnowledgeReader reader, String folder,
			List<Problem> problems) {
		Map<String, String> words = new HashMap<>();
		Map<String, Counted> counts = new HashMap<>();
		Reading<MessageFile> last = null;
		for (KnowledgeFile file : files.of(folder)) {
			Reading<MessageFile> reading = reader.read(file, SCHEMA, MessageFile.class);
			problems.addAll(reading.problems());
			MessageFile content = reading.value();
			if (content == null) {
				return null;
			}
			words.putAll(content.allWords());
			counts.putAll(content.allCounts());
			last = reading;
		}
		if (last == null) {
			problems.add(new Problem(folder + "/messages.yaml", 0, 0, "", "there is no such file",
					"copy the one of another language and say its words"));
			return null;
		}
		List<Problem> faults = faults(words, counts, last);
		problems.addAll(faults);
		return faults.isEmpty() ? new Words(words, counts) : null;
	}

	private static List<Problem> faults(Map<String, String> words, Map<String, Counted> counts,
			Reading<MessageFile> reading) {
		return Words.faults(words, counts)
			.stream()
			.map((fault) -> reading.places().problem(fault.path(), fault.what(), fault.mend()))
			.toList();
	}

	/**
	 * Writes a message.
	 * @param content what it is about
	 * @param speech language and units of who gets it
	 * @param links addresses
	 * @return its words in every form
	 * @throws IllegalArgumentException when there is nothing to tell
	 */
	public MessageText write(Content content, Speech speech, Links links) {
		return this.writer.write(content, of(speech), links);
	}

	/**
	 * The wording for a reader.
	 * @param speech language and units
	 * @return as of now
	 */
	public Wording of(Speech speech) {
		Phrasebook book = this.books.of(speech.language());
		Wording known = this.wordings.get(speech);
		if (known != null && known.book() == book) {
			return known;
		}
		Words own = this.words.get(speech.language());
		if (own == null) {
			throw new IllegalStateException("no words of messages in " + speech.language());
		}
		Wording made = new Wording(book, speech.units(), own, this.contact);
		this.wordings.put(speech, made);
		return made;
	}

}
