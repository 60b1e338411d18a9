package org.leafward.reminders.channel.mail;

import jakarta.mail.MessagingException;
import jakarta.mail.Session;
import java.io.UnsupportedEncodingException;
import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import org.eclipse.angus.mail.smtp.SMTPMessage;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.Person;
import org.leafward.accounts.PersonId;
import org.leafward.reminders.Message;
import org.leafward.reminders.Wishes;
import org.leafward.reminders.channel.Channel;
import org.leafward.reminders.channel.Delivery;
import org.leafward.reminders.channel.Delivery.Outcome;
import org.leafward.reminders.core.Links;
import org.leafward.reminders.core.OneLine;
import org.leafward.reminders.store.SuppressionTable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.dao.DataAccessException;
import org.springframework.stereotype.Component;

/**
 * Sends by SMTP when a mail server is configured ({@code spring.mail.host}); keeps the
 * mail otherwise.
 */
@Component
class MailChannel implements Channel {

	private static final Logger LOG = LoggerFactory.getLogger(MailChannel.class);

	private final SmtpLines lines;

	private final SuppressionTable suppressed;

	private final Links links;

	private final MailSettings settings;

	/**
	 * Creates the channel.
	 * @param lines connections to the mail server
	 * @param suppressed addresses at which nobody is
	 * @param links addresses that go into mails
	 * @param settings where answers and failures go
	 */
	MailChannel(SmtpLines lines, SuppressionTable suppressed, Links links, MailSettings settings) {
		this.lines = lines;
		this.suppressed = suppressed;
		this.links = links;
		this.settings = settings;
	}

	@Override
	public String code() {
		return Wishes.MAIL;
	}

	@Override
	public String words() {
		return "E-mail";
	}

	@Override
	public Map<PersonId, String> addresses(Collection<Person> people) {
		Map<PersonId, String> addresses = new HashMap<>();
		people.forEach((person) -> person.mailbox().ifPresent((mailbox) -> addresses.put(person.id(), mailbox)));
		addresses.values().removeAll(this.suppressed.find(addresses.values()));
		return addresses;
	}

	@Override
	public Delivery deliver(Message mail) {
		Session session = this.lines.session();
		if (session == null) {
			return Delivery.of(Outcome.KEPT);
		}
		SmtpTrouble trouble;
		try {
			SMTPMessage message = MimeForm.reminder(mail, session, this.settings,
					this.links.stop(mail.person(), mail.channel(), mail.series()));
			trouble = this.lines.send(message, message.getAllRecipients()[0]);
		}
		catch (MessagingException | UnsupportedEncodingException ex) {
			return new Delivery(Outcome.REFUSED, OneLine.of("can't be written as a mail: " + ex.getMessage()));
		}
		return (trouble != null) ? judged(mail, trouble) : Delivery.of(Outcome.TAKEN);
	}

	private Delivery judged(Message mail, SmtpTrouble trouble) {
		Delivery delivery = trouble.delivery();
		if (trouble.nobodyThere()) {
			suppress(mail, delivery.reason());
		}
		if (trouble.alarm()) {
			LOG.error("mails can't leave: {}", delivery.reason());
		}
		return delivery;
	}

	private void suppress(Message mail, @Nullable String reason) {
		try {
			this.suppressed.suppress(mail.recipient(), String.valueOf(reason));
		}
		catch (DataAccessException ex) {
			// What came of the mail counts for more; the next mail tells it again.
			LOG.warn("the address of person {} could not be noted as one at which nobody is", mail.person(), ex);
		}
	}

}
