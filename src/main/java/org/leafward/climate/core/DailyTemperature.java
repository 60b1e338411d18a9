package org.leafward.climate.core;

import java.util.function.LongToDoubleFunction;

/** A temperature of each day of a record. */
public enum DailyTemperature {

	/** The minimum. */
	MINIMUM {

		@Override
		public LongToDoubleFunction of(DailyRecord record) {
			return (day) -> value(record, Element.TMIN, day);
		}

	},

	/** The maximum. */
	MAXIMUM {

		@Override
		public LongToDoubleFunction of(DailyRecord record) {
			return (day) -> value(record, Element.TMAX, day);
		}

	},

	/** The mean of both. */
	MEAN {

		@Override
		public LongToDoubleFunction of(DailyRecord record) {
			return (day) -> (value(record, Element.TMIN, day) + value(record, Element.TMAX, day)) / 2;
		}

	};

	/**
	 * The series of a record by epoch day.
	 * @param record the station's record
	 * @return tenths of °C, NaN where it is missing
	 */
	public abstract LongToDoubleFunction of(DailyRecord record);

	private static double value(DailyRecord record, Element element, long day) {
		short value = record.value(element, day);
		return (value == DailyRecord.MISSING) ? Double.NaN : value;
	}

}
