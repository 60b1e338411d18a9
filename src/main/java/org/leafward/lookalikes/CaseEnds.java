package org.leafward.lookalikes;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.leafward.care.AddedTask;
import org.leafward.care.AddedTasks;
import org.leafward.care.CareTask;
import org.leafward.care.TaskCalendar;
import org.leafward.care.TaskState;
import org.leafward.climate.LocalClimate;
import org.leafward.climate.MarkerKey;
import org.leafward.climate.MarkerKind;
import org.leafward.climate.SeasonMarker;
import org.leafward.climate.TemperatureThreshold;
import org.leafward.lookalikes.core.Answers;
import org.leafward.lookalikes.core.Cause;
import org.leafward.lookalikes.core.FollowUp;
import org.leafward.lookalikes.core.Span;
import org.leafward.measure.BadInput;
import org.leafward.measure.NotThere;
import org.leafward.measure.Season;
import org.leafward.register.Planting;
import org.leafward.register.PlantingId;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.leafward.register.SiteId;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * What comes of a case: tasks on the calendar, a sample, what it is taken for in the end,
 * and the look a year on.
 */
@Service
public class CaseEnds {

	private static final int LONGEST_RESULT = 2000;

	private static final int MEDIAN = 50;

	private static final TemperatureThreshold FREEZE = TemperatureThreshold.parse("32F");

	private final Cases cases;

	private final LookalikeKeys keys;

	private final AddedTasks tasks;

	private final TaskCalendar calendar;

	private final Register register;

	private final LocalClimate climate;

	private final ClosedCases closed;

	private final ApplicationEventPublisher events;

	CaseEnds(Cases cases, LookalikeKeys keys, AddedTasks tasks, TaskCalendar calendar, Register register,
			LocalClimate climate, ClosedCases closed, ApplicationEventPublisher events) {
		this.cases = cases;
		this.keys = keys;
		this.tasks = tasks;
		this.calendar = calendar;
		this.register = register;
		this.climate = climate;
		this.closed = closed;
		this.events = events;
	}

	/**
	 * What would go onto the calendar, were something taken for the cause.
	 * @param one the case
	 * @param cause a cause of the key
	 * @return empty for a plant that is in no register
	 * @throws NotThere when the key doesn't have it
	 */
	public Optional<FollowUp.Planned> plan(PlantCase one, String cause) {
		Cause taken = cause(cause);
		return place(one).map((place) -> FollowUp.of(taken, facts(one, place)));
	}

	/** A planting that is still there, and its site. */
	private record Planted(Site site, Planting planting) {
	}

	private Optional<Planted> place(PlantCase one) {
		PlantingId id = one.planting();
		return Optional.ofNullable(id)
			.flatMap(this.register::find)
			.flatMap((planting) -> this.register.find(planting.site()).map((site) -> new Planted(site, planting)));
	}

	private FollowUp.Facts facts(PlantCase one, Planted place) {
		Site site = place.site();
		LocalDate today = this.cases.today(one);
		int season = Season.containing(today, site.point().hemisphere()).year();
		Map<Integer, Span.Freezes> freezes = new HashMap<>();
		Set<String> asked = new HashSet<>();
		for (int year = season - 1; year <= season + 1; year++) {
			Span.Freezes found = freezes(site, year);
			if (found != null) {
				freezes.put(year, found);
			}
			for (CareTask task : this.calendar.ofSeason(site.id(), year)) {
				if (!task.added() && task.state() != TaskState.WITHDRAWN
						&& (task.planting() == null || task.planting().equals(place.planting().id()))) {
					asked.add(task.rule() + "|" + year);
				}
			}
		}
		return new FollowUp.Facts(today, one.seen(), site.point().hemisphere(), freezes, asked);
	}

	private Span.@Nullable Freezes freezes(Site site, int season) {
		return this.climate.answer(site.place(), (markers) -> {
			Optional<LocalDate> spring = markers
				.on(new MarkerKey(MarkerKind.LAST_SPRING_FREEZE, FREEZE, MEDIAN), season)
				.map(SeasonMarker::date);
			Optional<LocalDate> fall = markers.on(new MarkerKey(MarkerKind.FIRST_FALL_FREEZE, FREEZE, MEDIAN), season)
				.map(SeasonMarker::date);
			return spring.flatMap((last) -> fall.map((first) -> new Span.Freezes(last, first)));
		}).orElse(null);
	}

	/**
	 * Takes something for the cause for now and puts what follows onto the calendar, in
	 * place of what another cause had put there. The case stays open.
	 * @param id the case
	 * @param cause a cause of the key
	 * @return the case as it is now
	 * @throws NotThere when there is no such case, or the key doesn't have the cause
	 * @throws BadInput when the case is closed
	 */
	@Transactional
	public PlantCase followUp(CaseId id, String cause) {
		Cause taken = cause(cause);
		PlantCase one = this.cases.change(id, (edit) -> {
			if (edit.before().closed()) {
				throw new BadInput("the case is closed", "case", "open it again first");
			}
			edit.cause = taken.id();
			edit.basis = Basis.ANSWERS;
		});
		putTasks(one, taken);
		return one;
	}

	private void putTasks(PlantCase one, @Nullable Cause cause) {
		SiteId site = one.site();
		if (site == null || this.register.find(site).isEmpty()) {
			return;
		}
		Optional<Planted> place = place(one);
		List<AddedTask> wanted = (cause != null && place.isPresent())
				? FollowUp.of(cause, facts(one, place.get())).tasks() : List.of();
		this.tasks.put(Cases.origin(one.id()), site, place.map((planted) -> planted.planting().id()).orElse(null),
				wanted, "Its case is taken for something else now.");
	}

	/**
	 * Notes that a sample was sent.
	 * @param id the case
	 * @param day when
	 * @return the case as it is now
	 * @throws NotThere when there is no such case
	 * @throws BadInput when the day is to come, or before it was seen, or the case is
	 * closed
	 */
	@Transactional
	public PlantCase sampled(CaseId id, LocalDate day) {
		return this.cases.change(id, (edit) -> {
			if (edit.before().closed()) {
				throw new BadInput("the case is closed", "case", "open it again first");
			}
			checkDay(edit.before(), day);
			edit.sampledOn = day;
			edit.state = CaseState.WAITING;
			edit.closedOn = null;
		});
	}

	private void checkDay(PlantCase one, LocalDate day) {
		if (day.isAfter(this.cases.today(one))) {
			throw new BadInput("%s is still to come".formatted(day), "day", "give the day on which it was");
		}
		if (day.isBefore(one.seen())) {
			throw new BadInput("%s is before it was first seen".formatted(day), "day",
					"give a day from %s on".formatted(one.seen()));
		}
	}

	/**
	 * Says what it is taken for and closes the case. A result of a laboratory can come
	 * after that and says it anew; nothing else can.
	 * @param id the case
	 * @param cause a cause of the key; null for something else, which the result tells
	 * @param basis on what that rests
	 * @param result in words, up to 2,000 characters; may be empty where a cause is named
	 * @return the case as it is now
	 * @throws NotThere when there is no such case, or the key doesn't have the cause
	 * @throws BadInput when neither cause nor words are given, or it is closed
	 */
	@Transactional
	public PlantCase close(CaseId id, @Nullable String cause, Basis basis, String result) {
		Cause taken = (cause != null) ? cause(cause) : null;
		String words = result.strip();
		if (taken == null && words.isEmpty()) {
			throw new BadInput("nothing says what was found", "result",
					"choose a cause, or write what it is in your own words");
		}
		if (words.length() > LONGEST_RESULT) {
			throw new BadInput("it has %d characters".formatted(words.length()), "result",
					"use at most %,d".formatted(LONGEST_RESULT));
		}
		PlantCase one = this.cases.change(id, (edit) -> {
			if (edit.before().closed() && basis != Basis.LABORATORY) {
				throw new BadInput("the case is closed", "case", "open it again first");
			}
			edit.cause = (taken != null) ? taken.id() : null;
			edit.basis = basis;
			edit.result = words;
			edit.state = CaseState.CLOSED;
			edit.closedOn = this.cases.today(edit.before());
		});
		putTasks(one, taken);
		this.events.publishEvent(this.closed.facts(one));
		return one;
	}

	/**
	 * Opens a closed case again, with its answers; one that is open stays as it is.
	 * @param id the case
	 * @return the case as it is now
	 * @throws NotThere when there is no such case
	 */
	@Transactional
	public PlantCase reopen(CaseId id) {
		return this.cases.change(id, (edit) -> {
			if (edit.before().closed()) {
				edit.state = CaseState.OPEN;
				edit.closedOn = null;
			}
		});
	}

	/**
	 * Opens a new case of the same plant, a season on; the former stays as it is. What
	 * still stands of its answers stands in the new one too, to be changed or taken back;
	 * the record is read anew.
	 * @param id the former case
	 * @return the new one, seen today
	 * @throws NotThere when there is no such case
	 */
	@Transactional
	public PlantCase again(CaseId id) {
		PlantCase former = this.cases.require(id);
		PlantCase next = this.cases.open(former.person(),
				new NewCase(former.site(), former.planting(), former.species(), former.plant(), former.county(),
						former.zone(), this.cases.today(former), former.id()));
		Answers lasting = former.answers().lasting(this.keys.current());
		return lasting.given().isEmpty() ? next : this.cases.begin(next.id(), lasting);
	}

	private Cause cause(String id) {
		return this.keys.current().cause(id).orElseThrow(() -> new NotThere("There is no cause " + id));
	}

}
