package org.leafward.climate.core;

import java.time.LocalDate;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.leafward.climate.NormalsPeriod;
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

	private static final int RECENT = 15;

	private static final int NORMALS_FROM = 1991;

	private static final int NORMALS_TO = 2020;

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
		return of(NormalsPeriod.LATEST_30, record, hemisphere);
	}

	/**
	 * The seasons of a period whose two windows lie wholly between the first and the last
	 * minimum of the record. Of the fixed normals period, a last season counts too when
	 * the record reaches its midwinter, by which most first freezes have come.
	 * @param normals which seasons are asked for
	 * @param record the station's record
	 * @param hemisphere whose seasons
	 * @return empty when not one season of them is covered
	 */
	public static Optional<SeasonPeriod> of(NormalsPeriod normals, DailyRecord record, Hemisphere hemisphere) {
		return covered(record, hemisphere).flatMap((covered) -> switch (normals) {
			case LATEST_30 -> covered.latest(NORMAL);
			case LATEST_15 -> covered.latest(RECENT);
			case NORMALS_1991_2020 -> covered.toMidwinter(record, hemisphere).within(NORMALS_FROM, NORMALS_TO);
			case ALL -> Optional.of(covered);
		});
	}

	private SeasonPeriod toMidwinter(DailyRecord record, Hemisphere hemisphere) {
		LocalDate midwinter = new Season(this.to + 1, hemisphere).midsummer().plusMonths(5);
		return record.lastDay(Element.TMIN).filter((last) -> !last.isBefore(midwinter)).isPresent()
				? new SeasonPeriod(this.from, this.to + 1) : this;
	}

	private Optional<SeasonPeriod> latest(int seasons) {
		return Optional.of(new SeasonPeriod(Math.max(this.from, this.to - seasons + 1), this.to));
	}

	private Optional<SeasonPeriod> within(int first, int last) {
		int begin = Math.max(this.from, first);
		int end = Math.min(this.to, last);
		return (begin > end) ? Optional.empty() : Optional.of(new SeasonPeriod(begin, end));
	}

	private static Optional<SeasonPeriod> covered(DailyRecord record, Hemisphere hemisphere) {
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
		return (from.year() > to.year()) ? Optional.empty() : Optional.of(new SeasonPeriod(from.year(), to.year()));
	}

	public int seasons() {
		return this.to - this.from + 1;
	}

	Stream<Season> stream(Hemisphere hemisphere) {
		return IntStream.rangeClosed(this.from, this.to).mapToObj((year) -> new Season(year, hemisphere));
	}

}
