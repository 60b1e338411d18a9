package org.leafward.care;

/** Where a care task stands. */
public enum TaskState {

	/** The window holds. */
	PLANNED,

	/** No longer needed; the task says why. */
	WITHDRAWN

}
