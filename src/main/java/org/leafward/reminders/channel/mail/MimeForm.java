package org.leafward.reminders.channel.mail;

import jakarta.mail.Message.RecipientType;
import jakarta.mail.MessagingException;
import jakarta.mail.Session;
import jakarta.mail.internet.AddressException;
import jakarta.mail.internet.InternetAddress;
import jakarta.mail.internet.MimeBodyPart;
import jakarta.mail.internet.MimeMessage;
import jakarta.mail.internet.MimeMultipart;
import java.io.UnsupportedEncodingException;
import java.nio.charset.StandardCharsets;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.regex.Pattern;
import org.eclipse.angus.mail.smtp.SMTPMessage;
import org.jspecify.annotations.Nullable;
import org.leafward.reminders.Message;
import org.leafward.reminders.Series;
import org.leafward.reminders.core.OneLine;
import org.leafward.reminders.core.SenderAddress;

/** Writes a mail as an Internet message (RFC 5322, RFC 2045 to 2047). */
final class MimeForm {

	private static final String UTF_8 = StandardCharsets.UTF_8.name();

	/** RFC 5322 section 3.3, with the numeric zone it asks for. */
	private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("EEE, d MMM yyyy HH:mm:ss Z",
			Locale.ENGLISH);

	/**
	 * RFC 5322 section 3.6.4; what isn't one would break the header for those who read
	 * it.
	 */
	private static final Pattern MESSAGE_ID = Pattern.compile("<[^\\s<>@]{1,200}@[^\\s<>@]{1,200}>");

	/** An address that needs no encoding in a header (RFC 3986 section 2). */
	private static final Pattern LINK = Pattern.compile("https?://[A-Za-z0-9\\-._~:/?#\\[\\]@!$&'()*+,;=%]{1,900}");

	private MimeForm() {
	}

	/**
	 * Writes a reminder, which belongs to a list that its reader can leave.
	 * @param mail what to write
	 * @param session what it is made with
	 * @param settings where answers and failures go
	 * @param stop the address at which its series is left
	 * @return a message that keeps its Message-ID however often it is saved
	 * @throws MessagingException if the sender's or the recipient's address is none
	 * @throws UnsupportedEncodingException never, since every Java has UTF-8
	 */
	static SMTPMessage reminder(Message mail, Session session, MailSettings settings, String stop)
			throws MessagingException, UnsupportedEncodingException {
		SMTPMessage message = new SMTPMessage(session) {

			@Override
			protected void updateMessageID() {
				// It has its own.
			}

		};
		write(mail, message, settings.replyTo());
		message.setHeader("List-Id", "%s <%s.reminders.%s>".formatted(listName(mail.series()), mail.series().code(),
				SenderAddress.of(mail.sender()).domain()));
		leave(message, stop);
		thread(message, mail);
		if (settings.bounces() != null) {
			message.setEnvelopeFrom(settings.bounces().address(mail.id()));
		}
		return message;
	}

	/**
	 * Fills a message with what every mail has. Whatever a person could have written is
	 * brought to one line before it becomes a header.
	 * @param mail what to write
	 * @param message an empty message
	 * @param replyTo where answers go; null for the sender
	 * @throws MessagingException if the sender's or the recipient's address is none
	 * @throws UnsupportedEncodingException never, since every Java has UTF-8
	 */
	static void write(Message mail, MimeMessage message, @Nullable InternetAddress replyTo)
			throws MessagingException, UnsupportedEncodingException {
		message.setFrom(sender(mail.sender()));
		message.setRecipient(RecipientType.TO, recipient(mail));
		if (replyTo != null) {
			message.setReplyTo(new InternetAddress[] { replyTo });
		}
		message.setSubject(OneLine.of(mail.subject()), UTF_8);
		message.setHeader("Date", DATE.format(mail.createdAt().atOffset(ZoneOffset.UTC)));
		// RFC 3834 section 5; the next one is what Exchange listens to.
		message.setHeader("Auto-Submitted", "auto-generated");
		message.setHeader("X-Auto-Response-Suppress", "OOF, AutoReply");
		MimeMultipart parts = new MimeMultipart("alternative");
		// RFC 2046 section 5.1.4: the plainest first.
		parts.addBodyPart(part(mail.text(), "plain"));
		parts.addBodyPart(part(mail.html(), "html"));
		message.setContent(parts);
		message.saveChanges();
		// Saving gives a message an identifier of its own.
		message.setHeader("Message-ID", OneLine.of(mail.messageId()));
	}

	/**
	 * RFC 2369 section 3.2 and RFC 8058 section 3.1, which asks for https; the address
	 * stands alone, since some programs take the first of several only. On one line: a
	 * folded header has broken signatures that others made.
	 */
	private static void leave(MimeMessage message, String stop) throws MessagingException {
		if (!LINK.matcher(stop).matches()) {
			throw new MessagingException("the address for leaving the series is none");
		}
		message.setHeader("List-Unsubscribe", "<" + stop + ">");
		if (stop.startsWith("https:")) {
			message.setHeader("List-Unsubscribe-Post", "List-Unsubscribe=One-Click");
		}
	}

	/** What tells of several things stands alone, whatever it is about. */
	private static void thread(MimeMessage message, Message mail) throws MessagingException {
		boolean digest = mail.series() == Series.MORNING || mail.series() == Series.OUTLOOK;
		String thread = mail.thread();
		if (!digest && thread != null && MESSAGE_ID.matcher(thread).matches()) {
			message.setHeader("In-Reply-To", thread);
			message.setHeader("References", thread);
		}
	}

	private static String listName(Series series) {
		return switch (series) {
			case MORNING -> "Care in the morning";
			case OUTLOOK -> "Care outlook";
			case TONIGHT -> "Frost tonight";
			case SINGLE -> "Care reminders";
			case ADVISORY -> "Garden advisories";
		};
	}

	private static InternetAddress sender(String line) throws MessagingException, UnsupportedEncodingException {
		InternetAddress sender = new InternetAddress(OneLine.of(line), true);
		sender.setPersonal(sender.getPersonal(), UTF_8);
		return sender;
	}

	private static InternetAddress recipient(Message mail) throws MessagingException, UnsupportedEncodingException {
		if (!mail.recipient().chars().allMatch((one) -> one > ' ' && one < 0x7f)) {
			// Without SMTPUTF8 (RFC 6531) the library would cut each letter to an octet
			// and write to somebody else.
			throw new AddressException("the address has characters beyond ASCII", OneLine.of(mail.recipient(), 100));
		}
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
