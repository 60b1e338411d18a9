package org.leafward.reminders.dispatch;

import java.time.Clock;
import java.util.concurrent.ThreadLocalRandom;
import org.leafward.accounts.People;
import org.leafward.care.TaskCalendar;
import org.leafward.reminders.channel.Channel;
import org.leafward.reminders.core.SenderAddress;
import org.leafward.reminders.store.ClaimTable;
import org.leafward.reminders.store.MessageTable;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.transaction.support.TransactionOperations;

/** Wires what takes settings or chance. */
@Configuration(proxyBeanMethods = false)
class DispatchConfiguration {

	@Bean
	Ledger reminderLedger(ClaimTable claims, MessageTable mails, TransactionOperations transactions,
			@Value("${leafward.mail.from}") String from, @Value("${leafward.base-url}") String baseUrl, Clock clock) {
		return new Ledger(claims, mails, transactions, SenderAddress.of(from), baseUrl.replaceAll("/+$", ""),
				() -> ThreadLocalRandom.current().nextDouble(), clock);
	}

	@Bean
	Dispatcher reminderDispatcher(ClaimTable claims, People people, TaskCalendar calendar, Materialiser materialiser,
			Channel channel, Ledger ledger, Clock clock) {
		return new Dispatcher(claims, people, calendar, materialiser, channel, ledger, clock);
	}

}
