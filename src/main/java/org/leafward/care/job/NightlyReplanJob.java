package org.leafward.care.job;

import org.leafward.care.Replanning;
import org.quartz.DisallowConcurrentExecution;
import org.quartz.Job;
import org.quartz.JobExecutionContext;

/**
 * Asks for all sites once a night, so that a new season is planned without anybody doing
 * anything.
 */
@DisallowConcurrentExecution
public class NightlyReplanJob implements Job {

	private final Replanning replanning;

	/**
	 * Creates the job.
	 * @param replanning what it calls
	 */
	public NightlyReplanJob(Replanning replanning) {
		this.replanning = replanning;
	}

	@Override
	public void execute(JobExecutionContext context) {
		this.replanning.askAll();
		this.replanning.tidy();
	}

}
