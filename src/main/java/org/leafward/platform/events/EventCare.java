package org.leafward.platform.events;

import java.time.Duration;
import org.quartz.DisallowConcurrentExecution;
import org.quartz.Job;
import org.quartz.JobBuilder;
import org.quartz.JobDetail;
import org.quartz.JobExecutionContext;
import org.quartz.SimpleScheduleBuilder;
import org.quartz.Trigger;
import org.quartz.TriggerBuilder;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.modulith.events.FailedEventPublications;
import org.springframework.modulith.events.ResubmissionOptions;

/**
 * Hands failed event publications to their listeners again, from one node of the cluster
 * at a time. After {@value #MOST_ATTEMPTS} attempts a publication stays in the table for
 * the operator to look at.
 */
@DisallowConcurrentExecution
public class EventCare implements Job {

	private static final int MOST_ATTEMPTS = 6;

	private static final Duration LEAST_AGE = Duration.ofSeconds(30);

	private final FailedEventPublications failed;

	/**
	 * Creates the job.
	 * @param failed the registry's view of what failed
	 */
	public EventCare(FailedEventPublications failed) {
		this.failed = failed;
	}

	@Override
	public void execute(JobExecutionContext context) {
		this.failed.resubmit(ResubmissionOptions.defaults()
			.withMinAge(LEAST_AGE)
			.withBatchSize(100)
			.withFilter((publication) -> publication.getCompletionAttempts() < MOST_ATTEMPTS));
	}

	@Configuration(proxyBeanMethods = false)
	static class Schedule {

		@Bean
		JobDetail eventsResubmitJob() {
			return JobBuilder.newJob(EventCare.class).withIdentity("events-resubmit").storeDurably().build();
		}

		@Bean
		Trigger eventsResubmitTrigger(JobDetail eventsResubmitJob) {
			return TriggerBuilder.newTrigger()
				.withIdentity("events-resubmit-every-minute")
				.forJob(eventsResubmitJob)
				.withSchedule(SimpleScheduleBuilder.repeatMinutelyForever()
					.withMisfireHandlingInstructionNextWithRemainingCount())
				.build();
		}

	}

}
