package org.leafward.reminders.channel.mail;

import jakarta.mail.MessagingException;
import jakarta.mail.Session;
import java.io.UnsupportedEncodingException;
import java.util.List;
import org.eclipse.angus.mail.smtp.SMTPMessage;
import org.leafward.accounts.Post;
import org.leafward.reminders.channel.Delivery;
import org.leafward.reminders.core.OneLine;
import org.leafward.reminders.store.SuppressionTable;
import org.springframework.stereotype.Component;

/**
 * Hands on mails of modules that have an outbox of their own, by the same connections and
 * with the same care for addresses at which nobody is.
 */
@Component
class PostedMails implements Post {

	private final SmtpLines lines;

	private final SuppressionTable suppressed;

	private final MailSettings settings;

	PostedMails(SmtpLines lines, SuppressionTable suppressed, MailSettings settings) {
		this.lines = lines;
		this.suppressed = suppressed;
		this.settings = settings;
	}

	@Override
	public String sender() {
		String line = this.settings.from().line();
		int open = line.lastIndexOf('<');
		return (open < 0) ? line : line.substring(open + 1, line.lastIndexOf('>'));
	}

	@Override
	public Handed hand(Mail mail) {
		Session session = this.lines.session();
		if (session == null) {
			return new Handed(Outcome.KEPT, "no mail server is set up");
		}
		if (!this.suppressed.find(List.of(mail.to())).isEmpty()) {
			return new Handed(Outcome.REFUSED, "nobody is at that address");
		}
		SmtpTrouble trouble;
		try {
			SMTPMessage message = InvitationForm.write(mail, session, this.settings);
			trouble = this.lines.send(message, message.getAllRecipients()[0]);
		}
		catch (MessagingException | UnsupportedEncodingException ex) {
			return new Handed(Outcome.REFUSED, OneLine.of("can't be written as a mail: " + ex.getMessage()));
		}
		if (trouble == null) {
			return new Handed(Outcome.TAKEN, null);
		}
		Delivery delivery = trouble.delivery();
		if (trouble.nobodyThere()) {
			this.suppressed.suppress(mail.to(), String.valueOf(delivery.reason()));
		}
		return new Handed(switch (delivery.outcome()) {
			case TAKEN -> Outcome.TAKEN;
			case KEPT -> Outcome.KEPT;
			// An invitation that came twice is one entry: its identifier and sequence
			// are the same.
			case LATER, UNREACHABLE, UNCERTAIN -> Outcome.LATER;
			case REFUSED, OUR_FAULT -> Outcome.REFUSED;
		}, delivery.reason());
	}

}
