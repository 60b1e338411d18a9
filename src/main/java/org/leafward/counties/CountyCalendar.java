package org.leafward.counties;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;

/**
 * A calendar as it is stored, without its octets.
 *
 * @param path its address, from the root
 * @param etag SHA-256 of its octets, hexadecimal
 * @param lastModified when they last changed, whole seconds
 * @param aheadBy how far sequence numbers have run ahead
 * @param version version of the garden that it was built from
 * @param day the day that it was built for, UTC
 * @param askedAt when somebody asked for it, to the hour
 * @param coming the first entries to come
 */
public record CountyCalendar(String path, String etag, Instant lastModified, int aheadBy, long version, LocalDate day,
		Instant askedAt, List<Coming> coming) {

	public CountyCalendar {
		coming = List.copyOf(coming);
	}

}
