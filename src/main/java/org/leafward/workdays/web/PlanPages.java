package org.leafward.workdays.web;

import jakarta.servlet.http.HttpServletResponse;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.care.CareTask;
import org.leafward.care.TaskCalendar;
import org.leafward.care.TaskId;
import org.leafward.care.TaskState;
import org.leafward.measure.BadInput;
import org.leafward.measure.DayWindow;
import org.leafward.measure.DayWords;
import org.leafward.measure.Given;
import org.leafward.pages.Choice;
import org.leafward.workdays.CrewPlanning.Made;
import org.leafward.workdays.CrewPlanning;
import org.leafward.workdays.Group;
import org.leafward.workdays.PlanBook;
import org.leafward.workdays.Workday;
import org.leafward.workdays.WorkdayDesk.Frame;
import org.leafward.workdays.WorkdayDesk;
import org.leafward.workdays.WorkdayId;
import org.leafward.workdays.WorkdayState;
import org.leafward.workdays.WorkdayTask;
import org.leafward.workdays.Workdays;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/**
 * Planning, for those who lead: which days, what on each and why, what has no day and why
 * not; pinned, moved and locked by hand, and planned anew around that.
 */
@Controller
class PlanPages {

	private static final int USUAL_AHEAD = 60;

	private static final int USUAL_MOST = 6;

	private final Ours ours;

	private final Workdays workdays;

	private final WorkdayDesk desk;

	private final CrewPlanning planning;

	private final PlanBook book;

	private final TaskCalendar calendar;

	private final Clock clock;

	PlanPages(Ours ours, Workdays workdays, WorkdayDesk desk, CrewPlanning planning, PlanBook book,
			TaskCalendar calendar, Clock clock) {
		this.ours = ours;
		this.workdays = workdays;
		this.desk = desk;
		this.planning = planning;
		this.book = book;
		this.calendar = calendar;
		this.clock = clock;
	}

	/** A task on a day of the plan. */
	record Job(UUID task, String title, String plant, String site, DayWindow window, int minutes, boolean pinned,
			@Nullable String why) {
	}

	/** A day of the plan. */
	record Day(UUID id, LocalDate day, String times, boolean proposed, boolean locked, int minutes, List<Job> jobs) {
	}

	@GetMapping("/groups/{id}/plan")
	String show(@PathVariable UUID id, Model model) {
		return show(this.ours.led(id), String.valueOf(USUAL_AHEAD), String.valueOf(USUAL_MOST), Map.of(), model);
	}

	private String show(Group group, String ahead, String most, Map<String, String> errors, Model model) {
		LocalDate today = LocalDate.ofInstant(this.clock.instant(), group.zone());
		List<Workday> days = this.workdays
			.ofGroup(group.id(), new DayWindow(today, today.plusDays(CrewPlanning.FARTHEST)), true)
			.stream()
			.filter((day) -> day.state() == WorkdayState.PROPOSED || day.state() == WorkdayState.FIXED)
			.toList();
		Map<TaskId, String> left = this.book.leftOver(group.id());
		List<TaskId> asked = new ArrayList<>(left.keySet());
		days.forEach((day) -> day.tasks().forEach((task) -> asked.add(task.task())));
		Map<TaskId, CareTask> tasks = this.calendar.find(asked);
		List<Day> shown = days.stream().map((day) -> day(day, tasks)).toList();
		model.addAttribute("section", "groups");
		model.addAttribute("group", group);
		model.addAttribute("lead", lead(days, left.size()));
		model.addAttribute("days", shown);
		model.addAttribute("choices",
				days.stream().map((day) -> new Choice(day.id().toString(), DayWords.of(day.day()))).toList());
		model.addAttribute("left", left.entrySet()
			.stream()
			.filter((one) -> tasks.containsKey(one.getKey()) && tasks.get(one.getKey()).state() == TaskState.PLANNED)
			.map((one) -> job(Objects.requireNonNull(tasks.get(one.getKey())), 0, false, one.getValue()))
			.sorted(Comparator.comparing((Job one) -> one.window().to()).thenComparing(Job::title))
			.limit(100)
			.toList());
		model.addAttribute("ahead", ahead);
		model.addAttribute("most", most);
		model.addAttribute("errors", errors);
		return "workdays/plan";
	}

	private static String lead(List<Workday> days, int left) {
		long proposed = days.stream().filter((day) -> day.state() == WorkdayState.PROPOSED).count();
		long fixed = days.size() - proposed;
		if (days.isEmpty()) {
			return (left == 0) ? "Nothing is planned yet."
					: "No workday came out of the plan: each task below says why it has none.";
		}
		String what = "%s proposed and %s fixed".formatted(count(proposed, "workday is", "workdays are"), fixed);
		return what + ((left == 0) ? "." : "; %s without a day.".formatted(count(left, "task is", "tasks are")));
	}

	private static String count(long count, String one, String many) {
		return count + " " + ((count == 1) ? one : many);
	}

	private static Day day(Workday day, Map<TaskId, CareTask> tasks) {
		List<Job> jobs = new ArrayList<>();
		for (WorkdayTask one : day.tasks()) {
			CareTask task = tasks.get(one.task());
			if (task != null) {
				jobs.add(job(task, one.minutes(), one.pinned(), one.why()));
			}
		}
		jobs.sort(Comparator.comparing(Job::site).thenComparing(Job::title).thenComparing(Job::plant));
		return new Day(day.id().value(), day.day(), Fields.clock(day.begins()) + " to " + Fields.clock(day.ends()),
				day.state() == WorkdayState.PROPOSED, day.locked(), jobs.stream().mapToInt(Job::minutes).sum(), jobs);
	}

	private static Job job(CareTask task, int minutes, boolean pinned, @Nullable String why) {
		return new Job(task.id().value(), task.text().title(), task.plant(), task.siteName(), task.window(), minutes,
				pinned, why);
	}

	@PostMapping("/groups/{id}/plan")
	String plan(@PathVariable UUID id, @RequestParam(required = false) @Nullable String ahead,
			@RequestParam(required = false) @Nullable String most, Model model, RedirectAttributes flash,
			HttpServletResponse response) {
		Group group = this.ours.led(id);
		try {
			Made made = this.planning.plan(group.id(), Given.whole("ahead", ahead), Given.whole("most", most));
			flash.addFlashAttribute("remarks", List.of(words(made)));
			return "redirect:/groups/%s/plan".formatted(group.id());
		}
		catch (BadInput ex) {
			response.setStatus(HttpStatus.BAD_REQUEST.value());
			return show(group, (ahead != null) ? ahead : "", (most != null) ? most : "", ex.byField(), model);
		}
	}

	private static String words(Made made) {
		return "Planned anew: %s on %s; %s.".formatted(count(made.placed(), "task", "tasks"),
				count(made.days(), "day", "days"),
				(made.unplaced() == 0) ? "none is left over" : count(made.unplaced(), "is", "are") + " left over");
	}

	@PostMapping("/groups/{id}/workdays")
	String add(@PathVariable UUID id, @RequestParam(required = false) @Nullable String day) {
		Group group = this.ours.led(id);
		LocalDate date = Given.date("day", day);
		WorkdayId added = this.desk.add(group,
				new Frame(date, group.begins(), group.ends(), group.meetingPoint(), group.capacity(), null));
		return "redirect:/groups/%s/plan#day-%s".formatted(group.id(), added);
	}

	@PostMapping("/groups/{id}/left-over")
	String place(@PathVariable UUID id, @RequestParam(required = false) @Nullable String task,
			@RequestParam(required = false) @Nullable String to) {
		Group group = this.ours.led(id);
		Workday day = this.ours.ledWorkday(Fields.id("to", to));
		this.book.place(group, day, new TaskId(Fields.id("task", task)));
		return "redirect:/groups/%s/plan#day-%s".formatted(group.id(), day.id());
	}

	@PostMapping("/workdays/{id}/tasks")
	String task(@PathVariable UUID id, @RequestParam(required = false) @Nullable String task,
			@RequestParam(defaultValue = "pin") String go, @RequestParam(required = false) @Nullable String minutes,
			@RequestParam(required = false) @Nullable String to) {
		Workday day = this.ours.ledWorkday(id);
		TaskId one = new TaskId(Fields.id("task", task));
		switch (go) {
			case "pin" -> this.desk.settle(day.id(), one, true, null);
			case "unpin" -> this.desk.settle(day.id(), one, false, null);
			case "minutes" -> this.desk.settle(day.id(), one, true, Given.whole("minutes", minutes));
			case "move" -> this.desk.moveTask(day.id(), one, this.ours.ledWorkday(Fields.id("to", to)).id());
			case "drop" -> this.desk.moveTask(day.id(), one, null);
			default -> throw new BadInput("'%s' can't be done with a task".formatted(go), "go",
					"pin, unpin, minutes, move or drop it");
		}
		return "redirect:/groups/%s/plan#day-%s".formatted(day.group(), day.id());
	}

	@PostMapping("/workdays/{id}/fill")
	String fill(@PathVariable UUID id, RedirectAttributes flash) {
		Workday day = this.ours.ledWorkday(id);
		int placed = this.book.fill(this.ours.of(day), day);
		flash.addFlashAttribute("remarks",
				List.of("%s onto %s.".formatted(count(placed, "task came", "tasks came"), DayWords.of(day.day()))));
		return "redirect:/groups/%s/plan#day-%s".formatted(day.group(), day.id());
	}

	@PostMapping("/workdays/{id}/lock")
	String lock(@PathVariable UUID id, @RequestParam(defaultValue = "true") boolean locked) {
		Workday day = this.ours.ledWorkday(id);
		this.desk.lock(day.id(), locked);
		return "redirect:/groups/%s/plan#day-%s".formatted(day.group(), day.id());
	}

	@PostMapping("/workdays/{id}/drop")
	String drop(@PathVariable UUID id) {
		Workday day = this.ours.ledWorkday(id);
		this.desk.drop(day.id());
		return "redirect:/groups/%s/plan".formatted(day.group());
	}

}
