package org.leafward.care.core.rule;

/** What an end of a window hangs on. */
public sealed interface Anchor
		permits MarkerAnchor, PhaseAnchor, EventAnchor, SoilTestAnchor, PlantingDateAnchor, CalendarAnchor {

	/**
	 * The anchor for readers.
	 * @return for example "14 days before the middle date of the last spring freeze at 32
	 * °F (0 °C)"
	 */
	String words();

	/**
	 * Days after what it hangs on.
	 * @return none for a day of the year
	 */
	default Days days() {
		return Days.NONE;
	}

	/**
	 * What may lie anywhere in the year, so that windows that hang on it can only be
	 * compared with others that hang on the same.
	 * @return a name for it, empty for what local seasons or the calendar date
	 */
	default String movable() {
		return "";
	}

}
