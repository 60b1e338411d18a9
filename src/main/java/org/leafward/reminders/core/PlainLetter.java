package org.leafward.reminders.core;

import org.leafward.reminders.core.Letter.Block;
import org.leafward.reminders.core.Letter.Entries;
import org.leafward.reminders.core.Letter.Line;
import org.leafward.reminders.core.Letter.Part;
import org.leafward.reminders.core.Letter.Piece;
import org.leafward.reminders.core.Letter.Sentence;

/** The text part of a mail. */
final class PlainLetter {

	/** RFC 5322 section 2.1.1 asks for at most 78; quoting takes some. */
	private static final int COLUMNS = 72;

	/** Longest unit that stays with its figure, with a bracket or a full stop. */
	private static final int UNIT = 4;

	private final StringBuilder text = new StringBuilder(8_192);

	private PlainLetter() {
	}

	static String of(Letter letter) {
		PlainLetter plain = new PlainLetter();
		plain.paragraph("", letter.title(), "");
		letter.body().forEach(plain::block);
		// The signature separator is "-- " in common practice (RFC 3676 section 4.3).
		plain.text.append("\n-- \n");
		letter.foot().forEach((line) -> plain.sentence("", line, ""));
		return plain.text.toString();
	}

	private void block(Block block) {
		this.text.append('\n');
		if (block instanceof Part part) {
			paragraph("", part.heading(), "");
		}
		else if (block instanceof Piece piece) {
			piece(piece);
		}
		else if (block instanceof Entries entries) {
			entries.entries().forEach((entry) -> entry("* ", entry, "  "));
		}
		else if (block instanceof Sentence sentence) {
			sentence("", sentence, "");
		}
	}

	private void piece(Piece piece) {
		paragraph("* ", piece.heading(), "  ");
		for (Line line : piece.lines()) {
			paragraph("  ", line.label() + ": " + line.value(), "    ");
		}
		piece.links().forEach((link) -> sentence("  ", link, "    "));
	}

	/** The address stands on a line of its own, where it isn't broken. */
	private void entry(String begin, Sentence entry, String indent) {
		paragraph(begin, entry.words(), indent);
		if (entry.address() != null) {
			this.text.append(indent).append(entry.address()).append('\n');
		}
	}

	private void sentence(String begin, Sentence sentence, String indent) {
		String address = sentence.address();
		paragraph(begin, (address != null) ? sentence.words() + ": " + address : sentence.words(), indent);
	}

	/**
	 * Breaks at spaces only; a word longer than the line, such as an address, stays
	 * whole.
	 */
	private void paragraph(String begin, String words, String indent) {
		this.text.append(begin);
		int width = begin.length();
		boolean empty = true;
		int at = 0;
		while (at < words.length()) {
			int end = words.indexOf(' ', at);
			end = (end < 0) ? words.length() : end;
			int length = end - at;
			// A unit stays with its figure, which passes the margin by no more than five.
			boolean unit = words.startsWith("°", at) && length <= UNIT;
			if (!empty && !unit && width + 1 + length > COLUMNS) {
				this.text.append('\n').append(indent);
				width = indent.length();
			}
			else if (!empty) {
				this.text.append(' ');
				width++;
			}
			this.text.append(words, at, end);
			width += length;
			empty = false;
			at = end + 1;
		}
		this.text.append('\n');
	}

}
