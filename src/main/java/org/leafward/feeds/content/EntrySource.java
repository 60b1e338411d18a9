package org.leafward.feeds.content;

import java.util.List;
import org.leafward.feeds.core.FeedEntry;
import org.leafward.feeds.core.FeedWindow;
import org.leafward.feeds.core.TaskEntries;
import org.leafward.feeds.store.DocumentTable.Claimed;

/** One thing that calendars show besides the tasks of their plants. */
public interface EntrySource {

	/**
	 * Its entries in a document.
	 * @param feed what the calendar is about and what it may hold
	 * @param window the days that it shows
	 * @param words how the reader is spoken to
	 * @param base address of the server, without a slash at the end
	 * @return in any order, nothing where the options leave it out
	 */
	List<FeedEntry> entries(Claimed feed, FeedWindow window, TaskEntries words, String base);

}
