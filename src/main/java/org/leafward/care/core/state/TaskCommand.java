package org.leafward.care.core.state;

import java.util.Locale;

/** What people can do with a task. */
public enum TaskCommand {

	/** Note that it was done. */
	DONE,

	/** Leave it out on purpose. */
	SKIP,

	/** Take back the last of these. */
	UNDO,

	/** Want it after all. */
	REOPEN;

	/**
	 * The name used by the API.
	 * @return in lower case
	 */
	public String code() {
		return name().toLowerCase(Locale.ROOT);
	}

}
