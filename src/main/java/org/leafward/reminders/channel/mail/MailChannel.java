package org.leafward.reminders.channel.mail;

import jakarta.mail.MessagingException;
import jakarta.mail.internet.MimeMessage;
import java.io.UnsupportedEncodingException;
import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import org.leafward.accounts.Person;
import org.leafward.accounts.PersonId;
import org.leafward.reminders.Message;
import org.leafward.reminders.Wishes;
import org.leafward.reminders.channel.Channel;
import org.leafward.reminders.channel.Delivery;
import org.leafward.reminders.channel.Delivery.Outcome;
import org.leafward.reminders.core.OneLine;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.mail.MailException;
import org.springframework.mail.javamail.JavaMailSender;
import org.springframework.stereotype.Component;

/**
 * Sends by SMTP when a mail server is configured ({@code spring.mail.host}); keeps the
 * mail otherwise.
 */
@Component
public class MailChannel implements Channel {

	private final ObjectProvider<JavaMailSender> senders;

	/**
	 * Creates the channel.
	 * @param senders the mail server's client, if there is one
	 */
	public MailChannel(ObjectProvider<JavaMailSender> senders) {
		this.senders = senders;
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
		people.forEach((person) -> person.mailbox().ifPresent((address) -> addresses.put(person.id(), address)));
		return addresses;
	}

	@Override
	public Delivery deliver(Message mail) {
		JavaMailSender sender = this.senders.getIfAvailable();
		if (sender == null) {
			return Delivery.of(Outcome.KEPT);
		}
		MimeMessage message = sender.createMimeMessage();
		try {
			MimeForm.write(mail, message);
		}
		catch (MessagingException | UnsupportedEncodingException ex) {
			return new Delivery(Outcome.REFUSED, OneLine.of("can't be written as a mail: " + ex.getMessage()));
		}
		try {
			sender.send(message);
			return Delivery.of(Outcome.TAKEN);
		}
		catch (MailException ex) {
			return SmtpTrouble.judge(ex);
		}
	}

}
