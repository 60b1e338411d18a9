package org.leafward.demo;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.leafward.accounts.Person;
import org.leafward.accounts.PersonId;
import org.leafward.accounts.People;
import org.leafward.register.Planting;
import org.leafward.register.PlantingId;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.leafward.workdays.Checklists;
import org.leafward.workdays.Group;
import org.leafward.workdays.GroupDesk;
import org.leafward.workdays.GroupDesk.Told;
import org.leafward.workdays.GroupId;
import org.leafward.workdays.Groups;
import org.leafward.workdays.PlanBook;
import org.leafward.workdays.RainDates;
import org.leafward.workdays.SignUps;
import org.leafward.workdays.Skill;
import org.leafward.workdays.WalkStop;
import org.leafward.workdays.WorkdayDesk;
import org.leafward.workdays.PlanTerms;
import org.leafward.workdays.WorkdayDesk.Frame;
import org.leafward.workdays.WorkdayId;
import org.leafward.workdays.Workdays;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;

/**
 * An invented group: Tobias Wren leads it, two sites of his, a fixed workday with people
 * who come, and a proposed one after it.
 */
@Component
@Profile("demo")
class DemoGroup {

	private final People people;

	private final Register register;

	private final Groups groups;

	private final GroupDesk desk;

	private final WorkdayDesk days;

	private final Workdays workdays;

	private final PlanBook book;

	private final RainDates rainDates;

	private final SignUps signUps;

	private final Checklists lists;

	DemoGroup(People people, Register register, Groups groups, GroupDesk desk, WorkdayDesk days, Workdays workdays,
			PlanBook book, RainDates rainDates, SignUps signUps, Checklists lists) {
		this.people = people;
		this.register = register;
		this.groups = groups;
		this.desk = desk;
		this.days = days;
		this.workdays = workdays;
		this.book = book;
		this.rainDates = rainDates;
		this.signUps = signUps;
		this.lists = lists;
	}

	/**
	 * Makes the group with its workdays.
	 * @param today the day on which the demo begins
	 */
	void meet(LocalDate today) {
		PersonId tobias = id("tobias.wren@example.org");
		PersonId bram = id("bram.ostrand@example.org");
		PersonId ines = id("ines.farrow@example.org");
		PersonId odile = id("odile.marsh@example.org");
		GroupId group = this.desk.make(new Told("Millrace Green Crew",
				"We look after the park at the old mill and the library's garden. Everybody is welcome; tools are there.",
				DemoRegion.zone(), "the tool shed behind the mill", Set.of(DayOfWeek.SATURDAY), LocalTime.of(9, 0),
				LocalTime.of(12, 0), 12, Set.of(LocalDate.of(today.getYear(), 12, 26)),
				new PlanTerms(4, Map.of("loppers", 1))), tobias);
		List.of(bram, ines, odile).forEach((person) -> this.desk.join(group, person));
		Set<DayOfWeek> any = Set.of(DayOfWeek.values());
		this.desk.tell(group, tobias, Set.of(Skill.FIRST_AID, Skill.DRIVING), any, Set.of(), "Lena Wren, 555 0141");
		this.desk.tell(group, bram, Set.of(Skill.SAW, Skill.FIRST_AID), any, Set.of(), "Pia Ostrand, 555 0177");
		this.desk.tell(group, ines, Set.of(), Set.of(DayOfWeek.SATURDAY, DayOfWeek.SUNDAY), Set.of(),
				"Marek Farrow, 555 0102");
		this.desk.tell(group, odile, Set.of(Skill.PESTICIDE), any, Set.of(), "");
		for (Site site : this.register.sitesOf(tobias)) {
			boolean park = site.name().equals("Millrace Park");
			this.desk.give(group, site, park ? "14 Millrace Lane, Ferrow" : "");
			if (park) {
				this.lists.draw(site.id(), walk(site));
			}
		}
		LocalDate saturday = today.plusDays(2).with(TemporalAdjusters.nextOrSame(DayOfWeek.SATURDAY));
		WorkdayId fixed = day(group, saturday);
		this.days.fix(fixed);
		this.signUps.come(fixed, tobias, 0, false);
		this.signUps.come(fixed, bram, 0, false);
		this.signUps.come(fixed, odile, 1, true);
		day(group, saturday.plusWeeks(2));
	}

	private PersonId id(String email) {
		return this.people.withAddress(email).map(Person::id).orElseThrow();
	}

	private WorkdayId day(GroupId id, LocalDate date) {
		Group group = this.groups.find(id).orElseThrow();
		WorkdayId day = this.days.add(group,
				new Frame(date, group.begins(), group.ends(), group.meetingPoint(), group.capacity(), null));
		this.book.fill(group, this.workdays.find(day).orElseThrow());
		this.rainDates.propose(this.workdays.find(day).orElseThrow())
			.ifPresent((rain) -> this.days.rainDay(day, rain.day()));
		return day;
	}

	/** From the gate around the green, one after the other. */
	private Map<PlantingId, WalkStop> walk(Site site) {
		int[] squares = { 43, 34, 25, 17, 10, 11, 20, 29, 38, 46 };
		List<Planting> plantings = new ArrayList<>(this.register.plantingsOf(site.id()));
		Map<PlantingId, WalkStop> stops = new HashMap<>();
		for (int i = 0; i < plantings.size(); i++) {
			stops.put(plantings.get(i).id(), new WalkStop(i + 1, squares[i % squares.length]));
		}
		return stops;
	}

}
