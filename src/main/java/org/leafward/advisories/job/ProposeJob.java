package org.leafward.advisories.job;

import org.leafward.advisories.Proposing;
import org.quartz.DisallowConcurrentExecution;
import org.quartz.Job;
import org.quartz.JobExecutionContext;

/** Looks at all counties, once an hour on one node. */
@DisallowConcurrentExecution
public class ProposeJob implements Job {

	private final Proposing proposing;

	/**
	 * Creates the job.
	 * @param proposing what it calls
	 */
	public ProposeJob(Proposing proposing) {
		this.proposing = proposing;
	}

	@Override
	public void execute(JobExecutionContext context) {
		this.proposing.propose();
	}

}
