package org.leafward.reminders.channel.mail;

import jakarta.mail.Message.RecipientType;
import jakarta.mail.MessagingException;
import jakarta.mail.internet.InternetAddress;
import jakarta.mail.internet.MimeBodyPart;
import jakarta.mail.internet.MimeMessage;
import jakarta.mail.internet.MimeMultipart;
import java.io.UnsupportedEncodingException;
import java.nio.charset.StandardCharsets;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.leafward.reminders.Message;
import org.leafward.reminders.core.OneLine;
import org.leafward.reminders.core.SenderAddress;

/** Writes a mail as an Internet message (RFC 5322, RFC 2045 to 2047). */
final class MimeForm {

	private static final String UTF_8 = StandardCharsets.UTF_8.name();

	/** RFC 5322 section 3.3, with the numeric zone it asks for. */
	private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("EEE, d MMM yyyy HH:mm:ss Z",
			Locale.ENGLISH);

	private MimeForm() {
	}

	/**
	 * Fills a message. Whatever a person could have written is brought to one line before
	 * it becomes a header.
	 * @param mail what to write
	 * @param message an empty message
	 * @throws MessagingException if the sender's or the recipient's address is none
	 * @throws UnsupportedEncodingException never, since every Java has UTF-8
	 */
	static void write(Message mail, MimeMessage message) throws MessagingException, UnsupportedEncodingException {
		message.setFrom(sender(mail.sender()));
		message.setRecipient(RecipientType.TO, recipient(mail));
		message.setSubject(OneLine.of(mail.subject()), UTF_8);
		message.setHeader("Date", DATE.format(mail.createdAt().atOffset(ZoneOffset.UTC)));
		message.setHeader("Message-ID", OneLine.of(mail.messageId()));
		message.setHeader("List-Id",
				"Care reminders <care-reminders.%s>".formatted(SenderAddress.of(mail.sender()).domain()));
		// RFC 3834 section 5; the next one is what Exchange listens to.
		message.setHeader("Auto-Submitted", "auto-generated");
		message.setHeader("X-Auto-Response-Suppress", "OOF, AutoReply");
		MimeMultipart parts = new MimeMultipart("alternative");
		// RFC 2046 section 5.1.4: the plainest first.
		parts.addBodyPart(part(mail.text(), "plain"));
		parts.addBodyPart(part(mail.html(), "html"));
		message.setContent(parts);
		message.saveChanges();
		// saveChanges gives the message an identifier of its own.
		message.setHeader("Message-ID", OneLine.of(mail.messageId()));
	}

	private static InternetAddress sender(String line) throws MessagingException, UnsupportedEncodingException {
		InternetAddress sender = new InternetAddress(OneLine.of(line), true);
		sender.setPersonal(sender.getPersonal(), UTF_8);
		return sender;
	}

	private static InternetAddress recipient(Message mail) throws MessagingException, UnsupportedEncodingException {
		InternetAddress recipient = new InternetAddress(mail.recipient(), true);
		recipient.setPersonal(OneLine.of(mail.recipientName()), UTF_8);
		return recipient;
	}

	private static MimeBodyPart part(String content, String subtype) throws MessagingException {
		MimeBodyPart part = new MimeBodyPart();
		part.setText(content, UTF_8, subtype);
		// Keeps every line within the 998 octets of RFC 5322 section 2.1.1, whatever the
		// text.
		part.setHeader("Content-Transfer-Encoding", "quoted-printable");
		return part;
	}

}
