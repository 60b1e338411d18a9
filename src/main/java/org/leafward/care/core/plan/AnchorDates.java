package org.leafward.care.core.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;
import org.leafward.care.core.phase.Estimate;
import org.leafward.care.core.phase.PhaseOrder;
import org.leafward.care.core.rule.Anchor;
import org.leafward.care.core.rule.CalendarAnchor;
import org.leafward.care.core.rule.Days;
import org.leafward.care.core.rule.EventAnchor;
import org.leafward.care.core.rule.MarkerAnchor;
import org.leafward.care.core.rule.PhaseAnchor;
import org.leafward.care.core.rule.PlantingDateAnchor;
import org.leafward.care.core.rule.SoilTestAnchor;
import org.leafward.climate.MarkerKey;
import org.leafward.measure.DayWords;
import org.leafward.measure.Explanation;
import org.leafward.measure.Season;
import org.leafward.plants.Species;
import org.leafward.plants.SpeciesId;
import org.leafward.register.Planting;

/** Turns anchors into dates at one site; the steps are worded when they are asked for. */
final class AnchorDates {

	private final PlanSite site;

	private final Estimates estimates;

	private final PhaseOrders orders;

	AnchorDates(PlanSite site, Estimates estimates) {
		this.site = site;
		this.estimates = estimates;
		this.orders = new PhaseOrders(this, site.observed(), estimates);
	}

	AnchorDate of(Anchor anchor, Season season, Subject subject) {
		if (anchor instanceof MarkerAnchor marker) {
			return marker(marker, marker.nextSeason() ? season.next() : season, subject);
		}
		if (anchor instanceof PhaseAnchor phase) {
			return phase(phase, phase.nextSeason() ? season.next() : season, subject, true);
		}
		if (anchor instanceof EventAnchor event) {
			return this.site.observed()
				.event(subject.plantingId(), event.event(), season.year())
				.map((day) -> plain(anchor, day.plusDays(days(event.days(), subject)), day))
				.orElse(AnchorDate.NOT_LOGGED);
		}
		if (anchor instanceof SoilTestAnchor test) {
			return this.site.figures()
				.soil(subject)
				.filter((soil) -> test.finding().isAskedBy(soil.treatment())
						&& Season.containing(soil.day(), season.hemisphere()).equals(season))
				.map((soil) -> plain(anchor, due(test, soil).plusDays(days(test.days(), subject)), soil.day()))
				.orElse(AnchorDate.NOT_LOGGED);
		}
		if (anchor instanceof CalendarAnchor fixed) {
			LocalDate day = fixed.day().in(fixed.nextSeason() ? season.next() : season);
			return plain(anchor, day, day);
		}
		Planting planting = subject.planting();
		if (planting == null) {
			return AnchorDate.missing("A site as a whole has no planting date.");
		}
		PlantingDateAnchor planted = (PlantingDateAnchor) anchor;
		return plain(anchor, planting.plantedOn().plusDays(days(planted.days(), subject)), planting.plantedOn());
	}

	private static LocalDate due(SoilTestAnchor test, TestedSoil soil) {
		return test.lastPart() ? soil.day().plusDays((soil.parts() - 1L) * SoilTestAnchor.HALF_YEAR) : soil.day();
	}

	static int days(Days days, Subject subject) {
		SpeciesId species = subject.speciesId();
		return (species != null) ? days.of(species) : days.days();
	}

	private static AnchorDate plain(Anchor anchor, LocalDate date, LocalDate counted) {
		return new AnchorDate(date, null, Basis.mix(date.toEpochDay(), counted),
				(label) -> Explanation.of(label, DayWords.of(date))
					.withDetail(sentence(anchor.words()))
					.withSteps(date.equals(counted) ? List.of() : List.of(added(counted, date))));
	}

	/** The latest of the events that the anchor names; the first must have a date. */
	private AnchorDate marker(MarkerAnchor anchor, Season season, Subject subject) {
		AnchorDate own = alone(anchor, season, subject, anchor::words);
		LocalDate latest = own.date();
		AnchorDate decides = own;
		for (MarkerAnchor floor = anchor.floor(); floor != null && latest != null; floor = floor.floor()) {
			AnchorDate least = alone(floor, season, subject, floor::wordsAlone);
			LocalDate soonest = least.date();
			if (soonest != null && soonest.isAfter(latest)) {
				latest = soonest;
				decides = least;
			}
		}
		return (decides == own) ? own : heldBack(anchor, own, decides);
	}

	private static AnchorDate heldBack(MarkerAnchor anchor, AnchorDate own, AnchorDate least) {
		LocalDate date = Objects.requireNonNull(least.date());
		return new AnchorDate(date, null, Basis.mix(own.basis(), least.basis()),
				(label) -> Explanation.of(label, DayWords.of(date))
					.withDetail(sentence(anchor.words()))
					.withSteps(List.of(
							own.words().apply("By the first event alone").withDetail(sentence(anchor.wordsAlone())),
							least.words().apply("No sooner than"))));
	}

	private AnchorDate alone(MarkerAnchor anchor, Season season, Subject subject, Supplier<String> words) {
		MarkerKey key = anchor.of(subject.speciesId());
		return this.site.markers().on(key, season.year()).map((marker) -> {
			LocalDate counted = marker.date().plusDays(days(anchor.days(), subject));
			LocalDate date = anchor.bounds().keep(counted, season);
			long basis = Basis.mix(Basis.mix(Basis.mix(marker.date().toEpochDay(), marker.earliest()), marker.latest()),
					date);
			return new AnchorDate(date, null, basis, (label) -> stepped(label, words.get(), marker.explanation(),
					marker.date(), counted, date, anchor.bounds().words()));
		}).orElseGet(() -> AnchorDate.missing(this.site.markers().whyMissing(key)));
	}

	/**
	 * The date of a phase.
	 * @param inOrder whether it keeps its place among the phases that were seen; those
	 * that only an estimate hangs on needn't, as what hangs on them does
	 */
	private AnchorDate phase(PhaseAnchor anchor, Season season, Subject subject, boolean inOrder) {
		Species species = subject.species();
		Planting planting = subject.planting();
		if (species == null || planting == null) {
			return AnchorDate.missing("A site as a whole has no %s.".formatted(plain(anchor.phase())));
		}
		Optional<LocalDate> seen = this.site.observed().phase(planting.id(), anchor.phase(), season.year());
		if (seen.isPresent()) {
			return offset(anchor, season, subject, seen.get(), Basis.mix(1, seen.get()),
					() -> Explanation.of("Observed here: " + plain(anchor.phase()), DayWords.of(seen.get()))
						.withDetail("What was seen on the planting itself goes before any estimate."));
		}
		Estimates.Known known = this.estimates.of(anchor.phase(), species).orElse(null);
		if (known == null) {
			return AnchorDate.missing("Nobody has logged %s here, and there is no estimate for %s."
				.formatted(plain(anchor.phase()), species.commonName()));
		}
		Estimate estimate = known.estimate();
		AnchorDate expected = (estimate.at() instanceof PhaseAnchor other)
				? phase(other, other.nextSeason() ? season.next() : season, subject, false)
				: of(estimate.at(), season, subject);
		LocalDate day = expected.date();
		if (day == null) {
			return expected;
		}
		long basis = Basis.mix(known.basis(), expected.basis());
		PhaseOrder.Kept kept = inOrder ? this.orders.of(season, subject).get(anchor.phase()) : null;
		PhaseOrder.Dated by = (kept != null) ? kept.by() : null;
		if (kept == null || by == null) {
			return offset(anchor, season, subject, day, basis, () -> estimated(anchor, expected, estimate));
		}
		long moved = Basis.mix(Basis.mix(basis, by.phase().hashCode()), by.day());
		return offset(anchor, season, subject, kept.day(), by.seen() ? moved : Basis.mix(moved, 1),
				() -> inOrder(anchor, kept.day(), by, estimated(anchor, expected, estimate)));
	}

	private static Explanation inOrder(PhaseAnchor anchor, LocalDate day, PhaseOrder.Dated by, Explanation estimated) {
		return Explanation.of("By what was seen here: " + plain(anchor.phase()), DayWords.of(day))
			.withDetail(sentence(
					"%s %s on %s, and the two come in another order on this plant, so the estimate gives way".formatted(
							plain(by.phase()), by.seen() ? "was seen" : "is now expected", DayWords.of(by.day()))))
			.withSteps(List.of(estimated));
	}

	private AnchorDate offset(PhaseAnchor anchor, Season season, Subject subject, LocalDate day, long basis,
			Supplier<Explanation> step) {
		LocalDate counted = day.plusDays(days(anchor.days(), subject));
		LocalDate date = anchor.bounds().keep(counted, season);
		return new AnchorDate(date, null, Basis.mix(basis, date),
				(label) -> stepped(label, anchor.words(), step.get(), day, counted, date, anchor.bounds().words()));
	}

	private static Explanation estimated(PhaseAnchor anchor, AnchorDate expected, Estimate estimate) {
		Explanation day = expected.words().apply("Estimate of " + plain(anchor.phase()));
		List<Explanation> steps = new ArrayList<>(day.steps());
		steps.addAll(Reasons.sources(estimate.sources()));
		return day.withSteps(steps);
	}

	private static Explanation stepped(String label, String words, Explanation first, LocalDate start,
			LocalDate counted, LocalDate date, String bounds) {
		List<Explanation> steps = new ArrayList<>();
		steps.add(first);
		if (!counted.equals(start)) {
			steps.add(added(start, counted));
		}
		if (!date.equals(counted)) {
			steps.add(Explanation.of("The rule keeps to the calendar here", DayWords.of(date))
				.withDetail("Whatever the weather, this day comes %s.".formatted(bounds)));
		}
		return Explanation.of(label, DayWords.of(date)).withDetail(sentence(words)).withSteps(steps);
	}

	private static Explanation added(LocalDate start, LocalDate date) {
		long days = Math.abs(date.toEpochDay() - start.toEpochDay());
		return Explanation
			.of("The rule %s %d %s".formatted(date.isBefore(start) ? "goes back" : "adds", days,
					(days == 1) ? "day" : "days"), DayWords.of(date))
			.withDetail("Counted from %s.".formatted(DayWords.of(start)));
	}

	private static String plain(String name) {
		return name.replace('-', ' ');
	}

	private static String sentence(String words) {
		String text = Character.toUpperCase(words.charAt(0)) + words.substring(1);
		return text.endsWith(".") ? text : text + ".";
	}

}
