package org.leafward.reminders.dispatch;

import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.ThreadLocalRandom;
import org.leafward.accounts.People;
import org.leafward.advisories.Advisories;
import org.leafward.care.TaskCalendar;
import org.leafward.reminders.channel.Channel;
import org.leafward.reminders.core.Links;
import org.leafward.reminders.core.SenderAddress;
import org.leafward.reminders.core.Writing;
import org.leafward.reminders.store.ClaimTable;
import org.leafward.reminders.store.MessageTable;
import org.leafward.reminders.store.WishesTable;
import org.leafward.reminders.words.MessageWords;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.transaction.support.TransactionOperations;

/** Wires what takes settings or chance. */
@Configuration(proxyBeanMethods = false)
class DispatchConfiguration {

	@Bean
	Writing writing(MessageWords words, Links links) {
		return (content, speech) -> words.write(content, speech, links);
	}

	@Bean
	Ledger reminderLedger(ClaimTable claims, MessageTable messages, TransactionOperations transactions, Writing writing,
			@Value("${leafward.mail.from}") String from, Clock clock) {
		return new Ledger(claims, messages, transactions, writing, SenderAddress.of(from),
				() -> ThreadLocalRandom.current().nextDouble(), clock);
	}

	@Bean
	Dispatcher reminderDispatcher(ClaimTable claims, People people, TaskCalendar calendar, WishesTable wishes,
			Advisories advisories, Materialiser materialiser, List<Channel> channels, Ledger ledger,
			@Value("${leafward.reminders.send-threads:4}") int threads,
			@Value("${leafward.reminders.claim:10m}") Duration claim, DispatchWatch watch, Clock clock) {
		return new Dispatcher(claims, new Drafts(people, calendar, channels, wishes, advisories), materialiser,
				channels, ledger, threads, claim, watch, clock);
	}

}
