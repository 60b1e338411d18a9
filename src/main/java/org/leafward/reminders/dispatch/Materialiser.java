package org.leafward.reminders.dispatch;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.leafward.accounts.People;
import org.leafward.accounts.Person;
import org.leafward.accounts.PersonId;
import org.leafward.care.TaskCalendar;
import org.leafward.measure.DayWindow;
import org.leafward.reminders.core.Changes;
import org.leafward.reminders.core.DueTasks;
import org.leafward.reminders.core.Known;
import org.leafward.reminders.core.Wanted;
import org.leafward.reminders.store.MessageTable;
import org.leafward.reminders.store.ReminderTable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionOperations;

/** Fills the reminder rows from the plan. Doing it twice changes nothing. */
@Service
public class Materialiser {

	private static final Logger LOG = LoggerFactory.getLogger(Materialiser.class);

	private static final int PAGE = 200;

	private final People people;

	private final TaskCalendar calendar;

	private final ReminderTable reminders;

	private final MessageTable mails;

	private final TransactionOperations transactions;

	private final Clock clock;

	/**
	 * Creates the service.
	 * @param people who gets reminders
	 * @param calendar the plan
	 * @param reminders the rows to fill
	 * @param mails where mails wait that may have lost their use
	 * @param transactions one for each person
	 * @param clock what time it is
	 */
	public Materialiser(People people, TaskCalendar calendar, ReminderTable reminders, MessageTable mails,
			TransactionOperations transactions, Clock clock) {
		this.people = people;
		this.calendar = calendar;
		this.reminders = reminders;
		this.mails = mails;
		this.transactions = transactions;
		this.clock = clock;
	}

	/** Fills the rows of everybody. Trouble with one person doesn't stop the others. */
	public void everybody() {
		int page = 0;
		List<Person> some = this.people.list(page, PAGE);
		while (!some.isEmpty()) {
			for (Person person : some) {
				try {
					person(person.id());
				}
				catch (RuntimeException ex) {
					LOG.error("could not make the reminders of person {}", person.id(), ex);
				}
			}
			page++;
			some = this.people.list(page, PAGE);
		}
	}

	/**
	 * Fills the rows of one person.
	 * @param id the person; one who is not there loses what was still to be sent
	 */
	public void person(PersonId id) {
		this.transactions.executeWithoutResult((status) -> {
			// Before anything is read, so that of two at once the later sees what the
			// earlier wrote.
			this.reminders.lock(id);
			Optional<Person> person = this.people.find(id);
			LocalDate today = LocalDate.ofInstant(this.clock.instant(),
					person.map(Person::zone).orElse(this.clock.getZone()));
			DayWindow near = DueTasks.firstDays(today);
			// Nobody gets mail who hasn't said so.
			List<Wanted> wanted = person.filter((found) -> found.mailbox().isPresent())
				.map((found) -> DueTasks.wanted(this.calendar.ofPerson(id, near), today, found.zone()))
				.orElse(List.of());
			List<Known> known = this.reminders.known(id,
					new DayWindow(near.from().minusDays(Changes.SAME_DAYS), near.to().plusDays(Changes.SAME_DAYS)));
			Changes changes = Changes.between(wanted, known, today);
			if (!changes.none()) {
				this.reminders.apply(id, changes);
				this.mails.dropUnwanted(id);
			}
		});
	}

}
