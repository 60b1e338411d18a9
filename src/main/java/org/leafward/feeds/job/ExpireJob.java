package org.leafward.feeds.job;

import org.leafward.feeds.FeedExpiry;
import org.quartz.DisallowConcurrentExecution;
import org.quartz.Job;
import org.quartz.JobExecutionContext;

/** Ends feeds that no program fetched for 18 months. */
@DisallowConcurrentExecution
public class ExpireJob implements Job {

	private final FeedExpiry expiry;

	/**
	 * Creates the job.
	 * @param expiry what it calls
	 */
	public ExpireJob(FeedExpiry expiry) {
		this.expiry = expiry;
	}

	@Override
	public void execute(JobExecutionContext context) {
		this.expiry.expire();
	}

}
