package org.leafward.care.core.state;

import java.util.Locale;

/** Where a task stands on a day. Due and missed are never stored: days make them so. */
public enum TaskStanding {

	/** Its days are still to come. */
	PLANNED,

	/** Its days are now. */
	DUE,

	/** Its days passed, and nobody did it or skipped it. */
	MISSED,

	/** Its days passed, and there was nothing to be done in them. */
	OVER,

	/** Somebody did it. */
	DONE,

	/** Somebody left it out on purpose. */
	SKIPPED,

	/** It is not needed; it comes back when it is. */
	WITHDRAWN;

	/**
	 * The standing for readers and the API.
	 * @return in lower case
	 */
	public String words() {
		return name().toLowerCase(Locale.ROOT);
	}

}
