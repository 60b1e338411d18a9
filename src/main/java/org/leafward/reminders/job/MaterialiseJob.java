package org.leafward.reminders.job;

import org.leafward.reminders.dispatch.Materialiser;
import org.quartz.DisallowConcurrentExecution;
import org.quartz.Job;
import org.quartz.JobExecutionContext;

/** Makes everybody's reminders for the next two weeks. */
@DisallowConcurrentExecution
public class MaterialiseJob implements Job {

	private final Materialiser materialiser;

	/**
	 * Creates the job.
	 * @param materialiser does the work
	 */
	public MaterialiseJob(Materialiser materialiser) {
		this.materialiser = materialiser;
	}

	@Override
	public void execute(JobExecutionContext context) {
		this.materialiser.everybody();
	}

}
