package org.leafward.reminders.dispatch;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.People;
import org.leafward.accounts.Person;
import org.leafward.accounts.PersonId;
import org.leafward.advisories.Advisories;
import org.leafward.advisories.Advisory;
import org.leafward.measure.DayWindow;
import org.leafward.reminders.Wishes;
import org.leafward.reminders.channel.Channel;
import org.leafward.reminders.core.AdvisoryDue;
import org.leafward.reminders.core.DueTimes;
import org.leafward.reminders.core.Known;
import org.leafward.reminders.store.AdvisoryTable;
import org.leafward.reminders.store.AdvisoryTable.Kind;
import org.leafward.reminders.store.AdvisoryTable.NewRow;
import org.leafward.reminders.store.AdvisoryTable.Phase;
import org.leafward.reminders.store.AdvisoryTable.Round;
import org.leafward.reminders.store.MessageTable;
import org.leafward.reminders.store.OfAdvisory;
import org.leafward.reminders.store.ReminderTable;
import org.leafward.reminders.store.WishesTable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionOperations;

/**
 * Makes the rows of advisories: a page of people in a transaction that also notes how far
 * it came, so a node that dies loses a page at most and another goes on there. A message
 * is made by one node at a time, and nobody gets a second row of it.
 */
@Service
public class AdvisoryTelling {

	static final Duration TIME_BOX = Duration.ofSeconds(25);

	/** People of a transaction. */
	static final int PAGE = 200;

	/** People asked for at once: finding them costs nearly the same for a few. */
	private static final int FETCH = 5_000;

	/** A message that can't be found for so long is not to be had any more. */
	private static final Duration LOST = Duration.ofHours(1);

	private static final Logger LOG = LoggerFactory.getLogger(AdvisoryTelling.class);

	private final Advisories advisories;

	private final People people;

	private final List<Channel> channels;

	private final WishesTable wishes;

	private final ReminderTable reminders;

	private final AdvisoryTable table;

	private final MessageTable messages;

	private final TransactionOperations transactions;

	private final Clock clock;

	/**
	 * Creates the service.
	 * @param advisories what was sent, and whom it concerns
	 * @param people who gets it
	 * @param channels the ways to tell
	 * @param wishes how people want to be told
	 * @param reminders rows that people have
	 * @param table the rows to make
	 * @param messages where messages wait that may have lost their use
	 * @param transactions one for each page of people
	 * @param clock what time it is
	 */
	public AdvisoryTelling(Advisories advisories, People people, List<Channel> channels, WishesTable wishes,
			ReminderTable reminders, AdvisoryTable table, MessageTable messages, TransactionOperations transactions,
			Clock clock) {
		this.advisories = advisories;
		this.people = people;
		this.channels = channels;
		this.wishes = wishes;
		this.reminders = reminders;
		this.table = table;
		this.messages = messages;
		this.transactions = transactions;
		this.clock = clock;
	}

	/**
	 * Notes that a message is to be told. The rows are made by {@link #run}.
	 * @param advisory the advisory
	 * @param message its message
	 * @param kind what the message did
	 * @param sentAt when it was sent
	 */
	public void begin(UUID advisory, UUID message, Kind kind, Instant sentAt) {
		this.table.begin(message, advisory, kind, sentAt, this.clock.instant());
	}

	/**
	 * Makes rows until all are made or the time box ends.
	 * @return how many were made
	 */
	public int run() {
		return run(Integer.MAX_VALUE);
	}

	/**
	 * Makes the rows of some pages.
	 * @param pages how many at most
	 * @return how many rows were made
	 */
	int run(int pages) {
		Instant end = this.clock.instant().plus(TIME_BOX);
		Run run = new Run();
		int made = 0;
		for (int page = 0; page < pages && this.clock.instant().isBefore(end); page++) {
			int rows = Objects.requireNonNull(this.transactions.execute((status) -> run.page()));
			if (rows < 0) {
				break;
			}
			made += rows;
		}
		return made;
	}

	/** One run of one node. */
	private final class Run {

		private static final int NOTHING_LEFT = -1;

		/** Messages that this node doesn't know yet, since it looks now and then. */
		private final Set<UUID> unknown = new HashSet<>();

		/** People behind where {@link #aheadOf} has come. */
		private List<PersonId> ahead = List.of();

		private @Nullable Round aheadOf;

		int page() {
			Round round = AdvisoryTelling.this.table.take(this.unknown).orElse(null);
			if (round == null) {
				return NOTHING_LEFT;
			}
			Instant now = AdvisoryTelling.this.clock.instant();
			Optional<Advisory> found = AdvisoryTelling.this.advisories.find(round.advisory());
			Advisory advisory = found.filter((one) -> !one.sent().isBefore(round.sentAt())).orElse(null);
			if (advisory == null) {
				if (round.sentAt().isBefore(now.minus(LOST))) {
					LOG.error("message {} of advisory {} can't be found; nobody is told of it", round.message(),
							round.advisory());
					AdvisoryTelling.this.table.phase(round.message(), Phase.DONE, now);
				}
				this.unknown.add(round.message());
				return 0;
			}
			if (!advisory.message().equals(round.message()) || !now.isBefore(advisory.expires())) {
				// A later message tells whom this one has not reached, or it is over.
				AdvisoryTelling.this.table.phase(round.message(), Phase.DONE, now);
				return 0;
			}
			return page(round, advisory, now);
		}

		private int page(Round round, Advisory advisory, Instant now) {
			Map<PersonId, Set<String>> page = (round.phase() == Phase.TOLD)
					? AdvisoryTelling.this.table.told(advisory.id(), advisory.number(), round.reached(), PAGE)
					: concerned(round);
			if (page.isEmpty()) {
				boolean more = round.phase() == Phase.TOLD && round.kind() != Kind.CANCELLED;
				AdvisoryTelling.this.table.phase(round.message(), more ? Phase.CONCERNED : Phase.DONE, now);
				return 0;
			}
			int rows = tell(page, round, advisory, now);
			PersonId last = new ArrayList<>(page.keySet()).get(page.size() - 1);
			AdvisoryTelling.this.table.reached(round.message(), last, page.size(), rows);
			this.aheadOf = new Round(round.message(), round.advisory(), round.kind(), round.sentAt(), round.phase(),
					last);
			return rows;
		}

		/** The next people, of those at hand when nobody else went on meanwhile. */
		private Map<PersonId, Set<String>> concerned(Round round) {
			if (this.ahead.isEmpty() || !round.equals(this.aheadOf)) {
				this.ahead = AdvisoryTelling.this.advisories.concernedNow(round.advisory(), round.reached(), FETCH);
			}
			Map<PersonId, Set<String>> page = new LinkedHashMap<>();
			this.ahead.stream().limit(PAGE).forEach((one) -> page.put(one, Set.of()));
			this.ahead = this.ahead.subList(page.size(), this.ahead.size());
			return page;
		}

	}

	/**
	 * Makes the rows of some people.
	 * @param page the channels through which each was told before; none for who wasn't
	 */
	private int tell(Map<PersonId, Set<String>> page, Round round, Advisory advisory, Instant now) {
		Set<PersonId> ids = page.keySet();
		// As for tasks: of two at once the later sees what the earlier wrote.
		this.reminders.lock(ids);
		Set<PersonId> changed = (advisory.number() > 1) ? this.table.supersede(advisory.id(), advisory.number(), ids)
				: Set.of();
		if (!changed.isEmpty()) {
			this.messages.dropUnwanted(changed);
		}
		Map<PersonId, Person> found = this.people.find(ids);
		Map<PersonId, Wishes> wished = this.wishes.of(ids);
		// Any day that it is anywhere, yesterday's to tomorrow's.
		LocalDate day = LocalDate.ofInstant(now, ZoneOffset.UTC);
		Map<PersonId, List<Known>> known = this.reminders.known(ids, new DayWindow(day.minusDays(2), day.plusDays(2)));
		Map<String, Set<PersonId>> reached = this.channels.stream()
			.collect(Collectors.toMap(Channel::code, (channel) -> channel.addresses(found.values()).keySet()));
		boolean before = round.phase() == Phase.TOLD;
		List<NewRow> rows = new ArrayList<>();
		page.forEach((id, told) -> reached.forEach((channel, people) -> {
			Person person = found.get(id);
			if (person == null || !people.contains(id) || before && !told.contains(channel)) {
				return;
			}
			List<Known> own = known.getOrDefault(id, List.of())
				.stream()
				.filter((row) -> row.channel().equals(channel))
				.toList();
			new AdvisoryDue(person.zone(), now, wished.getOrDefault(id, Wishes.USUAL)).turn(channel, advisory, own)
				.ifPresent((turn) -> rows.add(new NewRow(id, channel,
						new OfAdvisory(advisory.id(), advisory.number(), AdvisoryTable.news(round.kind(), before)),
						turn, firstTry(id, turn, now))));
		}));
		return this.table.add(rows);
	}

	/** Mornings are spread as those of tasks are; what can't wait isn't. */
	private static Instant firstTry(PersonId person, AdvisoryDue.Turn turn, Instant now) {
		if (!turn.dueAt().isAfter(now)) {
			return turn.dueAt();
		}
		return turn.dueAt()
			.plusSeconds(Math.floorMod(person.value().getMostSignificantBits(), DueTimes.SPREAD.toSeconds()));
	}

}
