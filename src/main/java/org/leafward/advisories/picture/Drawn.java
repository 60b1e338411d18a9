package org.leafward.advisories.picture;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A picture as a list of shapes, from back to front.
 *
 * @param width px
 * @param height px
 * @param alt what it shows, for those who don't see it
 * @param marks the shapes
 */
public record Drawn(int width, int height, String alt, List<Mark> marks) {

	public Drawn {
		marks = List.copyOf(marks);
	}

	/** A shape. */
	public sealed interface Mark {

	}

	/**
	 * An area.
	 *
	 * @param rings closed lines, px; what lies in two of them is outside
	 * @param fill colour; null for none
	 * @param line colour of its edge; null for none
	 * @param lineWidth px
	 */
	public record Patch(List<double[][]> rings, @Nullable String fill, @Nullable String line,
			double lineWidth) implements Mark {

		public Patch {
			rings = List.copyOf(rings);
		}

	}

	/**
	 * A line of words.
	 *
	 * @param text the words
	 * @param x px
	 * @param y baseline, px
	 * @param size px of an em
	 * @param bold whether they are bold
	 * @param colour their colour
	 * @param halo colour of a thin edge around the letters, so that they are read on any
	 * ground; null for none
	 * @param middle whether {@code x} is their middle instead of their beginning
	 */
	public record Words(String text, double x, double y, double size, boolean bold, String colour,
			@Nullable String halo, boolean middle) implements Mark {
	}

	/**
	 * A straight line.
	 *
	 * @param x1 px
	 * @param y1 px
	 * @param x2 px
	 * @param y2 px
	 * @param colour its colour
	 * @param width px
	 */
	public record Stroke(double x1, double y1, double x2, double y2, String colour, double width) implements Mark {
	}

}
