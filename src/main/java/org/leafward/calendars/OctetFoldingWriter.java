package org.leafward.calendars;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/**
 * Writes content lines as UTF-8, folded by octets (RFC 5545 section 3.1): no physical
 * line is longer than 75 octets without its line break, no fold falls inside a UTF-8
 * sequence, every line ends in CRLF, and a fold is made only when something follows it.
 */
public final class OctetFoldingWriter {

	private static final int LINE_OCTETS = 75;

	private byte[] out = new byte[1024];

	private int length;

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
			if (to > from && !writePlain(lines, from, to)) {
				writeLine(lines.substring(from, to).getBytes(StandardCharsets.UTF_8));
			}
			from = end + 1;
		}
	}

	/**
	 * A line of US-ASCII, as most are: its characters are its octets.
	 * @return false when it is none, and nothing was written
	 */
	private boolean writePlain(String lines, int from, int to) {
		// A break and a space, three octets, for each 74.
		room((to - from) + (to - from) / 24 + 8);
		byte[] octets = this.out;
		int at = this.length;
		int left = LINE_OCTETS;
		for (int each = from; each < to; each++) {
			char unit = lines.charAt(each);
			if (unit >= 0x80) {
				return false;
			}
			if (left == 0) {
				octets[at++] = '\r';
				octets[at++] = '\n';
				octets[at++] = ' ';
				left = LINE_OCTETS - 1;
			}
			octets[at++] = (byte) unit;
			left--;
		}
		octets[at++] = '\r';
		octets[at++] = '\n';
		this.length = at;
		return true;
	}

	private void writeLine(byte[] octets) {
		room(octets.length + octets.length / 20 + 8);
		int from = 0;
		while (from < octets.length) {
			int room = (from == 0) ? LINE_OCTETS : LINE_OCTETS - 1;
			int to = Math.min(from + room, octets.length);
			while (to < octets.length && continuesSequence(octets[to])) {
				to--;
			}
			if (from > 0) {
				this.out[this.length++] = ' ';
			}
			System.arraycopy(octets, from, this.out, this.length, to - from);
			this.length += to - from;
			this.out[this.length++] = '\r';
			this.out[this.length++] = '\n';
			from = to;
		}
	}

	private void room(int more) {
		if (this.length + more > this.out.length) {
			this.out = Arrays.copyOf(this.out, Math.max(2 * this.out.length, this.length + more));
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
		return Arrays.copyOf(this.out, this.length);
	}

}
