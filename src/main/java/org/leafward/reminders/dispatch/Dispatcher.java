package org.leafward.reminders.dispatch;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.People;
import org.leafward.accounts.Person;
import org.leafward.accounts.PersonId;
import org.leafward.care.TaskCalendar;
import org.leafward.reminders.Message;
import org.leafward.reminders.ReminderState;
import org.leafward.reminders.channel.Channel;
import org.leafward.reminders.channel.Delivery;
import org.leafward.reminders.channel.Delivery.Outcome;
import org.leafward.reminders.store.ClaimTable;
import org.leafward.reminders.store.Claimed;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.transaction.support.TransactionSynchronizationManager;

/**
 * Sends what is due: claims the due rows of one person, writes one mail about them, hands
 * it on, records what came of it; then the next person. Claiming and recording are short
 * transactions and the mail leaves between them. A node that dies in between leaves a
 * claim that ends by itself; if the mail had left, the second one carries the same
 * Message-ID.
 */
public class Dispatcher {

	static final Duration TIME_BOX = Duration.ofSeconds(25);

	/** Far longer than one mail can take with the time-outs of the mail client. */
	static final Duration CLAIM = Duration.ofMinutes(10);

	/** Tasks in one mail; a person with more gets a second one. */
	static final int MOST_TASKS = 50;

	private static final int MOST_MAILS = 10_000;

	private static final Logger LOG = LoggerFactory.getLogger(Dispatcher.class);

	private final ClaimTable claims;

	private final People people;

	private final TaskCalendar calendar;

	private final Materialiser materialiser;

	private final Channel channel;

	private final Ledger ledger;

	private final Clock clock;

	/**
	 * Creates the service.
	 * @param claims rows that are due
	 * @param people whose address to write to
	 * @param calendar what to write about
	 * @param materialiser makes rows anew for tasks that moved
	 * @param channel where mails go
	 * @param ledger writes down what happens to a mail
	 * @param clock what time it is
	 */
	public Dispatcher(ClaimTable claims, People people, TaskCalendar calendar, Materialiser materialiser,
			Channel channel, Ledger ledger, Clock clock) {
		this.claims = claims;
		this.people = people;
		this.calendar = calendar;
		this.materialiser = materialiser;
		this.channel = channel;
		this.ledger = ledger;
		this.clock = clock;
	}

	/**
	 * Sends until nothing is due, the time box ends or nobody can be reached.
	 * @return how many mails were handed on or kept
	 */
	public int run() {
		Instant end = this.clock.instant().plus(TIME_BOX);
		int mails = 0;
		for (int round = 0; round < MOST_MAILS && this.clock.instant().isBefore(end); round++) {
			UUID token = UUID.randomUUID();
			Instant now = this.clock.instant();
			List<Claimed> rows = this.claims.claim(now, now.plus(CLAIM), token, MOST_TASKS);
			if (rows.isEmpty()) {
				break;
			}
			for (List<Claimed> group : byMail(rows)) {
				@Nullable Outcome outcome = guarded(token, group);
				if (outcome == Outcome.TAKEN || outcome == Outcome.KEPT) {
					mails++;
				}
				if (outcome == Outcome.UNREACHABLE) {
					this.ledger.putBack(token, rows);
					return mails;
				}
			}
		}
		return mails;
	}

	/**
	 * Puts back what a dead node had claimed.
	 * @return how many rows
	 */
	public int reap() {
		int rows = this.claims.reap(this.clock.instant());
		if (rows > 0) {
			LOG.warn("{} reminders were claimed by a node that did not finish them; they are sent again", rows);
		}
		return rows;
	}

	/** Rows of an earlier mail go out with that mail; new ones together. */
	private static List<List<Claimed>> byMail(List<Claimed> rows) {
		Map<Optional<UUID>, List<Claimed>> groups = new LinkedHashMap<>();
		rows.forEach(
				(row) -> groups.computeIfAbsent(Optional.ofNullable(row.mail()), (mail) -> new ArrayList<>()).add(row));
		return List.copyOf(groups.values());
	}

	/** Trouble in here must not hold up everybody behind this person. */
	private @Nullable Outcome guarded(UUID token, List<Claimed> rows) {
		try {
			return send(token, rows);
		}
		catch (RuntimeException ex) {
			LOG.error("could not send the reminders of person {}", rows.get(0).person(), ex);
			this.ledger.later(token, rows, "internal trouble: " + ex.getClass().getSimpleName());
			return null;
		}
	}

	private @Nullable Outcome send(UUID token, List<Claimed> rows) {
		PersonId id = rows.get(0).person();
		Optional<Person> person = this.people.find(id);
		if (person.flatMap(Person::mailbox).isEmpty()) {
			this.ledger.end(token, id, rows, ReminderState.WITHDRAWN);
			return null;
		}
		Sorted sorted = Sorted.of(rows, this.calendar, this.clock.instant());
		this.ledger.end(token, id, sorted.gone(), ReminderState.WITHDRAWN);
		this.ledger.end(token, id, sorted.late(), ReminderState.EXPIRED);
		if (sorted.moved()) {
			this.materialiser.person(id);
		}
		if (sorted.good().isEmpty()) {
			return null;
		}
		Optional<Message> mail = this.ledger.open(token, person.get(), sorted);
		if (mail.isEmpty()) {
			return null;
		}
		if (TransactionSynchronizationManager.isActualTransactionActive()) {
			throw new IllegalStateException("a mail must not leave inside a transaction");
		}
		Delivery delivery = this.channel.deliver(mail.get());
		this.ledger.close(token, mail.get(), sorted.good(), delivery);
		return delivery.outcome();
	}

}
