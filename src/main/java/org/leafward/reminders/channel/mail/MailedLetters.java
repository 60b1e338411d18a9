package org.leafward.reminders.channel.mail;

import jakarta.mail.MessagingException;
import jakarta.mail.internet.MimeMessage;
import java.io.UnsupportedEncodingException;
import java.time.Clock;
import java.util.UUID;
import org.leafward.accounts.Letter;
import org.leafward.accounts.Letters;
import org.leafward.accounts.PersonId;
import org.leafward.reminders.Message;
import org.leafward.reminders.MessageState;
import org.leafward.reminders.MessageText;
import org.leafward.reminders.Series;
import org.leafward.reminders.Wishes;
import org.leafward.reminders.core.OneLine;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.core.task.TaskExecutor;
import org.springframework.core.task.TaskRejectedException;
import org.springframework.mail.MailException;
import org.springframework.mail.javamail.JavaMailSender;
import org.springframework.stereotype.Component;
import org.springframework.web.util.HtmlUtils;

/**
 * Sends letters by SMTP, once each: whoever misses a link asks for another. They pass no
 * outbox and their text no log.
 */
@Component
class MailedLetters implements Letters {

	private static final Logger LOG = LoggerFactory.getLogger(MailedLetters.class);

	private static final PersonId NOBODY = new PersonId(new UUID(0, 0));

	private final ObjectProvider<JavaMailSender> senders;

	private final TaskExecutor executor;

	private final MailSettings settings;

	private final Clock clock;

	MailedLetters(ObjectProvider<JavaMailSender> senders, TaskExecutor applicationTaskExecutor, MailSettings settings,
			Clock clock) {
		this.senders = senders;
		this.executor = applicationTaskExecutor;
		this.settings = settings;
		this.clock = clock;
	}

	@Override
	public boolean canSend() {
		return this.senders.getIfAvailable() != null;
	}

	@Override
	public void send(Letter letter) {
		try {
			this.executor.execute(() -> sendNow(letter));
		}
		catch (TaskRejectedException ex) {
			LOG.warn("a letter was not sent: too much is going on");
		}
	}

	private void sendNow(Letter letter) {
		JavaMailSender mails = this.senders.getIfAvailable();
		if (mails == null) {
			return;
		}
		UUID id = UUID.randomUUID();
		MessageText words = new MessageText(letter.subject(), letter.text(), html(letter.text()), letter.subject(), "",
				"{}");
		Message mail = new Message(id, NOBODY, Wishes.MAIL, Series.SINGLE, this.settings.from().line(), letter.to(),
				OneLine.of(letter.name()), words, null, "<%s@%s>".formatted(id, this.settings.from().domain()),
				MessageState.WAITING, this.clock.instant(), null, null, 0);
		try {
			MimeMessage message = mails.createMimeMessage();
			// It is no list that one could leave, and it goes where reminders don't go
			// any more.
			MimeForm.write(mail, message, this.settings.replyTo());
			mails.send(message);
		}
		catch (MessagingException | UnsupportedEncodingException | MailException ex) {
			// What a server says may repeat the letter.
			LOG.warn("a letter was not sent: {}", ex.getClass().getSimpleName());
		}
	}

	/** The same words in English. */
	static String html(String text) {
		return html(text, "en");
	}

	/**
	 * The same words; lines that are an address become a link, lines with a dash a list.
	 */
	static String html(String text, String language) {
		StringBuilder html = new StringBuilder("<!DOCTYPE html><html lang=\"%s\"><body>".formatted(language));
		for (String part : text.strip().split("\n\\s*\n")) {
			String clean = HtmlUtils.htmlEscape(part.strip(), "UTF-8");
			if (clean.lines().allMatch((line) -> line.startsWith("- "))) {
				html.append("<ul>");
				clean.lines().forEach((line) -> html.append("<li>").append(line.substring(2)).append("</li>"));
				html.append("</ul>");
			}
			else {
				html.append("<p>")
					.append(clean.matches("https?://\\S+") ? "<a href=\"%s\">%s</a>".formatted(clean, clean)
							: clean.replace("\n", " "))
					.append("</p>");
			}
		}
		return html.append("</body></html>").toString();
	}

}
