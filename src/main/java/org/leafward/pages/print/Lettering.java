package org.leafward.pages.print;

import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.GeneralPath;
import java.awt.geom.Path2D;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.springframework.stereotype.Component;

/**
 * Letters as outlines, for pictures. It needs no font of the machine and none of the
 * libraries by which Java looks for them, which a small server may lack: the font is the
 * one that paper is printed with (Liberation Sans), and its letters are filled as shapes.
 */
@Component
public class Lettering {

	private static final String FONT = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

	/** What the font has no sign for. */
	private static final int NO_SIGN = 0x25A1;

	/** How much wider a bold letter is drawn than the font has it, em. */
	private static final double BOLDER = 0.028;

	private final TrueTypeFont font;

	private final CmapLookup signs;

	private final double perEm;

	private final Map<Integer, GeneralPath> outlines = new ConcurrentHashMap<>();

	/**
	 * Reads the font.
	 */
	public Lettering() {
		try (InputStream file = PDDocument.class.getResourceAsStream(FONT)) {
			if (file == null) {
				throw new IOException("there is no " + FONT);
			}
			this.font = new TTFParser().parse(new RandomAccessReadBuffer(file.readAllBytes()));
			this.signs = this.font.getUnicodeCmapLookup();
			this.perEm = this.font.getUnitsPerEm();
		}
		catch (IOException ex) {
			throw new UncheckedIOException(FONT, ex);
		}
	}

	/**
	 * How wide a line is.
	 * @param text one line
	 * @param size px of an em
	 * @return px
	 */
	public double width(String text, double size) {
		return text.codePoints().mapToDouble((point) -> advance(sign(point))).sum() * size / this.perEm;
	}

	/**
	 * A line as a shape.
	 * @param text one line
	 * @param x where it begins, px
	 * @param y its baseline, px
	 * @param size px of an em
	 * @param bold whether its strokes are wider
	 * @return to be filled
	 */
	public Shape line(String text, double x, double y, double size, boolean bold) {
		double scale = size / this.perEm;
		Path2D.Double line = new Path2D.Double(Path2D.WIND_NON_ZERO);
		double at = x;
		for (int point : text.codePoints().toArray()) {
			int sign = sign(point);
			AffineTransform place = new AffineTransform(scale, 0, 0, -scale, at, y);
			line.append(outline(sign).getPathIterator(place), false);
			at += advance(sign) * scale;
		}
		if (!bold) {
			return line;
		}
		Area wider = new Area(line);
		wider.add(new Area(new BasicStroke((float) (size * BOLDER), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND)
			.createStrokedShape(line)));
		return wider;
	}

	private int sign(int point) {
		int sign = this.signs.getGlyphId(point);
		return (sign > 0) ? sign : this.signs.getGlyphId(NO_SIGN);
	}

	/** The font reads its tables as it is asked, which only one may do at a time. */
	private synchronized double advance(int sign) {
		try {
			return this.font.getAdvanceWidth(sign);
		}
		catch (IOException ex) {
			throw new UncheckedIOException(FONT, ex);
		}
	}

	private GeneralPath outline(int sign) {
		return this.outlines.computeIfAbsent(sign, this::read);
	}

	private synchronized GeneralPath read(int sign) {
		try {
			var glyph = this.font.getGlyph().getGlyph(sign);
			return (glyph != null) ? glyph.getPath() : new GeneralPath();
		}
		catch (IOException ex) {
			throw new UncheckedIOException(FONT, ex);
		}
	}

}
