package org.leafward.pages.print;

import com.openhtmltopdf.bidi.BidiReorderer;
import com.openhtmltopdf.bidi.BidiSplitter;
import com.openhtmltopdf.bidi.BidiTextRun;
import java.text.Bidi;

/**
 * Tells the library which parts of a text run from right to left, by the Unicode
 * Bidirectional Algorithm (UAX #9) of Java. Arabic letters are not shaped, as the font
 * has none.
 */
final class Directions implements BidiSplitter {

	private Bidi bidi = new Bidi("", Bidi.DIRECTION_LEFT_TO_RIGHT);

	private Integer[] visual = new Integer[0];

	@Override
	public void setParagraph(String paragraph, byte defaultDirection) {
		this.bidi = new Bidi(paragraph,
				(defaultDirection == RTL) ? Bidi.DIRECTION_RIGHT_TO_LEFT : Bidi.DIRECTION_LEFT_TO_RIGHT);
		byte[] levels = new byte[this.bidi.getRunCount()];
		this.visual = new Integer[levels.length];
		for (int i = 0; i < levels.length; i++) {
			levels[i] = (byte) this.bidi.getRunLevel(i);
			this.visual[i] = i;
		}
		// An empty text has no run, which Java's own method does not take.
		if (levels.length > 0) {
			Bidi.reorderVisually(levels, 0, this.visual, 0, levels.length);
		}
	}

	@Override
	public int countTextRuns() {
		return this.visual.length;
	}

	@Override
	public BidiTextRun getVisualRun(int run) {
		int at = this.visual[run];
		int start = this.bidi.getRunStart(at);
		return new BidiTextRun(start, this.bidi.getRunLimit(at) - start,
				((this.bidi.getRunLevel(at) & 1) == 1) ? RTL : LTR);
	}

	@Override
	public byte getBaseDirection(String paragraph) {
		for (int point : paragraph.codePoints().toArray()) {
			switch (Character.getDirectionality(point)) {
				case Character.DIRECTIONALITY_LEFT_TO_RIGHT:
					return LTR;
				case Character.DIRECTIONALITY_RIGHT_TO_LEFT, Character.DIRECTIONALITY_RIGHT_TO_LEFT_ARABIC:
					return RTL;
				default:
					// Says nothing of a direction.
			}
		}
		return NEUTRAL;
	}

	/** Writes what runs from right to left from left to right. */
	static final class Reorderer implements BidiReorderer {

		private static final String OPEN = "([{<«";

		private static final String CLOSE = ")]}>»";

		@Override
		public String reorderRTLTextToLTR(String text) {
			StringBuilder turned = new StringBuilder(text).reverse();
			for (int i = 0; i < turned.length(); i++) {
				int open = OPEN.indexOf(turned.charAt(i));
				int close = CLOSE.indexOf(turned.charAt(i));
				if (open >= 0 || close >= 0) {
					turned.setCharAt(i, (open >= 0) ? CLOSE.charAt(open) : OPEN.charAt(close));
				}
			}
			return turned.toString();
		}

		@Override
		public String shapeText(String text) {
			return text;
		}

		@Override
		public String deshapeText(String text) {
			return text;
		}

		@Override
		public boolean isLiveImplementation() {
			return true;
		}

	}

}
