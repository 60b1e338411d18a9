package org.leafward.reminders.channel.mail;

import jakarta.mail.MessagingException;
import jakarta.mail.internet.MimeMessage;
import java.io.UnsupportedEncodingException;
import org.leafward.reminders.Message;
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
