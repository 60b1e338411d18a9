package org.leafward.reminders.channel.push;

import java.time.Clock;
import org.leafward.reminders.core.SenderAddress;
import org.leafward.reminders.core.ServerContact;
import org.leafward.reminders.store.PushTable;
import org.leafward.reminders.store.ServerKeyTable;
import org.springframework.beans.factory.annotation.Qualifier;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.web.client.RestClient;

/** Wires what takes settings. */
@Configuration(proxyBeanMethods = false)
class PushConfiguration {

	@Bean
	PushChannel pushChannel(PushTable table, ServerKeyTable keys, @Qualifier("strangers") RestClient.Builder http,
			@Value("${leafward.http.contact:}") String contact, @Value("${leafward.base-url}") String baseUrl,
			@Value("${leafward.mail.from}") String from, Clock clock) {
		return new PushChannel(table,
				new PushPost(http.build(), keys, ServerContact.of(contact, baseUrl, SenderAddress.of(from)), clock),
				clock);
	}

}
