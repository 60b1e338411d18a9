package org.leafward.climate.source.ghcn;

import java.time.DateTimeException;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.core.Element;

/**
 * A line of a by-station CSV file: one value of one day, as
 * {@code ID,YYYYMMDD,ELEMENT,VALUE,MFLAG,QFLAG,SFLAG,OBSTIME}; empty fields at the end
 * may be missing.
 */
final class CompactCsvLine implements LineLayout {

	private static final int FIELDS = 8;

	private static final int ID = 11;

	private static final int DATE_END = ID + 9;

	/** Places of the commas; the end of the line stands in for missing ones. */
	private final int[] ends = new int[FIELDS];

	static boolean fits(byte[] line, int length) {
		return length > DATE_END && line[ID] == ',' && line[DATE_END] == ',' && Digits.all(line, ID + 1, DATE_END);
	}

	@Override
	public void read(byte[] line, int length, GhcnCollector collector) {
		if (length == 0) {
			return;
		}
		int fields = split(line, length);
		if (fields < 4 || fields > FIELDS || this.ends[0] != ID || this.ends[1] != DATE_END
				|| this.ends[2] != DATE_END + 5) {
			collector.problem("the line is not ID,YYYYMMDD,ELEMENT,VALUE,MFLAG,QFLAG,SFLAG,OBSTIME",
					"remove the line or fetch the file again");
			return;
		}
		if (!collector.ours(line)) {
			return;
		}
		Element element = collector.element(line, DATE_END + 1);
		LocalDate day = (element != null) ? day(line, collector) : null;
		if (element == null || day == null) {
			return;
		}
		int value = Digits.read(line, this.ends[2] + 1, this.ends[3]);
		if (value == Digits.NONE) {
			collector.problem("the value of %s on %s is no number".formatted(element, day),
					"remove the line or fetch the file again");
			return;
		}
		collector.value(element, day, value, this.ends[5] > this.ends[4] + 1);
	}

	private static @Nullable LocalDate day(byte[] line, GhcnCollector collector) {
		int year = Digits.read(line, ID + 1, ID + 5);
		int month = Digits.read(line, ID + 5, ID + 7);
		int day = Digits.read(line, ID + 7, DATE_END);
		try {
			if (collector.goodYear(year)) {
				return LocalDate.of(year, month, day);
			}
		}
		catch (DateTimeException ex) {
			// reported below like any other date that doesn't exist
		}
		collector.problem("the second field is no date", "write the day as YYYYMMDD");
		return null;
	}

	private int split(byte[] line, int length) {
		int fields = 0;
		for (int at = 0; at < length; at++) {
			if (line[at] == ',') {
				if (fields == FIELDS) {
					return FIELDS + 1;
				}
				this.ends[fields++] = at;
			}
		}
		if (fields == FIELDS) {
			return FIELDS + 1;
		}
		int given = fields + 1;
		while (fields < FIELDS) {
			this.ends[fields++] = length;
		}
		return given;
	}

}
