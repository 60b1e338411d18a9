package org.leafward.workdays.web;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.Clock;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.measure.Given;
import org.leafward.workdays.Group;
import org.leafward.workdays.GroupSite;
import org.leafward.workdays.Groups;
import org.leafward.workdays.HoursReport;
import org.leafward.workdays.Member;
import org.leafward.workdays.Skill;
import org.leafward.workdays.Workdays;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Volunteer groups by API, for those who belong to them. */
@RestController
@Tag(name = "Groups", description = "Volunteers who look after some sites together, for those who belong to them")
@RequestMapping("/api/v1/groups")
class GroupApi {

	private final Ours ours;

	private final Groups groups;

	private final Workdays workdays;

	private final HoursReport report;

	private final Clock clock;

	GroupApi(Ours ours, Groups groups, Workdays workdays, HoursReport report, Clock clock) {
		this.ours = ours;
		this.groups = groups;
		this.workdays = workdays;
		this.report = report;
		this.clock = clock;
	}

	/**
	 * A group as answered.
	 *
	 * @param id identifier
	 * @param name what it is called
	 * @param about what it does
	 * @param zone time zone of its workdays
	 * @param meetingPoint where it meets as a rule
	 * @param weekdays on which it works as a rule, such as "saturday"
	 * @param begins when a workday begins as a rule
	 * @param ends when it ends
	 * @param capacity how many can come to one as a rule
	 * @param notice how many days it takes to call people; nothing sooner is proposed
	 * @param fewTools tools that not every team can have at once, with how many can
	 * @param leads whether who asks leads it
	 * @param members how many belong to it
	 * @param sites how many sites it looks after
	 */
	record GroupAnswer(UUID id, String name, String about, String zone, String meetingPoint, List<String> weekdays,
			LocalTime begins, LocalTime ends, int capacity, int notice, Map<String, Integer> fewTools, boolean leads,
			int members, int sites) {

		static GroupAnswer of(Group group, boolean leads) {
			return new GroupAnswer(group.id().value(), group.name(), group.about(), group.zone().getId(),
					group.meetingPoint(), weekdays(group), group.begins(), group.ends(), group.capacity(),
					group.terms().notice(), new TreeMap<>(group.terms().fewTools()), leads, group.members().size(),
					group.sites().size());
		}

		private static List<String> weekdays(Group group) {
			return group.weekdays().stream().sorted().map(DayOfWeek::name).map(GroupAnswer::low).toList();
		}

		private static String low(String name) {
			return name.toLowerCase(Locale.ROOT);
		}

	}

	/**
	 * Somebody who belongs to a group. Whom to call in an emergency is never told here.
	 *
	 * @param person identifier
	 * @param name what they are called
	 * @param leads whether they lead it
	 * @param skills codes of what they are trained or licensed for
	 */
	record MemberAnswer(UUID person, String name, boolean leads, List<String> skills) {

		static MemberAnswer of(Member member) {
			return new MemberAnswer(member.person().value(), member.name(), member.leads(),
					member.skills().stream().sorted().map(Skill::code).toList());
		}

	}

	/**
	 * A site that a group looks after.
	 *
	 * @param id identifier
	 * @param name what its owner calls it
	 * @param where what members are told of where it is
	 * @param exact whether that is an address
	 */
	record GroupSiteAnswer(UUID id, String name, String where, boolean exact) {

		static GroupSiteAnswer of(GroupSite site) {
			return new GroupSiteAnswer(site.site().value(), site.name(), site.where(), site.exact());
		}

	}

	/**
	 * How long somebody worked in a year.
	 *
	 * @param name what they are called; empty for all whose account is deleted, together
	 * @param days on how many workdays
	 * @param minutes how long in all
	 */
	record HoursAnswer(String name, int days, int minutes) {
	}

	@Operation(summary = "One's own groups, by name")
	@GetMapping
	List<GroupAnswer> list(@RequestParam(defaultValue = "0") int page, @RequestParam(defaultValue = "50") int size) {
		PersonId me = this.ours.me();
		List<Group> mine = (me != null) ? this.groups.ofPerson(me) : List.of();
		return Slices.of(mine, page, size).stream().map((one) -> GroupAnswer.of(one, this.ours.leads(one))).toList();
	}

	@Operation(summary = "A group")
	@GetMapping("/{id}")
	GroupAnswer read(@PathVariable UUID id) {
		Group group = this.ours.group(id);
		return GroupAnswer.of(group, this.ours.leads(group));
	}

	@Operation(summary = "Those who belong to a group, who leads it first")
	@GetMapping("/{id}/members")
	List<MemberAnswer> members(@PathVariable UUID id, @RequestParam(defaultValue = "0") int page,
			@RequestParam(defaultValue = "50") int size) {
		return Slices.of(this.ours.group(id).members(), page, size).stream().map(MemberAnswer::of).toList();
	}

	@Operation(summary = "The sites that a group looks after, by name")
	@GetMapping("/{id}/sites")
	List<GroupSiteAnswer> sites(@PathVariable UUID id, @RequestParam(defaultValue = "0") int page,
			@RequestParam(defaultValue = "50") int size) {
		return Slices.of(this.ours.group(id).sites(), page, size).stream().map(GroupSiteAnswer::of).toList();
	}

	@Operation(summary = "The workdays of a group by day, from today to 200 days on unless told otherwise; those that "
			+ "are only proposed for who leads it")
	@GetMapping("/{id}/workdays")
	List<WorkdayAnswer> workdays(@PathVariable UUID id, @RequestParam(required = false) @Nullable String from,
			@RequestParam(required = false) @Nullable String to, @RequestParam(defaultValue = "0") int page,
			@RequestParam(defaultValue = "50") int size) {
		Group group = this.ours.group(id);
		LocalDate today = LocalDate.ofInstant(this.clock.instant(), group.zone());
		return Slices
			.of(this.workdays.ofGroup(group.id(), Slices.days(from, to, today), this.ours.leads(group)), page, size)
			.stream()
			.map((one) -> WorkdayAnswer.of(one, null))
			.toList();
	}

	@Operation(summary = "How long each member worked in a calendar year, who worked longest first; for who leads it")
	@GetMapping("/{id}/hours")
	List<HoursAnswer> hours(@PathVariable UUID id, @RequestParam(required = false) @Nullable String year,
			@RequestParam(defaultValue = "0") int page, @RequestParam(defaultValue = "50") int size) {
		Group group = this.ours.led(id);
		int now = LocalDate.ofInstant(this.clock.instant(), group.zone()).getYear();
		int asked = (year == null) ? now : Hours.year(Given.whole("year", year), now);
		return Slices.of(this.report.of(group.id(), asked), page, size)
			.stream()
			.map((one) -> new HoursAnswer(one.name(), one.days(), one.minutes()))
			.toList();
	}

}
