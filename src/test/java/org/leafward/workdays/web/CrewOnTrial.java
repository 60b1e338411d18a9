package org.leafward.workdays.web;

import jakarta.servlet.http.Cookie;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.leafward.accounts.People;
import org.leafward.accounts.PersonId;
import org.leafward.accounts.PersonalRecords;
import org.leafward.care.TaskId;
import org.leafward.measure.DayWindow;
import org.leafward.register.NewSite;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.leafward.workdays.CrewPlanning;
import org.leafward.workdays.Group;
import org.leafward.workdays.GroupDesk;
import org.leafward.workdays.GroupDesk.Told;
import org.leafward.workdays.GroupId;
import org.leafward.workdays.Groups;
import org.leafward.workdays.PlanBook;
import org.leafward.workdays.PlanTerms;
import org.leafward.workdays.TestCrew;
import org.leafward.workdays.Workday;
import org.leafward.workdays.WorkdayDesk;
import org.leafward.workdays.WorkdayId;
import org.leafward.workdays.WorkdayTask;
import org.leafward.workdays.Workdays;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;

import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

/**
 * Somebody who leads a group, is signed in, and has a garden that needs care in any
 * season. The group has no site yet. All of it is gone after each test.
 */
abstract class CrewOnTrial {

	@Autowired
	MockMvc web;

	@Autowired
	People people;

	@Autowired
	Register register;

	@Autowired
	GroupDesk desk;

	@Autowired
	Groups groups;

	@Autowired
	WorkdayDesk days;

	@Autowired
	Workdays workdays;

	@Autowired
	CrewPlanning planning;

	@Autowired
	PlanBook book;

	@Autowired
	private PersonalRecords records;

	PersonId lead;

	Cookie session = new Cookie("SESSION", "");

	GroupId group;

	Site site;

	LocalDate today;

	@BeforeEach
	void begin() throws Exception {
		Site like = this.register.sites(0, 1).get(0);
		this.today = LocalDate.ofInstant(Instant.now(), like.zone());
		this.lead = this.people.join("Wilma Trial", UUID.randomUUID() + "@example.org", like.zone()).id();
		this.session = this.web.perform(post("/people/" + this.lead.value()).with(csrf()))
			.andReturn()
			.getResponse()
			.getCookie("SESSION");
		this.site = this.register.addSite(this.lead, new NewSite("Ground of a crew", like.county(), like.point(),
				like.zone(), like.soil(), like.sun(), like.wind()));
		this.register.addPlantings(this.site.id(), TestCrew.garden());
		this.group = this.desk.make(told(TestCrew.ANY, Set.of()), this.lead);
	}

	@AfterEach
	void leave() {
		this.records.forget(this.lead);
	}

	/** What the group tells of itself, in the site's time zone. */
	Told told(Set<DayOfWeek> weekdays, Set<LocalDate> away) {
		return told(weekdays, away, PlanTerms.USUAL);
	}

	Told told(Set<DayOfWeek> weekdays, Set<LocalDate> away, PlanTerms terms) {
		return TestCrew.told(this.site.zone(), 12, weekdays, away, terms);
	}

	Group crew() {
		return this.groups.find(this.group).orElseThrow();
	}

	/** An empty workday. */
	WorkdayId day(LocalDate day) {
		return this.days.add(crew(), TestCrew.at(day, 12, null));
	}

	/** A workday with all that makes sense on it and has no day yet. */
	WorkdayId filled(LocalDate day) {
		WorkdayId id = day(day);
		this.book.fill(crew(), workday(id));
		return id;
	}

	Workday workday(WorkdayId id) {
		return this.workdays.find(id).orElseThrow();
	}

	List<TaskId> tasks(WorkdayId day) {
		return workday(day).tasks().stream().map(WorkdayTask::task).toList();
	}

	/** All workdays of the group in the next days. */
	List<Workday> all(int within) {
		return this.workdays.ofGroup(this.group, new DayWindow(this.today, this.today.plusDays(within)), true);
	}

}
