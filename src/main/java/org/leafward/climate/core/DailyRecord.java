package org.leafward.climate.core;

import java.time.LocalDate;
import java.time.Year;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * The daily record of one station: for each element an array with one value a day, over
 * just the days from its first to its last value. A century and a half of five elements
 * takes about half a megabyte. Its values never change.
 */
public final class DailyRecord {

	/** Stands for a day without a value. */
	public static final short MISSING = Short.MIN_VALUE;

	/**
	 * First year that can be kept; the oldest series of GHCN-Daily begin in the 1760s.
	 */
	public static final int FIRST_YEAR = 1700;

	/** Last year that can be kept. */
	public static final int LAST_YEAR = 2199;

	private static final Element[] ELEMENTS = Element.values();

	private final long[] firstDay;

	private final short[][] values;

	private volatile @Nullable MeanDays means;

	private DailyRecord(long[] firstDay, short[][] values) {
		this.firstDay = firstDay;
		this.values = values;
	}

	public static Builder builder() {
		return new Builder();
	}

	/**
	 * The value of a day.
	 * @param element which element
	 * @param epochDay days since 1970-01-01
	 * @return in the element's unit, or {@link #MISSING}, also outside the record
	 */
	public short value(Element element, long epochDay) {
		short[] own = this.values[element.ordinal()];
		long index = epochDay - this.firstDay[element.ordinal()];
		return (index >= 0 && index < own.length) ? own[(int) index] : MISSING;
	}

	/**
	 * The value of a day.
	 * @param element which element
	 * @param day the day
	 * @return in the element's unit, or {@link #MISSING}, also outside the record
	 */
	public short value(Element element, LocalDate day) {
		return value(element, day.toEpochDay());
	}

	/**
	 * First day with a value of an element.
	 * @param element which element
	 * @return empty when there is none
	 */
	public Optional<LocalDate> firstDay(Element element) {
		return (this.values[element.ordinal()].length == 0) ? Optional.empty()
				: Optional.of(LocalDate.ofEpochDay(this.firstDay[element.ordinal()]));
	}

	/**
	 * Last day with a value of an element.
	 * @param element which element
	 * @return empty when there is none
	 */
	public Optional<LocalDate> lastDay(Element element) {
		short[] own = this.values[element.ordinal()];
		return (own.length == 0) ? Optional.empty()
				: Optional.of(LocalDate.ofEpochDay(this.firstDay[element.ordinal()] + own.length - 1));
	}

	/**
	 * First day with any value.
	 * @return empty for an empty record
	 */
	public Optional<LocalDate> firstDay() {
		return Arrays.stream(ELEMENTS).flatMap((element) -> firstDay(element).stream()).min(LocalDate::compareTo);
	}

	/**
	 * Last day with any value.
	 * @return empty for an empty record
	 */
	public Optional<LocalDate> lastDay() {
		return Arrays.stream(ELEMENTS).flatMap((element) -> lastDay(element).stream()).max(LocalDate::compareTo);
	}

	/**
	 * The means of the days, drawn when first asked for. Two threads may both draw them,
	 * to the same effect.
	 * @return the means
	 */
	MeanDays means() {
		MeanDays known = this.means;
		if (known == null) {
			known = new MeanDays(this);
			this.means = known;
		}
		return known;
	}

	/**
	 * About how much memory the record takes, with the means of its days.
	 * @return bytes
	 */
	public long bytes() {
		return 200 + 9L * this.values[Element.TMIN.ordinal()].length / 4
				+ Arrays.stream(this.values).mapToLong((own) -> 2L * own.length).sum();
	}

	@Override
	public boolean equals(Object other) {
		return other instanceof DailyRecord that && Arrays.equals(this.firstDay, that.firstDay)
				&& Arrays.deepEquals(this.values, that.values);
	}

	@Override
	public int hashCode() {
		return Arrays.hashCode(this.firstDay) * 31 + Arrays.deepHashCode(this.values);
	}

	/** Collects values in any order. Not for use by several threads. */
	public static final class Builder {

		private static final int DAYS = 366;

		private final Map<Integer, short[]> years = new TreeMap<>();

		private Builder() {
		}

		/**
		 * Sets a value; a later one replaces an earlier one.
		 * @param element which element
		 * @param day day from {@link #FIRST_YEAR} to {@link #LAST_YEAR}
		 * @param value in the element's unit
		 * @return whether another value stood there before
		 * @throws IllegalArgumentException when the year or the value is out of bounds
		 */
		public boolean set(Element element, LocalDate day, int value) {
			int year = day.getYear();
			if (year < FIRST_YEAR || year > LAST_YEAR) {
				throw new IllegalArgumentException(
						"year %d is outside %d to %d".formatted(year, FIRST_YEAR, LAST_YEAR));
			}
			if (!element.plausible(value)) {
				throw new IllegalArgumentException(
						"%s %d is outside %d to %d".formatted(element, value, element.lowest(), element.highest()));
			}
			short[] slots = this.years.computeIfAbsent(year, (key) -> emptyYear());
			int slot = element.ordinal() * DAYS + day.getDayOfYear() - 1;
			boolean other = slots[slot] != MISSING && slots[slot] != value;
			slots[slot] = (short) value;
			return other;
		}

		private static short[] emptyYear() {
			short[] slots = new short[ELEMENTS.length * DAYS];
			Arrays.fill(slots, MISSING);
			return slots;
		}

		public DailyRecord build() {
			long[] firstDay = new long[ELEMENTS.length];
			short[][] values = new short[ELEMENTS.length][];
			for (Element element : ELEMENTS) {
				fill(element, firstDay, values);
			}
			return new DailyRecord(firstDay, values);
		}

		private void fill(Element element, long[] firstDay, short[][] values) {
			long first = Long.MAX_VALUE;
			long last = Long.MIN_VALUE;
			for (Map.Entry<Integer, short[]> year : this.years.entrySet()) {
				long begin = LocalDate.ofYearDay(year.getKey(), 1).toEpochDay();
				for (int day = 0; day < Year.of(year.getKey()).length(); day++) {
					if (year.getValue()[element.ordinal() * DAYS + day] != MISSING) {
						first = Math.min(first, begin + day);
						last = begin + day;
					}
				}
			}
			short[] own = new short[(last < first) ? 0 : (int) (last - first + 1)];
			Arrays.fill(own, MISSING);
			for (Map.Entry<Integer, short[]> year : this.years.entrySet()) {
				long begin = LocalDate.ofYearDay(year.getKey(), 1).toEpochDay();
				for (int day = 0; day < Year.of(year.getKey()).length(); day++) {
					long index = begin + day - first;
					if (index >= 0 && index < own.length) {
						own[(int) index] = year.getValue()[element.ordinal() * DAYS + day];
					}
				}
			}
			firstDay[element.ordinal()] = (own.length == 0) ? 0 : first;
			values[element.ordinal()] = own;
		}

	}

}
