package org.leafward.workdays;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import org.leafward.accounts.PersonId;
import org.leafward.measure.BadInput;
import org.leafward.measure.DayWindow;
import org.leafward.measure.NotThere;
import org.leafward.workdays.core.people.Places;
import org.leafward.workdays.store.GroupTable;
import org.leafward.workdays.store.SignUpTable;
import org.leafward.workdays.store.WorkdayTable;
import org.leafward.workdays.store.WorkdayTable.DayRow;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * Who comes to a workday. Places go by who comes first; whoever waits moves up by
 * themselves and is told.
 */
@Service
public class SignUps {

	private static final int MOST_CHILDREN = 20;

	private static final int LONGEST_DAY = 24 * 60;

	private final WorkdayTable days;

	private final GroupTable groups;

	private final SignUpTable table;

	private final WorkdayMail mail;

	private final ApplicationEventPublisher events;

	private final Clock clock;

	SignUps(WorkdayTable days, GroupTable groups, SignUpTable table, WorkdayMail mail, ApplicationEventPublisher events,
			Clock clock) {
		this.days = days;
		this.groups = groups;
		this.table = table;
		this.mail = mail;
		this.events = events;
		this.clock = clock;
	}

	/**
	 * Signs somebody up, or changes how many children they bring.
	 * @param workday to which
	 * @param person a member of its group
	 * @param children how many children they bring, 0 to 20
	 * @param guardian whether they are their guardian or have their guardians' leave, and
	 * stay with them
	 * @return how they stand to it now
	 * @throws BadInput when it is not open, they belong to its group no more, or children
	 * come without a guardian
	 */
	@Transactional
	public SignUp come(WorkdayId workday, PersonId person, int children, boolean guardian) {
		DayRow day = open(workday, person);
		if (children < 0 || children > MOST_CHILDREN) {
			throw new BadInput("%d children are outside 0 to %d".formatted(children, MOST_CHILDREN), "children",
					"ask those who lead the group");
		}
		if (children > 0 && !guardian) {
			throw new BadInput("children come with a guardian only", "guardian",
					"tick that you are their guardian, or have their guardians’ leave, and stay with them");
		}
		List<SignUp> all = this.table.of(List.of(workday));
		SignUp before = all.stream().filter((one) -> one.person().equals(person)).findFirst().orElse(null);
		boolean had = before != null && before.state() == SignUpState.IN;
		int others = Places.taken(all) - ((had && before != null) ? before.places() : 0);
		boolean fits = others + 1 + children <= day.capacity();
		if (had && !fits) {
			throw new BadInput("there are only %d places left".formatted(day.capacity() - others - 1), "children",
					"bring fewer, or ask those who lead the group");
		}
		boolean queued = !had && all.stream()
			.anyMatch((one) -> one.state() == SignUpState.WAITING && !one.person().equals(person)
					&& one.places() <= day.capacity() - others);
		Instant since = (before != null && before.state() != SignUpState.OUT) ? before.since() : this.clock.instant();
		SignUp now = new SignUp(workday, person, (fits && !queued) ? SignUpState.IN : SignUpState.WAITING, children,
				guardian, since, (before != null) ? before.minutes() : null);
		put(day, now);
		moveUp(day);
		return this.table.find(workday, person).orElse(now);
	}

	/**
	 * Signs somebody up by a plain yes, with the children that they told of before.
	 * @param workday to which
	 * @param person a member of its group
	 * @return how they stand to it now
	 * @throws BadInput when it is not open, or they belong to its group no more
	 */
	@Transactional
	public SignUp comeAsBefore(WorkdayId workday, PersonId person) {
		return this.table.find(workday, person)
			.filter((one) -> one.state() != SignUpState.OUT)
			.orElseGet(() -> come(workday, person, 0, false));
	}

	/**
	 * Notes that somebody doesn't come; their place goes to whoever waits.
	 * @param workday to which
	 * @param person who
	 * @return how they stand to it now
	 * @throws BadInput when it is not open, or they belong to its group no more
	 */
	@Transactional
	public SignUp stayAway(WorkdayId workday, PersonId person) {
		DayRow day = open(workday, person);
		return stayAway(day, person);
	}

	private SignUp stayAway(DayRow day, PersonId person) {
		SignUp now = new SignUp(day.id(), person, SignUpState.OUT, 0, false, this.clock.instant(), null);
		put(day, now);
		moveUp(day);
		return now;
	}

	/**
	 * Gives places that came free to those who wait, and tells them.
	 * @param day of which
	 */
	void moveUp(DayRow day) {
		for (SignUp one : Places.movingUp(day.capacity(), this.table.of(List.of(day.id())))) {
			put(day, new SignUp(day.id(), one.person(), SignUpState.IN, one.children(), one.guardian(), one.since(),
					one.minutes()));
			this.mail.placeFree(day, one.person());
		}
	}

	/** Takes somebody out of all that is still to come in a group. */
	void withdraw(GroupId group, PersonId person) {
		this.groups.goes(group, person);
		LocalDate today = LocalDate.ofInstant(this.clock.instant(), ZoneOffset.UTC).minusDays(1);
		for (DayRow day : this.days.ofGroups(List.of(group), new DayWindow(today, today.plusYears(3)), false)) {
			if (day.state() == WorkdayState.FIXED && !over(day)) {
				this.days.lock(day.id());
				if (this.table.find(day.id(), person).filter((one) -> one.state() != SignUpState.OUT).isPresent()) {
					stayAway(day, person);
				}
				this.mail.noMore(day, person);
			}
		}
	}

	/**
	 * Notes how long somebody worked.
	 * @param workday on which
	 * @param person who
	 * @param minutes how long, 0 to 1,440
	 */
	@Transactional
	public void worked(WorkdayId workday, PersonId person, int minutes) {
		if (minutes < 0 || minutes > LONGEST_DAY) {
			throw new BadInput("a day has no %d minutes".formatted(minutes), "minutes", "write hours, such as 2.5");
		}
		SignUp before = this.table.find(workday, person)
			.orElseGet(() -> new SignUp(workday, person, SignUpState.IN, 0, false, this.clock.instant(), null));
		this.table.put(new SignUp(workday, person, before.state(), before.children(), before.guardian(), before.since(),
				minutes));
	}

	private void put(DayRow day, SignUp now) {
		this.table.put(now);
		this.events.publishEvent(new SignUpChanged(day.id().value(), day.group().value(), now.person().value(),
				now.state().name(), this.clock.instant()));
	}

	/**
	 * The membership is held before the workday, as {@link #withdraw} does, so that
	 * nobody signs up who is taken out at that moment, and neither waits for the other.
	 */
	private DayRow open(WorkdayId workday, PersonId person) {
		GroupId group = there(workday).group();
		if (!this.groups.stays(group, person)) {
			throw new BadInput("only members sign up", "group", "ask those who lead the group for its link");
		}
		this.days.lock(workday);
		DayRow day = there(workday);
		if (day.state() != WorkdayState.FIXED || over(day)) {
			throw new BadInput("nobody can sign up for this workday any more", "workday",
					"look for the next one on the group’s page");
		}
		return day;
	}

	private DayRow there(WorkdayId workday) {
		return this.days.find(workday).orElseThrow(() -> new NotThere("There is no workday " + workday));
	}

	private boolean over(DayRow day) {
		return !day.day().atTime(day.ends()).atZone(day.zone()).toInstant().isAfter(this.clock.instant());
	}

}
