package org.leafward.care.web;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.care.AmountUnit;
import org.leafward.care.CareTask;
import org.leafward.care.LogEntry;
import org.leafward.care.TaskChange;
import org.leafward.care.TaskState;
import org.leafward.care.core.rule.Work;
import org.leafward.measure.DayWords;
import org.leafward.pages.Choice;
import org.leafward.pages.Formats;
import org.leafward.register.Planting;
import org.leafward.register.PlantingId;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.springframework.stereotype.Component;

/** The care log and the history of tasks in words. */
@Component
class LogWords {

	private static final String WHOLE = "the whole site";

	private final Register register;

	private final Mine mine;

	private final Clock clock;

	LogWords(Register register, Mine mine, Clock clock) {
		this.register = register;
		this.mine = mine;
		this.clock = clock;
	}

	LocalDate today(Site site) {
		return LocalDate.ofInstant(this.clock.instant(), site.zone());
	}

	/**
	 * An entry in words.
	 *
	 * @param id identifier
	 * @param what the work with its amount
	 * @param day on which
	 * @param where the whole site or a planting
	 * @param note may be empty
	 * @param by who logged it
	 * @param holdOff title of the hold-off that it fell into; null without
	 * @param holdOffHref its address
	 * @param taskHref address of the task that it was for; null without
	 */
	record Row(UUID id, String what, String day, String where, String note, String by, @Nullable String holdOff,
			@Nullable String holdOffHref, @Nullable String taskHref) {
	}

	/**
	 * A change of a task in words.
	 *
	 * @param day when
	 * @param what what became of it
	 * @param who by whom
	 */
	record Step(String day, String what, String who) {
	}

	Map<PlantingId, String> labels(Site site) {
		return this.register.plantingsOf(site.id()).stream().collect(Collectors.toMap(Planting::id, Planting::label));
	}

	List<Row> rows(List<LogEntry> entries, Map<PlantingId, String> labels, LocalDate today) {
		Formats formats = new Formats(today.getYear());
		return entries.stream().map((entry) -> row(entry, labels, formats)).toList();
	}

	private Row row(LogEntry entry, Map<PlantingId, String> labels, Formats formats) {
		String what = entry.work().words();
		String href = (entry.insideHoldOff() != null) ? "/tasks/" + entry.insideHoldOff() : null;
		return new Row(entry.id().value(),
				what.substring(0, 1).toUpperCase(Locale.ROOT) + what.substring(1) + amount(entry, formats),
				formats.day(entry.day()), where(entry.planting(), labels), entry.note(), this.mine.name(entry.by()),
				(href != null) ? Optional.ofNullable(entry.holdOff()).orElse("a hold-off") : null, href,
				(entry.task() != null) ? "/tasks/" + entry.task() : null);
	}

	static String where(@Nullable PlantingId planting, Map<PlantingId, String> labels) {
		return (planting == null) ? WHOLE : labels.getOrDefault(planting, "a planting that is gone");
	}

	private static String amount(LogEntry entry, Formats formats) {
		Double amount = entry.amount();
		AmountUnit unit = entry.unit();
		return (amount == null || unit == null) ? ""
				: ", %s %s".formatted(formats.number(amount, (amount % 1 == 0) ? 0 : 1), unit.words());
	}

	List<Step> steps(CareTask task, List<TaskChange> history, ZoneId zone) {
		List<Step> steps = new ArrayList<>();
		steps.add(new Step(day(task.createdAt().atZone(zone).toLocalDate()), "Planned", "the plan"));
		for (TaskChange change : history) {
			boolean people = change.by() != null || change.to() == TaskState.DONE || change.from() == TaskState.DONE
					|| change.to() == TaskState.SKIPPED || change.from() == TaskState.SKIPPED;
			steps.add(new Step(day(change.at().atZone(zone).toLocalDate()), what(change),
					people ? this.mine.name(change.by()) : "the plan"));
		}
		return steps;
	}

	private static String day(LocalDate day) {
		return DayWords.of(day);
	}

	private static String what(TaskChange change) {
		String because = (change.because() != null) ? ": " + change.because() : "";
		if (change.from() == TaskState.DONE) {
			return "Not done after all";
		}
		return switch (change.to()) {
			case DONE -> "Done";
			case SKIPPED -> "Left out" + because;
			case WITHDRAWN -> "Withdrawn" + because;
			case PLANNED -> (change.from() == TaskState.SKIPPED) ? "Wanted after all" : "Came back" + because;
		};
	}

	List<Choice> places(Site site, String whole) {
		List<Choice> places = new ArrayList<>(List.of(new Choice("", whole)));
		this.register.plantingsOf(site.id()).forEach((one) -> places.add(new Choice(one.id().toString(), one.label())));
		return places;
	}

	static List<Choice> units() {
		List<Choice> units = new ArrayList<>(List.of(new Choice("", "no amount")));
		Arrays.stream(AmountUnit.values()).forEach((unit) -> units.add(new Choice(unit.code(), unit.words())));
		return units;
	}

	static List<Choice> works() {
		return Arrays.stream(Work.values()).map((work) -> new Choice(work.code(), work.words())).toList();
	}

	String nameOf(@Nullable PersonId person) {
		return this.mine.name(person);
	}

}
