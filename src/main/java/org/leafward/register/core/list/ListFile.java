package org.leafward.register.core.list;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import org.leafward.measure.BadInput;

/**
 * Makes text of a file: UTF-8 with or without a byte order mark, UTF-16 with one, and
 * Windows-1252 when it is no valid UTF-8, as spreadsheets save it.
 */
public final class ListFile {

	/** Octets that are taken. */
	public static final int MOST = 250_000;

	private static final Charset WINDOWS = Charset.forName("windows-1252");

	private ListFile() {
	}

	/**
	 * The text of a file.
	 * @param content its octets
	 * @return without a byte order mark
	 * @throws BadInput when it is too large or no text
	 */
	public static String text(byte[] content) {
		if (content.length > MOST) {
			throw new BadInput("the file has %,d bytes".formatted(content.length), "file",
					"choose one of at most %,d bytes".formatted(MOST));
		}
		if (begins(content, 'P', 'K') || begins(content, 0xd0, 0xcf, 0x11, 0xe0)
				|| begins(content, '%', 'P', 'D', 'F')) {
			throw new BadInput("the file is no plain text", "file",
					"save it from your spreadsheet as CSV, or copy its cells into the field above");
		}
		if (begins(content, 0xff, 0xfe)) {
			return decoded(content, 2, StandardCharsets.UTF_16LE);
		}
		if (begins(content, 0xfe, 0xff)) {
			return decoded(content, 2, StandardCharsets.UTF_16BE);
		}
		int start = begins(content, 0xef, 0xbb, 0xbf) ? 3 : 0;
		try {
			return text(content, start, StandardCharsets.UTF_8);
		}
		catch (CharacterCodingException ex) {
			return decoded(content, start, WINDOWS);
		}
	}

	private static String decoded(byte[] content, int start, Charset charset) {
		try {
			return text(content, start, charset);
		}
		catch (CharacterCodingException ex) {
			throw new BadInput("the file can’t be read as text", "file", "save it as CSV in UTF-8");
		}
	}

	private static String text(byte[] content, int start, Charset charset) throws CharacterCodingException {
		String text = charset.newDecoder()
			.onMalformedInput(CodingErrorAction.REPORT)
			.onUnmappableCharacter(CodingErrorAction.REPORT)
			.decode(ByteBuffer.wrap(content, start, content.length - start))
			.toString();
		if (text.indexOf('\0') >= 0) {
			throw new BadInput("the file is no plain text", "file",
					"save it from your spreadsheet as CSV, or copy its cells into the field above");
		}
		return text;
	}

	private static boolean begins(byte[] content, int... octets) {
		for (int i = 0; i < octets.length; i++) {
			if (i >= content.length || (content[i] & 0xff) != octets[i]) {
				return false;
			}
		}
		return true;
	}

}
