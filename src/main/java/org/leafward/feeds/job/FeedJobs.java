package org.leafward.feeds.job;

import org.quartz.JobBuilder;
import org.quartz.JobDetail;
import org.quartz.SimpleScheduleBuilder;
import org.quartz.Trigger;
import org.quartz.TriggerBuilder;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/**
 * When the job of the feeds runs. The names are keys in the database: never reuse one for
 * another kind of trigger.
 */
@Configuration(proxyBeanMethods = false)
class FeedJobs {

	@Bean
	JobDetail feedsRebuildStaleJob() {
		return JobBuilder.newJob(RebuildStaleJob.class).withIdentity("feeds-rebuild-stale").storeDurably().build();
	}

	@Bean
	Trigger feedsRebuildStaleTrigger(JobDetail feedsRebuildStaleJob) {
		return TriggerBuilder.newTrigger()
			.withIdentity("feeds-rebuild-stale-every-60-s")
			.forJob(feedsRebuildStaleJob)
			.withSchedule(SimpleScheduleBuilder.repeatSecondlyForever(60)
				.withMisfireHandlingInstructionNextWithRemainingCount())
			.build();
	}

}
