package org.leafward.workdays;

import java.time.Clock;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.leafward.accounts.PersonId;
import org.leafward.measure.BadInput;
import org.leafward.measure.Findings;
import org.leafward.measure.Given;
import org.leafward.measure.NotThere;
import org.leafward.register.Site;
import org.leafward.register.SiteId;
import org.leafward.workdays.store.GroupTable;
import org.leafward.workdays.store.GroupTable.GroupRow;
import org.leafward.workdays.store.GroupTable.MemberRow;
import org.leafward.workdays.store.GroupTable.SiteRow;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Changes groups. Who may do what is asked by the caller. */
@Service
public class GroupDesk {

	/** Most groups that one person belongs to. */
	public static final int MOST_GROUPS = 50;

	/** Most people in a group. */
	public static final int MOST_MEMBERS = 500;

	/** Most sites of a group. */
	public static final int MOST_SITES = 200;

	private static final int MOST_AWAY = 200;

	private final GroupTable table;

	private final SignUps signUps;

	private final Clock clock;

	GroupDesk(GroupTable table, SignUps signUps, Clock clock) {
		this.table = table;
		this.signUps = signUps;
		this.clock = clock;
	}

	/**
	 * What is said of a group.
	 *
	 * @param name 1 to 100 characters
	 * @param about at most 1,000 characters
	 * @param zone time zone of its workdays
	 * @param meetingPoint at most 200 characters
	 * @param weekdays when it works as a rule, one at least
	 * @param begins when a workday begins
	 * @param ends when it ends, at least half an hour and at most 12 hours later
	 * @param capacity how many can come, 1 to 500
	 * @param away days on which it never works, at most 200
	 * @param terms what it asks of each plan
	 */
	public record Told(String name, String about, ZoneId zone, String meetingPoint, Set<DayOfWeek> weekdays,
			LocalTime begins, LocalTime ends, int capacity, Set<LocalDate> away, PlanTerms terms) {

		public Told {
			Findings all = new Findings();
			String called = name;
			String does = about;
			String place = meetingPoint;
			Set<DayOfWeek> days = weekdays;
			LocalTime from = begins;
			LocalTime to = ends;
			int people = capacity;
			Set<LocalDate> never = away;
			all.check(() -> length("name", Given.line("name", Given.text("name", called)), 100));
			all.check(() -> length("about", line("about", "what you do", does), 1000));
			all.check(() -> length("meetingPoint", line("meetingPoint", "the meeting point", place), 200));
			all.check(() -> {
				if (days.isEmpty()) {
					throw new BadInput("no day of the week is chosen", "weekdays", "choose one at least");
				}
			});
			all.check(() -> times(from, to));
			all.check(() -> places(people));
			all.check(() -> away(never));
			all.end();
			name = name.strip();
			about = about.strip();
			meetingPoint = meetingPoint.strip();
			weekdays = Set.copyOf(weekdays);
			away = Set.copyOf(away);
		}

		private static void away(Set<LocalDate> days) {
			if (days.size() > MOST_AWAY) {
				throw new BadInput("%d days are more than %d".formatted(days.size(), MOST_AWAY), "away",
						"leave out those that are over");
			}
		}

		private GroupRow row(GroupId id) {
			return new GroupRow(id, this.name, this.about, this.zone, this.meetingPoint, this.weekdays, this.begins,
					this.ends, this.capacity, this.away, this.terms);
		}

	}

	static void length(String field, String text, int most) {
		if (text.strip().length() > most) {
			throw new BadInput("%d characters are more than %d".formatted(text.strip().length(), most), field,
					"shorten it");
		}
	}

	static String line(String field, String words, String text) {
		try {
			return Given.line(words, text.strip());
		}
		catch (BadInput ex) {
			throw new BadInput(ex.what(), field, ex.mend());
		}
	}

	static void times(LocalTime from, LocalTime to) {
		int minutes = (to.toSecondOfDay() - from.toSecondOfDay()) / 60;
		if (minutes < 30 || minutes > 720) {
			throw new BadInput("a workday lasts half an hour to 12 hours", "ends",
					"let it end later than it begins, on the same day");
		}
	}

	static void places(int people) {
		if (people < 1 || people > 500) {
			throw new BadInput("%d places are outside 1 to 500".formatted(people), "capacity",
					"say how many people can be looked after");
		}
	}

	/**
	 * Makes a group, which its maker leads.
	 * @param told what is said of it
	 * @param maker who makes it
	 * @return the group
	 * @throws BadInput when they belong to too many already
	 */
	@Transactional
	public GroupId make(Told told, PersonId maker) {
		checkRoom(maker);
		GroupId id = new GroupId(UUID.randomUUID());
		Instant now = this.clock.instant();
		this.table.add(told.row(id), now);
		this.table.join(id, maker, true, now);
		return id;
	}

	private void checkRoom(PersonId person) {
		if (this.table.ofPerson(person).size() >= MOST_GROUPS) {
			throw new BadInput("one person belongs to at most %d groups".formatted(MOST_GROUPS), "group",
					"leave one first");
		}
	}

	@Transactional
	public void change(GroupId group, Told told) {
		require(group);
		this.table.change(told.row(group));
	}

	/**
	 * Adds somebody to a group.
	 * @param group which
	 * @param person who
	 * @throws BadInput when the group is full, or they belong to too many
	 */
	@Transactional
	public void join(GroupId group, PersonId person) {
		this.table.lock(group);
		List<MemberRow> members = this.table.members(List.of(require(group).id()));
		if (members.stream().anyMatch((one) -> one.person().equals(person))) {
			return;
		}
		checkRoom(person);
		if (members.size() >= MOST_MEMBERS) {
			throw new BadInput("the group has %d members already".formatted(MOST_MEMBERS), "group",
					"ask those who lead it");
		}
		this.table.join(group, person, false, this.clock.instant());
	}

	/**
	 * Changes what a member tells of themselves.
	 * @param group which
	 * @param person who
	 * @param skills what they can
	 * @param weekdays on which they can come
	 * @param away on which days they can't
	 * @param emergency whom to call, at most 200 characters
	 */
	@Transactional
	public void tell(GroupId group, PersonId person, Set<Skill> skills, Set<DayOfWeek> weekdays, Set<LocalDate> away,
			String emergency) {
		Findings all = new Findings();
		all.check(() -> Told.away(away));
		all.check(() -> length("emergency", emergency, 200));
		all.check(() -> line("emergency", "whom to call", emergency));
		all.end();
		this.table.tell(group, person, skills, weekdays, away, emergency.strip());
	}

	/**
	 * Takes somebody out of a group, and their places on its workdays to come.
	 * @param group which
	 * @param person who
	 * @throws BadInput when nobody would lead those who stay
	 */
	@Transactional
	public void leave(GroupId group, PersonId person) {
		this.table.lock(group);
		List<MemberRow> members = this.table.members(List.of(group));
		boolean led = members.stream().anyMatch((one) -> one.leads() && !one.person().equals(person));
		if (!led && members.size() > 1) {
			throw new BadInput("nobody else leads the group", "person", "let somebody lead it first");
		}
		this.signUps.withdraw(group, person);
		this.table.leave(group, person);
		if (members.size() <= 1) {
			this.table.remove(group);
		}
	}

	/**
	 * Lets a member lead, or lead no more.
	 * @param group which
	 * @param person who
	 * @param leads whether they lead
	 * @throws BadInput when nobody would lead
	 */
	@Transactional
	public void lead(GroupId group, PersonId person, boolean leads) {
		this.table.lock(group);
		boolean others = this.table.members(List.of(group))
			.stream()
			.anyMatch((one) -> one.leads() && !one.person().equals(person));
		if (!leads && !others) {
			throw new BadInput("nobody else leads the group", "person", "let somebody else lead it first");
		}
		this.table.lead(group, person, leads);
	}

	/**
	 * Gives a site to a group, or changes what is told of where it is.
	 * @param group to which
	 * @param site a site whose owner agrees
	 * @param address what members are told, at most 200 characters; empty for its county
	 * and rough position
	 * @throws BadInput when the group has too many
	 */
	@Transactional
	public void give(GroupId group, Site site, String address) {
		length("address", line("address", "the address", address), 200);
		this.table.lock(group);
		List<SiteRow> sites = this.table.sites(List.of(group));
		if (sites.size() >= MOST_SITES && sites.stream().noneMatch((one) -> one.site().equals(site.id()))) {
			throw new BadInput("a group has at most %d sites".formatted(MOST_SITES), "site", "take one back first");
		}
		this.table.give(new SiteRow(group, site.id(), site.owner(), address.strip()), this.clock.instant());
	}

	/**
	 * Takes a site back; what is planned there goes from workdays that are still to come.
	 * @param group from which
	 * @param site which
	 */
	@Transactional
	public void takeBack(GroupId group, SiteId site) {
		this.table.takeBack(group, site);
		this.table.clear(group, site, LocalDate.ofInstant(this.clock.instant(), require(group).zone()));
	}

	private GroupRow require(GroupId group) {
		return this.table.find(group).orElseThrow(() -> new NotThere("There is no group " + group));
	}

}
