package org.leafward.feeds.ical;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Iterator;
import java.util.List;

/**
 * Content lines of the properties that each entry has, not folded. The library makes the
 * same of them in several passes of regular expressions for each property, which was half
 * of the work of a document; the seldom ones are still its own.
 */
final class Lines {

	/** RFC 5545 section 3.3.4. */
	private static final DateTimeFormatter DATE = DateTimeFormatter.BASIC_ISO_DATE;

	private final StringBuilder lines = new StringBuilder(1024);

	/**
	 * A line that is written already.
	 * @param line with its line break, or several such
	 */
	Lines add(Object line) {
		this.lines.append(line);
		return this;
	}

	/**
	 * A value that needs no escapes.
	 * @param name of the property, with its parameters
	 * @param value without line breaks
	 */
	Lines plain(String name, CharSequence value) {
		this.lines.append(name).append(':').append(value);
		return end();
	}

	/**
	 * A text.
	 * @param name of the property
	 * @param text clean
	 */
	Lines text(String name, String text) {
		this.lines.append(name).append(':');
		escape(text);
		return end();
	}

	/**
	 * Texts in one property.
	 * @param name of the property
	 * @param texts one or more, clean
	 */
	Lines texts(String name, List<String> texts) {
		this.lines.append(name).append(':');
		for (Iterator<String> each = texts.iterator(); each.hasNext();) {
			escape(each.next());
			if (each.hasNext()) {
				this.lines.append(',');
			}
		}
		return end();
	}

	/**
	 * A day.
	 * @param name of the property
	 * @param day any
	 */
	Lines day(String name, LocalDate day) {
		this.lines.append(name).append(";VALUE=DATE:");
		date(day);
		return end();
	}

	/**
	 * A moment, in UTC.
	 * @param name of the property
	 * @param moment whole seconds are written
	 */
	Lines moment(String name, Instant moment) {
		this.lines.append(name).append(':');
		LocalDateTime at = LocalDateTime.ofEpochSecond(moment.getEpochSecond(), 0, ZoneOffset.UTC);
		date(at.toLocalDate());
		this.lines.append('T');
		two(at.getHour()).two(at.getMinute()).two(at.getSecond());
		this.lines.append('Z');
		return end();
	}

	/** As the formatter does, in a tenth of the time; there are five in each entry. */
	private void date(LocalDate day) {
		int year = day.getYear();
		if (year < 1000 || year > 9999) {
			DATE.formatTo(day, this.lines);
			return;
		}
		this.lines.append(year);
		two(day.getMonthValue()).two(day.getDayOfMonth());
	}

	private Lines two(int number) {
		this.lines.append((char) ('0' + number / 10)).append((char) ('0' + number % 10));
		return this;
	}

	private Lines end() {
		this.lines.append("\r\n");
		return this;
	}

	/** RFC 5545 section 3.3.11. */
	private void escape(String text) {
		int from = 0;
		for (int at = 0; at < text.length(); at++) {
			char unit = text.charAt(at);
			if (unit == '\\' || unit == ';' || unit == ',' || unit == '\n') {
				this.lines.append(text, from, at).append('\\');
				from = at;
				if (unit == '\n') {
					this.lines.append('n');
					from = at + 1;
				}
			}
		}
		this.lines.append(text, from, text.length());
	}

	@Override
	public String toString() {
		return this.lines.toString();
	}

}
