package org.leafward.register;

import org.jspecify.annotations.Nullable;
import org.leafward.measure.BadInput;
import org.leafward.measure.Findings;

/**
 * What a laboratory measured of the salt and the sodium in a soil. What it means is for
 * others to say.
 *
 * @param acidity pH, 2 to 12
 * @param conductivity electrical conductivity, dS/m, the same as mmhos/cm, 0 to 100
 * @param extract in which that was measured
 * @param sodiumRatio sodium adsorption ratio SAR, 0 to 150; null where only the next is
 * given
 * @param sodiumPercent exchangeable sodium percentage ESP, 0 to 70; it goes before the
 * ratio; null where only that is given
 * @param exchange cation exchange capacity CEC, cmol/kg, the same as meq/100 g, 0.5 to
 * 100; null where nobody measured
 */
public record SoilFigures(double acidity, double conductivity, SoilExtract extract, @Nullable Double sodiumRatio,
		@Nullable Double sodiumPercent, @Nullable Double exchange) {

	public SoilFigures {
		Findings all = new Findings();
		double ph = acidity;
		double ec = conductivity;
		all.check(() -> within("ph", "pH", ph, 2, 12));
		all.check(() -> within("ec", "electrical conductivity in dS/m", ec, 0, 100));
		all.check(() -> within("sar", "SAR", sodiumRatio, 0, 150));
		all.check(() -> within("esp", "ESP in %", sodiumPercent, 0, 70));
		all.check(() -> within("cec", "CEC in meq/100 g", exchange, 0.5, 100));
		if (sodiumRatio == null && sodiumPercent == null) {
			all.check(() -> {
				throw new BadInput("sodium is missing", "sar", "fill in SAR or ESP from the report");
			});
		}
		all.end();
	}

	/** Written so that it catches NaN too. */
	static void within(String field, String what, @Nullable Double value, double least, double most) {
		if (value != null && !(value >= least && value <= most)) {
			throw new BadInput("%s %s is outside %s to %s".formatted(what, value, least, most), field,
					"check the figure and its unit on the report");
		}
	}

}
