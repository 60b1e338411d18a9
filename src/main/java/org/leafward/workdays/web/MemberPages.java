package org.leafward.workdays.web;

import jakarta.servlet.http.HttpServletResponse;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.measure.BadInput;
import org.leafward.measure.Findings;
import org.leafward.measure.Given;
import org.leafward.measure.NotThere;
import org.leafward.pages.Choice;
import org.leafward.workdays.Group;
import org.leafward.workdays.GroupDesk;
import org.leafward.workdays.GroupId;
import org.leafward.workdays.GroupLinks;
import org.leafward.workdays.Groups;
import org.leafward.workdays.Member;
import org.leafward.workdays.MemberCare;
import org.leafward.workdays.Skill;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Who belongs to a group: joining by link, what members tell of themselves, leaving. */
@Controller
class MemberPages {

	private final Ours ours;

	private final Groups groups;

	private final GroupDesk desk;

	private final GroupLinks links;

	private final MemberCare care;

	MemberPages(Ours ours, Groups groups, GroupDesk desk, GroupLinks links, MemberCare care) {
		this.ours = ours;
		this.groups = groups;
		this.desk = desk;
		this.links = links;
		this.care = care;
	}

	@GetMapping("/groups/{id}/me")
	String me(@PathVariable UUID id, Model model) {
		Group group = this.ours.group(id);
		Member me = member(group);
		Map<String, Object> form = new HashMap<>();
		form.put("skills", Fields.names(me.skills()));
		form.put("weekdays", Fields.names(me.weekdays()));
		form.put("away", Fields.text(me.away()));
		form.put("emergency", this.care.emergencies(group.id()).getOrDefault(me.person(), ""));
		return form(group, form, Map.of(), model);
	}

	private Member member(Group group) {
		PersonId me = this.ours.me();
		return ((me != null) ? group.member(me) : Optional.<Member>empty())
			.orElseThrow(() -> new NotThere("You don’t belong to this group"));
	}

	@PostMapping("/groups/{id}/me")
	String tell(@PathVariable UUID id, @RequestParam Map<String, String> given,
			@RequestParam(required = false) @Nullable List<String> weekdays,
			@RequestParam(required = false) @Nullable List<String> skills, Model model, HttpServletResponse response) {
		Group group = this.ours.group(id);
		Member me = member(group);
		try {
			Findings all = new Findings();
			Supplier<Set<DayOfWeek>> days = all.read(() -> Fields.weekdays(weekdays));
			Supplier<Set<LocalDate>> away = all.read(() -> Fields.days("away", given.get("away")));
			Supplier<Set<Skill>> can = all.read(() -> {
				Set<Skill> known = new TreeSet<>();
				for (String one : (skills != null) ? skills : List.<String>of()) {
					known.add(Given.word("skills", one, Skill.class));
				}
				return known;
			});
			all.end();
			this.desk.tell(group.id(), me.person(), can.get(), days.get(), away.get(),
					given.getOrDefault("emergency", ""));
			return "redirect:/groups/" + group.id();
		}
		catch (BadInput ex) {
			response.setStatus(HttpStatus.BAD_REQUEST.value());
			Map<String, Object> form = new HashMap<>(given);
			form.put("weekdays", (weekdays != null) ? Set.copyOf(weekdays) : Set.of());
			form.put("skills", (skills != null) ? Set.copyOf(skills) : Set.of());
			return form(group, form, ex.byField(), model);
		}
	}

	private static String form(Group group, Map<String, Object> form, Map<String, String> errors, Model model) {
		model.addAttribute("section", "groups");
		model.addAttribute("group", group);
		model.addAttribute("form", form);
		model.addAttribute("errors", errors);
		model.addAttribute("weekdays", Fields.weekdays());
		model.addAttribute("skills",
				List.of(Skill.values()).stream().map((one) -> new Choice(one.name(), one.words())).toList());
		return "workdays/me";
	}

	@PostMapping("/groups/{id}/leave")
	String leave(@PathVariable UUID id, RedirectAttributes flash) {
		Group group = this.ours.group(id);
		this.desk.leave(group.id(), member(group).person());
		flash.addFlashAttribute("remarks", List.of("You left the group. Your hours stay in its report."));
		return "redirect:/groups";
	}

	@PostMapping("/groups/{id}/members/{person}/lead")
	String lead(@PathVariable UUID id, @PathVariable UUID person, @RequestParam(defaultValue = "true") boolean leads) {
		Group group = this.ours.led(id);
		this.desk.lead(group.id(), other(group, person), leads);
		return "redirect:/groups/%s#members".formatted(group.id());
	}

	@PostMapping("/groups/{id}/members/{person}/remove")
	String remove(@PathVariable UUID id, @PathVariable UUID person) {
		Group group = this.ours.led(id);
		this.desk.leave(group.id(), other(group, person));
		return "redirect:/groups/%s#members".formatted(group.id());
	}

	private static PersonId other(Group group, UUID person) {
		return group.member(new PersonId(person))
			.map(Member::person)
			.orElseThrow(() -> new NotThere("There is no member " + person));
	}

	@PostMapping("/groups/{id}/links/{link}/withdraw")
	String withdraw(@PathVariable UUID id, @PathVariable UUID link) {
		Group group = this.ours.led(id);
		this.links.withdraw(group.id(), link);
		return "redirect:/groups/%s#invite".formatted(group.id());
	}

	@GetMapping("/join/{secret}")
	String invited(@PathVariable String secret, Model model) {
		Group group = linked(secret);
		model.addAttribute("section", "groups");
		model.addAttribute("name", group.name());
		model.addAttribute("about", group.about());
		model.addAttribute("secret", secret);
		model.addAttribute("known", this.ours.me() != null);
		model.addAttribute("member", this.ours.belongs(group));
		return "workdays/join";
	}

	@PostMapping("/join/{secret}")
	String join(@PathVariable String secret) {
		Group group = linked(secret);
		GroupId id = group.id();
		this.desk.join(id, this.ours.somebody());
		return "redirect:/groups/%s/me".formatted(id);
	}

	private Group linked(String secret) {
		return this.links.find(secret)
			.flatMap(this.groups::find)
			.orElseThrow(() -> new NotThere("This link doesn’t work any more"));
	}

}
