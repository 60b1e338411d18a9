package org.leafward.reminders.dispatch;

import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.DoubleSupplier;
import org.leafward.accounts.Person;
import org.leafward.accounts.PersonId;
import org.leafward.reminders.Message;
import org.leafward.reminders.MessageState;
import org.leafward.reminders.ReminderState;
import org.leafward.reminders.channel.Delivery;
import org.leafward.reminders.channel.Delivery.Outcome;
import org.leafward.reminders.core.BackOff;
import org.leafward.reminders.core.MessageText;
import org.leafward.reminders.core.OneLine;
import org.leafward.reminders.core.ReminderText;
import org.leafward.reminders.core.SenderAddress;
import org.leafward.reminders.store.ClaimTable;
import org.leafward.reminders.store.Claimed;
import org.leafward.reminders.store.MessageTable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.transaction.support.TransactionOperations;

/** Writes down what happens to a mail and its rows, always both in one transaction. */
public class Ledger {

	private static final Logger LOG = LoggerFactory.getLogger(Ledger.class);

	private final ClaimTable claims;

	private final MessageTable mails;

	private final TransactionOperations transactions;

	private final SenderAddress sender;

	private final String baseUrl;

	private final DoubleSupplier random;

	private final Clock clock;

	/**
	 * Creates the ledger.
	 * @param claims the rows
	 * @param mails the mails
	 * @param transactions where both are written
	 * @param sender who mails come from
	 * @param baseUrl address of this server without a slash at its end
	 * @param random values from 0 (inclusive) to 1 (exclusive), to spread tries
	 * @param clock what time it is
	 */
	public Ledger(ClaimTable claims, MessageTable mails, TransactionOperations transactions, SenderAddress sender,
			String baseUrl, DoubleSupplier random, Clock clock) {
		this.claims = claims;
		this.mails = mails;
		this.transactions = transactions;
		this.sender = sender;
		this.baseUrl = baseUrl;
		this.random = random;
		this.clock = clock;
	}

	/** Ends rows that are not to be sent. */
	void end(UUID token, PersonId person, List<Claimed> rows, ReminderState state) {
		if (!rows.isEmpty()) {
			this.transactions.executeWithoutResult((status) -> {
				this.claims.finish(token, ids(rows), state, null);
				this.mails.dropUnwanted(person);
			});
		}
	}

	/**
	 * Writes the mail before it leaves.
	 * @return empty when the claim has ended meanwhile
	 */
	Optional<Message> open(UUID token, Person person, Sorted sorted) {
		MessageText text = ReminderText.of(sorted.items(), this.baseUrl);
		UUID earlier = sorted.good().get(0).mail();
		Message mail = ((earlier != null) ? this.mails.find(earlier) : Optional.<Message>empty())
			.map((known) -> mail(known.id(), known.messageId(), known.createdAt(), person, text))
			.orElseGet(() -> {
				UUID id = UUID.randomUUID();
				return mail(id, "<%s@%s>".formatted(id, this.sender.domain()), this.clock.instant(), person, text);
			});
		Boolean ours = this.transactions.execute((status) -> {
			this.mails.save(mail);
			boolean all = this.claims.attach(token, ids(sorted.good()), mail.id()) == sorted.good().size();
			if (!all) {
				status.setRollbackOnly();
			}
			return all;
		});
		if (!Boolean.TRUE.equals(ours)) {
			LOG.warn("a claim ended before its mail to person {} could leave", person.id());
			return Optional.empty();
		}
		return Optional.of(mail);
	}

	/** Writes down what came of handing it on. */
	void close(UUID token, Message mail, List<Claimed> rows, Delivery delivery) {
		this.transactions.executeWithoutResult((status) -> {
			if (delivery.outcome() == Outcome.LATER || delivery.outcome() == Outcome.UNREACHABLE) {
				LOG.info("mail {} was not taken: {}", mail.id(), delivery.reason());
				String reason = String.valueOf(delivery.reason());
				this.mails.record(mail.id(), MessageState.WAITING, null, reason);
				back(token, rows, reason);
				this.mails.dropUnwanted(mail.person());
				return;
			}
			int ours = this.claims.finish(token, ids(rows), rowState(delivery.outcome()), delivery.reason());
			if (ours == 0) {
				LOG.warn("the claim of mail {} ended while it left; it may go out twice", mail.id());
				return;
			}
			if (delivery.outcome() == Outcome.REFUSED) {
				LOG.error("mail {} was refused for good: {}", mail.id(), delivery.reason());
			}
			this.mails.record(mail.id(), mailState(delivery.outcome()),
					(delivery.outcome() == Outcome.TAKEN) ? this.clock.instant() : null, delivery.reason());
		});
	}

	/** Puts rows back after trouble of our own. */
	void later(UUID token, List<Claimed> rows, String reason) {
		this.transactions.executeWithoutResult((status) -> {
			back(token, rows, reason);
			this.mails.dropUnwanted(rows.get(0).person());
		});
	}

	/** Puts back, for the next run, those of the rows that are still claimed. */
	void putBack(UUID token, List<Claimed> rows) {
		Instant now = this.clock.instant();
		rows.forEach((row) -> this.claims.retry(token, row.id(), now, "not tried: no mail server could be reached"));
	}

	private void back(UUID token, List<Claimed> rows, String reason) {
		int attempts = rows.stream().mapToInt(Claimed::attempts).max().orElse(1);
		double random = this.random.getAsDouble();
		for (Claimed row : rows) {
			Optional<Instant> next = BackOff.nextTry(this.clock.instant(), attempts, random, row.expiresAt());
			if (next.isPresent()) {
				this.claims.retry(token, row.id(), next.get(), reason);
			}
			else {
				this.claims.finish(token, List.of(row.id()), ReminderState.EXPIRED, reason);
			}
		}
	}

	private Message mail(UUID id, String messageId, Instant createdAt, Person person, MessageText text) {
		return new Message(id, person.id(), this.sender.line(), person.mailbox().orElseThrow(), OneLine.of(person.name()),
				text.subject(), text.text(), text.html(), messageId, MessageState.WAITING, createdAt, null, null);
	}

	private static List<UUID> ids(List<Claimed> rows) {
		return rows.stream().map(Claimed::id).toList();
	}

	private static ReminderState rowState(Outcome outcome) {
		return switch (outcome) {
			case TAKEN -> ReminderState.SENT;
			case KEPT -> ReminderState.KEPT;
			case REFUSED -> ReminderState.FAILED;
			case LATER, UNREACHABLE -> ReminderState.PENDING;
		};
	}

	private static MessageState mailState(Outcome outcome) {
		return switch (outcome) {
			case TAKEN -> MessageState.SENT;
			case KEPT -> MessageState.KEPT;
			case REFUSED -> MessageState.FAILED;
			case LATER, UNREACHABLE -> MessageState.WAITING;
		};
	}

}
