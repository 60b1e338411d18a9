package org.leafward.climate.job;

import org.quartz.Job;
import org.quartz.JobBuilder;
import org.quartz.JobDetail;
import org.quartz.SimpleScheduleBuilder;
import org.quartz.Trigger;
import org.quartz.TriggerBuilder;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/**
 * When the jobs look for what is due; the times of each station stand in the database, so
 * that one that failed comes round after minutes, not hours. The names are keys in the
 * database: never reuse one for another kind of trigger.
 */
@Configuration(proxyBeanMethods = false)
class FetchSchedule {

	private static final int MINUTES = 5;

	@Bean
	JobDetail climateFetchObservationsJob() {
		return job("climate-fetch-observations", FetchObservationsJob.class);
	}

	@Bean
	Trigger climateFetchObservationsTrigger(JobDetail climateFetchObservationsJob) {
		return trigger("climate-fetch-observations-every-5-min", climateFetchObservationsJob);
	}

	@Bean
	JobDetail climateFetchForecastsJob() {
		return job("climate-fetch-forecasts", FetchForecastsJob.class);
	}

	@Bean
	Trigger climateFetchForecastsTrigger(JobDetail climateFetchForecastsJob) {
		return trigger("climate-fetch-forecasts-every-5-min", climateFetchForecastsJob);
	}

	private static JobDetail job(String name, Class<? extends Job> type) {
		return JobBuilder.newJob(type).withIdentity(name).storeDurably().build();
	}

	private static Trigger trigger(String name, JobDetail job) {
		return TriggerBuilder.newTrigger()
			.withIdentity(name)
			.forJob(job)
			.withSchedule(SimpleScheduleBuilder.repeatMinutelyForever(MINUTES)
				.withMisfireHandlingInstructionNextWithRemainingCount())
			.build();
	}

}
