package org.leafward.reminders.job;

import org.leafward.reminders.dispatch.Dispatcher;
import org.quartz.DisallowConcurrentExecution;
import org.quartz.Job;
import org.quartz.JobExecutionContext;

/** Sends what is due. */
@DisallowConcurrentExecution
public class DispatchJob implements Job {

	private final Dispatcher dispatcher;

	/**
	 * Creates the job.
	 * @param dispatcher does the work
	 */
	public DispatchJob(Dispatcher dispatcher) {
		this.dispatcher = dispatcher;
	}

	@Override
	public void execute(JobExecutionContext context) {
		this.dispatcher.run();
	}

}
