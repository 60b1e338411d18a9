package org.leafward.amounts.salt;

import org.jspecify.annotations.Nullable;
import org.leafward.amounts.Quantity;
import org.leafward.climate.core.water.TextureClass;

/**
 * A bed out of which salt has to go.
 *
 * @param squareMetres its area, 0.01 to 100,000, or null where nobody knows it
 * @param rootMetres depth of soil to clear, that of the roots, m, 0.05 to 1
 * @param drainage how water leaves it
 * @param cause what brought the salt
 */
public record SaltedBed(@Nullable Double squareMetres, double rootMetres, Drainage drainage, Cause cause) {

	/** What brings salt. */
	public enum Cause {

		/** De-icing in winter. */
		DE_ICING("de-icing", "once the ground has thawed and salting is over, before buds break"),

		/** Too much fertiliser. */
		FERTILISER("too much fertiliser", "as soon as you can"),

		/** Whatever a test of the soil found. */
		TESTED("a test of the soil", "while plants rest, or before you plant");

		private final String words;

		private final String when;

		Cause(String words, String when) {
			this.words = words;
			this.when = when;
		}

		public String words() {
			return this.words;
		}

		/**
		 * When to leach.
		 * @return for the middle of a sentence
		 */
		public String when() {
			return this.when;
		}

	}

	/**
	 * A bed of which nothing but the texture of the soil is known.
	 * @param squareMetres its area, or null where nobody knows it
	 * @param rootMetres depth of the roots, m
	 * @param soil texture in words, for example "silt loam"
	 * @param cause what brought the salt
	 * @return the bed, its drainage presumed
	 */
	public static SaltedBed ofSoil(@Nullable Double squareMetres, double rootMetres, String soil, Cause cause) {
		return new SaltedBed(squareMetres, rootMetres, Drainage.presumed(TextureClass.named(soil)), cause);
	}

	public SaltedBed {
		if (squareMetres != null) {
			Quantity.within("area", "area in square metres", squareMetres, 0.01, 100_000);
		}
		Quantity.within("rootDepth", "depth of the roots in centimetres", rootMetres * 100, 5, 100);
	}

}
