package org.leafward.reminders.job;

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
 * When the jobs run. Names are keys in the database: one that has been used is not used
 * again with another kind of trigger.
 */
@Configuration(proxyBeanMethods = false)
class ReminderSchedule {

	private static final int DISPATCH_SECONDS = 30;

	private static final int REAP_MINUTES = 5;

	@Bean
	JobDetail remindersDispatchJob() {
		return job("reminders-dispatch", DispatchJob.class);
	}

	@Bean
	Trigger remindersDispatchTrigger(JobDetail remindersDispatchJob) {
		return TriggerBuilder.newTrigger()
			.withIdentity("reminders-dispatch-every-30-s")
			.forJob(remindersDispatchJob)
			.withSchedule(SimpleScheduleBuilder.repeatSecondlyForever(DISPATCH_SECONDS)
				.withMisfireHandlingInstructionNextWithRemainingCount())
			.build();
	}

	@Bean
	JobDetail remindersReapJob() {
		return job("reminders-reap", ReapJob.class);
	}

	@Bean
	Trigger remindersReapTrigger(JobDetail remindersReapJob) {
		return TriggerBuilder.newTrigger()
			.withIdentity("reminders-reap-every-5-min")
			.forJob(remindersReapJob)
			.withSchedule(SimpleScheduleBuilder.repeatMinutelyForever(REAP_MINUTES)
				.withMisfireHandlingInstructionNextWithRemainingCount())
			.build();
	}

	@Bean
	JobDetail remindersMaterialiseJob() {
		return job("reminders-materialise", MaterialiseJob.class);
	}

	@Bean
	Trigger remindersMaterialiseTrigger(JobDetail remindersMaterialiseJob) {
		return TriggerBuilder.newTrigger()
			.withIdentity("reminders-materialise-daily")
			.forJob(remindersMaterialiseJob)
			.withSchedule(
					CronScheduleBuilder.dailyAtHourAndMinute(2, 10).withMisfireHandlingInstructionFireAndProceed())
			.build();
	}

	private static JobDetail job(String name, Class<? extends Job> type) {
		return JobBuilder.newJob(type).withIdentity(name).storeDurably().requestRecovery().build();
	}

}
