package org.leafward.care.core.rule;

/** What an end of a window hangs on. */
public sealed interface Anchor permits MarkerAnchor, PhaseAnchor, EventAnchor, PlantingDateAnchor, CalendarAnchor {

	/**
	 * The anchor for readers.
	 * @return for example "14 days before the middle date of the last spring freeze at 32
	 * °F (0 °C)"
	 */
	String words();

}
