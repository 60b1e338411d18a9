package org.leafward.reminders.words;

import java.util.List;
import org.leafward.knowledge.KnowledgeFiles;
import org.leafward.knowledge.KnowledgeReader;
import org.leafward.language.Phrasebooks;
import org.leafward.language.Speech;
import org.leafward.reminders.MessageText;
import org.leafward.reminders.core.Content;

/** The words of messages that come with the server, without those of rules. */
public final class WordsFixture {

	private static final KnowledgeFiles FILES = new KnowledgeFiles("");

	private static final KnowledgeReader READER = new KnowledgeReader();

	private static final MessageWords WORDS = new MessageWords(FILES, READER, new Phrasebooks(FILES, READER, List.of()),
			"");

	private WordsFixture() {
	}

	public static MessageText write(Content content, Speech speech) {
		return WORDS.write(content, speech, new FakeLinks());
	}

}
