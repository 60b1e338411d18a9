package org.leafward.reminders.dispatch;

import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.DoubleSupplier;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.Person;
import org.leafward.accounts.PersonId;
import org.leafward.reminders.Message;
import org.leafward.reminders.MessageState;
import org.leafward.reminders.MessageText;
import org.leafward.reminders.ReminderState;
import org.leafward.reminders.Series;
import org.leafward.reminders.channel.Delivery;
import org.leafward.reminders.channel.Delivery.Outcome;
import org.leafward.reminders.core.AdvisoryNotice;
import org.leafward.reminders.core.BackOff;
import org.leafward.reminders.core.OneLine;
import org.leafward.reminders.core.ReminderItem;
import org.leafward.reminders.core.SenderAddress;
import org.leafward.reminders.core.Writing;
import org.leafward.reminders.dispatch.Drafts.Draft;
import org.leafward.reminders.dispatch.Drafts.Sorted;
import org.leafward.reminders.store.ClaimTable;
import org.leafward.reminders.store.ClaimTable.End;
import org.leafward.reminders.store.Claimed;
import org.leafward.reminders.store.MessageTable;
import org.leafward.reminders.store.MessageTable.Record;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.transaction.support.TransactionOperations;

/**
 * Writes down what happens to messages and their rows, always both in one transaction.
 */
public class Ledger {

	private static final Logger LOG = LoggerFactory.getLogger(Ledger.class);

	private final ClaimTable claims;

	private final MessageTable messages;

	private final TransactionOperations transactions;

	private final Writing writing;

	private final SenderAddress sender;

	private final DoubleSupplier random;

	private final Clock clock;

	/**
	 * Creates the ledger.
	 * @param claims the rows
	 * @param messages the messages
	 * @param transactions where both are written
	 * @param writing finds the words
	 * @param sender who messages come from
	 * @param random values from 0 (inclusive) to 1 (exclusive), to spread tries
	 * @param clock what time it is
	 */
	public Ledger(ClaimTable claims, MessageTable messages, TransactionOperations transactions, Writing writing,
			SenderAddress sender, DoubleSupplier random, Clock clock) {
		this.claims = claims;
		this.messages = messages;
		this.transactions = transactions;
		this.writing = writing;
		this.sender = sender;
		this.random = random;
		this.clock = clock;
	}

	/**
	 * A message that may leave now.
	 *
	 * @param message the message
	 * @param rows the rows it answers
	 */
	record Outgoing(Message message, List<Claimed> rows) {
	}

	/**
	 * What came of handing a message on.
	 *
	 * @param outgoing the message
	 * @param delivery what came of it
	 */
	record Result(Outgoing outgoing, Delivery delivery) {
	}

	/**
	 * Ends what is not to be sent and writes messages before they leave.
	 * @return those whose claim still holds; without those that can't be written
	 */
	List<Outgoing> open(UUID token, Sorted sorted) {
		List<Outgoing> written = write(token, sorted.good());
		List<Outgoing> ours = this.transactions.execute((status) -> {
			end(token, sorted);
			this.claims.postpone(token, sorted.postponed());
			if (written.isEmpty()) {
				return List.<Outgoing>of();
			}
			this.messages.save(written.stream().map(Outgoing::message).toList());
			Set<UUID> held = this.claims.held(token,
					written.stream().flatMap((out) -> out.rows().stream()).map(Claimed::id).toList());
			return written.stream()
				.filter((out) -> held.containsAll(out.rows().stream().map(Claimed::id).toList()))
				.toList();
		});
		if (ours == null || ours.size() < written.size()) {
			LOG.warn("a claim ended before its messages could leave");
		}
		return (ours != null) ? ours : List.of();
	}

	private void end(UUID token, Sorted sorted) {
		if (sorted.ended().isEmpty()) {
			return;
		}
		Map<UUID, End> ends = new LinkedHashMap<>();
		sorted.ended().forEach((row, state) -> ends.put(row.id(), End.of(state)));
		this.claims.finish(token, ends);
		this.messages.dropUnwanted(people(sorted.ended().keySet()));
	}

	private List<Outgoing> write(UUID token, List<Draft> drafts) {
		Map<UUID, Message> earlier = this.messages.find(drafts.stream().map(Draft::message).toList());
		List<Outgoing> written = new ArrayList<>();
		for (Draft draft : drafts) {
			try {
				written.add(new Outgoing(message(draft, earlier.get(draft.message())), draft.rows()));
			}
			catch (RuntimeException ex) {
				// Trouble in here must not hold up everybody behind this person.
				LOG.error("could not write to person {}", draft.content().person().id(), ex);
				later(token, draft.rows(), "internal trouble: " + ex.getClass().getSimpleName());
			}
		}
		return written;
	}

	private Message message(Draft draft, @Nullable Message earlier) {
		Person person = draft.content().person();
		MessageText words = this.writing.write(draft.content(), draft.wishes().speech());
		UUID id = draft.message();
		String messageId = (earlier != null) ? earlier.messageId() : "<%s@%s>".formatted(id, this.sender.domain());
		return new Message(id, person.id(), draft.content().channel(), draft.content().series(), this.sender.line(),
				draft.address(), OneLine.of(person.name()), words, thread(draft), messageId, MessageState.WAITING,
				(earlier != null) ? earlier.createdAt() : this.clock.instant(), null, null,
				(earlier != null) ? earlier.uncertain() : 0);
	}

	/**
	 * What is about one task or one advisory stands with the rest about it; a digest
	 * stands alone.
	 */
	private @Nullable String thread(Draft draft) {
		List<ReminderItem> items = draft.content().items();
		List<AdvisoryNotice> notices = draft.content().notices();
		if (draft.content().series() == Series.ADVISORY) {
			return (notices.size() == 1)
					? "<advisory-%s@%s>".formatted(notices.get(0).advisory().id(), this.sender.domain()) : null;
		}
		boolean one = items.size() == 1 && draft.content().series() == Series.SINGLE;
		return one ? "<task-%s@%s>".formatted(items.get(0).task().id(), this.sender.domain()) : null;
	}

	/** Writes down what came of handing messages on. */
	void close(UUID token, Collection<Result> results) {
		this.transactions.executeWithoutResult((status) -> {
			Map<UUID, End> ends = new LinkedHashMap<>();
			List<Record> records = new ArrayList<>();
			List<Result> back = new ArrayList<>();
			for (Result result : results) {
				ReminderState state = rowState(result);
				if (state == ReminderState.PENDING) {
					back.add(result);
					continue;
				}
				result.outgoing()
					.rows()
					.forEach((row) -> ends.put(row.id(), new End(state, result.delivery().reason())));
			}
			Set<UUID> ours = this.claims.finish(token, ends);
			for (Result result : results) {
				if (!back.contains(result)) {
					boolean held = result.outgoing().rows().stream().anyMatch((row) -> ours.contains(row.id()));
					record(result, held).ifPresent(records::add);
				}
			}
			back.forEach((result) -> records.add(waiting(token, result)));
			this.messages.record(records);
			if (!back.isEmpty()) {
				this.messages.dropUnwanted(back.stream().map((each) -> each.outgoing().message().person()).toList());
			}
		});
	}

	private Optional<Record> record(Result result, boolean held) {
		Message message = result.outgoing().message();
		Delivery delivery = result.delivery();
		if (!held) {
			LOG.warn("the claim of message {} ended while it left; it may go out twice", message.id());
			return Optional.empty();
		}
		if (delivery.outcome() == Outcome.REFUSED || delivery.outcome() == Outcome.OUR_FAULT) {
			LOG.error("message {} was refused for good: {}", message.id(), delivery.reason());
		}
		boolean taken = delivery.outcome() == Outcome.TAKEN || delivery.outcome() == Outcome.UNCERTAIN;
		return Optional.of(new Record(message.id(), messageState(delivery.outcome()),
				taken ? this.clock.instant() : null, delivery.reason(), delivery.outcome() == Outcome.UNCERTAIN));
	}

	private Record waiting(UUID token, Result result) {
		Message message = result.outgoing().message();
		String reason = String.valueOf(result.delivery().reason());
		LOG.info("message {} was not taken: {}", message.id(), reason);
		back(token, result.outgoing().rows(), reason);
		return new Record(message.id(), MessageState.WAITING, null, reason,
				result.delivery().outcome() == Outcome.UNCERTAIN);
	}

	/** Puts rows back after trouble of our own. */
	void later(UUID token, Collection<Claimed> rows, String reason) {
		this.transactions.executeWithoutResult((status) -> {
			back(token, rows, reason);
			this.messages.dropUnwanted(people(rows));
		});
	}

	/** Puts back, for the next run, those of the rows that are still claimed. */
	void putBack(UUID token, Collection<Claimed> rows) {
		Instant now = this.clock.instant();
		rows.forEach((row) -> this.claims.retry(token, row.id(), now, "not tried: nobody could be reached"));
	}

	private void back(UUID token, Collection<Claimed> rows, String reason) {
		int attempts = rows.stream().mapToInt(Claimed::attempts).max().orElse(1);
		double random = this.random.getAsDouble();
		for (Claimed row : rows) {
			Optional<Instant> next = BackOff.nextTry(this.clock.instant(), Math.max(1, attempts), random,
					row.expiresAt());
			if (next.isPresent()) {
				this.claims.retry(token, row.id(), next.get(), reason);
			}
			else {
				this.claims.finish(token, Map.of(row.id(), new End(ReminderState.EXPIRED, reason)));
			}
		}
	}

	private static Set<PersonId> people(Collection<Claimed> rows) {
		return rows.stream().map(Claimed::person).collect(Collectors.toSet());
	}

	/**
	 * A message that left without word of what came of it is tried once more, under the
	 * same Message-ID; the second time it counts as sent.
	 */
	private static ReminderState rowState(Result result) {
		return switch (result.delivery().outcome()) {
			case TAKEN -> ReminderState.SENT;
			case KEPT -> ReminderState.KEPT;
			case REFUSED, OUR_FAULT -> ReminderState.FAILED;
			case LATER, UNREACHABLE -> ReminderState.PENDING;
			case UNCERTAIN ->
				(result.outgoing().message().uncertain() > 0) ? ReminderState.SENT : ReminderState.PENDING;
		};
	}

	private static MessageState messageState(Outcome outcome) {
		return switch (outcome) {
			case TAKEN, UNCERTAIN -> MessageState.SENT;
			case KEPT -> MessageState.KEPT;
			case REFUSED, OUR_FAULT -> MessageState.FAILED;
			case LATER, UNREACHABLE -> MessageState.WAITING;
		};
	}

}
