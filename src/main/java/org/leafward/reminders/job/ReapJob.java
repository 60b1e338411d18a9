package org.leafward.reminders.job;

import org.leafward.reminders.dispatch.Dispatcher;
import org.quartz.DisallowConcurrentExecution;
import org.quartz.Job;
import org.quartz.JobExecutionContext;

/** Takes back claims of nodes that died. */
@DisallowConcurrentExecution
public class ReapJob implements Job {

	private final Dispatcher dispatcher;

	/**
	 * Creates the job.
	 * @param dispatcher does the work
	 */
	public ReapJob(Dispatcher dispatcher) {
		this.dispatcher = dispatcher;
	}

	@Override
	public void execute(JobExecutionContext context) {
		this.dispatcher.reap();
	}

}
