package org.leafward.care.core.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.leafward.care.core.rule.Anchor;
import org.leafward.care.core.rule.CalendarAnchor;
import org.leafward.care.core.rule.EventAnchor;
import org.leafward.care.core.rule.MarkerAnchor;
import org.leafward.care.core.rule.PhaseAnchor;
import org.leafward.care.core.rule.PlantingDateAnchor;
import org.leafward.climate.PlaceMarkers;
import org.leafward.climate.SeasonMarker;
import org.leafward.measure.DayWords;
import org.leafward.measure.Explanation;
import org.leafward.measure.Season;
import org.leafward.plants.SpeciesId;

/** Turns anchors into dates of one season, with their steps. */
final class AnchorDates {

	private final PlaceMarkers markers;

	private final LocalDate plantedOn;

	private final Season season;

	private final SpeciesId species;

	AnchorDates(PlaceMarkers markers, SpeciesId species, LocalDate plantedOn, Season season) {
		this.markers = markers;
		this.species = species;
		this.plantedOn = plantedOn;
		this.season = season;
	}

	/**
	 * A dated anchor.
	 *
	 * @param date the date
	 * @param explanation how it came about
	 */
	record Dated(LocalDate date, Explanation explanation) {
	}

	Optional<Dated> date(String label, Anchor anchor) {
		if (anchor instanceof MarkerAnchor marker) {
			return date(label, marker);
		}
		if (anchor instanceof PhaseAnchor || anchor instanceof EventAnchor) {
			return Optional.empty();
		}
		LocalDate date = (anchor instanceof PlantingDateAnchor planting)
				? this.plantedOn.plusDays(planting.days().of(this.species)) : fixed((CalendarAnchor) anchor);
		return Optional
			.of(new Dated(date, Explanation.of(label, DayWords.of(date)).withDetail(sentence(anchor.words()))));
	}

	private LocalDate fixed(CalendarAnchor anchor) {
		return anchor.day().in(anchor.nextSeason() ? this.season.next() : this.season);
	}

	private Optional<Dated> date(String label, MarkerAnchor anchor) {
		Season target = anchor.nextSeason() ? this.season.next() : this.season;
		return this.markers.on(anchor.marker(), target.year()).map((marker) -> dated(label, anchor, target, marker));
	}

	private Dated dated(String label, MarkerAnchor anchor, Season target, SeasonMarker marker) {
		int offset = anchor.days().of(this.species);
		LocalDate counted = marker.date().plusDays(offset);
		LocalDate date = anchor.bounds().keep(counted, target);
		List<Explanation> steps = new ArrayList<>();
		steps.add(marker.explanation());
		if (offset != 0) {
			int days = Math.abs(offset);
			steps.add(Explanation
				.of("The rule %s %d %s".formatted((offset < 0) ? "goes back" : "adds", days,
						(days == 1) ? "day" : "days"), DayWords.of(counted))
				.withDetail("Counted from %s.".formatted(DayWords.of(marker.date()))));
		}
		if (!date.equals(counted)) {
			steps.add(Explanation.of("The rule keeps to the calendar here", DayWords.of(date))
				.withDetail("Whatever the weather, this day comes %s.".formatted(anchor.bounds().words())));
		}
		return new Dated(date,
				Explanation.of(label, DayWords.of(date)).withDetail(sentence(anchor.words())).withSteps(steps));
	}

	private static String sentence(String words) {
		String text = Character.toUpperCase(words.charAt(0)) + words.substring(1);
		return text.endsWith(".") ? text : text + ".";
	}

	/** Why {@link #date} was empty. */
	String why(Anchor anchor) {
		return (anchor instanceof MarkerAnchor marker) ? this.markers.whyMissing(marker.marker())
				: "There is no date yet for: %s.".formatted(anchor.words());
	}

}
