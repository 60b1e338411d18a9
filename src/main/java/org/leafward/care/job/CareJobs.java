package org.leafward.care.job;

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
 * When the jobs of care run. The names are keys in the database: never reuse one for
 * another kind of trigger.
 */
@Configuration(proxyBeanMethods = false)
class CareJobs {

	@Bean
	JobDetail careReplanJob() {
		return JobBuilder.newJob(ReplanJob.class).withIdentity("care-replan").storeDurably().build();
	}

	@Bean
	Trigger careReplanTrigger(JobDetail careReplanJob) {
		return TriggerBuilder.newTrigger()
			.withIdentity("care-replan-every-30-s")
			.forJob(careReplanJob)
			.withSchedule(SimpleScheduleBuilder.repeatSecondlyForever(30)
				.withMisfireHandlingInstructionNextWithRemainingCount())
			.build();
	}

	@Bean
	JobDetail careWeatherJob() {
		return JobBuilder.newJob(DayTurnJob.class).withIdentity("care-weather").storeDurably().build();
	}

	/** Some minutes past the hour, when it is past midnight somewhere. */
	@Bean
	Trigger careWeatherTrigger(JobDetail careWeatherJob) {
		return TriggerBuilder.newTrigger()
			.withIdentity("care-weather-hourly-at-4")
			.forJob(careWeatherJob)
			.withSchedule(CronScheduleBuilder.cronSchedule("0 4 * * * ?")
				.inTimeZone(TimeZone.getTimeZone("UTC"))
				.withMisfireHandlingInstructionFireAndProceed())
			.build();
	}

	@Bean
	JobDetail careNightlyJob() {
		return JobBuilder.newJob(NightlyReplanJob.class).withIdentity("care-nightly").storeDurably().build();
	}

	@Bean
	Trigger careNightlyTrigger(JobDetail careNightlyJob) {
		return TriggerBuilder.newTrigger()
			.withIdentity("care-nightly-at-3")
			.forJob(careNightlyJob)
			.withSchedule(CronScheduleBuilder.dailyAtHourAndMinute(3, 0)
				.inTimeZone(TimeZone.getTimeZone("UTC"))
				.withMisfireHandlingInstructionFireAndProceed())
			.build();
	}

}
