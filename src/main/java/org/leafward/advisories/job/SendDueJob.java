package org.leafward.advisories.job;

import java.util.UUID;
import org.leafward.advisories.desk.Desk;
import org.quartz.DisallowConcurrentExecution;
import org.quartz.Job;
import org.quartz.JobExecutionContext;

/** Sends advisories whose time has come. */
@DisallowConcurrentExecution
public class SendDueJob implements Job {

	private final Desk desk;

	/**
	 * Creates the job.
	 * @param desk what it calls
	 */
	public SendDueJob(Desk desk) {
		this.desk = desk;
	}

	@Override
	public void execute(JobExecutionContext context) {
		for (UUID draft : this.desk.due()) {
			this.desk.sendDue(draft);
		}
	}

}
