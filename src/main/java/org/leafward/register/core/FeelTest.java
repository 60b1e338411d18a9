package org.leafward.register.core;

import java.util.Locale;
import org.leafward.register.SoilTexture;

/**
 * Soil texture by feel: a moist handful, squeezed into a ball, pushed out into a ribbon
 * between thumb and finger, and rubbed with more water.
 * <p>
 * Source: S. J. Thien, A flow diagram for teaching texture-by-feel analysis, Journal of
 * Agronomic Education 8 (1979), 54–55, as the USDA-NRCS gives it in its Guide to Texture
 * by Feel. The steps agree with a reprint of the diagram; the lengths of the ribbon, 1
 * and 2 in, are those of the guide (from memory; a reprint has others).
 */
public final class FeelTest {

	private FeelTest() {
	}

	/** How long a ribbon gets before it breaks by its own weight. */
	public enum Ribbon {

		/** It can't be pushed out at all. */
		NONE("it makes no ribbon"),

		/** Weak: shorter than 2.5 cm (1 in). */
		SHORT("shorter than 2.5 cm (1 in)"),

		/** Medium: 2.5 to 5 cm (1 to 2 in). */
		MEDIUM("2.5 to 5 cm (1 to 2 in)"),

		/** Strong: 5 cm (2 in) and longer. */
		LONG("5 cm (2 in) and longer");

		private final String words;

		Ribbon(String words) {
			this.words = words;
		}

		public String words() {
			return this.words;
		}

	}

	/** How a pinch feels that is rubbed very wet in the palm. */
	public enum Rubbed {

		/** Grittiness predominates: sand. */
		GRITTY("very gritty"),

		/** Smoothness predominates: silt. */
		SMOOTH("very smooth, like flour"),

		/** Neither predominates. */
		NEITHER("neither of the two");

		private final String words;

		Rubbed(String words) {
			this.words = words;
		}

		public String words() {
			return this.words;
		}

	}

	/**
	 * What the test finds, coarse to fine, and as which of the textures of the register
	 * it counts. Those that the register doesn't have count as the neighbour in the
	 * triangle whose water is nearest (our choice): loamy sand holds little more than
	 * sand, and the clay decides in the others.
	 */
	public enum Found {

		/** No ball. */
		SAND(SoilTexture.SAND),

		/** A ball, no ribbon. */
		LOAMY_SAND(SoilTexture.SAND),

		/** Short ribbon, gritty. */
		SANDY_LOAM(SoilTexture.SANDY_LOAM),

		/** Short ribbon, neither. */
		LOAM(SoilTexture.LOAM),

		/** Short ribbon, smooth. */
		SILT_LOAM(SoilTexture.SILT_LOAM),

		/** Medium ribbon, gritty. */
		SANDY_CLAY_LOAM(SoilTexture.CLAY_LOAM),

		/** Medium ribbon, neither. */
		CLAY_LOAM(SoilTexture.CLAY_LOAM),

		/** Medium ribbon, smooth. */
		SILTY_CLAY_LOAM(SoilTexture.CLAY_LOAM),

		/** Long ribbon, gritty. */
		SANDY_CLAY(SoilTexture.CLAY),

		/** Long ribbon, smooth. */
		SILTY_CLAY(SoilTexture.CLAY),

		/** Long ribbon, neither. */
		CLAY(SoilTexture.CLAY);

		private final SoilTexture kept;

		Found(SoilTexture kept) {
			this.kept = kept;
		}

		/**
		 * As what it is kept.
		 * @return a texture of the register
		 */
		public SoilTexture kept() {
			return this.kept;
		}

		/**
		 * The name for readers.
		 * @return for example "sandy clay loam"
		 */
		public String words() {
			return name().toLowerCase(Locale.ROOT).replace('_', ' ');
		}

	}

	/**
	 * What the soil is.
	 * @param ribbon the ribbon that a ball gives
	 * @param rubbed how it feels very wet; doesn't matter without a ribbon
	 * @return the texture of soil that stays in a ball when squeezed
	 */
	public static Found ball(Ribbon ribbon, Rubbed rubbed) {
		return switch (ribbon) {
			case NONE -> Found.LOAMY_SAND;
			case SHORT -> choose(rubbed, Found.SANDY_LOAM, Found.SILT_LOAM, Found.LOAM);
			case MEDIUM -> choose(rubbed, Found.SANDY_CLAY_LOAM, Found.SILTY_CLAY_LOAM, Found.CLAY_LOAM);
			case LONG -> choose(rubbed, Found.SANDY_CLAY, Found.SILTY_CLAY, Found.CLAY);
		};
	}

	/**
	 * What soil is that makes no ball, neither too dry nor too wet.
	 * @return sand
	 */
	public static Found noBall() {
		return Found.SAND;
	}

	private static Found choose(Rubbed rubbed, Found gritty, Found smooth, Found neither) {
		return switch (rubbed) {
			case GRITTY -> gritty;
			case SMOOTH -> smooth;
			case NEITHER -> neither;
		};
	}

}
