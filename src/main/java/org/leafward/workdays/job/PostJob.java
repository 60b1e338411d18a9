package org.leafward.workdays.job;

import java.time.Duration;
import org.leafward.workdays.PostRound;
import org.quartz.DisallowConcurrentExecution;
import org.quartz.Job;
import org.quartz.JobExecutionContext;

/** Hands mails about workdays on. */
@DisallowConcurrentExecution
public class PostJob implements Job {

	private static final Duration TIME_BOX = Duration.ofSeconds(25);

	private final PostRound round;

	/**
	 * Creates the job.
	 * @param round what it calls
	 */
	public PostJob(PostRound round) {
		this.round = round;
	}

	@Override
	public void execute(JobExecutionContext context) {
		this.round.send(TIME_BOX);
	}

}
