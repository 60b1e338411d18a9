package org.leafward.feeds.ical;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.HashMap;
import java.util.Map;
import org.leafward.feeds.core.Revision;

/**
 * What a document of ours showed: each entry's looks and its revision. A document is read
 * back by its lines alone, which works as long as it was written here.
 */
final class Shown {

	private static final String BEGIN = "BEGIN:V";

	/**
	 * An entry.
	 *
	 * @param looks its lines without those of its revision
	 * @param revision its revision
	 */
	record Entry(String looks, Revision revision) {
	}

	private Shown() {
	}

	/**
	 * Reads a document.
	 * @param octets of a document of ours; empty for none
	 * @return by the first line, which has the identifier; what can't be read is left out
	 */
	static Map<String, Entry> of(byte[] octets) {
		Map<String, Entry> entries = new HashMap<>();
		String text = new String(octets, StandardCharsets.UTF_8);
		int begin = text.indexOf(BEGIN, 1);
		while (begin >= 0) {
			// An alarm inside has an end of its own.
			String name = text.substring(begin + BEGIN.length() - 1, text.indexOf("\r\n", begin));
			int end = text.indexOf("\r\nEND:" + name + "\r\n", begin);
			if (end < 0) {
				break;
			}
			int after = text.indexOf("\r\n", end + 2) + 2;
			read(text.substring(begin, after), entries);
			begin = text.startsWith(BEGIN, after) ? after : -1;
		}
		return entries;
	}

	private static void read(String block, Map<String, Entry> entries) {
		StringBuilder looks = new StringBuilder(block.length());
		int sequence = -1;
		Instant changed = null;
		String uid = null;
		int at = 0;
		try {
			while (at < block.length()) {
				int end = block.indexOf("\r\n", at) + 2;
				String line = block.substring(at, end);
				if (line.startsWith("SEQUENCE:")) {
					sequence = Integer.parseInt(line.substring(9).strip());
				}
				else if (line.startsWith("LAST-MODIFIED:")) {
					changed = Instant.from(Lines.UTC.parse(line.substring(14).strip()));
				}
				else if (!line.startsWith("DTSTAMP:")) {
					looks.append(line);
					uid = line.startsWith("UID:") ? line.substring(4).strip() : uid;
				}
				at = end;
			}
		}
		catch (DateTimeParseException | NumberFormatException ex) {
			return;
		}
		if (uid != null && changed != null && sequence >= 0) {
			entries.put(uid, new Entry(looks.toString(), new Revision(sequence, changed)));
		}
	}

	/** The lines of a revision. */
	static String lines(Revision revision) {
		// Without METHOD, DTSTAMP is the last revision (RFC 5545 section 3.8.7.2).
		return new Lines().moment("DTSTAMP", revision.changed())
			.moment("LAST-MODIFIED", revision.changed())
			.plain("SEQUENCE", String.valueOf(revision.sequence()))
			.toString();
	}

}
