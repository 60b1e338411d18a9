package org.leafward.workdays.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.time.Clock;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.People;
import org.leafward.accounts.Person;
import org.leafward.accounts.PersonId;
import org.leafward.measure.BadInput;
import org.leafward.measure.DayWindow;
import org.leafward.measure.DayWords;
import org.leafward.measure.Findings;
import org.leafward.measure.Given;
import org.leafward.pages.NotForYou;
import org.leafward.register.OpenSites;
import org.leafward.register.Site;
import org.leafward.pages.Choice;
import org.leafward.workdays.Group;
import org.leafward.workdays.GroupDesk;
import org.leafward.workdays.GroupDesk.Told;
import org.leafward.workdays.GroupId;
import org.leafward.workdays.GroupLinks;
import org.leafward.workdays.Groups;
import org.leafward.workdays.KnownTools;
import org.leafward.workdays.MemberCare;
import org.leafward.workdays.PersonWorkday;
import org.leafward.workdays.PlanTerms;
import org.leafward.workdays.SignUpState;
import org.leafward.workdays.Skill;
import org.leafward.workdays.Workday;
import org.leafward.workdays.WorkdayState;
import org.leafward.workdays.Workdays;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** Groups: those that somebody belongs to, one of them, and what is said of it. */
@Controller
class GroupPages {

	private static final int AHEAD_DAYS = 200;

	private static final int OWN_SITES = 200;

	private final Ours ours;

	private final Groups groups;

	private final GroupDesk desk;

	private final GroupLinks links;

	private final MemberCare members;

	private final Workdays workdays;

	private final KnownTools tools;

	private final OpenSites sites;

	private final People people;

	private final Clock clock;

	private final String baseUrl;

	GroupPages(Ours ours, Groups groups, GroupDesk desk, GroupLinks links, MemberCare members, Workdays workdays,
			KnownTools tools, OpenSites sites, People people, Clock clock,
			@Value("${leafward.base-url}") String baseUrl) {
		this.ours = ours;
		this.groups = groups;
		this.desk = desk;
		this.links = links;
		this.members = members;
		this.workdays = workdays;
		this.tools = tools;
		this.sites = sites;
		this.people = people;
		this.clock = clock;
		this.baseUrl = baseUrl.endsWith("/") ? baseUrl.substring(0, baseUrl.length() - 1) : baseUrl;
	}

	/** A workday in a list. */
	record Row(String href, LocalDate day, String group, String times, String where, String standing) {

		static Row of(Workday day, @Nullable SignUpState state) {
			String where = day.sites().isEmpty() ? day.meetingPoint()
					: String.join(", ", day.sites().stream().map((one) -> one.name()).toList());
			return new Row("/workdays/" + day.id(), day.day(), day.groupName(),
					Fields.clock(day.begins()) + " to " + Fields.clock(day.ends()), where, standing(day, state));
		}

		private static String standing(Workday day, @Nullable SignUpState state) {
			if (day.state() == WorkdayState.CALLED_OFF) {
				return "called off";
			}
			if (day.state() == WorkdayState.PROPOSED) {
				return day.locked() ? "proposed, locked" : "proposed";
			}
			if (day.state() == WorkdayState.HELD) {
				return "held";
			}
			String places = (day.free() == 0) ? "full"
					: (day.free() == 1) ? "1 place free" : day.free() + " places free";
			return (state == SignUpState.IN) ? "you come" : (state == SignUpState.WAITING) ? "you wait for a place"
					: (state == SignUpState.OUT) ? "you don’t come; " + places : places;
		}

	}

	@GetMapping("/groups")
	String list(Model model) {
		PersonId me = this.ours.me();
		List<Group> mine = (me != null) ? this.groups.ofPerson(me) : List.of();
		LocalDate today = LocalDate.ofInstant(this.clock.instant(), zone());
		List<PersonWorkday> days = (me != null)
				? this.workdays.ofPerson(me, new DayWindow(today, today.plusDays(AHEAD_DAYS))) : List.of();
		model.addAttribute("section", "groups");
		model.addAttribute("groups", mine);
		model.addAttribute("days", days.stream().map((one) -> Row.of(one.workday(), one.state())).limit(20).toList());
		model.addAttribute("mayMake", this.ours.coordinates());
		return "workdays/groups";
	}

	private ZoneId zone() {
		PersonId me = this.ours.me();
		return (me != null) ? this.people.find(me).map(Person::zone).orElse(ZoneId.of("UTC")) : ZoneId.of("UTC");
	}

	@GetMapping("/groups/new")
	@Nullable String form(Model model, HttpServletRequest request, HttpServletResponse response) throws IOException {
		if (refused(request, response)) {
			return null;
		}
		Map<String, Object> form = new HashMap<>();
		form.put("zone", zone().getId());
		form.put("begins", "09:00");
		form.put("ends", "12:00");
		form.put("capacity", "15");
		form.put("notice", String.valueOf(PlanTerms.USUAL.notice()));
		form.put("weekdays", Set.of(DayOfWeek.SATURDAY.name()));
		return form(form, Map.of(), null, model);
	}

	private boolean refused(HttpServletRequest request, HttpServletResponse response) throws IOException {
		if (this.ours.coordinates()) {
			return false;
		}
		request.setAttribute(NotForYou.ATTRIBUTE, new NotForYou("Groups are made by coordinators",
				"ask the operator of this server for the role of a group coordinator"));
		response.sendError(HttpStatus.FORBIDDEN.value());
		return true;
	}

	@PostMapping("/groups/new")
	@Nullable String make(@RequestParam Map<String, String> given,
			@RequestParam(required = false) @Nullable List<String> weekdays, Few.Fields few, Model model,
			HttpServletRequest request, HttpServletResponse response) throws IOException {
		if (refused(request, response)) {
			return null;
		}
		try {
			GroupId id = this.desk.make(told(given, weekdays, few), this.ours.somebody());
			return "redirect:/groups/" + id;
		}
		catch (BadInput ex) {
			response.setStatus(HttpStatus.BAD_REQUEST.value());
			return form(back(given, weekdays, few), ex.byField(), null, model);
		}
	}

	@GetMapping("/groups/{id}/settings")
	String settings(@PathVariable UUID id, Model model) {
		Group group = this.ours.led(id);
		Map<String, Object> form = new HashMap<>();
		form.put("name", group.name());
		form.put("about", group.about());
		form.put("zone", group.zone().getId());
		form.put("meetingPoint", group.meetingPoint());
		form.put("begins", Fields.clock(group.begins()));
		form.put("ends", Fields.clock(group.ends()));
		form.put("capacity", String.valueOf(group.capacity()));
		form.put("notice", String.valueOf(group.terms().notice()));
		form.put("few",
				group.terms()
					.fewTools()
					.entrySet()
					.stream()
					.sorted(Map.Entry.comparingByKey())
					.map((one) -> new Few(one.getKey(), String.valueOf(one.getValue())))
					.toList());
		form.put("weekdays", Fields.names(group.weekdays()));
		form.put("away", Fields.text(group.away()));
		return form(form, Map.of(), group, model);
	}

	@PostMapping("/groups/{id}/settings")
	String change(@PathVariable UUID id, @RequestParam Map<String, String> given,
			@RequestParam(required = false) @Nullable List<String> weekdays, Few.Fields few, Model model,
			HttpServletResponse response) {
		Group group = this.ours.led(id);
		try {
			this.desk.change(group.id(), told(given, weekdays, few));
			return "redirect:/groups/" + group.id();
		}
		catch (BadInput ex) {
			response.setStatus(HttpStatus.BAD_REQUEST.value());
			return form(back(given, weekdays, few), ex.byField(), group, model);
		}
	}

	private static Map<String, Object> back(Map<String, String> given, @Nullable List<String> weekdays,
			Few.Fields few) {
		Map<String, Object> form = new HashMap<>(given);
		form.put("weekdays", (weekdays != null) ? Set.copyOf(weekdays) : Set.of());
		form.put("few", few.rows());
		return form;
	}

	private Told told(Map<String, String> given, @Nullable List<String> weekdays, Few.Fields tools) {
		Findings all = new Findings();
		Supplier<ZoneId> zone = all.read(() -> Given.zone("zone", given.get("zone")));
		Supplier<LocalTime> begins = all.read(() -> Fields.time("begins", given.get("begins")));
		Supplier<LocalTime> ends = all.read(() -> Fields.time("ends", given.get("ends")));
		Supplier<Integer> capacity = all.read(() -> Given.whole("capacity", given.get("capacity")));
		Supplier<Integer> notice = all.read(() -> Given.whole("notice", given.get("notice")));
		Supplier<Map<String, Integer>> few = all.read(() -> few(tools));
		Supplier<Set<LocalDate>> away = all.read(() -> Fields.days("away", given.get("away")));
		Supplier<Set<DayOfWeek>> days = all.read(() -> Fields.weekdays(weekdays));
		return all.give(() -> new Told(given.getOrDefault("name", ""), given.getOrDefault("about", ""), zone.get(),
				given.getOrDefault("meetingPoint", ""), days.get(), begins.get(), ends.get(), capacity.get(),
				away.get(), new PlanTerms(notice.get(), few.get())));
	}

	private Map<String, Integer> few(Few.Fields fields) {
		Map<String, Integer> few = new TreeMap<>();
		for (Few row : fields.rows()) {
			int teams = Fields.called("how many teams can have it", "fewTools",
					(words) -> Given.whole(words, row.teams()));
			if (few.put(row.tool(), teams) != null) {
				throw new BadInput("'%s' is there twice".formatted(Given.shown(row.tool())), "fewTools",
						"keep one of them");
			}
		}
		this.tools.check(few.keySet());
		return few;
	}

	private String form(Map<String, Object> form, Map<String, String> errors, @Nullable Group group, Model model) {
		model.addAttribute("section", "groups");
		model.addAttribute("group", group);
		model.addAttribute("form", form);
		model.addAttribute("errors", errors);
		model.addAttribute("weekdays", Fields.weekdays());
		List<?> few = (List<?>) form.getOrDefault("few", List.of());
		model.addAttribute("few", Few.withRoom(few.stream().map(Few.class::cast).toList()));
		model.addAttribute("tools", this.tools.names().stream().map((tool) -> new Choice(tool, tool)).toList());
		return "workdays/group-form";
	}

	/** A member in a list. */
	record MemberRow(UUID id, String name, boolean leads, String skills, @Nullable String emergency) {
	}

	/** A site in a list. */
	record SiteRow(UUID id, String name, String where, boolean mine) {
	}

	@GetMapping("/groups/{id}")
	String show(@PathVariable UUID id, Model model) {
		Group group = this.ours.group(id);
		boolean leads = this.ours.leads(group);
		PersonId me = this.ours.me();
		LocalDate today = LocalDate.ofInstant(this.clock.instant(), group.zone());
		Map<UUID, SignUpState> states = new HashMap<>();
		if (me != null) {
			this.workdays.ofPerson(me, new DayWindow(today, today.plusDays(AHEAD_DAYS))).forEach((one) -> {
				if (one.state() != null) {
					states.put(one.workday().id().value(), one.state());
				}
			});
		}
		List<Workday> days = this.workdays.ofGroup(group.id(), new DayWindow(today, today.plusDays(AHEAD_DAYS)), false);
		model.addAttribute("section", "groups");
		model.addAttribute("group", group);
		model.addAttribute("leads", leads);
		model.addAttribute("member", this.ours.belongs(group));
		model.addAttribute("lead", lead(days));
		model.addAttribute("days", days.stream().map((day) -> Row.of(day, states.get(day.id().value()))).toList());
		model.addAttribute("members", memberRows(group, leads));
		model.addAttribute("sites", group.sites()
			.stream()
			.map((one) -> new SiteRow(one.site().value(), one.name(), one.where(), one.owner().equals(me) || leads))
			.toList());
		model.addAttribute("mine", mine(group));
		model.addAttribute("links", leads ? this.links.of(group.id()) : List.of());
		return "workdays/group";
	}

	/** Shown by the answer itself: on the way through a session it would be kept. */
	@PostMapping("/groups/{id}/links")
	String link(@PathVariable UUID id, Model model) {
		Group group = this.ours.led(id);
		String secret = this.links.make(group.id(), this.ours.somebody());
		model.addAttribute("fresh", this.baseUrl + "/join/" + secret);
		return show(id, model);
	}

	private static String lead(List<Workday> days) {
		return days.stream()
			.filter((day) -> day.state() == WorkdayState.FIXED)
			.findFirst()
			.map((day) -> "The next workday is on %s, %s to %s.".formatted(DayWords.of(day.day()),
					Fields.clock(day.begins()), Fields.clock(day.ends())))
			.orElse("No workday is fixed yet.");
	}

	private List<MemberRow> memberRows(Group group, boolean leads) {
		Map<PersonId, String> emergencies = leads ? this.members.emergencies(group.id()) : Map.of();
		return group.members()
			.stream()
			.map((one) -> new MemberRow(one.person().value(), one.name(), one.leads(),
					String.join(", ", one.skills().stream().sorted().map(Skill::words).toList()),
					emergencies.get(one.person())))
			.toList();
	}

	private List<Site> mine(Group group) {
		PersonId me = this.ours.me();
		return this.sites.list(0, OWN_SITES)
			.stream()
			.filter((site) -> site.owner().equals(me)
					&& group.sites().stream().noneMatch((one) -> one.site().equals(site.id())))
			.toList();
	}

}
