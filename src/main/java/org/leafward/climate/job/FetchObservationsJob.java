package org.leafward.climate.job;

import java.time.Duration;
import org.leafward.climate.fetch.Fetcher;
import org.quartz.DisallowConcurrentExecution;
import org.quartz.Job;
import org.quartz.JobExecutionContext;

/** Fetches the observations that are due. */
@DisallowConcurrentExecution
public class FetchObservationsJob implements Job {

	private static final Duration TIME_BOX = Duration.ofMinutes(2);

	private final Fetcher fetcher;

	/**
	 * Creates the job.
	 * @param fetcher what it calls
	 */
	public FetchObservationsJob(Fetcher fetcher) {
		this.fetcher = fetcher;
	}

	@Override
	public void execute(JobExecutionContext context) {
		this.fetcher.observations(TIME_BOX);
	}

}
