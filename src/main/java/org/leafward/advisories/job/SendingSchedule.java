package org.leafward.advisories.job;

import org.quartz.JobBuilder;
import org.quartz.JobDetail;
import org.quartz.SimpleScheduleBuilder;
import org.quartz.Trigger;
import org.quartz.TriggerBuilder;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** When advisories go out that were written ahead. The names are keys in the database. */
@Configuration(proxyBeanMethods = false)
class SendingSchedule {

	@Bean
	JobDetail advisoriesSendJob() {
		return JobBuilder.newJob(SendDueJob.class).withIdentity("advisories-send").storeDurably().build();
	}

	@Bean
	Trigger advisoriesSendTrigger(JobDetail advisoriesSendJob) {
		return TriggerBuilder.newTrigger()
			.withIdentity("advisories-send-every-30-s")
			.forJob(advisoriesSendJob)
			.withSchedule(SimpleScheduleBuilder.repeatSecondlyForever(30)
				.withMisfireHandlingInstructionNextWithRemainingCount())
			.build();
	}

}
