package org.leafward.advisories.core.chain;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Locale;

/**
 * Times as CAP 1.2 writes them (section 3.3.2): whole seconds with an offset in hours and
 * minutes. The letter Z is not allowed; UTC is written {@code -00:00}.
 */
public final class CapTime {

	private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss", Locale.ROOT);

	private static final DateTimeFormatter OFFSET = DateTimeFormatter.ofPattern("xxx", Locale.ROOT);

	private CapTime() {
	}

	/**
	 * Writes a time.
	 * @param time the time; parts of a second are dropped
	 * @param zone whose clock
	 * @return for example {@code 2026-11-26T18:00:00-06:00}
	 */
	public static String write(Instant time, ZoneId zone) {
		OffsetDateTime there = time.truncatedTo(ChronoUnit.SECONDS).atZone(zone).toOffsetDateTime();
		ZoneOffset offset = there.getOffset();
		// Offsets with seconds are those of the nineteenth century.
		if (offset.getTotalSeconds() % 60 != 0) {
			there = there.withOffsetSameInstant(ZoneOffset.UTC);
		}
		return CLOCK.format(there) + ((there.getOffset().getTotalSeconds() == 0) ? "-00:00" : OFFSET.format(there));
	}

}
