package org.leafward.care;

/** Where a care task stands. */
public enum TaskState {

	/** The window holds. */
	PLANNED,

	/** No longer needed; the task says why. It comes back when it is. */
	WITHDRAWN,

	/** Somebody did it. */
	DONE,

	/** Somebody left it out on purpose. */
	SKIPPED

}
