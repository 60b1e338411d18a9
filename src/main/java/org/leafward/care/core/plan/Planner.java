package org.leafward.care.core.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.leafward.care.TaskKind;
import org.leafward.care.TaskText;
import org.leafward.care.core.rule.Anchor;
import org.leafward.care.core.rule.EventAnchor;
import org.leafward.care.core.rule.Ramp;
import org.leafward.care.core.rule.RampStep;
import org.leafward.care.core.rule.Rule;
import org.leafward.care.core.rule.RulePack;
import org.leafward.care.core.rule.Source;
import org.leafward.care.core.rule.Span;
import org.leafward.climate.PlaceMarkers;
import org.leafward.measure.DayWindow;
import org.leafward.measure.DayWords;
import org.leafward.measure.Explanation;
import org.leafward.measure.Season;

/**
 * Derives the task windows of a planting: a fold over the rules of all packs and the
 * seasons asked for. The same arguments always give the same plan.
 */
public final class Planner {

	/** More repeats than a window of two years with one every four days has. */
	private static final int MOST_REPEATS = 200;

	private final List<RulePack> packs;

	/**
	 * Creates a planner.
	 * @param packs the rules
	 */
	public Planner(List<RulePack> packs) {
		this.packs = List.copyOf(packs);
	}

	/**
	 * Plans for one planting.
	 * @param subject the planting
	 * @param markers the season markers of its site
	 * @param seasons the seasons to plan for
	 * @return tasks by rule, season and occurrence
	 */
	public Plan plan(Subject subject, PlaceMarkers markers, List<Season> seasons) {
		List<PlannedTask> tasks = new ArrayList<>();
		List<Gap> gaps = new ArrayList<>();
		for (RulePack pack : this.packs) {
			for (Rule rule : pack.rules()) {
				for (Season season : seasons) {
					if (concerns(rule, subject, season)) {
						new Derivation(pack, rule, subject, season, markers).into(tasks, gaps);
					}
				}
			}
		}
		return new Plan(tasks, gaps);
	}

	private static boolean concerns(Rule rule, Subject subject, Season season) {
		var facts = subject.facts(season);
		return rule.concern().appliesTo(facts) && (!rule.timing().oncePerPlanting() || facts.yearsSincePlanting() == 0);
	}

	/** One rule for one planting in one season. */
	private static final class Derivation {

		private final RulePack pack;

		private final Rule rule;

		private final Subject subject;

		private final Season season;

		private final AnchorDates dates;

		Derivation(RulePack pack, Rule rule, Subject subject, Season season, PlaceMarkers markers) {
			this.pack = pack;
			this.rule = rule;
			this.subject = subject;
			this.season = season;
			this.dates = new AnchorDates(markers, subject.species().id(), subject.planting().plantedOn(), season);
		}

		void into(List<PlannedTask> tasks, List<Gap> gaps) {
			if (this.rule.timing() instanceof Ramp ramp) {
				date("Hangs on", ramp.anchor(), gaps).ifPresent((anchor) -> ramp(ramp, anchor, tasks));
			}
			else if (this.rule.timing() instanceof Span span) {
				Optional<AnchorDates.Dated> from = date("Begins", span.from(), gaps);
				Optional<AnchorDates.Dated> to = date("Ends", span.to(), gaps);
				if (from.isPresent() && to.isPresent()) {
					span(span, from.get(), to.get(), tasks);
				}
			}
		}

		private Optional<AnchorDates.Dated> date(String label, Anchor anchor, List<Gap> gaps) {
			Optional<AnchorDates.Dated> date = this.dates.date(label, anchor);
			if (date.isEmpty() && !(anchor instanceof EventAnchor)) {
				gaps.add(new Gap(this.subject.planting().id(), this.pack.reference(this.rule), this.rule.title(),
						this.season.year(), this.dates.why(anchor)));
			}
			return date;
		}

		private void span(Span span, AnchorDates.Dated from, AnchorDates.Dated to, List<PlannedTask> tasks) {
			LocalDate plantedOn = this.subject.planting().plantedOn();
			boolean uncut = span.oncePerPlanting() || span.untilPlanted() || plantedOn.isBefore(from.date());
			LocalDate first = uncut ? from.date() : plantedOn;
			LocalDate last = to.date();
			if (last.isBefore(first) || !span.keeps(new DayWindow(first, last), plantedOn)) {
				return;
			}
			List<Explanation> steps = new ArrayList<>(List.of(from.explanation(), to.explanation()));
			if (!first.equals(from.date())) {
				steps.add(Explanation.of("Planted", DayWords.of(first))
					.withDetail(
							"The window would begin on %s, before the planting.".formatted(DayWords.of(from.date()))));
			}
			DayWindow whole = new DayWindow(first, last);
			if (!span.repeats()) {
				add(0, whole, this.rule.text(), explain(whole, steps), tasks);
				return;
			}
			// One explanation for all turns, so that it is kept once.
			steps.add(0, Explanation.of("Comes again every %d days".formatted(span.everyDays()), DayWords.of(whole))
				.withDetail("This task is one of its turns through these days."));
			Explanation explanation = explain(whole, steps);
			int occurrence = 1;
			for (LocalDate day = first; !day.isAfter(last) && occurrence <= MOST_REPEATS; occurrence++) {
				LocalDate end = day.plusDays(span.everyDays() - 1L);
				// A last turn of less than half the length would ask again right after
				// the one before.
				if (end.plusDays(span.everyDays() / 2).compareTo(last) >= 0) {
					end = last;
				}
				add(occurrence, new DayWindow(day, end), this.rule.text(), explanation, tasks);
				day = end.plusDays(1);
			}
		}

		private void ramp(Ramp ramp, AnchorDates.Dated anchor, List<PlannedTask> tasks) {
			int days = ramp.days();
			LocalDate first = ramp.endsAtAnchor() ? anchor.date().minusDays(days - 1L) : anchor.date();
			if (!ramp.oncePerPlanting() && first.isBefore(this.subject.planting().plantedOn())) {
				return;
			}
			Explanation explanation = explain(new DayWindow(first, first.plusDays(days - 1L)),
					List.of(anchor.explanation(),
							Explanation.of("Length of the ramp", days + " days")
								.withDetail(ramp.endsAtAnchor() ? "Its last day is the day above."
										: "Its first day is the day above.")));
			for (int day = 1; day <= days; day++) {
				add(day, DayWindow.of(first.plusDays(day - 1L)), text(ramp.stepOn(day), day, days), explanation, tasks);
			}
		}

		private TaskText text(RampStep step, int day, int days) {
			TaskText text = this.rule.text();
			return new TaskText("Day %d of %d: %s".formatted(day, days, text.title()), step.text(),
					step.place() + hours(step), text.why(), text.otherwise(), text.caution());
		}

		private static String hours(RampStep step) {
			Double hours = step.hours();
			if (hours == null || step.place().contains("day and night")) {
				return "";
			}
			return (hours == 24) ? ", and out day and night"
					: ", for %s %s".formatted(number(hours), (hours == 1) ? "hour" : "hours");
		}

		private static String number(double hours) {
			return (hours == Math.rint(hours)) ? String.valueOf((long) hours) : String.valueOf(hours);
		}

		private Explanation explain(DayWindow window, List<Explanation> steps) {
			List<Explanation> all = new ArrayList<>();
			all.add(Explanation.of("Rule", this.pack.reference(this.rule))
				.withDetail(
						"%s, version %d. %s".formatted(this.pack.title(), this.pack.version(), this.pack.region())));
			all.addAll(steps);
			for (Source source : this.rule.sources()) {
				Explanation step = Explanation.of(source.grade().heading(), source.title())
					.withSource(source.address());
				all.add((source.publisher() != null) ? step.withDetail(source.publisher()) : step);
			}
			return Explanation.of(this.rule.title(), DayWords.of(window)).withSteps(all);
		}

		private void add(int occurrence, DayWindow window, TaskText text, Explanation explanation,
				List<PlannedTask> tasks) {
			TaskKind kind = this.rule.kind();
			String reference = this.pack.reference(this.rule);
			tasks.add(new PlannedTask(
					TaskIdentity.of(this.subject.planting().id(), reference, this.season.year(), occurrence),
					this.subject.planting().id(), this.subject.words(), reference, this.season.year(), occurrence, kind,
					window, text, explanation));
		}

	}

}
