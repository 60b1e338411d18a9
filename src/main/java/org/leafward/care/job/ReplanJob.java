package org.leafward.care.job;

import java.time.Duration;
import org.leafward.care.Replanning;
import org.quartz.DisallowConcurrentExecution;
import org.quartz.Job;
import org.quartz.JobExecutionContext;

/** Works off what is left in the queue of sites. */
@DisallowConcurrentExecution
public class ReplanJob implements Job {

	private static final Duration TIME_BOX = Duration.ofSeconds(25);

	private final Replanning replanning;

	/**
	 * Creates the job.
	 * @param replanning what it calls
	 */
	public ReplanJob(Replanning replanning) {
		this.replanning = replanning;
	}

	@Override
	public void execute(JobExecutionContext context) {
		this.replanning.drain(TIME_BOX);
	}

}
