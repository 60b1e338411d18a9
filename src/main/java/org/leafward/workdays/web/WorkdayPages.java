package org.leafward.workdays.web;

import jakarta.servlet.http.HttpServletResponse;
import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.People;
import org.leafward.accounts.Person;
import org.leafward.accounts.PersonId;
import org.leafward.measure.BadInput;
import org.leafward.measure.DayWords;
import org.leafward.measure.Findings;
import org.leafward.measure.Given;
import org.leafward.workdays.Checklists;
import org.leafward.workdays.Group;
import org.leafward.workdays.MemberCare;
import org.leafward.workdays.RainDates;
import org.leafward.workdays.SignUp;
import org.leafward.workdays.SignUpState;
import org.leafward.workdays.SignUps;
import org.leafward.workdays.Workday;
import org.leafward.workdays.WorkdayDesk.Frame;
import org.leafward.workdays.WorkdayDesk;
import org.leafward.workdays.WorkdayState;
import org.leafward.workdays.Workdays;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** A workday: for members to come or not, for those who lead to fix, move or call off. */
@Controller
class WorkdayPages {

	private final Ours ours;

	private final Workdays workdays;

	private final WorkdayDesk desk;

	private final RainDates rainDates;

	private final SignUps signUps;

	private final Checklists lists;

	private final MemberCare care;

	private final People people;

	private final Clock clock;

	WorkdayPages(Ours ours, Workdays workdays, WorkdayDesk desk, RainDates rainDates, SignUps signUps, Checklists lists,
			MemberCare care, People people, Clock clock) {
		this.ours = ours;
		this.workdays = workdays;
		this.desk = desk;
		this.rainDates = rainDates;
		this.signUps = signUps;
		this.lists = lists;
		this.care = care;
		this.people = people;
		this.clock = clock;
	}

	/** Somebody who comes or waits. */
	record Coming(UUID id, String name, boolean waits, int children, @Nullable String emergency, String hours) {
	}

	@GetMapping("/workdays/{id}")
	String show(@PathVariable UUID id, Model model) {
		return show(this.ours.workday(id), Map.of(), Map.of(), model);
	}

	private String show(Workday day, Map<String, String> form, Map<String, String> errors, Model model) {
		Group group = this.ours.of(day);
		boolean leads = this.ours.leads(group);
		PersonId me = this.ours.me();
		LocalDate today = LocalDate.ofInstant(this.clock.instant(), day.zone());
		List<SignUp> all = this.workdays.signUps(day.id());
		SignUp mine = all.stream().filter((one) -> one.person().equals(me)).findFirst().orElse(null);
		boolean open = day.state() == WorkdayState.FIXED && day.end().toInstant().isAfter(this.clock.instant());
		model.addAttribute("section", "groups");
		model.addAttribute("workday", day);
		model.addAttribute("group", group);
		model.addAttribute("times", Fields.clock(day.begins()) + " to " + Fields.clock(day.ends()));
		model.addAttribute("leads", leads);
		model.addAttribute("member", this.ours.belongs(group));
		model.addAttribute("open", open);
		model.addAttribute("begun", !day.day().isAfter(today));
		model.addAttribute("lead", DayLead.of(day, mine, open));
		model.addAttribute("mine", (mine != null) ? mine.state().name() : null);
		model.addAttribute("children",
				form.getOrDefault("children", (mine != null) ? String.valueOf(mine.children()) : "0"));
		model.addAttribute("guardian", mine != null && mine.guardian());
		model.addAttribute("errors", errors);
		model.addAttribute("lists", this.lists.of(day));
		boolean ahead = open || day.state() == WorkdayState.PROPOSED;
		model.addAttribute("ahead", ahead);
		model.addAttribute("rainTaken", leads && ahead && this.rainDates.taken(day));
		model.addAttribute("coming", leads ? coming(group, all) : List.of());
		return "workdays/workday";
	}

	private List<Coming> coming(Group group, List<SignUp> all) {
		Map<PersonId, String> emergencies = this.care.emergencies(group.id());
		Map<PersonId, Person> known = this.people.find(all.stream().map(SignUp::person).toList());
		return all.stream()
			.filter((one) -> one.state() != SignUpState.OUT && known.containsKey(one.person()))
			.map((one) -> new Coming(one.person().value(), Objects.requireNonNull(known.get(one.person())).name(),
					one.state() == SignUpState.WAITING, one.children(), emergencies.get(one.person()),
					(one.minutes() != null) ? Hours.text(one.minutes()) : ""))
			.toList();
	}

	@PostMapping("/workdays/{id}/come")
	String come(@PathVariable UUID id, @RequestParam Map<String, String> form, Model model,
			HttpServletResponse response, RedirectAttributes flash) {
		Workday day = this.ours.workday(id);
		member(day);
		try {
			String children = form.getOrDefault("children", "").strip();
			SignUp now = this.signUps.come(day.id(), this.ours.somebody(),
					children.isEmpty() ? 0 : Given.whole("children", children), form.containsKey("guardian"));
			flash.addFlashAttribute("remarks", List.of((now.state() == SignUpState.IN)
					? "You have a place. See you there."
					: "All places are taken, so you wait. When one comes free it is yours, and you are told by mail."));
			return "redirect:/workdays/" + day.id();
		}
		catch (BadInput ex) {
			response.setStatus(HttpStatus.BAD_REQUEST.value());
			return show(day, form, ex.byField(), model);
		}
	}

	private void member(Workday day) {
		if (!this.ours.belongs(this.ours.of(day))) {
			throw new BadInput("only members sign up", "group", "ask those who lead the group for its link");
		}
	}

	@PostMapping("/workdays/{id}/stay-away")
	String stayAway(@PathVariable UUID id, RedirectAttributes flash) {
		Workday day = this.ours.workday(id);
		member(day);
		this.signUps.stayAway(day.id(), this.ours.somebody());
		flash.addFlashAttribute("remarks", List.of("Noted: you don’t come. Thank you for saying so."));
		return "redirect:/workdays/" + day.id();
	}

	@PostMapping("/workdays/{id}/fix")
	String fix(@PathVariable UUID id, RedirectAttributes flash) {
		Workday day = this.ours.ledWorkday(id);
		this.desk.fix(day.id());
		flash.addFlashAttribute("remarks",
				List.of("The workday is published, and members who can come on such a day are asked by mail."));
		return "redirect:/workdays/" + day.id();
	}

	@GetMapping("/workdays/{id}/move")
	String move(@PathVariable UUID id, Model model) {
		Workday day = this.ours.ledWorkday(id);
		Map<String, String> form = new HashMap<>();
		form.put("day", day.day().toString());
		form.put("begins", Fields.clock(day.begins()));
		form.put("ends", Fields.clock(day.ends()));
		form.put("meetingPoint", day.meetingPoint());
		form.put("capacity", String.valueOf(day.capacity()));
		LocalDate rain = day.rainDay();
		form.put("rainDay", (rain != null) ? rain.toString() : "");
		return move(day, form, Map.of(), model);
	}

	private static String move(Workday day, Map<String, String> form, Map<String, String> errors, Model model) {
		model.addAttribute("section", "groups");
		model.addAttribute("workday", day);
		model.addAttribute("form", form);
		model.addAttribute("errors", errors);
		return "workdays/move";
	}

	@PostMapping("/workdays/{id}/move")
	String move(@PathVariable UUID id, @RequestParam Map<String, String> form, Model model, RedirectAttributes flash,
			HttpServletResponse response) {
		Workday day = this.ours.ledWorkday(id);
		try {
			Findings all = new Findings();
			Supplier<LocalDate> to = all.read(() -> Given.date("day", form.get("day")));
			Supplier<LocalTime> begins = all.read(() -> Fields.time("begins", form.get("begins")));
			Supplier<LocalTime> ends = all.read(() -> Fields.time("ends", form.get("ends")));
			Supplier<Integer> capacity = all.read(() -> Given.whole("capacity", form.get("capacity")));
			String rain = form.getOrDefault("rainDay", "").strip();
			Supplier<LocalDate> rainDay = all.read(() -> rain.isEmpty() ? LocalDate.MIN
					: Fields.called("rain date", "rainDay", (words) -> Given.date(words, rain)));
			Frame frame = all.give(() -> new Frame(to.get(), begins.get(), ends.get(),
					form.getOrDefault("meetingPoint", ""), capacity.get(), rain.isEmpty() ? null : rainDay.get()));
			int left = this.desk.move(day.id(), frame);
			if (left > 0) {
				flash.addFlashAttribute("remarks", List.of(left(left)));
			}
			return "redirect:/workdays/" + day.id();
		}
		catch (BadInput ex) {
			response.setStatus(HttpStatus.BAD_REQUEST.value());
			return move(day, form, ex.byField(), model);
		}
	}

	@PostMapping("/workdays/{id}/rain-date")
	String rainDate(@PathVariable UUID id, RedirectAttributes flash) {
		Workday day = this.ours.ledWorkday(id);
		int left = this.desk.moveToRainDay(day.id());
		Workday moved = this.ours.ledWorkday(id);
		String told = "The workday is moved to %s, and everybody who was asked is told."
			.formatted(DayWords.of(moved.day()));
		flash.addFlashAttribute("remarks", (left > 0) ? List.of(told, left(left)) : List.of(told));
		return "redirect:/workdays/" + day.id();
	}

	@PostMapping("/workdays/{id}/rain-date/propose")
	String proposeRainDate(@PathVariable UUID id, RedirectAttributes flash) {
		Workday day = this.ours.ledWorkday(id);
		Optional<RainDates.Proposal> best = this.rainDates.propose(day);
		best.ifPresent((rain) -> this.desk.rainDay(day.id(), rain.day()));
		flash.addFlashAttribute("remarks", List.of(best
			.map((rain) -> "%s is its rain date now: %d of its %d tasks can be done then."
				.formatted(DayWords.of(rain.day()), rain.tasks(), day.tasks().size()))
			.orElse("Within four weeks there is no free day of the group on which any of its tasks makes sense. Choose one yourself, if you like.")));
		return "redirect:/workdays/" + day.id();
	}

	private static String left(int tasks) {
		return (tasks == 1) ? "One task makes no sense on that day; the plan has it without a day."
				: "%d tasks make no sense on that day; the plan has them without a day.".formatted(tasks);
	}

	@PostMapping("/workdays/{id}/call-off")
	String callOff(@PathVariable UUID id, @RequestParam(required = false) @Nullable String because, Model model,
			HttpServletResponse response, RedirectAttributes flash) {
		Workday day = this.ours.ledWorkday(id);
		try {
			this.desk.callOff(day.id(), (because != null) ? because : "");
			flash.addFlashAttribute("remarks",
					List.of("The workday is called off, and everybody who was asked is told."));
			return "redirect:/workdays/" + day.id();
		}
		catch (BadInput ex) {
			response.setStatus(HttpStatus.BAD_REQUEST.value());
			return show(day, Map.of(), ex.byField(), model);
		}
	}

}
