package org.leafward.register;

import org.jspecify.annotations.Nullable;
import org.leafward.measure.BadInput;

/**
 * The light in which plants stand before they go out.
 *
 * @param in where they stand
 * @param micromoles light of the lamps at the leaves, µmol/m²s, 1 to 2,500; null when
 * nobody measured or it isn't lamps
 * @param hours hours a day that the lamps are on, above 0 to 24; null when not known
 */
public record Raised(RaisedIn in, @Nullable Double micromoles, @Nullable Double hours) {

	public Raised {
		if (micromoles != null && !(micromoles >= 1 && micromoles <= 2500)) {
			throw new BadInput("light of %s µmol/m²s is outside 1 to 2,500".formatted(micromoles), "lampMicromoles",
					"give what a meter shows at the leaves, or leave it empty");
		}
		if (hours != null && !(hours > 0 && hours <= 24)) {
			throw new BadInput("lamps for %s hours a day are outside 0 to 24".formatted(hours), "lampHours",
					"give the hours a day, or leave it empty");
		}
	}

}
