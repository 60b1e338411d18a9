package org.leafward.workdays.web;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.People;
import org.leafward.accounts.Person;
import org.leafward.accounts.PersonId;
import org.leafward.care.TaskId;
import org.leafward.measure.NotThere;
import org.leafward.workdays.Checklists;
import org.leafward.workdays.Mark;
import org.leafward.workdays.OnTheDay;
import org.leafward.workdays.SignUp;
import org.leafward.workdays.SignUps;
import org.leafward.workdays.Workday;
import org.leafward.workdays.Workdays;
import org.leafward.workdays.core.list.Checklist;
import org.springframework.web.bind.annotation.DeleteMapping;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Workdays by API, for members of their groups. */
@RestController
@Tag(name = "Workdays", description = "Days on which groups work: who comes, what is to be done, what is done")
@RequestMapping("/api/v1/workdays")
class WorkdayApi {

	private final Ours ours;

	private final Workdays workdays;

	private final Checklists lists;

	private final SignUps signUps;

	private final OnTheDay day;

	private final People people;

	private final Clock clock;

	WorkdayApi(Ours ours, Workdays workdays, Checklists lists, SignUps signUps, OnTheDay day, People people,
			Clock clock) {
		this.ours = ours;
		this.workdays = workdays;
		this.lists = lists;
		this.signUps = signUps;
		this.day = day;
		this.people = people;
		this.clock = clock;
	}

	/**
	 * A task of a workday, in walking order.
	 *
	 * @param id identifier of the task
	 * @param site identifier of its site
	 * @param siteName what the site is called
	 * @param team which team does it
	 * @param number its number on the list of the site
	 * @param title what is done
	 * @param plant what it is done to
	 * @param how how it is done
	 * @param amount how much; null where nothing is measured
	 * @param minutes effort in person-minutes
	 * @param skills what those who do it need, in words
	 * @param done whether it is done
	 */
	record JobAnswer(UUID id, UUID site, String siteName, int team, int number, String title, String plant, String how,
			@Nullable String amount, int minutes, List<String> skills, boolean done) {

		static JobAnswer of(Checklist list, Checklist.Line line) {
			return new JobAnswer(UUID.fromString(line.task()), UUID.fromString(list.site()), list.name(), list.team(),
					line.number(), line.title(), line.plant(), line.how(), line.amount(), line.minutes(), line.skills(),
					line.done());
		}

	}

	/**
	 * Somebody who comes, waits, or said no.
	 *
	 * @param person identifier
	 * @param name what they are called
	 * @param state "in", "waiting" or "out"
	 * @param children how many children they bring
	 * @param since when they signed up
	 * @param minutes how long they worked; null until somebody said
	 */
	record SignUpAnswer(UUID person, String name, String state, int children, Instant since,
			@Nullable Integer minutes) {

		static SignUpAnswer of(SignUp one, String name) {
			return new SignUpAnswer(one.person().value(), name, WorkdayAnswer.code(one.state()), one.children(),
					one.since(), one.minutes());
		}

	}

	/**
	 * What is told when somebody comes.
	 *
	 * @param children how many children they bring, 0 to 20; null for none
	 * @param guardian whether they are their guardian, or have their guardians' leave,
	 * and stay with them
	 */
	record ComeRequest(@Nullable Integer children, @Nullable Boolean guardian) {
	}

	@Operation(summary = "The published workdays of one's own groups by day, from today to 200 days on unless told "
			+ "otherwise")
	@GetMapping
	List<WorkdayAnswer> list(@RequestParam(required = false) @Nullable String from,
			@RequestParam(required = false) @Nullable String to, @RequestParam(defaultValue = "0") int page,
			@RequestParam(defaultValue = "50") int size) {
		PersonId me = this.ours.me();
		// The day before, for those who are west of here.
		LocalDate today = LocalDate.ofInstant(this.clock.instant(), ZoneOffset.UTC).minusDays(1);
		return Slices
			.of((me != null) ? this.workdays.ofPerson(me, Slices.days(from, to, today)) : List.of(), page, size)
			.stream()
			.map((one) -> WorkdayAnswer.of(one.workday(), one.state()))
			.toList();
	}

	@Operation(summary = "A workday")
	@GetMapping("/{id}")
	WorkdayAnswer read(@PathVariable UUID id) {
		return answer(this.ours.workday(id));
	}

	private WorkdayAnswer answer(Workday day) {
		PersonId me = this.ours.me();
		return WorkdayAnswer.of(day,
				this.workdays.signUps(day.id())
					.stream()
					.filter((one) -> one.person().equals(me))
					.map(SignUp::state)
					.findFirst()
					.orElse(null));
	}

	@Operation(summary = "What is to be done on a workday: by team and site, in walking order")
	@GetMapping("/{id}/tasks")
	List<JobAnswer> tasks(@PathVariable UUID id, @RequestParam(defaultValue = "0") int page,
			@RequestParam(defaultValue = "50") int size) {
		return Slices.of(jobs(this.ours.workday(id)), page, size);
	}

	private List<JobAnswer> jobs(Workday day) {
		return this.lists.of(day)
			.stream()
			.flatMap((list) -> list.lines().stream().map((line) -> JobAnswer.of(list, line)))
			.toList();
	}

	@Operation(summary = "Who comes to a workday, waits, or said no, the earliest first; for who leads its group")
	@GetMapping("/{id}/sign-ups")
	List<SignUpAnswer> signUps(@PathVariable UUID id, @RequestParam(defaultValue = "0") int page,
			@RequestParam(defaultValue = "50") int size) {
		List<SignUp> all = Slices.of(this.workdays.signUps(this.ours.ledWorkday(id).id()), page, size);
		Map<PersonId, Person> known = this.people.find(all.stream().map(SignUp::person).toList());
		return all.stream()
			.filter((one) -> known.containsKey(one.person()))
			.map((one) -> SignUpAnswer.of(one, Objects.requireNonNull(known.get(one.person())).name()))
			.toList();
	}

	@Operation(summary = "Sign up for a workday, or change how many children one brings. Where no place is free one "
			+ "waits, and moves up by oneself")
	@PutMapping("/{id}/sign-up")
	WorkdayAnswer come(@PathVariable UUID id, @RequestBody(required = false) @Nullable ComeRequest request) {
		Workday day = this.ours.workday(id);
		Integer children = (request != null) ? request.children() : null;
		this.signUps.come(day.id(), this.ours.somebody(), (children != null) ? children : 0,
				request != null && Boolean.TRUE.equals(request.guardian()));
		return answer(this.ours.workday(id));
	}

	@Operation(summary = "Say that one doesn’t come; the place goes to whoever waits")
	@DeleteMapping("/{id}/sign-up")
	WorkdayAnswer stayAway(@PathVariable UUID id) {
		Workday day = this.ours.workday(id);
		this.signUps.stayAway(day.id(), this.ours.somebody());
		return answer(this.ours.workday(id));
	}

	@Operation(summary = "Tick a task of a workday as done, on the day itself or up to 30 days after it. The care log "
			+ "of its site has it then. Of several ticks the latest counts")
	@PutMapping("/{id}/tasks/{task}/done")
	JobAnswer done(@PathVariable UUID id, @PathVariable UUID task) {
		return tick(id, task, true);
	}

	@Operation(summary = "Take the tick of a task back, and its entry in the care log")
	@DeleteMapping("/{id}/tasks/{task}/done")
	JobAnswer notDone(@PathVariable UUID id, @PathVariable UUID task) {
		return tick(id, task, false);
	}

	private JobAnswer tick(UUID id, UUID task, boolean done) {
		Workday workday = this.ours.workday(id);
		job(workday, task);
		this.day.tick(workday.id(), List.of(new Mark(UUID.randomUUID(), workday.id(), new TaskId(task),
				this.ours.somebody(), done, this.clock.instant())));
		return job(this.ours.workday(id), task);
	}

	private JobAnswer job(Workday day, UUID task) {
		return jobs(day).stream()
			.filter((one) -> one.id().equals(task))
			.findFirst()
			.orElseThrow(() -> new NotThere("There is no task %s on this workday".formatted(task)));
	}

}
