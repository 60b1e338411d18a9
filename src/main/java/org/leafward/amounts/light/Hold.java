package org.leafward.amounts.light;

/**
 * Why a plant stays in on a day of its ramp.
 *
 * @param kind what keeps it in
 * @param reason a sentence without its full stop
 */
public record Hold(Kind kind, String reason) {

	/** What keeps a plant in. */
	public enum Kind {

		/** The day stays too cold. */
		COLD,

		/** Wind breaks and dries soft growth. */
		WIND,

		/** Heat scorches it. */
		HEAT

	}

}
