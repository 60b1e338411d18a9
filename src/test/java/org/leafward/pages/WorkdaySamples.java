package org.leafward.pages;

import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.care.TaskId;
import org.leafward.measure.DayWindow;
import org.leafward.register.SiteId;
import org.leafward.workdays.Group;
import org.leafward.workdays.GroupId;
import org.leafward.workdays.GroupLink;
import org.leafward.workdays.GroupSite;
import org.leafward.workdays.Member;
import org.leafward.workdays.PlanTerms;
import org.leafward.workdays.Skill;
import org.leafward.workdays.Workday;
import org.leafward.workdays.WorkdayId;
import org.leafward.workdays.WorkdayState;
import org.leafward.workdays.WorkdayTask;
import org.leafward.workdays.core.list.Checklist;
import org.leafward.workdays.core.list.Checklist.Thing;

/** Models of the pages of groups and workdays, invented. */
final class WorkdaySamples {

	private static final UUID ID = UUID.fromString("6f8d0a52-6b1e-5c0e-9d57-0d6e7d1f2a35");

	private static final UUID OTHER = UUID.fromString("6f8d0a52-6b1e-5c0e-9d57-0d6e7d1f2a36");

	private static final LocalDate DAY = LocalDate.of(2026, 12, 5);

	private static final GroupSite SITE = new GroupSite(new SiteId(ID), new PersonId(ID), "Millrace Park",
			"14 Millrace Lane", true);

	private static final Group GROUP = new Group(new GroupId(ID), "Green <Crew>", "We look after the park.",
			ZoneId.of("America/Chicago"), "the shed", Set.of(DayOfWeek.SATURDAY), LocalTime.of(9, 0),
			LocalTime.of(12, 0), 12, Set.of(), new PlanTerms(3, Map.of("pole pruner", 1)),
			List.of(new Member(new PersonId(ID), "Nora Field", true, Set.of(Skill.FIRST_AID), Set.of(), Set.of())),
			List.of(SITE));

	private WorkdaySamples() {
	}

	record Row(String href, LocalDate day, String group, String times, String where, String standing) {
	}

	record MemberRow(UUID id, String name, boolean leads, String skills, @Nullable String emergency) {
	}

	record SiteRow(UUID id, String name, String where, boolean mine) {
	}

	record Walked(UUID id, String label, String place, String square, @Nullable String wrong) {
	}

	record Job(UUID task, String title, String plant, String site, DayWindow window, int minutes, boolean pinned,
			@Nullable String why) {
	}

	record Day(UUID id, LocalDate day, String times, boolean proposed, boolean locked, int minutes, List<Job> jobs) {
	}

	record Coming(UUID id, String name, boolean waits, int children, @Nullable String emergency, String hours) {
	}

	record Year(String name, int days, String hours) {
	}

	private static Workday workday(WorkdayState state) {
		return new Workday(new WorkdayId(ID), GROUP.id(), GROUP.name(), DAY, LocalTime.of(9, 0), LocalTime.of(12, 0),
				GROUP.zone(), "the shed", List.of(SITE), state,
				(state == WorkdayState.CALLED_OFF) ? "Thunderstorms are forecast." : null, 1, 12, 12, 1,
				List.of(new WorkdayTask(new TaskId(ID), SITE.site(), 45, true, "Its window ends.", 1, 1, false)),
				DAY.plusDays(1), false, Instant.EPOCH, Instant.EPOCH);
	}

	private static List<Checklist> lists() {
		return List.of(Checklist.of(ID.toString(), "Millrace Park", "14 Millrace Lane", 1,
				List.of(new Thing(ID.toString(), "old elm", 1, 10, "Prune", "Take out what is dead.", "a quarter", 45,
						List.of("saw use"), List.of("loppers"), "Keep away from power lines.", false),
						new Thing(OTHER.toString(), "hedge", null, null, "Mulch", "Lay it.", null, 30, List.of(),
								List.of("rakes"), null, true))));
	}

	private static Map<String, Object> with(Object... pairs) {
		Map<String, Object> model = new HashMap<>();
		model.put("section", "groups");
		model.put("group", GROUP);
		model.put("errors", Map.of());
		for (int i = 0; i < pairs.length; i += 2) {
			model.put((String) pairs[i], pairs[i + 1]);
		}
		return model;
	}

	static Map<String, Map<String, Object>> all() {
		List<Choice> days = Arrays.stream(DayOfWeek.values()).map((day) -> new Choice(day.name(), day.name())).toList();
		Row row = new Row("/workdays/" + ID, DAY, "Green Crew", "09:00 to 12:00", "Millrace Park", "4 places free");
		Map<String, Map<String, Object>> all = new LinkedHashMap<>();
		all.put("workdays/groups",
				with("groups", List.of(GROUP), "days", List.of(row), "mayMake", true, "remarks", List.of("You left.")));
		all.put("workdays/group-form",
				with("weekdays", days, "form", Map.of("name", "", "weekdays", Set.of("SATURDAY"), "away", "soon"),
						"errors",
						Map.of("name", "it is missing", "away", "'soon' is no date", "weekdays", "choose one")));
		all.put("workdays/group",
				with("leads", true, "member", true, "lead", "The next workday is on Sat 5 Dec.", "days", List.of(row),
						"members", List.of(new MemberRow(ID, "Nora", true, "first aid", "Ada, 555 0100")), "sites",
						List.of(new SiteRow(ID, "Millrace Park", "14 Millrace Lane", true)), "mine",
						List.of(new SiteRow(OTHER, "Garden", "", true)), "fresh", "https://x.example/join/abc", "links",
						List.of(new GroupLink(ID, GROUP.id(), Instant.EPOCH, Instant.EPOCH))));
		all.put("workdays/me",
				with("weekdays", days, "skills", List.of(new Choice("SAW", "saw use")), "form",
						Map.of("skills", Set.of("SAW"), "weekdays", Set.of("MONDAY"), "emergency", "Ada"), "errors",
						Map.of("emergency", "too long")));
		all.put("workdays/join",
				with("name", "Green Crew", "about", "We work.", "secret", "abc", "known", true, "member", false));
		all.put("workdays/walk",
				with("site", SITE, "rows", List.of(new Walked(ID, "hedge", "x", "Z9", "'Z9' is no square"))));
		Job job = new Job(ID, "Mulch", "hedge", "Millrace Park", new DayWindow(DAY, DAY.plusDays(9)), 45, true,
				"Its window ends.");
		all.put("workdays/plan", with("lead", "1 workday is proposed and 0 fixed.", "days",
				List.of(new Day(ID, DAY, "09:00 to 12:00", true, false, 45, List.of(job))), "choices",
				List.of(new Choice(ID.toString(), "Sat 5 Dec"), new Choice(OTHER.toString(), "Sat 12 Dec")), "left",
				List.of(new Job(OTHER, "Prune", "elm", "Millrace Park", new DayWindow(DAY, DAY), 0, false, "No date.")),
				"ahead", "60", "most", "6"));
		all.put("workdays/workday",
				with("workday", workday(WorkdayState.FIXED), "times", "09:00 to 12:00", "leads", true, "member", true,
						"open", true, "ahead", true, "rainTaken", true, "begun", true, "lead", "The workday is full.",
						"mine", null, "children", "2", "guardian", false, "errors",
						Map.of("guardian", "children come with a guardian only"), "lists", lists(), "coming",
						List.of(new Coming(ID, "Nora", false, 2, "Ada, 555 0100", "2.5"))));
		all.put("workdays/move",
				with("workday", workday(WorkdayState.FIXED), "form",
						Map.of("day", "2026-12-05", "begins", "09:00", "ends", "08:00"), "errors",
						Map.of("ends", "too early")));
		all.put("workdays/answer", with("workday", workday(WorkdayState.CALLED_OFF), "times", "09:00 to 12:00", "open",
				true, "mine", "IN", "lead", "You come.", "token", "abc", "remarks", List.of("Noted.")));
		all.put("workdays/checklist", with("workday", workday(WorkdayState.FIXED), "lists", lists(), "done", 1L,
				"tasks", 2, "begun", true, "keptUntil", 1_800_000_000_000L));
		all.put("workdays/hours",
				with("year", 2026, "lines", List.of(new Year("Nora", 2, "5.5"), new Year("", 1, "2")), "sum", "7.5"));
		return all;
	}

}
