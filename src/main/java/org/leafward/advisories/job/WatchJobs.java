package org.leafward.advisories.job;

import java.util.TimeZone;
import org.quartz.CronScheduleBuilder;
import org.quartz.JobBuilder;
import org.quartz.JobDetail;
import org.quartz.Trigger;
import org.quartz.TriggerBuilder;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/**
 * When the watch looks. The names are keys in the database: never reuse one for another
 * kind of trigger.
 */
@Configuration(proxyBeanMethods = false)
class WatchJobs {

	@Bean
	JobDetail advisoriesProposeJob() {
		return JobBuilder.newJob(ProposeJob.class).withIdentity("advisories-propose").storeDurably().build();
	}

	/** After the forecasts of the hour, which come every five minutes. */
	@Bean
	Trigger advisoriesProposeTrigger(JobDetail advisoriesProposeJob) {
		return TriggerBuilder.newTrigger()
			.withIdentity("advisories-propose-hourly-at-17")
			.forJob(advisoriesProposeJob)
			.withSchedule(CronScheduleBuilder.cronSchedule("0 17 * * * ?")
				.inTimeZone(TimeZone.getTimeZone("UTC"))
				.withMisfireHandlingInstructionFireAndProceed())
			.build();
	}

}
