package org.leafward.climate.core;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * A given record laid over a stored one: values given replace stored ones, a value that
 * isn't given never erases one. Knows which days and months it makes different.
 */
public final class RecordOverlay {

	private static final Element[] ELEMENTS = Element.values();

	private final DailyRecord stored;

	private final DailyRecord given;

	private final SortedSet<YearMonth> months = new TreeSet<>();

	private long inserted;

	private long changed;

	private @Nullable LocalDate firstDay;

	private @Nullable LocalDate lastDay;

	/**
	 * Compares two records.
	 * @param stored what is there, at least for the months that {@code given} touches
	 * @param given what comes in
	 */
	public RecordOverlay(DailyRecord stored, DailyRecord given) {
		this.stored = stored;
		this.given = given;
		LocalDate last = given.lastDay().orElse(LocalDate.MIN);
		for (LocalDate day = given.firstDay().orElse(LocalDate.MAX); !day.isAfter(last); day = day.plusDays(1)) {
			compare(day);
		}
	}

	private void compare(LocalDate day) {
		long epochDay = day.toEpochDay();
		boolean known = false;
		boolean differs = false;
		for (Element element : ELEMENTS) {
			short before = this.stored.value(element, epochDay);
			known |= before != DailyRecord.MISSING;
			differs |= value(element, epochDay) != before;
		}
		if (differs) {
			this.inserted += known ? 0 : 1;
			this.changed += known ? 1 : 0;
			this.firstDay = (this.firstDay != null) ? this.firstDay : day;
			this.lastDay = day;
			this.months.add(YearMonth.from(day));
		}
	}

	/**
	 * The value of a day with the given record on top.
	 * @param element which element
	 * @param epochDay days since 1970-01-01
	 * @return in the element's unit, or {@link DailyRecord#MISSING}
	 */
	public short value(Element element, long epochDay) {
		short value = this.given.value(element, epochDay);
		return (value != DailyRecord.MISSING) ? value : this.stored.value(element, epochDay);
	}

	/**
	 * Months with a day that is new or different.
	 * @return in order
	 */
	public SortedSet<YearMonth> months() {
		return this.months;
	}

	/**
	 * Days that had no value before.
	 * @return how many
	 */
	public long inserted() {
		return this.inserted;
	}

	/**
	 * Days that had values and now have others.
	 * @return how many
	 */
	public long changed() {
		return this.changed;
	}

	/**
	 * First day that is new or different.
	 * @return empty when there is none
	 */
	public Optional<LocalDate> firstDay() {
		return Optional.ofNullable(this.firstDay);
	}

	/**
	 * Last day that is new or different.
	 * @return empty when there is none
	 */
	public Optional<LocalDate> lastDay() {
		return Optional.ofNullable(this.lastDay);
	}

}
