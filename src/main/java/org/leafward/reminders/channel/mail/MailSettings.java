package org.leafward.reminders.channel.mail;

import jakarta.mail.internet.AddressException;
import jakarta.mail.internet.InternetAddress;
import java.io.UnsupportedEncodingException;
import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;
import org.leafward.reminders.core.SenderAddress;

/**
 * What is set up about mails beside the mail server.
 *
 * @param from who mails come from
 * @param replyTo where answers go; null for the sender
 * @param bounces where mail servers send word of what they couldn't deliver; null for the
 * sender
 */
record MailSettings(SenderAddress from, @Nullable InternetAddress replyTo, @Nullable ReturnPath bounces) {

	/**
	 * Reads the settings.
	 * @param from leafward.mail.from
	 * @param replyTo leafward.mail.reply-to; may be blank
	 * @param bounces leafward.mail.bounces; may be blank
	 * @return the settings
	 * @throws IllegalArgumentException if one of them is no address
	 */
	static MailSettings of(String from, String replyTo, String bounces) {
		return new MailSettings(SenderAddress.of(from), replyTo.isBlank() ? null : address(replyTo),
				bounces.isBlank() ? null : ReturnPath.of(bounces));
	}

	private static InternetAddress address(String line) {
		try {
			InternetAddress address = new InternetAddress(line.strip(), true);
			// Read from a line, the name would go into the header as it is.
			address.setPersonal(address.getPersonal(), StandardCharsets.UTF_8.name());
			return address;
		}
		catch (AddressException | UnsupportedEncodingException ex) {
			throw new IllegalArgumentException(
					"leafward.mail.reply-to is '%s'; write it like Help <help@example.org>".formatted(line), ex);
		}
	}

}
