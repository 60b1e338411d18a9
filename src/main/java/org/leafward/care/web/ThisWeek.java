package org.leafward.care.web;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.People;
import org.leafward.accounts.Person;
import org.leafward.accounts.PersonId;
import org.leafward.care.CareTask;
import org.leafward.care.TaskCalendar;
import org.leafward.care.TaskId;
import org.leafward.care.TaskKind;
import org.leafward.care.TaskNews;
import org.leafward.care.TaskNow;
import org.leafward.care.TaskState;
import org.leafward.care.TaskStates;
import org.leafward.measure.DayWindow;
import org.leafward.pages.TaskLine;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.springframework.stereotype.Component;

/**
 * What matters this week, to one person.
 *
 * @param days the seven days
 * @param lead the sentence at the head
 * @param why why nothing is planned for a year; null when something is
 * @param nextHref address of what comes next; null when there is something to do
 * @param tonight the coming night
 * @param parts the lists that have something in them
 * @param noSites whether there is nothing to say as there is no site
 * @param all whether the lists are told in full
 */
record ThisWeek(DayWindow days, String lead, @Nullable String why, @Nullable String nextHref, Tonight tonight,
		List<Part> parts, boolean noSites, boolean all) {

	/** Lines of the first list, and of each other one. */
	private static final int MOST_TO_DO = 12;

	private static final int MOST = 6;

	/** Lines of each list when all of it is asked for. */
	private static final int MOST_OF_ALL = 200;

	private static final int WEEK = 7;

	/** Sites that are looked through for something planted. */
	private static final int SOME_SITES = 20;

	/**
	 * A list.
	 *
	 * @param title its heading
	 * @param lines what is shown
	 * @param more how many lines are not
	 */
	record Part(String title, List<TaskLine> lines, int more) {

		static Part of(String title, List<TaskLine> lines, int most) {
			return new Part(title, lines.stream().limit(most).toList(), Math.max(0, lines.size() - most));
		}

		int size() {
			return this.lines.size() + this.more;
		}

	}

	/** The four lists of what is to be done and left. */
	private record Work(Part todo, Part ramps, Part holdOffs, Part watches) {

		int toDo() {
			return this.todo.size() + this.ramps.size() + this.watches.size();
		}

	}

	/** Reads it, in the same number of questions however much there is. */
	@Component
	static class Reader {

		private final TaskCalendar calendar;

		private final TaskStates states;

		private final TaskNews news;

		private final Tonight.Reader tonight;

		private final Register register;

		private final People people;

		private final Clock clock;

		Reader(TaskCalendar calendar, TaskStates states, TaskNews news, Tonight.Reader tonight, Register register,
				People people, Clock clock) {
			this.calendar = calendar;
			this.states = states;
			this.news = news;
			this.tonight = tonight;
			this.register = register;
			this.people = people;
			this.clock = clock;
		}

		/**
		 * The week.
		 * @param person whose
		 * @param all whether the lists are wanted in full
		 * @return as of now
		 */
		ThisWeek of(PersonId person, boolean all) {
			ZoneId zone = zone(person);
			LocalDate today = LocalDate.ofInstant(this.clock.instant(), zone);
			DayWindow days = week(today);
			List<CareTask> tasks = this.calendar.ofPerson(person, days);
			List<Site> sites = this.register.sitesOf(person);
			Work work = work(tasks, today, all);
			int most = all ? MOST_OF_ALL : MOST;
			Part changed = Part.of("What changed",
					WhatChanged.lines(this.news.of(person, today), most, this.news::why, zone, today), most);
			CareTask next = (work.toDo() == 0) ? next(person, days).orElse(null) : null;
			boolean empty = work.toDo() == 0 && next == null;
			return new ThisWeek(days, lead(work, next, today),
					empty ? WeekLead.whyNothing(!sites.isEmpty(), planted(sites)) : null,
					(next != null) ? Lines.address(next) : null, this.tonight.of(sites, tasks),
					Stream.of(work.todo(), work.ramps(), work.holdOffs(), work.watches(), changed)
						.filter((part) -> !part.lines().isEmpty())
						.toList(),
					sites.isEmpty(), all);
		}

		/**
		 * The sentence at the head alone.
		 * @param person whose week
		 * @return as of now
		 */
		String lead(PersonId person) {
			LocalDate today = LocalDate.ofInstant(this.clock.instant(), zone(person));
			DayWindow days = week(today);
			Work work = work(this.calendar.ofPerson(person, days), today, false);
			return lead(work, (work.toDo() == 0) ? next(person, days).orElse(null) : null, today);
		}

		private static String lead(Work work, @Nullable CareTask next, LocalDate today) {
			return WeekLead.of(work.toDo(), work.holdOffs().size(),
					(next != null) ? new WeekLead.Next(next.window().from(), next.text().title(), next.plant()) : null,
					today);
		}

		private ZoneId zone(PersonId person) {
			return this.people.find(person).map(Person::zone).orElse(ZoneOffset.UTC);
		}

		private static DayWindow week(LocalDate today) {
			return new DayWindow(today, today.plusDays(WEEK - 1L));
		}

		private Optional<CareTask> next(PersonId person, DayWindow days) {
			return this.news.next(person, new DayWindow(days.to().plusDays(1), days.from().plusYears(1)));
		}

		private boolean planted(List<Site> sites) {
			return sites.stream().limit(SOME_SITES).anyMatch((site) -> !this.register.plantingsOf(site.id()).isEmpty());
		}

		private Work work(List<CareTask> tasks, LocalDate today, boolean all) {
			List<CareTask> planned = Gathered
				.withoutRepeats(tasks.stream().filter((task) -> task.state() == TaskState.PLANNED).toList());
			List<CareTask> acting = planned.stream().filter((task) -> task.kind() != TaskKind.HOLD_OFF).toList();
			Map<TaskId, TaskNow> standings = this.states.of(acting);
			int most = all ? MOST_OF_ALL : MOST;
			return new Work(
					Part.of("To do",
							Gathered.lines(of(TaskKind.DO, acting), standings, "home")
								.stream()
								.sorted(Gathered.byUrgency(today))
								.toList(),
							all ? MOST_OF_ALL : MOST_TO_DO),
					Part.of("Out into the light", Gathered.lines(of(TaskKind.RAMP_DAY, acting), standings, "home"),
							most),
					Part.of("Leave alone", Gathered.lines(of(TaskKind.HOLD_OFF, planned)), most),
					Part.of("Look for", Gathered.lines(of(TaskKind.WATCH, acting), standings, "home"), most));
		}

		private static List<CareTask> of(TaskKind kind, List<CareTask> tasks) {
			Predicate<CareTask> which = (task) -> task.kind() == kind;
			return tasks.stream().filter(which).toList();
		}

	}

}
