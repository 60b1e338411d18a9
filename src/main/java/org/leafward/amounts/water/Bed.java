package org.leafward.amounts.water;

import org.jspecify.annotations.Nullable;
import org.leafward.measure.BadInput;

/**
 * Ground that is to be watered.
 *
 * @param ground its soil
 * @param rootDepthMetres how deep the water is to go, 0.01 to 2 m
 * @param squareMetres its area, above 0; null when not known
 * @param litresPerMinute what the hose or the sprinklers give, above 0; null when not
 * known
 */
public record Bed(Ground ground, double rootDepthMetres, @Nullable Double squareMetres,
		@Nullable Double litresPerMinute) {

	/** Part of the available water that most plants can use without stress; FAO-56. */
	public static final double USUAL_DEPLETION = 0.5;

	public Bed {
		if (!(rootDepthMetres >= 0.01 && rootDepthMetres <= 2)) {
			throw new BadInput("depth of the roots %s m is outside 0.01 to 2".formatted(rootDepthMetres), "depth",
					"give it in metres, for example 0.3");
		}
		if (squareMetres != null && !(squareMetres > 0 && squareMetres <= 1e6)) {
			throw new BadInput("area %s m² is outside 0 to 1,000,000".formatted(squareMetres), "area",
					"give the area of the bed");
		}
		if (litresPerMinute != null && !(litresPerMinute > 0 && litresPerMinute <= 10_000)) {
			throw new BadInput("a flow of %s l/min is outside 0 to 10,000".formatted(litresPerMinute), "flow",
					"give what the hose gives in a minute");
		}
	}

	/**
	 * All the water that the roots can take from it.
	 * @return mm (TAW of FAO-56, equation 82)
	 */
	public double available() {
		return this.ground.availablePerMetre() * this.rootDepthMetres;
	}

	/**
	 * What is gone when plants begin to feel it.
	 * @return mm (RAW of FAO-56, equation 83, p of {@value #USUAL_DEPLETION})
	 */
	public double readily() {
		return USUAL_DEPLETION * available();
	}

}
