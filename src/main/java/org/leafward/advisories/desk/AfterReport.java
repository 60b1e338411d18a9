package org.leafward.advisories.desk;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.advisories.Advisories;
import org.leafward.advisories.Advisory;
import org.leafward.advisories.Deliveries;
import org.leafward.advisories.Deliveries.Delivered;
import org.leafward.advisories.Questions;
import org.leafward.advisories.core.chain.Message;
import org.leafward.advisories.shelf.Counts;
import org.leafward.advisories.shelf.Chain;
import org.leafward.advisories.shelf.Past;
import org.leafward.care.WorkShares;
import org.leafward.measure.DayWindow;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Service;

/** What became of an advisory. */
@Service
public class AfterReport {

	/** People of one question to the tasks. */
	private static final int STEP = 5_000;

	private final Past past;

	private final Advisories advisories;

	private final WorkShares tasks;

	private final ObjectProvider<Deliveries> deliveries;

	private final ObjectProvider<Questions> questions;

	private final Clock clock;

	AfterReport(Past past, Advisories advisories, WorkShares tasks, ObjectProvider<Deliveries> deliveries,
			ObjectProvider<Questions> questions, Clock clock) {
		this.past = past;
		this.advisories = advisories;
		this.tasks = tasks;
		this.deliveries = deliveries;
		this.questions = questions;
		this.clock = clock;
	}

	/**
	 * What became of an advisory.
	 *
	 * @param advisory the advisory
	 * @param messages its messages
	 * @param reach whom its first message concerned; null until they are counted
	 * @param told what became of messages to people, by the way; null where nothing tells
	 * it
	 * @param making whether more of them are made
	 * @param tasks tasks of the work that it asks for; null where it asks for none
	 * @param questions questions that came in its counties while it was in force; null
	 * where nothing tells it
	 */
	public record After(Advisory advisory, List<Message> messages, @Nullable Counts reach,
			@Nullable SortedMap<String, Delivered> told, boolean making, WorkShares.@Nullable Share tasks,
			@Nullable Long questions) {

		public After {
			messages = List.copyOf(messages);
		}

		/**
		 * What became of all messages to people.
		 * @return null where nothing tells it
		 */
		public @Nullable Delivered allTold() {
			return (this.told != null) ? this.told.values().stream().reduce(Delivered.NONE, Delivered::with) : null;
		}

	}

	/**
	 * What became of an advisory, the tasks included, which are asked of all the people
	 * concerned.
	 * @param chain the advisory
	 * @return as of now
	 */
	public After of(Chain chain) {
		return of(chain, true);
	}

	/**
	 * What became of an advisory.
	 * @param chain the advisory
	 * @param withTasks whether its tasks are counted
	 * @return as of now
	 */
	public After of(Chain chain, boolean withTasks) {
		Advisory advisory = chain.at(this.clock.instant());
		Optional<Counts> reach = this.past.reach(chain.messages().get(0).id());
		return new After(advisory, chain.messages(), reach.orElse(null), told(advisory),
				this.deliveries.orderedStream().anyMatch((one) -> one.making(advisory.id())),
				(withTasks && !advisory.works().isEmpty()) ? tasks(advisory) : null, asked(chain, advisory));
	}

	private @Nullable SortedMap<String, Delivered> told(Advisory advisory) {
		List<Deliveries> all = this.deliveries.orderedStream().toList();
		if (all.isEmpty()) {
			return null;
		}
		SortedMap<String, Delivered> told = new TreeMap<>();
		all.forEach((one) -> one.of(advisory.id()).forEach((way, number) -> told.merge(way, number, Delivered::with)));
		return told;
	}

	private @Nullable Long asked(Chain chain, Advisory advisory) {
		List<Questions> all = this.questions.orderedStream().toList();
		OptionalLong sum = all.isEmpty() ? OptionalLong.empty()
				: OptionalLong.of(all.stream()
					.mapToLong((one) -> one.asked(chain.links().counties(), advisory.first(), advisory.expires()))
					.sum());
		return sum.isPresent() ? sum.getAsLong() : null;
	}

	private WorkShares.Share tasks(Advisory advisory) {
		// What it asks for may be done from the day on which it was sent.
		LocalDate from = LocalDate.ofInstant(advisory.first(), advisory.zone());
		Instant end = advisory.expires().isAfter(advisory.first()) ? advisory.expires() : advisory.first();
		LocalDate to = LocalDate.ofInstant(end, advisory.zone());
		DayWindow days = new DayWindow(from, to.isBefore(from) ? from : to);
		WorkShares.Share share = WorkShares.Share.NONE;
		PersonId after = null;
		List<PersonId> people = this.advisories.concerned(advisory.id(), after, STEP);
		while (!people.isEmpty()) {
			share = share.with(this.tasks.of(people, advisory.works(), days));
			after = people.get(people.size() - 1);
			people = (people.size() < STEP) ? List.of() : this.advisories.concerned(advisory.id(), after, STEP);
		}
		return share;
	}

}
