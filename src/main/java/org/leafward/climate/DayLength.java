package org.leafward.climate;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.leafward.measure.BadInput;

/**
 * A time from sunrise to sunset.
 *
 * @param minutes more than 0, less than 24 hours
 */
public record DayLength(int minutes) {

	private static final int HOUR = 60;

	private static final Pattern SHAPE = Pattern.compile("(\\d{1,2})h(?:([0-5]\\d)m)?");

	public DayLength {
		if (minutes < 1 || minutes >= 24 * HOUR) {
			throw new BadInput("a day of %d minutes is outside 1 minute to 23 h 59 min".formatted(minutes), "daylight",
					"give a length such as 14h or 13h30m");
		}
	}

	/**
	 * Reads a length.
	 * @param text hours and perhaps minutes, for example {@code 14h} or {@code 13h30m}
	 * @return the length
	 * @throws BadInput when the text is anything else
	 */
	public static DayLength parse(String text) {
		Matcher matcher = SHAPE.matcher(text.strip());
		if (!matcher.matches()) {
			throw new BadInput("'%s' is no length of the day".formatted(text), "daylight",
					"write hours, and minutes with two digits, for example 14h or 13h30m");
		}
		int minutes = (matcher.group(2) != null) ? Integer.parseInt(matcher.group(2)) : 0;
		return new DayLength(Integer.parseInt(matcher.group(1)) * HOUR + minutes);
	}

	/**
	 * The length as text that {@link #parse} reads again.
	 * @return for example {@code 14h} or {@code 13h30m}
	 */
	public String code() {
		int rest = this.minutes % HOUR;
		return this.minutes / HOUR + "h" + ((rest == 0) ? "" : "%02dm".formatted(rest));
	}

	/**
	 * The length for readers.
	 * @return for example "14 hours" or "13 h 30 min"
	 */
	public String words() {
		int hours = this.minutes / HOUR;
		int rest = this.minutes % HOUR;
		return (rest == 0) ? hours + ((hours == 1) ? " hour" : " hours") : "%d h %d min".formatted(hours, rest);
	}

}
