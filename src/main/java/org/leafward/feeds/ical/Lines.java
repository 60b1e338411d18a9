package org.leafward.feeds.ical;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Iterator;
import java.util.List;
import org.leafward.calendars.OctetFoldingWriter;

/**
 * Content lines of the properties that each entry has. The library makes the same of them
 * in several passes of regular expressions for each property, which was half of the work
 * of a document; the seldom ones are still its own.
 */
final class Lines {

	/** RFC 5545 section 3.3.4. */
	private static final DateTimeFormatter DATE = DateTimeFormatter.BASIC_ISO_DATE;

	private final OctetFoldingWriter lines = new OctetFoldingWriter();

	/**
	 * Lines that are written already.
	 * @param written each with its line break
	 */
	Lines add(String written) {
		this.lines.write(written);
		return this;
	}

	/**
	 * A value that needs no escapes.
	 * @param name of the property, with its parameters
	 * @param value without line breaks
	 */
	Lines plain(String name, String value) {
		return begin(name).put(value).end();
	}

	/**
	 * A text.
	 * @param name of the property
	 * @param text any
	 */
	Lines text(String name, String text) {
		begin(name);
		this.lines.addText(text);
		return end();
	}

	/**
	 * Texts in one property.
	 * @param name of the property
	 * @param texts one or more
	 */
	Lines texts(String name, List<String> texts) {
		begin(name);
		for (Iterator<String> each = texts.iterator(); each.hasNext();) {
			this.lines.addText(each.next());
			if (each.hasNext()) {
				this.lines.add(',');
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
		put(name).put(";VALUE=DATE:");
		date(day);
		return end();
	}

	/**
	 * A moment, in UTC.
	 * @param name of the property
	 * @param moment whole seconds are written
	 */
	Lines moment(String name, Instant moment) {
		begin(name);
		LocalDateTime at = LocalDateTime.ofEpochSecond(moment.getEpochSecond(), 0, ZoneOffset.UTC);
		date(at.toLocalDate());
		this.lines.add('T');
		two(at.getHour()).two(at.getMinute()).two(at.getSecond());
		this.lines.add('Z');
		return end();
	}

	/** As the formatter does, in a tenth of the time; there are five in each entry. */
	private void date(LocalDate day) {
		int year = day.getYear();
		if (year < 1000 || year > 9999) {
			this.lines.add(DATE.format(day));
			return;
		}
		two(year / 100).two(year % 100).two(day.getMonthValue()).two(day.getDayOfMonth());
	}

	private Lines two(int number) {
		this.lines.add((char) ('0' + number / 10));
		this.lines.add((char) ('0' + number % 10));
		return this;
	}

	private Lines begin(String name) {
		this.lines.add(name);
		this.lines.add(':');
		return this;
	}

	private Lines put(String text) {
		this.lines.add(text);
		return this;
	}

	private Lines end() {
		this.lines.end();
		return this;
	}

	/**
	 * What was written since this was made or last asked.
	 * @return folded lines
	 */
	byte[] take() {
		byte[] octets = this.lines.octets();
		this.lines.clear();
		return octets;
	}

}
