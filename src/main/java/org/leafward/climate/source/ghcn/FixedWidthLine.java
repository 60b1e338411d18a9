package org.leafward.climate.source.ghcn;

import java.time.YearMonth;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.core.Element;

/**
 * A line of a .dly file: one element of one month. Columns from 1: ID 1-11, YEAR 12-15,
 * MONTH 16-17, ELEMENT 18-21, then for each of 31 days VALUE (5), MFLAG, QFLAG, SFLAG (1
 * each). Blanks at the end of the line may have been cut off.
 */
final class FixedWidthLine implements LineLayout {

	private static final int ELEMENT_END = 21;

	private static final int DAYS = 31;

	private static final int DAY_WIDTH = 8;

	private static final int VALUE_WIDTH = 5;

	private static final int QUALITY_FLAG = 6;

	private static final int FULL = ELEMENT_END + DAYS * DAY_WIDTH;

	private final int[] values = new int[DAYS];

	static boolean fits(byte[] line, int length) {
		return length >= ELEMENT_END + VALUE_WIDTH && line[0] > ' ' && line[0] != ',' && Digits.all(line, 11, 17);
	}

	@Override
	public void read(byte[] line, int length, GhcnCollector collector) {
		if (length == 0) {
			return;
		}
		if (length < ELEMENT_END) {
			collector.problem("the line is cut off after %d characters".formatted(length), "fetch the file again");
			return;
		}
		if (!collector.ours(line)) {
			return;
		}
		YearMonth month = month(line, collector);
		Element element = collector.element(line, 17);
		if (month != null && element != null && complete(line, length, collector)) {
			take(line, length, month, element, collector);
		}
	}

	private static @Nullable YearMonth month(byte[] line, GhcnCollector collector) {
		int year = Digits.read(line, 11, 15);
		int month = Digits.read(line, 15, 17);
		if (!collector.goodYear(year) || month < 1 || month > 12) {
			collector.problem("columns 12 to 17 are no year and month", "remove the line or fetch the file again");
			return null;
		}
		return YearMonth.of(year, month);
	}

	private boolean complete(byte[] line, int length, GhcnCollector collector) {
		if (length < FULL - (DAY_WIDTH - VALUE_WIDTH) || length > FULL) {
			collector.problem("the line has %d characters instead of %d".formatted(length, FULL),
					"fetch the file again");
			return false;
		}
		for (int day = 0; day < DAYS; day++) {
			int column = ELEMENT_END + day * DAY_WIDTH;
			this.values[day] = Digits.read(line, column, column + VALUE_WIDTH);
			if (this.values[day] == Digits.NONE) {
				collector.problem("the value of day %d is no number".formatted(day + 1),
						"remove the line or fetch the file again");
				return false;
			}
		}
		return true;
	}

	private void take(byte[] line, int length, YearMonth month, Element element, GhcnCollector collector) {
		for (int day = 1; day <= DAYS; day++) {
			int value = this.values[day - 1];
			int flag = ELEMENT_END + (day - 1) * DAY_WIDTH + QUALITY_FLAG;
			if (day <= month.lengthOfMonth()) {
				collector.value(element, month.atDay(day), value, flag < length && line[flag] != ' ');
			}
			else if (value != GhcnCollector.MISSING) {
				collector.problem("%s has a value on day %d of %s, which doesn't exist".formatted(element, day, month),
						"remove the value");
			}
		}
	}

}
