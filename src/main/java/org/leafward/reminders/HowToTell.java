package org.leafward.reminders;

import java.time.Clock;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.leafward.accounts.Person;
import org.leafward.accounts.PersonId;
import org.leafward.reminders.dispatch.Materialiser;
import org.leafward.reminders.store.SuppressionTable;
import org.leafward.reminders.store.WishesTable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionOperations;

/**
 * How people want to be told. After a change the person's reminders are made anew before
 * the call returns; when that fails nothing has changed.
 */
@Service
public class HowToTell {

	private final WishesTable table;

	private final SuppressionTable suppressions;

	private final Materialiser materialiser;

	private final TransactionOperations transactions;

	private final Clock clock;

	HowToTell(WishesTable table, SuppressionTable suppressions, Materialiser materialiser,
			TransactionOperations transactions, Clock clock) {
		this.table = table;
		this.suppressions = suppressions;
		this.materialiser = materialiser;
		this.transactions = transactions;
		this.clock = clock;
	}

	/**
	 * What a person wants.
	 * @param person who
	 * @return {@link Wishes#USUAL} when they never chose
	 */
	public Wishes of(PersonId person) {
		return this.table.of(person);
	}

	/**
	 * Keeps what a person wants, but for the series that they left: those stay left,
	 * whatever the wishes say.
	 * @param person who
	 * @param wishes all the rest
	 */
	public void save(PersonId person, Wishes wishes) {
		change(person, () -> this.table.save(person, wishes));
	}

	/**
	 * Keeps what a person wants, with the series that they left.
	 * @param person who
	 * @param wishes all of it
	 */
	public void saveAll(PersonId person, Wishes wishes) {
		change(person, () -> {
			this.table.save(person, wishes);
			leaveOnly(person, wishes.stopped());
		});
	}

	/**
	 * Ends a pause today.
	 * @param person who is back
	 */
	public void endPause(PersonId person) {
		change(person, () -> this.table.endPause(person));
	}

	/**
	 * Leaves a series. What of it waits to be sent is withdrawn.
	 * @param person who
	 * @param channel code of the channel
	 * @param series what no longer goes out
	 */
	public void stop(PersonId person, String channel, Series series) {
		change(person, () -> this.table.stop(person, channel, series, this.clock.instant()));
	}

	/**
	 * Comes back to a series.
	 * @param person who
	 * @param channel code of the channel
	 * @param series what goes out again
	 */
	public void resume(PersonId person, String channel, Series series) {
		change(person, () -> this.table.resume(person, channel, series));
	}

	/**
	 * Why no reminders go to a person's address.
	 * @param person who
	 * @return empty when they do, or when there is none
	 */
	public Optional<Suppressed> silence(Person person) {
		return Optional.ofNullable(person.email()).flatMap(this.suppressions::find);
	}

	/**
	 * Sends reminders to a person's address again.
	 * @param person who says that mail reaches them there
	 */
	public void mailAgain(Person person) {
		String address = person.email();
		if (address != null) {
			change(person.id(), () -> this.suppressions.lift(address));
		}
	}

	private void leaveOnly(PersonId person, Map<String, Set<Series>> left) {
		Set<String> channels = new TreeSet<>(left.keySet());
		channels.addAll(this.table.of(person).stopped().keySet());
		for (String channel : channels) {
			for (Series series : Series.values()) {
				if (left.getOrDefault(channel, Set.of()).contains(series)) {
					this.table.stop(person, channel, series, this.clock.instant());
				}
				else {
					this.table.resume(person, channel, series);
				}
			}
		}
	}

	private void change(PersonId person, Runnable what) {
		this.transactions.executeWithoutResult((status) -> {
			what.run();
			this.materialiser.person(person);
		});
	}

}
