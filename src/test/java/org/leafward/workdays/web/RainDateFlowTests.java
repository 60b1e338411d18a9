package org.leafward.workdays.web;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.leafward.care.TaskCalendar;
import org.leafward.measure.DayWords;
import org.leafward.support.DemoServer;
import org.leafward.workdays.RainDates;
import org.leafward.workdays.Workday;
import org.leafward.workdays.WorkdayId;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.mock.web.MockHttpServletResponse;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

/**
 * Where workdays go when the weather forbids them, with the plans and gardens that there
 * are.
 */
@DemoServer
class RainDateFlowTests extends CrewOnTrial {

	private static final Set<DayOfWeek> WEEKDAYS = EnumSet.complementOf(EnumSet.of(DayOfWeek.MONDAY));

	@Autowired
	private TaskCalendar calendar;

	@BeforeEach
	void group() {
		this.desk.change(this.group, told(WEEKDAYS, Set.of()));
		this.desk.give(this.group, this.site, "");
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
		List<Workday> all = all(120);
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
		Workday day = workday(filled(this.today.plusDays(9)));
		assertThat(day.tasks()).isNotEmpty();
		this.days.fix(day.id());
		assertThat(page(day.id())).contains("Find a rain date").doesNotContain("another workday of the group");
		find(day.id());
		LocalDate rain = workday(day.id()).rainDay();
		assertThat(rain).isNotNull();
		assertThat(canBeDone(day, rain)).isTrue();
		assertThat(page(day.id())).contains("Move it to").doesNotContain("Find a rain date");
		day(rain);
		assertThat(page(day.id())).contains("Find a rain date", "but another workday of the group stands on it by now")
			.doesNotContain("Move it to");
		MockHttpServletResponse refused = this.web
			.perform(post("/workdays/" + day.id() + "/rain-date").with(csrf()).cookie(this.session))
			.andReturn()
			.getResponse();
		assertThat(refused.getStatus()).isEqualTo(400);
		assertThat(Jsoup.parse(refused.getContentAsString()).text())
			.contains("another workday of the group stands on its rain date", "find another rain date");
		assertThat(workday(day.id()).day()).isEqualTo(day.day());
		find(day.id());
		assertThat(workday(day.id()).rainDay()).isNotNull().isNotEqualTo(rain);
	}

	/**
	 * Tasks whose windows end with the day go nowhere, and neither does a crew that is
	 * away.
	 */
	@Test
	void whereThereIsNoneItStaysAsItWas() throws Exception {
		Workday day = workday(filled(this.today.plusDays(9)));
		Set<LocalDate> away = new HashSet<>(day.day().datesUntil(day.day().plusDays(60)).toList());
		this.desk.change(this.group, told(WEEKDAYS, away));
		find(day.id());
		assertThat(workday(day.id()).rainDay()).isNull();
		LocalDate own = day.day().plusDays(3);
		this.days.rainDay(day.id(), own);
		find(day.id());
		assertThat(workday(day.id()).rainDay()).as("chosen by hand").isEqualTo(own);
		assertThat(page(day.id())).contains(DayWords.of(own).substring(0, 3));
	}

}
