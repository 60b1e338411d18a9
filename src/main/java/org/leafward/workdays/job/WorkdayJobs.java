package org.leafward.workdays.job;

import org.quartz.CronScheduleBuilder;
import org.quartz.Job;
import org.quartz.JobBuilder;
import org.quartz.JobDetail;
import org.quartz.SimpleScheduleBuilder;
import org.quartz.Trigger;
import org.quartz.TriggerBuilder;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/**
 * When the jobs of workdays run. The names are keys in the database: never reuse one for
 * another kind of trigger.
 */
@Configuration(proxyBeanMethods = false)
class WorkdayJobs {

	private static final int POST_SECONDS = 30;

	@Bean
	JobDetail workdaysPostJob() {
		return job(PostJob.class, "workdays-post");
	}

	@Bean
	Trigger workdaysPostTrigger(JobDetail workdaysPostJob) {
		return TriggerBuilder.newTrigger()
			.withIdentity("workdays-post-every-30-s")
			.forJob(workdaysPostJob)
			.withSchedule(SimpleScheduleBuilder.repeatSecondlyForever(POST_SECONDS)
				.withMisfireHandlingInstructionNextWithRemainingCount())
			.build();
	}

	@Bean
	JobDetail workdaysWatchJob() {
		return job(WatchJob.class, "workdays-watch");
	}

	@Bean
	Trigger workdaysWatchTrigger(JobDetail workdaysWatchJob) {
		return TriggerBuilder.newTrigger()
			.withIdentity("workdays-watch-06-and-18")
			.forJob(workdaysWatchJob)
			.withSchedule(
					CronScheduleBuilder.cronSchedule("0 0 6,18 * * ?").withMisfireHandlingInstructionFireAndProceed())
			.build();
	}

	private static JobDetail job(Class<? extends Job> type, String name) {
		return JobBuilder.newJob(type).withIdentity(name).storeDurably().requestRecovery().build();
	}

}
