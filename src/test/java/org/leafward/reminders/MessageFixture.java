package org.leafward.reminders;

import java.time.Instant;

/** Messages for tests: mails to Ada, of the morning series. */
public final class MessageFixture {

	private MessageFixture() {
	}

	/**
	 * A mail.
	 * @param name stands for the same message each time
	 * @param sender its From line
	 * @param recipient where it goes
	 * @param recipientName the name beside the address
	 * @param words what it says
	 * @return a mail that waits
	 */
	public static Message mail(String name, String sender, String recipient, String recipientName, MessageText words) {
		return new Message(TaskFixture.id(name), TaskFixture.ADA, Wishes.MAIL, Series.MORNING, sender, recipient,
				recipientName, words, null, "<%s@example.org>".formatted(name), MessageState.WAITING,
				Instant.parse("2026-11-12T06:00:00Z"), null, null, 0);
	}

	public static Message mail(String name, MessageText words) {
		return mail(name, "Leafward <reminders@example.org>", "ada@example.org", "Ada", words);
	}

	public static MessageText words(String subject, String text, String html) {
		return new MessageText(subject, text, html, subject, "https://plants.example.org/week", "{}");
	}

	public static Message at(Message mail, MessageState state, Instant made) {
		return new Message(mail.id(), mail.person(), mail.channel(), mail.series(), mail.sender(), mail.recipient(),
				mail.recipientName(), mail.words(), mail.thread(), mail.messageId(), state, made, mail.sentAt(),
				mail.serverReply(), mail.uncertain());
	}

}
