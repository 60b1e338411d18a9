package org.leafward.reminders.channel.mail;

import org.springframework.beans.factory.annotation.Value;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Reads the settings of mails, so that a mistake in them is told at the start. */
@Configuration(proxyBeanMethods = false)
class MailConfiguration {

	@Bean
	MailSettings mailSettings(@Value("${leafward.mail.from}") String from,
			@Value("${leafward.mail.reply-to}") String replyTo, @Value("${leafward.mail.bounces}") String bounces) {
		return MailSettings.of(from, replyTo, bounces);
	}

}
