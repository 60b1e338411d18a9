package org.leafward.care.core.rule;

/** What an end of a window hangs on. */
public sealed interface Anchor permits MarkerAnchor, PlantingDateAnchor, CalendarAnchor {

	/**
	 * The anchor for readers.
	 * @return for example "14 days before the last spring freeze (32 °F, 50 %)"
	 */
	String words();

}
