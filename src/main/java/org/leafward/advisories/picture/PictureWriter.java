package org.leafward.advisories.picture;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Locale;
import javax.imageio.ImageIO;
import org.leafward.advisories.picture.Drawn.Patch;
import org.leafward.advisories.picture.Drawn.Stroke;
import org.leafward.advisories.picture.Drawn.Words;
import org.leafward.pages.Svg;
import org.leafward.pages.print.Lettering;
import org.springframework.stereotype.Component;

/** Writes pictures, from the same shapes as SVG and as PNG. */
@Component
public class PictureWriter {

	/** The first is what PNG is drawn with; the others are as wide. */
	private static final String FACES = "Liberation Sans, Arial, Helvetica, sans-serif";

	private static final double HALO = 0.16;

	private final Lettering lettering;

	PictureWriter(Lettering lettering) {
		this.lettering = lettering;
	}

	/**
	 * A picture as SVG.
	 * @param drawn the picture
	 * @return a document of its own
	 */
	public String svg(Drawn drawn) {
		Svg svg = new Svg();
		svg.open("svg", "xmlns", "http://www.w3.org/2000/svg", "viewBox",
				"0 0 %d %d".formatted(drawn.width(), drawn.height()), "width", drawn.width(), "height", drawn.height(),
				"role", "img", "aria-label", drawn.alt());
		svg.element("title", drawn.alt());
		for (Drawn.Mark mark : drawn.marks()) {
			if (mark instanceof Patch patch) {
				svg.empty("path", "d", path(patch), "fill", (patch.fill() != null) ? patch.fill() : "none", "fill-rule",
						"evenodd", "stroke", patch.line(), "stroke-width",
						(patch.line() != null) ? patch.lineWidth() : null, "stroke-linejoin", "round");
			}
			else if (mark instanceof Words words) {
				svg.element("text", words.text(), "x", words.x(), "y", words.y(), "font-family", FACES, "font-size",
						words.size(), "font-weight", words.bold() ? "bold" : null, "fill", words.colour(), "stroke",
						words.halo(), "stroke-width", (words.halo() != null) ? words.size() * HALO : null,
						"stroke-linejoin", (words.halo() != null) ? "round" : null, "paint-order",
						(words.halo() != null) ? "stroke" : null, "text-anchor", words.middle() ? "middle" : null);
			}
			else if (mark instanceof Stroke stroke) {
				svg.empty("line", "x1", stroke.x1(), "y1", stroke.y1(), "x2", stroke.x2(), "y2", stroke.y2(), "stroke",
						stroke.colour(), "stroke-width", stroke.width());
			}
		}
		return svg.close().toString();
	}

	private static String path(Patch patch) {
		StringBuilder path = new StringBuilder();
		for (double[][] ring : patch.rings()) {
			for (int i = 0; i < ring.length; i++) {
				path.append((i == 0) ? 'M' : 'L')
					.append(String.format(Locale.ROOT, "%.1f %.1f", ring[i][0], ring[i][1]));
			}
			path.append('Z');
		}
		return path.toString();
	}

	/**
	 * A picture as PNG.
	 * @param drawn the picture
	 * @return a file
	 */
	public byte[] png(Drawn drawn) {
		BufferedImage image = new BufferedImage(drawn.width(), drawn.height(), BufferedImage.TYPE_INT_RGB);
		Graphics2D graphics = image.createGraphics();
		try {
			graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
			graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
			graphics.setColor(Color.WHITE);
			graphics.fillRect(0, 0, drawn.width(), drawn.height());
			drawn.marks().forEach((mark) -> draw(graphics, mark));
		}
		finally {
			graphics.dispose();
		}
		try {
			ByteArrayOutputStream out = new ByteArrayOutputStream();
			// A cache on disk would be asked for otherwise.
			ImageIO.setUseCache(false);
			ImageIO.write(image, "png", out);
			return out.toByteArray();
		}
		catch (IOException ex) {
			throw new UncheckedIOException("memory takes whatever is written", ex);
		}
	}

	private void draw(Graphics2D graphics, Drawn.Mark mark) {
		if (mark instanceof Patch patch) {
			Path2D.Double shape = new Path2D.Double(Path2D.WIND_EVEN_ODD);
			for (double[][] ring : patch.rings()) {
				for (int i = 0; i < ring.length; i++) {
					if (i == 0) {
						shape.moveTo(ring[i][0], ring[i][1]);
					}
					else {
						shape.lineTo(ring[i][0], ring[i][1]);
					}
				}
				shape.closePath();
			}
			if (patch.fill() != null) {
				graphics.setColor(Color.decode(patch.fill()));
				graphics.fill(shape);
			}
			if (patch.line() != null) {
				graphics.setColor(Color.decode(patch.line()));
				graphics.setStroke(round(patch.lineWidth()));
				graphics.draw(shape);
			}
		}
		else if (mark instanceof Words words) {
			double x = words.middle() ? words.x() - this.lettering.width(words.text(), words.size()) / 2 : words.x();
			Shape line = this.lettering.line(words.text(), x, words.y(), words.size(), words.bold());
			if (words.halo() != null) {
				graphics.setColor(Color.decode(words.halo()));
				graphics.setStroke(round(words.size() * HALO));
				graphics.draw(line);
			}
			graphics.setColor(Color.decode(words.colour()));
			graphics.fill(line);
		}
		else if (mark instanceof Stroke stroke) {
			graphics.setColor(Color.decode(stroke.colour()));
			graphics.setStroke(new BasicStroke((float) stroke.width(), BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER));
			graphics.draw(new Line2D.Double(stroke.x1(), stroke.y1(), stroke.x2(), stroke.y2()));
		}
	}

	private static BasicStroke round(double width) {
		return new BasicStroke((float) width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
	}

}
