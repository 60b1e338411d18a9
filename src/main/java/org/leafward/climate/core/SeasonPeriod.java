package org.leafward.climate.core;

import java.time.LocalDate;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.leafward.measure.Hemisphere;
import org.leafward.measure.Season;

/**
 * Seasons from one year to another, both included.
 *
 * @param from year of the first season
 * @param to year of the last season, not before {@code from}
 */
public record SeasonPeriod(int from, int to) {

	/** Length of the standard period of climate normals, years (WMO). */
	public static final int NORMAL = 30;

	public SeasonPeriod {
		if (to < from) {
			throw new IllegalArgumentException("period %d to %d ends before it begins".formatted(from, to));
		}
	}

	/**
	 * The latest 30 seasons, or as many as there are, whose two windows lie wholly
	 * between the first and the last minimum of the record. Gaps inside don't shorten it;
	 * they are counted as seasons left out.
	 * @param record the station's record
	 * @param hemisphere whose seasons
	 * @return empty when not one season is covered
	 */
	public static Optional<SeasonPeriod> latest(DailyRecord record, Hemisphere hemisphere) {
		Optional<LocalDate> first = record.firstDay(Element.TMIN);
		Optional<LocalDate> last = record.lastDay(Element.TMIN);
		if (first.isEmpty() || last.isEmpty()) {
			return Optional.empty();
		}
		Season to = new Season(last.get().getYear(), hemisphere);
		while (to.fallSearchEnd().isAfter(last.get())) {
			to = to.previous();
		}
		Season from = new Season(first.get().getYear(), hemisphere);
		while (from.springSearchStart().isBefore(first.get())) {
			from = from.next();
		}
		return (from.year() > to.year()) ? Optional.empty()
				: Optional.of(new SeasonPeriod(Math.max(from.year(), to.year() - NORMAL + 1), to.year()));
	}

	public int seasons() {
		return this.to - this.from + 1;
	}

	Stream<Season> stream(Hemisphere hemisphere) {
		return IntStream.rangeClosed(this.from, this.to).mapToObj((year) -> new Season(year, hemisphere));
	}

}
