package org.leafward.counties.job;

import java.time.Duration;
import org.leafward.counties.CountyCalendars;
import org.quartz.DisallowConcurrentExecution;
import org.quartz.Job;
import org.quartz.JobExecutionContext;

/** Builds calendars of counties that are missing or stale, and all of them daily. */
@DisallowConcurrentExecution
public class BuildCalendarsJob implements Job {

	private static final Duration TIME_BOX = Duration.ofSeconds(50);

	private final CountyCalendars calendars;

	/**
	 * Creates the job.
	 * @param calendars what it calls
	 */
	public BuildCalendarsJob(CountyCalendars calendars) {
		this.calendars = calendars;
	}

	@Override
	public void execute(JobExecutionContext context) {
		this.calendars.rebuildStale(TIME_BOX);
	}

}
