package org.leafward.workdays.web;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.leafward.measure.BadInput;
import org.leafward.measure.Given;

/** Hours as people write them. */
final class Hours {

	private static final int MINUTES = 60;

	private static final String MEND = "write it like 2.5 or 2:30";

	private Hours() {
	}

	static String text(int minutes) {
		return BigDecimal.valueOf(minutes)
			.divide(BigDecimal.valueOf(MINUTES), 2, RoundingMode.HALF_UP)
			.stripTrailingZeros()
			.toPlainString();
	}

	/** A year of which there can be hours. */
	static int year(int asked, int now) {
		if (asked < 2000 || asked > now + 1) {
			throw new BadInput("there are no hours of %d".formatted(asked), "year", "choose a year since 2000");
		}
		return asked;
	}

	/** Minutes of a text such as 2.5 or 2:30. */
	static int minutes(String field, String text) {
		String written = text.strip();
		double hours;
		if (written.matches("\\d{1,2}:[0-5]\\d")) {
			String[] parts = written.split(":");
			hours = Integer.parseInt(parts[0]) + Integer.parseInt(parts[1]) / (double) MINUTES;
		}
		else {
			try {
				hours = Given.number(field, written, "hours");
			}
			catch (BadInput ex) {
				// The field's own name is an identifier, which says nothing to people.
				throw new BadInput("'%s' is no number of hours".formatted(Given.shown(written)), field, MEND);
			}
		}
		if (!(hours >= 0 && hours <= 24)) {
			throw new BadInput("%s hours are outside 0 to 24".formatted(written), field, MEND);
		}
		return (int) Math.round(hours * MINUTES);
	}

}
