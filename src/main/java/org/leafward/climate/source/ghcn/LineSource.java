package org.leafward.climate.source.ghcn;

import java.io.BufferedInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.util.zip.GZIPInputStream;
import java.util.zip.ZipException;
import org.leafward.measure.BadInput;

/**
 * Lines of bytes from a stream, plain or gzip, with bounds on their length and on the
 * whole. Knows no character set: both GHCN layouts are ASCII.
 */
final class LineSource {

	/** The longest line of a station file has 269 characters. */
	static final int LONGEST_LINE = 512;

	private final InputStream stream;

	private final long mostBytes;

	private final byte[] buffer = new byte[1 << 16];

	private final byte[] line = new byte[LONGEST_LINE];

	private int at;

	private int filled;

	private long read;

	private int length;

	private boolean tooLong;

	private boolean first = true;

	LineSource(InputStream stream, long mostBytes) throws IOException {
		this.stream = opened(stream);
		this.mostBytes = mostBytes;
	}

	/** Gzip is told by its first two bytes (RFC 1952), whatever the file is called. */
	private static InputStream opened(InputStream stream) throws IOException {
		BufferedInputStream buffered = new BufferedInputStream(stream);
		buffered.mark(2);
		int first = buffered.read();
		int second = buffered.read();
		buffered.reset();
		try {
			return (first == 0x1f && second == 0x8b) ? new GZIPInputStream(buffered, 1 << 16) : buffered;
		}
		catch (EOFException | ZipException ex) {
			throw damaged();
		}
	}

	/**
	 * Goes to the next line.
	 * @return false at the end
	 */
	boolean next() throws IOException {
		this.length = 0;
		this.tooLong = false;
		boolean any = false;
		while (this.at < this.filled || fill()) {
			byte symbol = this.buffer[this.at++];
			any = true;
			if (symbol == '\n') {
				break;
			}
			if (this.length == LONGEST_LINE) {
				this.tooLong = true;
			}
			else {
				this.line[this.length++] = symbol;
			}
		}
		if (this.length > 0 && this.line[this.length - 1] == '\r') {
			this.length--;
		}
		if (this.first) {
			this.first = false;
			dropMark();
		}
		return any;
	}

	/** Some editors put the byte order mark of UTF-8 before the text. */
	private void dropMark() {
		if (this.length >= 3 && this.line[0] == (byte) 0xef && this.line[1] == (byte) 0xbb
				&& this.line[2] == (byte) 0xbf) {
			this.length -= 3;
			System.arraycopy(this.line, 3, this.line, 0, this.length);
		}
	}

	private boolean fill() throws IOException {
		try {
			this.filled = Math.max(0, this.stream.read(this.buffer));
		}
		catch (EOFException | ZipException ex) {
			throw damaged();
		}
		this.at = 0;
		this.read += this.filled;
		if (this.read > this.mostBytes) {
			throw new BadInput("the file is larger than %d bytes when unpacked".formatted(this.mostBytes), "file",
					"give the file of one station; the largest have about 10 MB");
		}
		return this.filled > 0;
	}

	private static BadInput damaged() {
		return new BadInput("the gzip file is damaged or cut off", "file", "fetch the file again");
	}

	byte[] line() {
		return this.line;
	}

	int length() {
		return this.length;
	}

	boolean tooLong() {
		return this.tooLong;
	}

}
