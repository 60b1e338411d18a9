package org.leafward.workdays.web;

import jakarta.servlet.ServletException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.Test;
import org.leafward.care.CareTask;
import org.leafward.care.TaskCalendar;
import org.leafward.care.TaskId;
import org.leafward.measure.BadInput;
import org.leafward.measure.DayWindow;
import org.leafward.measure.DayWords;
import org.leafward.support.DemoServer;
import org.leafward.workdays.CrewPlanning.Made;
import org.leafward.workdays.GroupDesk.Told;
import org.leafward.workdays.PlanTerms;
import org.leafward.workdays.TestCrew;
import org.leafward.workdays.Workday;
import org.leafward.workdays.WorkdayId;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

/** What a coordinator can do wrong, by hand or out of malice. */
@DemoServer
class HostileGroupTests extends CrewOnTrial {

	/** In no field can one of these be right. */
	private static final List<String> NEVER = List.of("x".repeat(10_000), "bell\u0007 and \u0000 nothing",
			"line\u2028separator", "\u202eright to left", "\ud83d");

	/** In a field for a number, a date, a time or a choice neither. */
	private static final List<String> NO_FIGURE = List.of("-1", "NaN", "1e309", "12 parsecs", "1700-02-30",
			"+999999999-01-01", "-999999999-01-01..+999999999-12-31", "25:99", "not-a-uuid", "true' or 1=1",
			"\ud83d\udca7");

	@Autowired
	private TaskCalendar calendar;

	@Autowired
	private JdbcClient database;

	private final List<String> wrong = new ArrayList<>();

	private MockHttpServletResponse send(MockHttpServletRequestBuilder request, Map<String, String> fields)
			throws Exception {
		fields.forEach(request::param);
		try {
			return this.web.perform(request.with(csrf()).cookie(this.session)).andReturn().getResponse();
		}
		catch (ServletException ex) {
			// What MockMvc throws, a server answers with 500.
			MockHttpServletResponse broken = new MockHttpServletResponse();
			broken.setStatus(500);
			return broken;
		}
	}

	/** Fields that are right together; each is broken in turn. */
	private void attack(String address, Map<String, String> right, Set<String> texts) throws Exception {
		for (String field : right.keySet()) {
			List<String> values = new ArrayList<>(NEVER);
			if (!texts.contains(field)) {
				values.addAll(NO_FIGURE);
			}
			values.add("");
			for (String value : values) {
				Map<String, String> fields = new LinkedHashMap<>(right);
				fields.put(field, value);
				MockHttpServletResponse answer = send(post(address), fields);
				String what = "%s %s=%s -> %d".formatted(address.replaceAll("[0-9a-f-]{36}", "*"), field,
						(value.length() > 60) ? "(long)" : value, answer.getStatus());
				if (answer.getStatus() >= 500) {
					this.wrong.add(what);
				}
				else if (answer.getStatus() >= 400) {
					String page = Jsoup.parse(answer.getContentAsString()).select("main").text();
					boolean bounded = page.length() < 9_000 || field.equals("about") || value.length() > 9_000;
					if (page.length() < 40 || !bounded) {
						this.wrong.add(what + " says " + page.length());
					}
				}
				else if (!value.isEmpty() && !right.get(field).isEmpty()) {
					this.wrong.add(what + " accepted");
				}
			}
		}
	}

	@Test
	void noFormOfThoseWhoLeadBreaks() throws Exception {
		this.desk.give(this.group, this.site, "");
		WorkdayId proposed = day(this.today.plusDays(9));
		WorkdayId fixed = day(this.today.plusDays(10));
		this.days.fix(fixed);
		String at = "/groups/" + this.group;
		Map<String, String> told = new LinkedHashMap<>(Map.of("name", "Crew", "about", "We dig.", "zone",
				"America/Chicago", "meetingPoint", "the shed", "begins", "09:00", "ends", "12:00", "capacity", "12",
				"weekdays", "SATURDAY", "away", "2026-12-24..2026-12-26"));
		attack(at + "/settings", told, Set.of("name", "about", "meetingPoint"));
		attack(at + "/me",
				Map.of("skills", "SAW", "weekdays", "SATURDAY", "away", "2026-12-24", "emergency", "Lena, 555 0141"),
				Set.of("emergency"));
		attack(at + "/sites", Map.of("site", this.site.id().toString(), "address", "12 Mill Street"),
				Set.of("address"));
		attack(at + "/workdays", Map.of("day", this.today.plusDays(20).toString()), Set.of());
		attack(at + "/left-over", Map.of("task", UUID.randomUUID().toString(), "to", proposed.toString()), Set.of());
		Map<String, String> moved = Map.of("day", this.today.plusDays(11).toString(), "rainDay",
				this.today.plusDays(12).toString(), "begins", "09:00", "ends", "12:00", "capacity", "12",
				"meetingPoint", "the shed");
		for (WorkdayId one : List.of(proposed, fixed)) {
			attack("/workdays/" + one + "/move", moved, Set.of("meetingPoint"));
		}
		attack("/workdays/" + fixed + "/come", Map.of("children", "1", "guardian", "true"), Set.of("guardian"));
		attack("/workdays/" + proposed + "/tasks",
				Map.of("task", UUID.randomUUID().toString(), "go", "minutes", "minutes", "30", "to", fixed.toString()),
				Set.of());
		attack("/workdays/" + fixed + "/ticks", Map.of("task", UUID.randomUUID().toString()), Set.of());
		assertThat(this.wrong.stream().filter((one) -> !idle(one)).toList()).isEmpty();
		assertThat(this.database
			.sql("select max(length(name) + length(about) + length(meeting_point)) from workdays.volunteer_group")
			.query(Integer.class)
			.single()).isLessThan(1_400);
		for (String page : List.of(at, at + "/plan", at + "/settings", at + "/hours", "/groups")) {
			assertThat(send(get(page), Map.of()).getStatus()).as(page).isEqualTo(200);
		}
	}

	/** A tick is a tick, whatever its value, and -1 is an hour behind UTC. */
	private static boolean idle(String what) {
		return what.contains(" guardian=") || what.contains(" zone=-1 ");
	}

	@Test
	void wordsOfPeopleStandAsTheyAreAndNothingOfThemIsMarkup() throws Exception {
		String name = "<b>Crew</b> & \u05e6\u05d5\u05d5\u05ea \ud83c\udf31";
		this.desk.change(this.group, new Told(name, "<script>alert(1)</script>", this.site.zone(), "a\"b'c",
				TestCrew.ANY, LocalTime.of(9, 0), LocalTime.of(12, 0), 12, Set.of(), PlanTerms.USUAL));
		WorkdayId workday = day(this.today.plusDays(9));
		this.days.fix(workday);
		for (String page : List.of("/groups", "/groups/" + this.group, "/workdays/" + workday)) {
			MockHttpServletResponse answer = send(get(page), Map.of());
			answer.setCharacterEncoding("UTF-8");
			assertThat(Jsoup.parse(answer.getContentAsString()).select("main").text()).as(page).contains(name);
			assertThat(answer.getContentAsString()).doesNotContain("<script>alert");
		}
		assertThat(send(get("/workdays/" + workday + "/checklist.pdf"), Map.of()).getStatus()).isEqualTo(200);
	}

	@Test
	void aGroupWithoutSitesIsToldSo() {
		assertThatThrownBy(() -> this.planning.plan(this.group, 30, 6)).isInstanceOf(BadInput.class)
			.hasMessageContaining("no site");
	}

	@Test
	void withoutAnyDayEachTaskSaysWhy() {
		this.desk.give(this.group, this.site, "");
		Set<LocalDate> all = this.today.datesUntil(this.today.plusDays(130)).collect(Collectors.toSet());
		this.desk.change(this.group, told(TestCrew.ANY, all));
		Made made = this.planning.plan(this.group, 120, 6);
		assertThat(made.placed()).isZero();
		assertThat(made.days()).isZero();
		assertThat(made.unplaced()).isPositive();
		assertThat(leftOver()).hasSize(made.unplaced()).allMatch((why) -> why.startsWith("No candidate date lies in"));
	}

	@Test
	void withNobodyWhoCanComeEachTaskSaysWhy() {
		this.desk.give(this.group, this.site, "");
		Set<LocalDate> all = this.today.datesUntil(this.today.plusDays(130)).collect(Collectors.toSet());
		this.desk.tell(this.group, this.lead, Set.of(), TestCrew.ANY, all, "");
		Made made = this.planning.plan(this.group, 120, 6);
		assertThat(made.placed()).isZero();
		assertThat(leftOver()).filteredOn((why) -> !why.startsWith("No candidate date"))
			.isNotEmpty()
			.allMatch((why) -> why.contains("too few people"));
	}

	private List<String> leftOver() {
		return this.database.sql("select why from workdays.left_over where group_id = ?")
			.param(this.group.value())
			.query(String.class)
			.list();
	}

	/** Planning anew around days that are all locked moves nothing and calls no other. */
	@Test
	void everythingLockedStaysAsItIs() {
		this.desk.give(this.group, this.site, "");
		this.planning.plan(this.group, 120, 3);
		List<Workday> before = all(120);
		assertThat(before).isNotEmpty();
		before.forEach((one) -> this.days.lock(one.id(), true));
		this.planning.plan(this.group, 120, before.size());
		List<Workday> after = all(120);
		assertThat(after).extracting(Workday::id).containsExactlyElementsOf(before.stream().map(Workday::id).toList());
		assertThat(after).extracting((one) -> one.tasks().stream().map((task) -> task.task()).toList())
			.containsExactlyElementsOf(
					before.stream().map((one) -> one.tasks().stream().map((task) -> task.task()).toList()).toList());
	}

	/** Nothing is proposed before people can be called; what was locked stays. */
	@Test
	void leavesTimeToCallPeople() {
		this.desk.give(this.group, this.site, "");
		this.planning.plan(this.group, 120, 6);
		assertThat(all(120)).isNotEmpty()
			.allMatch((one) -> !one.day().isBefore(this.today.plusDays(PlanTerms.USUAL.notice())));
		WorkdayId soon = day(this.today.plusDays(1));
		this.days.lock(soon, true);
		this.desk.change(this.group, told(TestCrew.ANY, Set.of(), new PlanTerms(60, Map.of())));
		this.planning.plan(this.group, 120, 6);
		List<Workday> after = all(120);
		assertThat(after).filteredOn((one) -> one.id().equals(soon)).hasSize(1);
		assertThat(after).filteredOn((one) -> !one.id().equals(soon))
			.allMatch((one) -> !one.day().isBefore(this.today.plusDays(60)));
	}

	/** Days that are filled one after the other share no task, whichever comes first. */
	@Test
	void daysThatAreFilledByHandShareNoTask() {
		this.desk.give(this.group, this.site, "");
		WorkdayId later = day(this.today.plusDays(16));
		WorkdayId sooner = day(this.today.plusDays(9));
		assertThat(this.book.fill(crew(), workday(later))).isPositive();
		this.book.fill(crew(), workday(sooner));
		WorkdayId last = day(this.today.plusDays(23));
		this.book.fill(crew(), workday(last));
		List<Workday> all = all(120);
		assertThat(all).hasSize(3);
		assertThat(all.stream().flatMap((one) -> one.tasks().stream()).map((task) -> task.task()).toList())
			.doesNotHaveDuplicates();
	}

	/** On another date each task is in its window, or has no day and is told why. */
	@Test
	void aDayThatIsMovedLosesWhatMakesNoSenseThen() {
		this.desk.give(this.group, this.site, "");
		WorkdayId moved = day(this.today.plusDays(9));
		WorkdayId other = day(this.today.plusDays(400));
		this.book.fill(crew(), workday(moved));
		List<TaskId> before = tasks(moved);
		assertThat(before).isNotEmpty();
		assertThatThrownBy(() -> this.days.moveTask(moved, before.get(0), other)).isInstanceOf(BadInput.class)
			.hasMessageContaining("outside of the days");
		this.people.confirm(this.lead);
		this.days.fix(moved);
		int left = this.days.move(moved, TestCrew.at(this.today.plusDays(390), 12, null));
		assertThat(left).isEqualTo(before.size());
		assertThat(leftOver()).hasSize(left).allMatch((why) -> why.startsWith("Its workday was moved to "));
		assertThat(tasks(moved)).isEmpty();
		assertThat(this.database.sql("select body from workdays.message where workday = ?")
			.param(moved.value())
			.query(String.class)
			.list()).as("nobody is told of what is done no more").hasSize(2).last().asString().doesNotContain("hedge");
		WorkdayId dropped = filled(this.today.plusDays(9));
		assertThat(tasks(dropped)).hasSameElementsAs(before);
		assertThat(leftOver()).as("all have a day").isEmpty();
		this.days.moveTask(dropped, before.get(0), null);
		assertThat(leftOver()).containsExactly("It was taken off %s.".formatted(DayWords.of(this.today.plusDays(9))));
		this.days.drop(dropped);
		assertThat(leftOver()).hasSize(left).filteredOn((why) -> why.endsWith("was dropped.")).hasSize(left - 1);
	}

	/**
	 * A hold-off that care has not cut out of a window holds for what is put by hand too.
	 */
	@Test
	void whatIsHeldOffGetsNoDayByHand() {
		this.desk.give(this.group, this.site, "");
		LocalDate day = this.today.plusDays(9);
		WorkdayId from = filled(day);
		CareTask task = this.calendar.find(tasks(from))
			.values()
			.stream()
			.filter((one) -> one.work() != null && one.window().contains(day.plusDays(3)))
			.findFirst()
			.orElseThrow();
		hold(task, new DayWindow(day.plusDays(1), day.plusDays(2)));
		WorkdayId to = day(day.plusDays(2));
		WorkdayId after = day(day.plusDays(3));
		assertThatThrownBy(() -> this.days.moveTask(from, task.id(), to)).isInstanceOf(BadInput.class)
			.hasMessageContaining("a hold-off covers " + DayWords.of(day.plusDays(2)));
		assertThat(tasks(from)).contains(task.id());
		this.days.move(from, TestCrew.at(day.plusDays(1), 12, null));
		assertThat(tasks(from)).isNotEmpty().doesNotContain(task.id());
		assertThat(this.book.leftOver(this.group).get(task.id()))
			.startsWith("A hold-off covers %s: ".formatted(DayWords.of(day.plusDays(1))));
		assertThatThrownBy(() -> this.book.place(crew(), workday(to), task.id())).isInstanceOf(BadInput.class)
			.hasMessageContaining("a hold-off covers");
		this.book.fill(crew(), workday(to));
		assertThat(tasks(to)).doesNotContain(task.id());
		this.book.place(crew(), workday(after), task.id());
		assertThat(tasks(after)).containsExactly(task.id());
	}

	/** Straight into the table: care itself would cut the task's window. */
	private void hold(CareTask task, DayWindow window) {
		assertThat(this.database.sql("""
				insert into care.task select held.* from care.task task, jsonb_populate_record(task,
					jsonb_build_object('id', ?, 'kind', 'HOLD_OFF', 'from_day', ?, 'to_day', ?, 'occurrence', 90)) held
				where task.id = ?
				""")
			.params(UUID.randomUUID().toString(), window.from().toString(), window.to().toString(), task.id().value())
			.update()).isEqualTo(1);
	}

	/** What was to be done on a day that is called off has none. */
	@Test
	void aDayThatIsCalledOffLeavesItsTasksOver() {
		this.desk.give(this.group, this.site, "");
		WorkdayId off = filled(this.today.plusDays(9));
		int tasks = tasks(off).size();
		this.days.fix(off);
		this.days.callOff(off, "Thunder.");
		assertThat(leftOver()).hasSize(tasks).isNotEmpty().allMatch((why) -> why.endsWith("was called off."));
		WorkdayId next = filled(this.today.plusDays(10));
		assertThat(leftOver()).hasSize(tasks - tasks(next).size());
	}

	/** What needs a tool that isn't there gets no day, and is told why. */
	@Test
	void heedsToolsThatAreNotThere() {
		this.desk.give(this.group, this.site, "");
		Map<String, Integer> none = new HashMap<>();
		for (String tool : List.of("Hoses", "secateurs", "loppers", "soil probe", "rake", "stakes", "burlap", "mulch",
				"gloves", "watering can", "labels", "spade")) {
			none.put(tool, 0);
		}
		this.desk.change(this.group, told(TestCrew.ANY, Set.of(), new PlanTerms(0, none)));
		assertThat(crew().terms()).isEqualTo(new PlanTerms(0, none));
		int without = this.planning.plan(this.group, 120, 6).placed();
		assertThat(leftOver()).anyMatch((why) -> why.startsWith("The group has no "));
		none.replaceAll((tool, teams) -> 4);
		this.desk.change(this.group, told(TestCrew.ANY, Set.of(), new PlanTerms(0, none)));
		assertThat(this.planning.plan(this.group, 120, 6).placed()).isGreaterThan(without);
		assertThat(leftOver()).noneMatch((why) -> why.startsWith("The group has no "));
		// What stands on days that stay is on them, whatever the group has lost since.
		List<Workday> stay = all(120);
		stay.forEach((one) -> this.days.lock(one.id(), true));
		none.replaceAll((tool, teams) -> 0);
		this.desk.change(this.group, told(TestCrew.ANY, Set.of(), new PlanTerms(0, none)));
		this.planning.plan(this.group, 120, stay.size());
		assertThat(this.database.sql("select task from workdays.left_over where group_id = ?")
			.param(this.group.value())
			.query(UUID.class)
			.list()).doesNotContainAnyElementsOf(
					stay.stream().flatMap((one) -> one.tasks().stream()).map((task) -> task.task().value()).toList());
	}

	/** Two days on one date by hand: neither is lost, and no task stands on both. */
	@Test
	void twoWorkdaysOnOneDateDoNotShareATask() {
		this.desk.give(this.group, this.site, "");
		day(this.today.plusDays(9));
		day(this.today.plusDays(9));
		this.planning.plan(this.group, 120, 6);
		List<Workday> all = all(120);
		assertThat(all.stream().flatMap((one) -> one.tasks().stream()).map((task) -> task.task()).toList())
			.doesNotHaveDuplicates();
	}

}
