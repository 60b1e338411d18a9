package org.leafward.reminders.core;

import java.util.UUID;
import org.leafward.accounts.PersonId;
import org.leafward.care.TaskId;
import org.leafward.reminders.Series;

/** Addresses that go into messages. */
public interface Links {

	/**
	 * The page of a task.
	 * @param task the task
	 * @return an absolute address
	 */
	String task(TaskId task);

	/**
	 * The page at which one says what became of a reminder, without signing in.
	 * @param reminder the reminder
	 * @param act what is proposed there
	 * @return an absolute address that nobody else can guess
	 */
	String act(UUID reminder, Act act);

	/**
	 * The page at which a series is left, without signing in; a program may send an empty
	 * form there (RFC 8058).
	 * @param person whose messages
	 * @param channel code of the channel
	 * @param series the series
	 * @return an absolute address that nobody else can guess
	 */
	String stop(PersonId person, String channel, Series series);

	/**
	 * The page at which one chooses how to be told.
	 * @return an absolute address
	 */
	String wishes();

	/**
	 * This server.
	 * @return its address without a slash at its end
	 */
	String home();

	/** What one can do from a message. */
	enum Act {

		/** Note it as done today. */
		DONE,

		/** Be told again in three days. */
		LATER,

		/** Leave it out this year. */
		SKIP

	}

}
