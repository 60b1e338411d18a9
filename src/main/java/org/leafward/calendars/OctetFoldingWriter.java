package org.leafward.calendars;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;

/**
 * Writes content lines as UTF-8, folded by octets (RFC 5545 section 3.1): no physical
 * line is longer than 75 octets without its line break, no fold falls inside a UTF-8
 * sequence, every line ends in CRLF, and a fold is made only when something follows it.
 */
public final class OctetFoldingWriter {

	private static final int LINE_OCTETS = 75;

	private final ByteArrayOutputStream out = new ByteArrayOutputStream(1024);

	/**
	 * Writes content lines.
	 * @param lines content lines, each ended by CRLF or LF; a last one without is ended
	 * too, and empty ones are left out
	 */
	public void write(String lines) {
		int from = 0;
		while (from < lines.length()) {
			int feed = lines.indexOf('\n', from);
			int end = (feed < 0) ? lines.length() : feed;
			int to = (feed > from && lines.charAt(feed - 1) == '\r') ? feed - 1 : end;
			if (to > from) {
				writeLine(lines.substring(from, to));
			}
			from = end + 1;
		}
	}

	private void writeLine(String line) {
		byte[] octets = line.getBytes(StandardCharsets.UTF_8);
		int from = 0;
		while (from < octets.length) {
			int room = (from == 0) ? LINE_OCTETS : LINE_OCTETS - 1;
			int to = Math.min(from + room, octets.length);
			while (to < octets.length && continuesSequence(octets[to])) {
				to--;
			}
			if (from > 0) {
				this.out.write(' ');
			}
			this.out.write(octets, from, to - from);
			this.out.write('\r');
			this.out.write('\n');
			from = to;
		}
	}

	private static boolean continuesSequence(byte octet) {
		return (octet & 0xC0) == 0x80;
	}

	/**
	 * What was written so far.
	 * @return folded lines in UTF-8
	 */
	public byte[] octets() {
		return this.out.toByteArray();
	}

}
