package org.leafward.register;

import org.jspecify.annotations.Nullable;
import org.leafward.measure.BadInput;
import org.leafward.measure.Findings;

/**
 * How large a planting is, as far as anyone told; amounts of water go by it.
 *
 * @param squareMetres area of the bed or the ground above the roots of all its plants,
 * 0.01 to 100,000 m²
 * @param calliperMillimetres thickness of one trunk near the ground, 5 to 3,000 mm
 * @param potLitres volume of one pot, 0.1 to 5,000 l
 */
public record PlantingSize(@Nullable Double squareMetres, @Nullable Double calliperMillimetres,
		@Nullable Double potLitres) {

	/** Nobody told. */
	public static final PlantingSize UNKNOWN = new PlantingSize(null, null, null);

	public PlantingSize {
		Findings all = new Findings();
		Double area = squareMetres;
		Double trunk = calliperMillimetres;
		Double pot = potLitres;
		all.check(() -> check("area", area, 0.01, 100_000, "square metres"));
		all.check(() -> check("calliper", trunk, 5, 3000, "millimetres"));
		all.check(() -> check("pot", pot, 0.1, 5000, "litres"));
		all.end();
	}

	private static void check(String field, @Nullable Double value, double least, double most, String unit) {
		if (value != null && !(value >= least && value <= most)) {
			throw new BadInput("%s %s is outside %s to %s".formatted(field, value, least, most), field,
					"give it in %s, or leave it empty".formatted(unit));
		}
	}

}
