package org.leafward.advisories.picture;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a picture to share says: words, and a map of the counties.
 *
 * @param kicker a few words above the headline
 * @param headline the most important line
 * @param lines what else has to be known, a line or two
 * @param sources where it comes from
 * @param counties every county of the map
 * @param alt what the picture shows, for those who don't see it
 */
public record Poster(String kicker, String headline, List<String> lines, String sources, List<Shown> counties,
		String alt) {

	public Poster {
		lines = List.copyOf(lines);
		counties = List.copyOf(counties);
	}

	/**
	 * How a county is shown.
	 *
	 * @param code its code
	 * @param label what stands in it, beside its name; null for the name alone
	 * @param weight how strongly it is filled, 0 for not at all to 1
	 */
	public record Shown(String code, @Nullable String label, double weight) {
	}

	/** Form of a picture. */
	public enum Form {

		/** As links are shown by others. */
		WIDE("wide", 1200, 630),

		/** For whoever shows pictures in squares. */
		SQUARE("square", 1080, 1080);

		private final String code;

		private final int width;

		private final int height;

		Form(String code, int width, int height) {
			this.code = code;
			this.width = width;
			this.height = height;
		}

		public String code() {
			return this.code;
		}

		public int width() {
			return this.width;
		}

		public int height() {
			return this.height;
		}

	}

}
