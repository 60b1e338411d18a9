package org.leafward.feeds.job;

import java.time.Duration;
import org.leafward.feeds.FeedDocuments;
import org.quartz.DisallowConcurrentExecution;
import org.quartz.Job;
import org.quartz.JobExecutionContext;

/** Builds what is stale, and everything once a day after midnight UTC. */
@DisallowConcurrentExecution
public class RebuildStaleJob implements Job {

	private static final Duration TIME_BOX = Duration.ofSeconds(50);

	private final FeedDocuments documents;

	/**
	 * Creates the job.
	 * @param documents what it calls
	 */
	public RebuildStaleJob(FeedDocuments documents) {
		this.documents = documents;
	}

	@Override
	public void execute(JobExecutionContext context) {
		this.documents.rebuildStale(TIME_BOX);
	}

}
