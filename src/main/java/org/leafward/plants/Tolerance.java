package org.leafward.plants;

import org.jspecify.annotations.Nullable;

/**
 * What an established plant of a species bears. Each is null where it is not known.
 *
 * @param drought drought
 * @param soilSalt salt in the soil
 * @param saltSpray salt spray on leaves and buds
 */
public record Tolerance(@Nullable Level drought, @Nullable Level soilSalt, @Nullable Level saltSpray) {

	/** Nothing is known. */
	public static final Tolerance UNKNOWN = new Tolerance(null, null, null);

	/** How much is borne. */
	public enum Level {

		LOW, MODERATE, HIGH

	}

}
