package org.leafward.reminders.channel.mail;

import jakarta.activation.DataHandler;
import jakarta.mail.MessagingException;
import jakarta.mail.Session;
import jakarta.mail.internet.MimeBodyPart;
import jakarta.mail.internet.MimeMultipart;
import jakarta.mail.util.ByteArrayDataSource;
import java.io.IOException;
import java.io.UnsupportedEncodingException;
import java.nio.charset.StandardCharsets;
import java.util.UUID;
import org.eclipse.angus.mail.smtp.SMTPMessage;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.accounts.Post.Mail;
import org.leafward.reminders.Message;
import org.leafward.reminders.MessageState;
import org.leafward.reminders.MessageText;
import org.leafward.reminders.Series;
import org.leafward.reminders.Wishes;
import org.leafward.reminders.core.OneLine;

/**
 * Writes a mail of another module, with its invitation if it has one (RFC 6047): text,
 * HTML and calendar side by side, and the calendar once more as a file. Programs differ
 * in which of the two they take for an invitation; none was found that is misled by both.
 */
final class InvitationForm {

	private static final PersonId NOBODY = new PersonId(new UUID(0, 0));

	private static final String FILE = "invite.ics";

	private InvitationForm() {
	}

	static SMTPMessage write(Mail mail, Session session, MailSettings settings)
			throws MessagingException, UnsupportedEncodingException {
		String domain = settings.from().domain();
		String identifier = "<%s@%s>".formatted(mail.id(), domain);
		SMTPMessage message = new SMTPMessage(session) {

			@Override
			protected void updateMessageID() throws MessagingException {
				setHeader("Message-ID", identifier);
			}

		};
		MessageText words = new MessageText(mail.subject(), mail.text(),
				MailedLetters.html(mail.text(), mail.language()), mail.subject(), "", "{}");
		MimeForm.write(new Message(mail.id(), NOBODY, Wishes.MAIL, Series.SINGLE, settings.from().line(), mail.to(),
				OneLine.of(mail.name()), words, null, identifier, MessageState.WAITING, mail.writtenAt(), null, null,
				0), message, settings.replyTo());
		if (mail.calendar() != null && mail.method() != null) {
			add(message, mail.calendar(), mail.method());
		}
		thread(message, mail.thread(), domain);
		message.setContentLanguage(new String[] { mail.language() });
		message.saveChanges();
		return message;
	}

	private static void add(SMTPMessage message, String calendar, String method) throws MessagingException {
		try {
			MimeMultipart alternatives = (MimeMultipart) message.getContent();
			alternatives.addBodyPart(part(calendar, "text/calendar; charset=UTF-8; method=" + method));
			MimeBodyPart words = new MimeBodyPart();
			words.setContent(alternatives);
			MimeMultipart all = new MimeMultipart("mixed");
			all.addBodyPart(words);
			MimeBodyPart file = part(calendar, "application/ics; name=\"%s\"".formatted(FILE));
			file.setFileName(FILE);
			all.addBodyPart(file);
			message.setContent(all);
		}
		catch (IOException ex) {
			throw new MessagingException("the parts of a mail that was just made can't be read", ex);
		}
	}

	private static MimeBodyPart part(String calendar, String type) throws MessagingException {
		MimeBodyPart part = new MimeBodyPart();
		part.setDataHandler(new DataHandler(new ByteArrayDataSource(calendar.getBytes(StandardCharsets.UTF_8), type)));
		part.setHeader("Content-Type", type);
		// Whatever else breaks a line on its way, no line of a calendar may change.
		part.setHeader("Content-Transfer-Encoding", "base64");
		return part;
	}

	/** The root of what belongs together is a mail that was never sent. */
	private static void thread(SMTPMessage message, @Nullable String thread, String domain) throws MessagingException {
		if (thread != null) {
			String root = "<workday-%s@%s>".formatted(OneLine.of(thread), domain);
			message.setHeader("In-Reply-To", root);
			message.setHeader("References", root);
		}
	}

}
