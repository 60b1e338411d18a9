package org.leafward.platform.events;

import java.time.Clock;
import java.time.Duration;
import java.time.ZoneOffset;
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
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.modulith.events.FailedEventPublications;
import org.springframework.modulith.events.ResubmissionOptions;

/**
 * Hands failed event publications to their listeners again, and those of a node that died
 * at work, from one node of the cluster at a time. After {@value #MOST_ATTEMPTS} attempts
 * a publication stays in the table for the operator to look at.
 */
@DisallowConcurrentExecution
public class EventCare implements Job {

	private static final int MOST_ATTEMPTS = 6;

	private static final Duration LEAST_AGE = Duration.ofSeconds(30);

	/** Longer than any listener takes: the longest works a queue off for five minutes. */
	private static final Duration STALE = Duration.ofMinutes(10);

	private final FailedEventPublications failed;

	private final JdbcClient database;

	private final Clock clock;

	/**
	 * Creates the job.
	 * @param failed the registry's view of what failed
	 * @param database where the publications are
	 * @param clock tells how old they are
	 */
	public EventCare(FailedEventPublications failed, JdbcClient database, Clock clock) {
		this.failed = failed;
		this.database = database;
		this.clock = clock;
	}

	@Override
	public void execute(JobExecutionContext context) {
		failStale();
		this.failed.resubmit(ResubmissionOptions.defaults()
			.withMinAge(LEAST_AGE)
			.withBatchSize(100)
			.withFilter((publication) -> publication.getCompletionAttempts() < MOST_ATTEMPTS));
	}

	/**
	 * What a killed node was at stays as it was for ever unless somebody calls it failed.
	 * The registry's own monitor needs Spring's scheduling, which is off here: jobs run
	 * in Quartz, on one node.
	 */
	private void failStale() {
		this.database.sql("""
				update events.event_publication set status = 'FAILED'
				where status in ('PUBLISHED', 'PROCESSING', 'RESUBMITTED')
					and coalesce(last_resubmission_date, publication_date) < ?
				""").param(this.clock.instant().minus(STALE).atOffset(ZoneOffset.UTC)).update();
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
