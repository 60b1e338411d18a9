package org.leafward.reminders;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.leafward.accounts.AuditLog;
import org.leafward.accounts.People;
import org.leafward.accounts.Person;
import org.leafward.advisories.Advisories;
import org.leafward.care.CareLog;
import org.leafward.care.CareTask;
import org.leafward.care.PlanChanged;
import org.leafward.care.TaskCalendar;
import org.leafward.care.TaskStates;
import org.leafward.pages.Viewers;
import org.leafward.register.Register;
import org.leafward.reminders.dispatch.Dispatcher;
import org.leafward.support.SettableClock;
import org.leafward.support.TestDatabase;
import org.quartz.Scheduler;
import org.quartz.TriggerKey;
import org.quartz.impl.matchers.GroupMatcher;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.context.TestConfiguration;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Primary;
import org.springframework.modulith.test.EnableScenarios;
import org.springframework.modulith.test.Scenario;
import org.springframework.test.context.ContextConfiguration;
import org.springframework.test.context.bean.override.mockito.MockitoBean;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.leafward.reminders.TaskFixture.ADA;
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.ArgumentMatchers.anyCollection;
import static org.mockito.Mockito.when;

/** The module as Spring wires it, with what it asks of others stood in for. */
@SpringBootTest(properties = "spring.quartz.auto-startup=false")
@EnableScenarios
@ContextConfiguration(initializers = TestDatabase.class)
class RemindersModuleTests {

	private static final LocalDate DAY = LocalDate.parse("2026-11-12");

	@MockitoBean
	private Advisories advisories;

	@MockitoBean
	private TaskCalendar calendar;

	@MockitoBean
	private People people;

	@MockitoBean
	private AuditLog audit;

	@MockitoBean
	private Viewers viewers;

	@MockitoBean
	private CareLog log;

	@MockitoBean
	private TaskStates states;

	@MockitoBean
	private Register register;

	@Autowired
	private Reminders reminders;

	@Autowired
	private Outbox outbox;

	@Autowired
	private Dispatcher dispatcher;

	@Autowired
	private SettableClock clock;

	@Autowired
	private Scheduler scheduler;

	@TestConfiguration
	static class Time {

		@Bean
		@Primary
		SettableClock settableClock() {
			return new SettableClock(Instant.parse("2026-11-10T06:00:00Z"));
		}

	}

	@Test
	void aChangeOfThePlanBecomesAReminderAndAMail(Scenario scenario) {
		CareTask task = TaskFixture.task("one", DAY);
		when(this.people.find(anyCollection()))
			.thenReturn(Map.of(ADA, new Person(ADA, "Ada", "ada@example.org", ZoneId.of("Europe/Berlin"))));
		when(this.calendar.beginning(any(), any(), any())).thenReturn(List.of(Garden.beginning(task)));
		when(this.calendar.find(anyCollection())).thenReturn(Map.of(task.id(), task));
		scenario.publish(new PlanChanged(task.site().value(), ADA.value(), 1, 0, 0, this.clock.instant()))
			.andWaitForStateChange(() -> this.reminders.upcoming(ADA, 10), (found) -> !found.isEmpty())
			.andVerify((found) -> assertThat(found).extracting(Reminder::topic, Reminder::task, Reminder::dueAt)
				.containsExactly(tuple(Topic.TO_DO, task.id(), Instant.parse("2026-11-12T06:00:00Z")),
						tuple(Topic.OUTLOOK, null, Instant.parse("2026-11-16T06:00:00Z")),
						tuple(Topic.OUTLOOK, null, Instant.parse("2026-11-23T06:00:00Z"))));
		// Mornings are spread over ten minutes.
		this.clock.set(Instant.parse("2026-11-12T06:10:00Z"));
		// No mail server is configured here.
		assertThat(this.dispatcher.run()).isOne();
		assertThat(this.dispatcher.run()).isZero();
		assertThat(this.outbox.ofPerson(ADA, 0, 10).mails()).singleElement()
			.extracting(Message::state, Message::sender)
			.containsExactly(MessageState.KEPT, "Leafward <reminders@localhost>");
	}

	@Test
	void itsJobsAreInTheScheduler() throws Exception {
		List<String> triggers = new ArrayList<>();
		for (TriggerKey key : this.scheduler.getTriggerKeys(GroupMatcher.anyGroup())) {
			triggers.add(key.getName());
		}
		assertThat(triggers).contains("reminders-dispatch-every-30-s", "reminders-reap-every-5-min",
				"reminders-materialise-daily", "reminders-purge-weekly");
	}

}
