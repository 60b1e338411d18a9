package org.leafward.care.web;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.leafward.accounts.People;
import org.leafward.accounts.Person;
import org.leafward.accounts.PersonId;
import org.leafward.care.CareTask;
import org.leafward.care.TaskCalendar;
import org.leafward.care.TaskKind;
import org.leafward.care.TaskState;
import org.leafward.care.TaskStates;
import org.leafward.measure.DayWindow;
import org.leafward.pages.TaskLine;
import org.leafward.pages.Viewer;
import org.leafward.pages.Viewers;
import org.leafward.register.Register;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;

/** What matters this week. */
@Controller
class HomePage {

	private static final int WEEK = 7;

	private static final int AHEAD = 28;

	private static final int MOST_AHEAD = 6;

	private final TaskCalendar calendar;

	private final TaskStates states;

	private final Register register;

	private final People people;

	private final Viewers viewers;

	private final Clock clock;

	HomePage(TaskCalendar calendar, TaskStates states, Register register, People people, Viewers viewers, Clock clock) {
		this.calendar = calendar;
		this.states = states;
		this.register = register;
		this.people = people;
		this.viewers = viewers;
		this.clock = clock;
	}

	@GetMapping("/")
	String home(Model model) {
		Viewer viewer = this.viewers.current();
		if (viewer.person() == null) {
			return "redirect:/sites";
		}
		PersonId person = new PersonId(viewer.person());
		ZoneId zone = this.people.find(person).map(Person::zone).orElse(ZoneOffset.UTC);
		Instant now = this.clock.instant();
		LocalDate today = LocalDate.ofInstant(now, zone);
		DayWindow week = new DayWindow(today, today.plusDays(WEEK - 1L));
		List<CareTask> tasks = this.calendar.ofPerson(person, new DayWindow(today, today.plusDays(AHEAD)));
		Predicate<CareTask> planned = (task) -> task.state() == TaskState.PLANNED;
		Predicate<CareTask> thisWeek = planned.and((task) -> task.window().overlaps(week));
		List<TaskLine> todo = acting(tasks, thisWeek.and(of(TaskKind.DO))).stream()
			.sorted(Gathered.byUrgency(today))
			.toList();
		List<TaskLine> holdOffs = lines(tasks, thisWeek.and(of(TaskKind.HOLD_OFF)));
		List<TaskLine> ahead = lines(tasks, planned.and((task) -> task.window().from().isAfter(week.to()))).stream()
			.limit(MOST_AHEAD)
			.toList();
		model.addAttribute("section", "week");
		model.addAttribute("week", week);
		model.addAttribute("noSites", this.register.sitesOf(person).isEmpty());
		model.addAttribute("todo", todo);
		model.addAttribute("holdOffs", holdOffs);
		model.addAttribute("ramps", acting(tasks, thisWeek.and(of(TaskKind.RAMP_DAY))));
		model.addAttribute("watches", acting(tasks, thisWeek.and(of(TaskKind.WATCH))));
		model.addAttribute("ahead", ahead);
		model.addAttribute("withdrawn", lines(tasks, (task) -> task.state() == TaskState.WITHDRAWN
				&& task.changedAt().isAfter(now.minus(WEEK, ChronoUnit.DAYS))));
		model.addAttribute("lead", lead(todo.size(), holdOffs.size(), ahead));
		return "care/home";
	}

	private static Predicate<CareTask> of(TaskKind kind) {
		return (task) -> task.kind() == kind;
	}

	private List<TaskLine> acting(List<CareTask> tasks, Predicate<CareTask> which) {
		List<CareTask> some = Gathered.withoutRepeats(tasks.stream().filter(which).toList());
		return Gathered.lines(some, this.states.of(some), "home");
	}

	private static List<TaskLine> lines(List<CareTask> tasks, Predicate<CareTask> which) {
		return Gathered.lines(Gathered.withoutRepeats(tasks.stream().filter(which).toList()));
	}

	private static String lead(int todo, int holdOffs, List<TaskLine> ahead) {
		if (todo == 0 && holdOffs == 0) {
			return ahead.isEmpty() ? "Nothing to do, and nothing that has to be left alone."
					: "Nothing this week; the next thing is “%s”.".formatted(ahead.get(0).title());
		}
		return Stream
			.of(count(todo, "thing to do", "things to do"), count(holdOffs, "to leave alone", "to leave alone"))
			.filter((part) -> !part.isEmpty())
			.reduce((first, second) -> first + " and " + second)
			.map((words) -> words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1) + ".")
			.orElseThrow();
	}

	private static String count(int number, String one, String many) {
		return switch (number) {
			case 0 -> "";
			case 1 -> "one " + one;
			default -> number + " " + many;
		};
	}

}
