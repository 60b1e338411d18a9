package org.leafward.reminders.channel.mail;

import jakarta.mail.BodyPart;
import jakarta.mail.MessagingException;
import jakarta.mail.Part;
import jakarta.mail.internet.InternetHeaders;
import jakarta.mail.internet.MimeMessage;
import jakarta.mail.internet.MimeMultipart;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * What a mail server says became of a mail that it had taken (RFC 3464).
 *
 * @param mail the mail, by the address to which the report came; empty when that was none
 * of ours
 * @param failures how each recipient was refused for good; those to whom it is late or
 * was delivered are not among them
 */
record DeliveryReport(Optional<UUID> mail, List<SmtpReply> failures) {

	/**
	 * How much of a mail is looked at, in octets; behind it comes the mail that was sent.
	 * The library takes a minute for a megabyte of tiny parts.
	 */
	private static final int LOOKED_AT = 64 * 1024;

	private static final int MOST_PARTS = 20;

	private static final int MOST_RECIPIENTS = 50;

	private static final int MOST_ADDRESSES = 50;

	/**
	 * To is what RFC 3464 section 2 asks for; the others are added by servers that hand a
	 * mail to a program.
	 */
	private static final String[] ADDRESSED = { "To", "Delivered-To", "X-Original-To", "Envelope-To" };

	private static final Pattern STATUS = Pattern.compile("5\\.\\d{1,3}\\.\\d{1,3}");

	private static final Pattern DIAGNOSTIC = Pattern.compile("(?is)\\s*smtp\\s*;\\s*((5\\d\\d)[ -].*)");

	DeliveryReport {
		failures = List.copyOf(failures);
	}

	/**
	 * Reads a mail.
	 * @param mail the mail, headers first
	 * @param path what our return addresses look like
	 * @return empty when it is another kind of mail
	 * @throws MessagingException if it can't be read as a mail
	 * @throws IOException if a part of it can't be read
	 */
	static Optional<DeliveryReport> read(byte[] mail, ReturnPath path) throws MessagingException, IOException {
		MimeMessage message = new MimeMessage(null,
				new ByteArrayInputStream(mail, 0, Math.min(LOOKED_AT, mail.length)));
		if (!message.isMimeType("multipart/report") || !(message.getContent() instanceof MimeMultipart parts)) {
			return Optional.empty();
		}
		for (int number = 0; number < Math.min(MOST_PARTS, parts.getCount()); number++) {
			BodyPart part = parts.getBodyPart(number);
			// RFC 6533 section 3: the second one is the same with addresses in UTF-8.
			if (part.isMimeType("message/delivery-status") || part.isMimeType("message/global-delivery-status")) {
				return Optional.of(new DeliveryReport(ours(message, path), failures(part)));
			}
		}
		return Optional.empty();
	}

	private static Optional<UUID> ours(MimeMessage message, ReturnPath path) throws MessagingException {
		for (String name : ADDRESSED) {
			String[] values = message.getHeader(name);
			for (int number = 0; values != null && number < Math.min(MOST_ADDRESSES, values.length); number++) {
				Optional<UUID> mail = path.mail(values[number]);
				if (mail.isPresent()) {
					return mail;
				}
			}
		}
		return Optional.empty();
	}

	/**
	 * RFC 3464 section 2.1: groups of fields with empty lines between, the first about
	 * the mail as a whole.
	 */
	private static List<SmtpReply> failures(Part part) throws MessagingException, IOException {
		List<SmtpReply> failures = new ArrayList<>();
		try (InputStream in = part.getInputStream()) {
			ByteArrayInputStream groups = new ByteArrayInputStream(in.readAllBytes());
			for (int number = 0; groups.available() > 0 && number <= MOST_RECIPIENTS; number++) {
				InternetHeaders fields = new InternetHeaders(groups, true);
				failure(value(fields, "Action"), value(fields, "Status"), value(fields, "Diagnostic-Code"))
					.ifPresent(failures::add);
			}
		}
		return failures;
	}

	private static Optional<SmtpReply> failure(String action, String status, String diagnostic) {
		Matcher code = STATUS.matcher(status);
		if (!action.toLowerCase(Locale.ROOT).startsWith("failed") || !code.find()) {
			return Optional.empty();
		}
		Matcher said = DIAGNOSTIC.matcher(diagnostic);
		SmtpReply reply = said.matches() ? SmtpReply.of(Integer.parseInt(said.group(2)), said.group(1))
				: SmtpReply.of(550, "550 %s %s".formatted(code.group(), diagnostic));
		// RFC 3464 section 2.3.4: the status is there always, an enhanced code in the
		// reply is not.
		return Optional
			.of(reply.enhanced().isEmpty() ? new SmtpReply(reply.code(), code.group(), reply.words()) : reply);
	}

	private static String value(InternetHeaders fields, String name) {
		@Nullable String value = fields.getHeader(name, null);
		return (value != null) ? value : "";
	}

}
