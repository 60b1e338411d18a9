package org.leafward.workdays.job;

import org.leafward.workdays.WeatherWatch;
import org.quartz.DisallowConcurrentExecution;
import org.quartz.Job;
import org.quartz.JobExecutionContext;

/** Looks at the weather of the workdays that are near. */
@DisallowConcurrentExecution
public class WatchJob implements Job {

	private final WeatherWatch watch;

	/**
	 * Creates the job.
	 * @param watch what it calls
	 */
	public WatchJob(WeatherWatch watch) {
		this.watch = watch;
	}

	@Override
	public void execute(JobExecutionContext context) {
		this.watch.look();
	}

}
