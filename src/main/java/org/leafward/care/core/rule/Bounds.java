package org.leafward.care.core.rule;

import java.time.LocalDate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.leafward.measure.Season;

/**
 * Days of the year that a date keeps to, whatever the weather.
 *
 * @param notBefore the date never falls before this day; null is no bound
 * @param notAfter the date never falls after this day; null is no bound
 */
public record Bounds(@Nullable FixedDay notBefore, @Nullable FixedDay notAfter) {

	/** No bounds. */
	public static final Bounds NONE = new Bounds(null, null);

	/**
	 * Keeps a date inside.
	 * @param date the date
	 * @param season the season it belongs to
	 * @return the date or the bound that it passed
	 */
	public LocalDate keep(LocalDate date, Season season) {
		if (this.notBefore != null && date.isBefore(this.notBefore.in(season))) {
			return this.notBefore.in(season);
		}
		if (this.notAfter != null && date.isAfter(this.notAfter.in(season))) {
			return this.notAfter.in(season);
		}
		return date;
	}

	/**
	 * The bounds for readers.
	 * @return for example "not before 1 November", as the pack has it for the northern
	 * hemisphere; empty without bounds
	 */
	public String words() {
		return Stream
			.of((this.notBefore != null) ? "not before " + this.notBefore.words() : "",
					(this.notAfter != null) ? "not after " + this.notAfter.words() : "")
			.filter((words) -> !words.isEmpty())
			.collect(Collectors.joining(" and "));
	}

}
