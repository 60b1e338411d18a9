package org.leafward.advisories.cap;

import java.net.URI;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.leafward.advisories.AlertFacts;
import org.leafward.advisories.core.chain.MessageType;
import org.leafward.regions.core.Ring;

/**
 * An alert as it goes into a document of CAP 1.2. Only what we write; the standard has
 * more.
 *
 * @param identifier unique for ever; no space, comma, {@code <} or {@code &}
 * @param sender who sends, likewise
 * @param sent when
 * @param zone whose clock the times have
 * @param status whether it is meant
 * @param type what it does
 * @param source the server that it came from
 * @param references triples of earlier messages; empty for the first
 * @param incident what all messages of one advisory share
 * @param facts how bad, how soon, how sure
 * @param event what it is about, in few words, in the language of the first text
 * @param onset when it begins; one that is not after {@code sent} is left out, as it has
 * begun
 * @param expires when it ends
 * @param texts the words, one of each language
 * @param senderName who sends, for readers
 * @param web the page about it
 * @param contact whom to ask; null for nobody
 * @param note why it was called off; null otherwise
 * @param areas where, at least one
 */
public record CapAlert(String identifier, String sender, Instant sent, ZoneId zone, Status status, MessageType type,
		String source, String references, String incident, AlertFacts facts, String event, Instant onset,
		Instant expires, List<Text> texts, String senderName, URI web, @Nullable String contact, @Nullable String note,
		List<Place> areas) {

	/** CAP 1.2, section 3.2.1: identifier and sender. */
	private static final Pattern NAME = Pattern.compile("[^\\s,<&]+");

	/**
	 * Checks what a reader could not undo.
	 * @throws IllegalArgumentException when a rule of the standard is broken
	 */
	public CapAlert {
		texts = List.copyOf(texts);
		areas = List.copyOf(areas);
		require(NAME.matcher(identifier).matches() && NAME.matcher(sender).matches(),
				"identifier and sender hold no space, comma, < or &");
		require(references.isEmpty() == (type == MessageType.ALERT), "later messages refer to earlier ones");
		require(!references.contains("," + identifier + ","), "no message refers to itself");
		require(expires.isAfter(sent) && expires.isAfter(onset), "it ends after it was sent and after it began");
		require(!texts.isEmpty() && texts.stream().map(Text::language).distinct().count() == texts.size(),
				"one text of each language");
		require(!areas.isEmpty(), "it is for some area");
		require(web.isAbsolute(), "the page has an absolute address");
	}

	private static void require(boolean held, String rule) {
		if (!held) {
			throw new IllegalArgumentException(rule);
		}
	}

	/** Whether an alert is meant (CAP 1.2, section 3.2.1, status). */
	public enum Status {

		/** It is meant. */
		ACTUAL("Actual"),

		/** Of an invented place, or to see whether messages arrive. */
		TEST("Test");

		private final String cap;

		Status(String cap) {
			this.cap = cap;
		}

		/**
		 * The word of the protocol.
		 * @return as CAP 1.2 lists it
		 */
		public String cap() {
			return this.cap;
		}

	}

	/**
	 * The words in one language.
	 *
	 * @param language by BCP 47, such as {@code en-US}
	 * @param event what it is about, in few words
	 * @param headline the headline
	 * @param description what, where, when and what it does
	 * @param instruction what to do
	 */
	public record Text(String language, String event, String headline, String description, String instruction) {
	}

	/**
	 * A place.
	 *
	 * @param name in words
	 * @param rings outlines; holes can't be told
	 */
	public record Place(String name, List<Ring> rings) {

		public Place {
			rings = List.copyOf(rings);
		}

	}

}
