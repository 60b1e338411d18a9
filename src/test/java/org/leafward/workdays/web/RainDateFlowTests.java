package org.leafward.workdays.web;

import jakarta.servlet.http.Cookie;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.leafward.accounts.People;
import org.leafward.accounts.PersonId;
import org.leafward.accounts.PersonalRecords;
import org.leafward.care.TaskCalendar;
import org.leafward.measure.DayWindow;
import org.leafward.measure.DayWords;
import org.leafward.register.NewSite;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.leafward.support.DemoServer;
import org.leafward.workdays.CrewPlanning;
import org.leafward.workdays.GroupDesk;
import org.leafward.workdays.GroupId;
import org.leafward.workdays.Groups;
import org.leafward.workdays.PlanBook;
import org.leafward.workdays.PlanTerms;
import org.leafward.workdays.RainDates;
import org.leafward.workdays.TestCrew;
import org.leafward.workdays.Workday;
import org.leafward.workdays.WorkdayDesk;
import org.leafward.workdays.WorkdayId;
import org.leafward.workdays.Workdays;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

/**
 * Where workdays go when the weather forbids them, with the plans and gardens that there
 * are.
 */
@DemoServer
class RainDateFlowTests {

	private static final Set<DayOfWeek> WEEKDAYS = EnumSet.complementOf(EnumSet.of(DayOfWeek.MONDAY));

	@Autowired
	private MockMvc web;

	@Autowired
	private People people;

	@Autowired
	private PersonalRecords records;

	@Autowired
	private Register register;

	@Autowired
	private TaskCalendar calendar;

	@Autowired
	private GroupDesk desk;

	@Autowired
	private Groups groups;

	@Autowired
	private WorkdayDesk days;

	@Autowired
	private Workdays workdays;

	@Autowired
	private CrewPlanning planning;

	@Autowired
	private PlanBook book;

	private PersonId lead;

	private Cookie session = new Cookie("SESSION", "");

	private GroupId group;

	private Site site;

	private LocalDate today;

	@BeforeEach
	void group() throws Exception {
		Site like = this.register.sites(0, 1).get(0);
		this.today = LocalDate.ofInstant(Instant.now(), like.zone());
		this.lead = this.people.join("Rena Trial", UUID.randomUUID() + "@example.org", like.zone()).id();
		this.session = this.web.perform(post("/people/" + this.lead.value()).with(csrf()))
			.andReturn()
			.getResponse()
			.getCookie("SESSION");
		this.site = this.register.addSite(this.lead, new NewSite("Ground of a crew", like.county(), like.point(),
				like.zone(), like.soil(), like.sun(), like.wind()));
		this.register.addPlantings(this.site.id(), TestCrew.garden());
		this.group = this.desk.make(TestCrew.told(like.zone(), 12, WEEKDAYS, Set.of(), PlanTerms.USUAL), this.lead);
		this.desk.give(this.group, this.site, "");
	}

	@AfterEach
	void leave() {
		this.records.forget(this.lead);
	}

	private Workday filled(LocalDate day) {
		WorkdayId id = this.days.add(this.groups.find(this.group).orElseThrow(), TestCrew.at(day, 12, null));
		this.book.fill(this.groups.find(this.group).orElseThrow(), this.workdays.find(id).orElseThrow());
		return this.workdays.find(id).orElseThrow();
	}

	private boolean canBeDone(Workday day, LocalDate then) {
		return this.calendar.find(day.tasks().stream().map((one) -> one.task()).toList())
			.values()
			.stream()
			.anyMatch((task) -> task.window().contains(then));
	}

	private String page(WorkdayId day) throws Exception {
		return Jsoup
			.parse(this.web.perform(get("/workdays/" + day).cookie(this.session))
				.andReturn()
				.getResponse()
				.getContentAsString())
			.select("main")
			.text();
	}

	private void find(WorkdayId day) throws Exception {
		assertThat(this.web.perform(post("/workdays/" + day + "/rain-date/propose").with(csrf()).cookie(this.session))
			.andReturn()
			.getResponse()
			.getStatus()).isEqualTo(302);
	}

	@Test
	void aPlanSaysWhereEachDayGoes() {
		this.planning.plan(this.group, 120, 6);
		List<Workday> all = this.workdays.ofGroup(this.group, new DayWindow(this.today, this.today.plusDays(120)),
				true);
		Set<LocalDate> days = new HashSet<>();
		all.forEach((one) -> days.add(one.day()));
		assertThat(all).anyMatch((one) -> one.rainDay() != null);
		for (Workday one : all) {
			LocalDate rain = one.rainDay();
			if (rain != null) {
				assertThat(rain).isAfter(one.day()).isBeforeOrEqualTo(one.day().plusDays(RainDates.WITHIN));
				assertThat(rain.getDayOfWeek()).isNotEqualTo(DayOfWeek.MONDAY);
				assertThat(days).doesNotContain(rain);
				assertThat(canBeDone(one, rain)).isTrue();
			}
		}
		assertThat(all.stream().map(Workday::rainDay).filter((rain) -> rain != null).toList()).doesNotHaveDuplicates();
	}

	@Test
	void aDayByHandFindsOneAndAnotherWhenThatIsTaken() throws Exception {
		Workday day = filled(this.today.plusDays(9));
		assertThat(day.tasks()).isNotEmpty();
		assertThat(page(day.id())).contains("Find a rain date").doesNotContain("another workday of the group");
		find(day.id());
		LocalDate rain = this.workdays.find(day.id()).orElseThrow().rainDay();
		assertThat(rain).isNotNull();
		assertThat(canBeDone(day, rain)).isTrue();
		assertThat(page(day.id())).doesNotContain("Find a rain date");
		this.days.add(this.groups.find(this.group).orElseThrow(), TestCrew.at(rain, 12, null));
		assertThat(page(day.id())).contains("Find a rain date", "but another workday of the group stands on it by now");
		find(day.id());
		assertThat(this.workdays.find(day.id()).orElseThrow().rainDay()).isNotNull().isNotEqualTo(rain);
	}

	/**
	 * Tasks whose windows end with the day go nowhere, and neither does a crew that is
	 * away.
	 */
	@Test
	void whereThereIsNoneItStaysAsItWas() throws Exception {
		Workday day = filled(this.today.plusDays(9));
		Set<LocalDate> away = new HashSet<>(day.day().datesUntil(day.day().plusDays(60)).toList());
		this.desk.change(this.group, TestCrew.told(this.site.zone(), 12, WEEKDAYS, away, PlanTerms.USUAL));
		find(day.id());
		assertThat(this.workdays.find(day.id()).orElseThrow().rainDay()).isNull();
		LocalDate own = day.day().plusDays(3);
		this.days.rainDay(day.id(), own);
		find(day.id());
		assertThat(this.workdays.find(day.id()).orElseThrow().rainDay()).as("chosen by hand").isEqualTo(own);
		assertThat(page(day.id())).contains(DayWords.of(own).substring(0, 3));
	}

}
