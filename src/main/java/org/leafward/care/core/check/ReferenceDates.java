package org.leafward.care.core.check;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.leafward.care.core.phase.Phenology;
import org.leafward.care.core.rule.Anchor;
import org.leafward.care.core.rule.Bounds;
import org.leafward.care.core.rule.CalendarAnchor;
import org.leafward.care.core.rule.DayByDay;
import org.leafward.care.core.rule.Days;
import org.leafward.care.core.rule.MarkerAnchor;
import org.leafward.care.core.rule.PhaseAnchor;
import org.leafward.care.core.rule.Ramp;
import org.leafward.care.core.rule.Rule;
import org.leafward.care.core.rule.Span;
import org.leafward.care.core.rule.Timing;
import org.leafward.care.core.rule.Variant;
import org.leafward.climate.MarkerKey;
import org.leafward.measure.Hemisphere;
import org.leafward.measure.Season;
import org.leafward.measure.SeasonDay;
import org.leafward.plants.Species;

/** Dates the windows of rules on one reference climate. */
final class ReferenceDates {

	private static final Season SEASON = new Season(2001, Hemisphere.NORTH);

	private static final int YEAR = 365;

	private final ReferenceClimate climate;

	private final Phenology phenology;

	private final Map<MarkerKey, OptionalInt> markers = new HashMap<>();

	ReferenceDates(ReferenceClimate climate, Phenology phenology) {
		this.climate = climate;
		this.phenology = phenology;
	}

	String place() {
		return this.climate.name();
	}

	/**
	 * The window of a rule.
	 * @param rule the rule
	 * @param variant what holds at the site in its place
	 * @param plant the species
	 * @return empty when there is none, or it can't be dated
	 */
	Optional<Stretch> window(Rule rule, Optional<Variant> variant, Species plant) {
		if (variant.map(Variant::leaveOut).orElse(false)) {
			return Optional.empty();
		}
		Ends ends = Ends.of(rule.timing(), variant);
		OptionalInt from = day(ends.from(), plant);
		OptionalInt to = day(ends.to(), plant);
		if (from.isEmpty() || to.isEmpty()) {
			return Optional.empty();
		}
		Stretch stretch = new Stretch(from.getAsInt(), to.getAsInt());
		if (rule.timing() instanceof Ramp ramp) {
			stretch = ramp.endsAtAnchor() ? new Stretch(stretch.to() - ramp.days() + 1, stretch.to())
					: new Stretch(stretch.from(), stretch.from() + ramp.days() - 1);
		}
		return Optional.of(stretch).filter((one) -> one.days() > 0);
	}

	private OptionalInt day(Anchor anchor, Species plant) {
		if (anchor instanceof MarkerAnchor marker) {
			OptionalInt day = this.markers.computeIfAbsent(marker.of(plant.id()), this.climate::date);
			OptionalInt own = day(day, marker.days(), marker.bounds(), marker.nextSeason(), plant);
			OptionalInt floor = (marker.floor() != null) ? day(marker.floor(), plant) : OptionalInt.empty();
			return (own.isPresent() && floor.isPresent()) ? OptionalInt.of(Math.max(own.getAsInt(), floor.getAsInt()))
					: own;
		}
		if (anchor instanceof PhaseAnchor phase) {
			OptionalInt day = this.phenology.estimate(phase.phase(), plant)
				.map((estimate) -> day(estimate, plant))
				.orElse(OptionalInt.empty());
			return day(day, phase.days(), phase.bounds(), phase.nextSeason(), plant);
		}
		if (anchor instanceof CalendarAnchor calendar) {
			return OptionalInt
				.of(SeasonDay.of(calendar.day().in(SEASON), SEASON.year()) + (calendar.nextSeason() ? YEAR : 0));
		}
		// Rules that hang on such a day are only compared with each other, so any will
		// do.
		return OptionalInt.of(this.climate.lastFreeze() + anchor.days().of(plant.id()));
	}

	private static OptionalInt day(OptionalInt counted, Days days, Bounds bounds, boolean next, Species plant) {
		if (counted.isEmpty()) {
			return counted;
		}
		LocalDate date = SeasonDay.toDate(counted.getAsInt() + days.of(plant.id()), SEASON.year());
		return OptionalInt.of(SeasonDay.of(bounds.keep(date, SEASON), SEASON.year()) + (next ? YEAR : 0));
	}

	/** The two ends of a timing; the same anchor twice for a ramp. */
	record Ends(Anchor from, Anchor to) {

		static Ends of(Timing timing, Optional<Variant> variant) {
			Ends own = own(timing);
			return new Ends(variant.map(Variant::from).orElse(own.from), variant.map(Variant::to).orElse(own.to));
		}

		private static Ends own(Timing timing) {
			if (timing instanceof Ramp ramp) {
				return new Ends(ramp.anchor(), ramp.anchor());
			}
			return (timing instanceof Span span) ? new Ends(span.from(), span.to())
					: new Ends(((DayByDay) timing).from(), ((DayByDay) timing).to());
		}

	}

}
