package org.leafward.reminders.job;

import org.leafward.reminders.dispatch.AdvisoryTelling;
import org.quartz.DisallowConcurrentExecution;
import org.quartz.Job;
import org.quartz.JobExecutionContext;

/** Makes the rows of advisories that were sent. */
@DisallowConcurrentExecution
public class AdvisoriesJob implements Job {

	private final AdvisoryTelling telling;

	/**
	 * Creates the job.
	 * @param telling does the work
	 */
	public AdvisoriesJob(AdvisoryTelling telling) {
		this.telling = telling;
	}

	@Override
	public void execute(JobExecutionContext context) {
		this.telling.run();
	}

}
