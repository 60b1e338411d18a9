package org.leafward.care.core.review;

import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.leafward.care.AmountUnit;
import org.leafward.care.CareTask;
import org.leafward.care.LogEntry;
import org.leafward.care.TaskKind;
import org.leafward.care.TaskState;
import org.leafward.care.core.rule.Work;
import org.leafward.care.core.state.TaskLifecycle;
import org.leafward.register.PlantingId;
import org.leafward.register.Watering;

/** Puts a year's tasks and what was done beside each other. */
public final class YearReviews {

	private static final String GONE = "a planting that is gone";

	private final YearInputs inputs;

	private YearReviews(YearInputs inputs) {
		this.inputs = inputs;
	}

	/**
	 * Looks back.
	 * @param inputs what is known
	 * @return the review
	 */
	public static YearReview of(YearInputs inputs) {
		return new YearReviews(inputs).review();
	}

	private YearReview review() {
		List<Reviewed> tasks = this.inputs.tasks()
			.stream()
			.filter((task) -> task.window().from().getYear() == this.inputs.year())
			.map(this::reviewed)
			.toList();
		List<Reviewed> asked = tasks.stream().filter((one) -> one.outcome() != null).toList();
		return new YearReview(this.inputs.year(), this.inputs.today().getYear() > this.inputs.year(), tasks,
				tally(asked), rows(asked, (one) -> work(one.task()), (one) -> words(work(one.task())), false),
				rows(asked, (one) -> one.task().subject(), (one) -> plant(one.task()), true), missed(asked),
				leftOut(asked), months(), watered());
	}

	private Reviewed reviewed(CareTask task) {
		LocalDate done = (task.state() == TaskState.DONE) ? this.inputs.doneOn()
			.getOrDefault(task.id(), LocalDate.ofInstant(task.changedAt(), this.inputs.zone())) : null;
		return new Reviewed(task, (task.kind() == TaskKind.HOLD_OFF) ? null : outcome(task, done), done);
	}

	private @Nullable Outcome outcome(CareTask task, @Nullable LocalDate done) {
		TaskLifecycle lifecycle = new TaskLifecycle(task.kind(), task.window(), task.state(), null,
				LocalDate.ofInstant(task.createdAt(), this.inputs.zone()));
		return switch (lifecycle.on(this.inputs.today())) {
			case DONE -> (done != null && done.isAfter(task.window().to())) ? Outcome.LATE : Outcome.ON_TIME;
			case SKIPPED -> Outcome.LEFT_OUT;
			case MISSED -> Outcome.MISSED;
			case WITHDRAWN -> Outcome.NOT_NEEDED;
			// Nobody has to note that they looked.
			case PLANNED, DUE -> (task.kind() == TaskKind.WATCH) ? null : Outcome.OPEN;
			case OVER -> null;
		};
	}

	private static Tally tally(List<Reviewed> tasks) {
		return Tally.of(tasks.stream().map(Reviewed::outcome).filter(Objects::nonNull).toList());
	}

	private static List<YearReview.Row> rows(List<Reviewed> asked, Function<Reviewed, Object> by,
			Function<Reviewed, String> name, boolean plantings) {
		Map<Object, List<Reviewed>> groups = new LinkedHashMap<>();
		asked.forEach((one) -> groups.computeIfAbsent(by.apply(one), (key) -> new ArrayList<>()).add(one));
		return groups.values().stream().map((group) -> {
			// The latest name of a planting is its name.
			Reviewed last = group.get(group.size() - 1);
			return new YearReview.Row(name.apply(last), plantings && last.task().planting() != null, tally(group));
		})
			.sorted(Comparator.comparingInt((YearReview.Row row) -> -row.tally().total())
				.thenComparing(YearReview.Row::name))
			.toList();
	}

	/** What works of tasks are grouped by; those from before works were noted are one. */
	private static Object work(CareTask task) {
		return (task.work() != null) ? task.work() : "other work";
	}

	private static String words(Object work) {
		return (work instanceof Work known) ? known.words() : work.toString();
	}

	private static String plant(CareTask task) {
		return (task.planting() != null) ? task.plant() : YearReview.WHOLE_SITE;
	}

	private record Care(UUID subject, String rule) {

		static Care of(CareTask task) {
			return new Care(task.subject(), task.rule());
		}

	}

	private List<YearReview.Missed> missed(List<Reviewed> asked) {
		Map<Care, List<CareTask>> groups = new LinkedHashMap<>();
		asked.stream()
			.filter((one) -> one.outcome() == Outcome.MISSED)
			.forEach((one) -> groups.computeIfAbsent(Care.of(one.task()), (key) -> new ArrayList<>()).add(one.task()));
		Map<Care, LocalDate> next = next();
		return groups.entrySet().stream().map((group) -> {
			List<CareTask> tasks = group.getValue();
			CareTask last = tasks.get(tasks.size() - 1);
			return new YearReview.Missed(title(last), plant(last), last.planting() != null, last.id(), last.window(),
					tasks.size(), last.text().otherwise(), last.text().why(), next.get(group.getKey()));
		})
			.sorted(Comparator.comparingInt((YearReview.Missed one) -> -one.times())
				.thenComparing((one) -> one.window().from())
				.thenComparing(YearReview.Missed::title)
				.thenComparing(YearReview.Missed::plant))
			.toList();
	}

	/** The first day of what is planned and not over, for each care of a planting. */
	private Map<Care, LocalDate> next() {
		Map<Care, LocalDate> next = new LinkedHashMap<>();
		this.inputs.ahead()
			.stream()
			.filter((task) -> task.state() == TaskState.PLANNED && !task.window().to().isBefore(this.inputs.today()))
			.forEach((task) -> next.merge(Care.of(task), task.window().from(),
					(one, other) -> one.isBefore(other) ? one : other));
		return next;
	}

	/** A day of a ramp without its number. */
	private static String title(CareTask task) {
		return (task.kind() == TaskKind.RAMP_DAY) ? task.text().title().replaceFirst("^Day \\d+ of \\d+: ", "")
				: task.text().title();
	}

	private static List<YearReview.LeftOut> leftOut(List<Reviewed> asked) {
		return asked.stream()
			.filter((one) -> one.outcome() == Outcome.LEFT_OUT)
			.map(Reviewed::task)
			.map((task) -> new YearReview.LeftOut(task.text().title(), plant(task), task.planting() != null, task.id(),
					task.window(), (task.withdrawnBecause() != null) ? task.withdrawnBecause() : ""))
			.toList();
	}

	private List<YearReview.MonthDone> months() {
		List<YearReview.Done> done = new ArrayList<>();
		Set<UUID> logged = new HashSet<>();
		for (LogEntry entry : this.inputs.log()) {
			logged.add(entry.id().value());
			done.add(done(entry));
		}
		this.inputs.waterings()
			.stream()
			.filter((watering) -> !logged.contains(watering.id().value()))
			.forEach((watering) -> done.add(done(watering)));
		Map<Month, List<YearReview.Done>> months = new TreeMap<>();
		done.stream()
			.filter((one) -> one.day().getYear() == this.inputs.year())
			.sorted(Comparator.comparing(YearReview.Done::day))
			.forEach((one) -> months.computeIfAbsent(one.day().getMonth(), (key) -> new ArrayList<>()).add(one));
		return months.entrySet()
			.stream()
			.map((month) -> new YearReview.MonthDone(month.getKey(), sums(month.getValue()), month.getValue()))
			.toList();
	}

	private YearReview.Done done(LogEntry entry) {
		boolean held = entry.insideHoldOff() != null;
		return new YearReview.Done(entry.id().value(), entry.day(), entry.work(), where(entry.planting()),
				entry.planting() != null, entry.amount(), entry.unit(), entry.note(), entry.task(),
				entry.insideHoldOff(), held ? Objects.requireNonNullElse(entry.holdOff(), "a hold-off") : null);
	}

	/** Entered on the page of the weather, not in the log. */
	private YearReview.Done done(Watering watering) {
		return new YearReview.Done(watering.id().value(), watering.day(), Work.WATER, where(watering.planting()),
				watering.planting() != null, watering.millimetres(), AmountUnit.MM, watering.note(), null, null, null);
	}

	private String where(@Nullable PlantingId planting) {
		return (planting == null) ? YearReview.WHOLE_SITE : this.inputs.labels().getOrDefault(planting, GONE);
	}

	private static List<YearReview.WorkCount> sums(List<YearReview.Done> done) {
		Map<Work, Integer> counts = new TreeMap<>();
		done.forEach((one) -> counts.merge(one.work(), 1, Integer::sum));
		return counts.entrySet()
			.stream()
			.map((one) -> new YearReview.WorkCount(one.getKey(), one.getValue()))
			.sorted(Comparator.comparingInt((YearReview.WorkCount one) -> -one.times()))
			.toList();
	}

	private List<YearReview.Watered> watered() {
		Map<String, List<Watering>> places = new LinkedHashMap<>();
		this.inputs.waterings()
			.stream()
			.filter((one) -> one.day().getYear() == this.inputs.year())
			.forEach((one) -> places.computeIfAbsent(String.valueOf(one.planting()), (key) -> new ArrayList<>())
				.add(one));
		return places.values()
			.stream()
			.map((of) -> new YearReview.Watered(where(of.get(0).planting()), of.get(0).planting() != null, of.size(),
					of.stream().mapToDouble(Watering::millimetres).sum()))
			.sorted(Comparator.comparingDouble((YearReview.Watered one) -> -one.millimetres()))
			.toList();
	}

}
