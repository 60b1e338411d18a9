package org.leafward.feeds.job;

import java.util.TimeZone;
import org.quartz.CronScheduleBuilder;
import org.quartz.JobBuilder;
import org.quartz.JobDetail;
import org.quartz.SimpleScheduleBuilder;
import org.quartz.Trigger;
import org.quartz.TriggerBuilder;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/**
 * When the jobs of the feeds run. The names are keys in the database: never reuse one for
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

	@Bean
	JobDetail feedsExpireJob() {
		return JobBuilder.newJob(ExpireJob.class).withIdentity("feeds-expire").storeDurably().build();
	}

	@Bean
	Trigger feedsExpireTrigger(JobDetail feedsExpireJob) {
		return TriggerBuilder.newTrigger()
			.withIdentity("feeds-expire-at-02-10-utc")
			.forJob(feedsExpireJob)
			.withSchedule(CronScheduleBuilder.dailyAtHourAndMinute(2, 10)
				.inTimeZone(TimeZone.getTimeZone("UTC"))
				.withMisfireHandlingInstructionFireAndProceed())
			.build();
	}

}
