package org.leafward.reminders.job;

import java.time.Duration;
import org.quartz.CronScheduleBuilder;
import org.quartz.DateBuilder;
import org.quartz.Job;
import org.quartz.JobBuilder;
import org.quartz.JobDetail;
import org.quartz.SimpleScheduleBuilder;
import org.quartz.Trigger;
import org.quartz.TriggerBuilder;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/**
 * When the jobs run. Names are keys in the database: one that has been used is not used
 * again with another kind of trigger.
 */
@Configuration(proxyBeanMethods = false)
class ReminderSchedule {

	private final Duration dispatchEvery;

	private final Duration reapEvery;

	ReminderSchedule(@Value("${leafward.reminders.dispatch-every:30s}") Duration dispatchEvery,
			@Value("${leafward.reminders.reap-every:5m}") Duration reapEvery) {
		this.dispatchEvery = dispatchEvery;
		this.reapEvery = reapEvery;
	}

	@Bean
	JobDetail remindersDispatchJob() {
		return job("reminders-dispatch", DispatchJob.class);
	}

	@Bean
	Trigger remindersDispatchTrigger(JobDetail remindersDispatchJob) {
		return TriggerBuilder.newTrigger()
			.withIdentity("reminders-dispatch-every-30-s")
			.forJob(remindersDispatchJob)
			.withSchedule(every(this.dispatchEvery).withMisfireHandlingInstructionNextWithRemainingCount())
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
			.withSchedule(every(this.reapEvery).withMisfireHandlingInstructionNextWithRemainingCount())
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

	@Bean
	JobDetail remindersPurgeJob() {
		return job("reminders-purge", PurgeJob.class);
	}

	@Bean
	Trigger remindersPurgeTrigger(JobDetail remindersPurgeJob) {
		return TriggerBuilder.newTrigger()
			.withIdentity("reminders-purge-weekly")
			.forJob(remindersPurgeJob)
			.withSchedule(CronScheduleBuilder.weeklyOnDayAndHourAndMinute(DateBuilder.SUNDAY, 3, 40)
				.withMisfireHandlingInstructionFireAndProceed())
			.build();
	}

	@Bean
	JobDetail remindersAnswersJob() {
		return job("reminders-answers", AnswersJob.class);
	}

	@Bean
	Trigger remindersAnswersTrigger(JobDetail remindersAnswersJob) {
		return TriggerBuilder.newTrigger()
			.withIdentity("reminders-answers-every-2-min")
			.forJob(remindersAnswersJob)
			.withSchedule(every(Duration.ofMinutes(2)).withMisfireHandlingInstructionNextWithRemainingCount())
			.build();
	}

	@Bean
	JobDetail remindersAdvisoriesJob() {
		return job("reminders-advisories", AdvisoriesJob.class);
	}

	@Bean
	Trigger remindersAdvisoriesTrigger(JobDetail remindersAdvisoriesJob) {
		return TriggerBuilder.newTrigger()
			.withIdentity("reminders-advisories-every-10-s")
			.forJob(remindersAdvisoriesJob)
			.withSchedule(every(Duration.ofSeconds(10)).withMisfireHandlingInstructionNextWithRemainingCount())
			.build();
	}

	private static SimpleScheduleBuilder every(Duration interval) {
		return SimpleScheduleBuilder.simpleSchedule().withIntervalInMilliseconds(interval.toMillis()).repeatForever();
	}

	private static JobDetail job(String name, Class<? extends Job> type) {
		return JobBuilder.newJob(type).withIdentity(name).storeDurably().requestRecovery().build();
	}

}
