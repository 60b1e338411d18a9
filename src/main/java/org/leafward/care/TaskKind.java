package org.leafward.care;

/** What a task window asks for. */
public enum TaskKind {

	/** Something to do. */
	DO,

	/** A period in which something must not be done. */
	HOLD_OFF,

	/** One day of a hardening-off ramp. */
	RAMP_DAY,

	/** Something to look for. */
	WATCH

}
