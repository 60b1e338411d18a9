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

	/** A content line that is not ended yet. */
	private byte[] line = new byte[1024];

	private int lineLength;

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

	/**
	 * Adds to the end of a content line.
	 * @param text without line breaks
	 */
	public void add(String text) {
		byte[] octets = text.getBytes(StandardCharsets.UTF_8);
		lineRoom(octets.length);
		System.arraycopy(octets, 0, this.line, this.lineLength, octets.length);
		this.lineLength += octets.length;
	}

	/**
	 * Adds to the end of a content line.
	 * @param unit a character of ASCII, but no line break
	 */
	public void add(char unit) {
		lineRoom(1);
		this.line[this.lineLength++] = (byte) unit;
	}

	/**
	 * Adds a text with the escapes of RFC 5545 section 3.3.11 to the end of a content
	 * line.
	 * @param text any, is cleaned as {@link PlainText#clean} does
	 */
	public void addText(String text) {
		byte[] octets = text.getBytes(StandardCharsets.UTF_8);
		lineRoom(2 * octets.length);
		byte[] to = this.line;
		int at = this.lineLength;
		boolean looked = false;
		for (byte octet : octets) {
			if (!looked && (octet < ' ' && octet != '\n' || octet == 0x7F)) {
				// Other than ASCII, which is negative, or a control character.
				String clean = PlainText.clean(text);
				if (!clean.equals(text)) {
					addText(clean);
					return;
				}
				looked = true;
			}
			if (octet == '\\' || octet == ';' || octet == ',' || octet == '\n') {
				to[at++] = '\\';
			}
			to[at++] = (octet == '\n') ? (byte) 'n' : octet;
		}
		this.lineLength = at;
	}

	/** Ends a content line. */
	public void end() {
		writeLine(this.line, 0, this.lineLength);
		this.lineLength = 0;
	}

	/** Forgets all that was written. */
	public void clear() {
		this.length = 0;
		this.lineLength = 0;
	}

	private void lineRoom(int more) {
		if (this.lineLength + more > this.line.length) {
			this.line = Arrays.copyOf(this.line, Math.max(2 * this.line.length, this.lineLength + more));
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
