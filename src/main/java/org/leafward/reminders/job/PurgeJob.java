package org.leafward.reminders.job;

import org.leafward.reminders.PostRoom;
import org.quartz.DisallowConcurrentExecution;
import org.quartz.Job;
import org.quartz.JobExecutionContext;

/** Deletes what ended long ago. */
@DisallowConcurrentExecution
public class PurgeJob implements Job {

	private final PostRoom room;

	/**
	 * Creates the job.
	 * @param room does the work
	 */
	public PurgeJob(PostRoom room) {
		this.room = room;
	}

	@Override
	public void execute(JobExecutionContext context) {
		this.room.purge();
	}

}
