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
		byte[] octets = lines.getBytes(StandardCharsets.UTF_8);
		int from = 0;
		while (from < octets.length) {
			int end = from;
			while (end < octets.length && octets[end] != '\n') {
				end++;
			}
			int to = (end > from && end < octets.length && octets[end - 1] == '\r') ? end - 1 : end;
			writeLine(octets, from, to);
			from = end + 1;
		}
	}

	private void writeLine(byte[] octets, int begin, int end) {
		room(end - begin + (end - begin) / 20 + 8);
		int from = begin;
		while (from < end) {
			int room = (from == begin) ? LINE_OCTETS : LINE_OCTETS - 1;
			int to = Math.min(from + room, end);
			while (to < end && continuesSequence(octets[to])) {
				to--;
			}
			if (from > begin) {
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
