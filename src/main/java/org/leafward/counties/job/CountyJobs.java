package org.leafward.counties.job;

import org.quartz.Job;
import org.quartz.JobBuilder;
import org.quartz.JobDetail;
import org.quartz.SimpleScheduleBuilder;
import org.quartz.Trigger;
import org.quartz.TriggerBuilder;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/**
 * When the jobs of the counties run. The names are keys in the database: never reuse one
 * for another kind of trigger.
 */
@Configuration(proxyBeanMethods = false)
class CountyJobs {

	private static final int TEN_MINUTES = 600;

	@Bean
	JobDetail countiesTendJob() {
		return job(TendGardensJob.class, "counties-tend");
	}

	@Bean
	Trigger countiesTendTrigger(JobDetail countiesTendJob) {
		return every(countiesTendJob, TEN_MINUTES, "counties-tend-every-10-min");
	}

	@Bean
	JobDetail countiesBuildJob() {
		return job(BuildCalendarsJob.class, "counties-build");
	}

	@Bean
	Trigger countiesBuildTrigger(JobDetail countiesBuildJob) {
		return every(countiesBuildJob, 60, "counties-build-every-60-s");
	}

	private static JobDetail job(Class<? extends Job> type, String name) {
		return JobBuilder.newJob(type).withIdentity(name).storeDurably().build();
	}

	private static Trigger every(JobDetail job, int seconds, String name) {
		return TriggerBuilder.newTrigger()
			.withIdentity(name)
			.forJob(job)
			.withSchedule(SimpleScheduleBuilder.repeatSecondlyForever(seconds)
				.withMisfireHandlingInstructionNextWithRemainingCount())
			.build();
	}

}
