package org.leafward.care.core.rule;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.MarkerKey;
import org.leafward.measure.Season;

/**
 * A local event of the season, with days added.
 *
 * @param marker which event, at which probability
 * @param days days after it, -366 to 366; negative is before
 * @param nextSeason whether the event of the following season is meant
 * @param notBefore the date never falls before this day; null is no bound
 * @param notAfter the date never falls after this day; null is no bound
 */
public record MarkerAnchor(MarkerKey marker, int days, boolean nextSeason, @Nullable FixedDay notBefore,
		@Nullable FixedDay notAfter) implements Anchor {

	/**
	 * Whether a date of this anchor would be moved by its bounds.
	 * @return true when there is a bound
	 */
	public boolean bounded() {
		return this.notBefore != null || this.notAfter != null;
	}

	/**
	 * Adds the days and keeps the result inside the bounds.
	 * @param markerDate date of the event
	 * @param season season of the event: the following one when {@link #nextSeason}
	 * @return the date of this anchor
	 */
	public LocalDate dateFrom(LocalDate markerDate, Season season) {
		LocalDate date = markerDate.plusDays(this.days);
		if (this.notBefore != null && date.isBefore(this.notBefore.in(season))) {
			return this.notBefore.in(season);
		}
		if (this.notAfter != null && date.isAfter(this.notAfter.in(season))) {
			return this.notAfter.in(season);
		}
		return date;
	}

	@Override
	public String words() {
		String event = "the " + this.marker.kind().code().replace('-', ' ') + " ("
				+ ((this.marker.threshold() != null) ? this.marker.threshold().words() + ", " : "")
				+ ((this.marker.goal() != null) ? this.marker.goal().words() + ", " : "") + this.marker.probability()
				+ " %)" + (this.nextSeason ? " of the next season" : "");
		return Offsets.words(this.days, event);
	}

}
