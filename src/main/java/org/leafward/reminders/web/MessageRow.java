package org.leafward.reminders.web;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.TextStyle;
import java.util.Locale;
import java.util.UUID;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.OtherMails.Letter;
import org.leafward.accounts.OtherMails.Standing;
import org.leafward.reminders.Message;
import org.leafward.reminders.MessageState;

/**
 * A mail as the pages show it.
 *
 * @param id identifier
 * @param subject subject
 * @param from the From line
 * @param to name and address
 * @param at when it was made, for machines
 * @param atWords when it was made, in words
 * @param state what became of it, in words
 * @param reply what the mail server said
 * @param messageId its Message-ID
 * @param text its plain text
 */
record MessageRow(UUID id, String subject, String from, String to, Instant at, String atWords, String state,
		@Nullable String reply, String messageId, String text) {

	/** A link that carries its own secret, see {@code links.SignedLinks}. */
	private static final Pattern SECRET = Pattern.compile("(/[ru]/)[A-Za-z0-9_-]{20,}");

	private static final DateTimeFormatter WORDS = DateTimeFormatter.ofPattern("EEE d MMM yyyy, HH:mm", Locale.ENGLISH);

	static MessageRow of(Message mail, ZoneId zone) {
		String words = WORDS.format(mail.createdAt().atZone(zone)) + " ("
				+ zone.getDisplayName(TextStyle.FULL, Locale.ENGLISH) + ")";
		return new MessageRow(mail.id(), mail.subject(), mail.sender(),
				mail.recipientName() + " <" + mail.recipient() + ">", mail.createdAt(), words, words(mail.state()),
				mail.serverReply(), mail.messageId(), mail.text());
	}

	static MessageRow of(Letter letter, ZoneId zone) {
		String words = WORDS.format(letter.writtenAt().atZone(zone)) + " ("
				+ zone.getDisplayName(TextStyle.FULL, Locale.ENGLISH) + ")";
		return new MessageRow(letter.id(), letter.subject(), "", letter.name() + " <" + letter.to() + ">",
				letter.writtenAt(), words, words(switch (letter.standing()) {
					case WAITING -> MessageState.WAITING;
					case SENT -> MessageState.SENT;
					case KEPT -> MessageState.KEPT;
					case FAILED -> MessageState.FAILED;
				}), (letter.standing() != Standing.KEPT) ? letter.reason() : null, "", letter.text());
	}

	/**
	 * The same for somebody else than its reader, who must not act in the reader's name.
	 * @return without what the links to act and to leave hang on
	 */
	MessageRow forOthers() {
		return new MessageRow(this.id, this.subject, this.from, this.to, this.at, this.atWords, this.state, this.reply,
				this.messageId, SECRET.matcher(this.text).replaceAll("$1…"));
	}

	static String words(MessageState state) {
		return switch (state) {
			case WAITING -> "not taken yet, will be tried again";
			case SENT -> "sent";
			case KEPT -> "kept here, no mail server is set up";
			case FAILED -> "refused by the mail server";
			case DROPPED -> "not sent, no longer of use";
		};
	}

}
