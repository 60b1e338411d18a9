package org.leafward.feeds;

/** In which kind of calendar component a document has its tasks. */
public enum FeedForm {

	/** All-day entries (VEVENT), which every calendar program shows. */
	EVENTS("tasks.ics"),

	/** To-dos (VTODO), for programs with a list of tasks. */
	TODOS("todo.ics");

	private final String file;

	FeedForm(String file) {
		this.file = file;
	}

	/**
	 * The end of its address.
	 * @return for example {@code tasks.ics}
	 */
	public String file() {
		return this.file;
	}

}
