package org.leafward.reminders.channel.mail;

import jakarta.mail.MessagingException;
import java.io.IOException;
import java.io.InputStream;
import java.util.Locale;
import java.util.Optional;
import org.leafward.measure.BadInput;
import org.leafward.reminders.Message;
import org.leafward.reminders.Wishes;
import org.leafward.reminders.store.MessageTable;
import org.leafward.reminders.store.SuppressionTable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Service;

/**
 * Hears from mail servers that a mail couldn't be delivered after all, and sends nothing
 * more to an address at which nobody is.
 */
@Service
public class Bounces {

	/** Longest mail that is read, in octets. */
	public static final int LONGEST = 1024 * 1024;

	private static final Logger LOG = LoggerFactory.getLogger(Bounces.class);

	private final MessageTable messages;

	private final SuppressionTable suppressed;

	private final MailSettings settings;

	Bounces(MessageTable messages, SuppressionTable suppressed, MailSettings settings) {
		this.messages = messages;
		this.suppressed = suppressed;
		this.settings = settings;
	}

	/** What a mail to the return address was. */
	public enum Bounce {

		/** Nobody is at the address; it gets no more reminders from now on. */
		SUPPRESSED("nobody is at that address; it gets no more reminders"),

		/** The same, and it was known before. */
		KNOWN("that address gets no reminders already"),

		/** Refused for another reason, which is for the operator to read. */
		REFUSED("refused for a reason that is not the address; nothing was changed"),

		/** Delivered, or late. */
		PASSES("nothing was refused for good; nothing was changed"),

		/** About a mail that isn't ours, or that was deleted. */
		UNKNOWN("about none of our mails; nothing was changed"),

		/** Something else that somebody wrote to the return address. */
		NO_REPORT("no delivery report; nothing was changed");

		private final String words;

		Bounce(String words) {
			this.words = words;
		}

		/**
		 * Its name in the API.
		 * @return lower case
		 */
		public String code() {
			return name().toLowerCase(Locale.ROOT).replace('_', '-');
		}

		public String words() {
			return this.words;
		}

	}

	/**
	 * Reads a mail that came to the return address.
	 * @param in the mail as it came, headers first
	 * @return what it was
	 * @throws BadInput if no return address is set up, if it is longer than 1 MB or no
	 * mail
	 * @throws IOException if it can't be read to its end
	 */
	public Bounce read(InputStream in) throws IOException {
		ReturnPath path = this.settings.bounces();
		if (path == null) {
			throw new BadInput("no return address is set up", "leafward.mail.bounces",
					"set it to an address such as bounce@example.org");
		}
		byte[] mail = in.readNBytes(LONGEST + 1);
		if (mail.length > LONGEST) {
			throw new BadInput("the mail is longer than 1 MB", "request body",
					"have the mail server return headers only");
		}
		try {
			return DeliveryReport.read(mail, path).map(this::judge).orElse(Bounce.NO_REPORT);
		}
		catch (MessagingException | IOException ex) {
			// Memory can be read to its end, so it is the mail.
			throw new BadInput("that is no mail that can be read", "request body",
					"send the mail as it came, headers first");
		}
	}

	private Bounce judge(DeliveryReport report) {
		Optional<Message> mail = report.mail()
			.flatMap(this.messages::find)
			.filter((one) -> one.channel().equals(Wishes.MAIL));
		if (mail.isEmpty()) {
			return Bounce.UNKNOWN;
		}
		if (report.failures().isEmpty()) {
			return Bounce.PASSES;
		}
		Optional<SmtpReply> nobody = report.failures().stream().filter(SmtpReply::nobodyThere).findFirst();
		if (nobody.isEmpty()) {
			LOG.warn("mail {} was refused on its way: {}", mail.get().id(), report.failures().get(0).words());
			return Bounce.REFUSED;
		}
		return this.suppressed.suppress(mail.get().recipient(), nobody.get().words()) ? Bounce.SUPPRESSED
				: Bounce.KNOWN;
	}

}
