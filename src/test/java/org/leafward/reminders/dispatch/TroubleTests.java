package org.leafward.reminders.dispatch;

import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.leafward.care.CareTask;
import org.leafward.reminders.Message;
import org.leafward.reminders.MessageState;
import org.leafward.reminders.ReminderState;
import org.leafward.reminders.RowFixture;
import org.leafward.reminders.ScriptedSmtp;
import org.leafward.reminders.TaskFixture;
import org.leafward.reminders.channel.mail.MailChannels;

import static org.assertj.core.api.Assertions.assertThat;
import static org.leafward.reminders.TaskFixture.ADA;
import static org.leafward.reminders.dispatch.DispatchFixture.DAY;
import static org.leafward.reminders.dispatch.DispatchFixture.DUE;

/** Mail servers that are away, busy or unwilling. */
class TroubleTests {

	private DispatchFixture house;

	@BeforeEach
	void open() {
		this.house = new DispatchFixture();
	}

	@AfterEach
	void close() {
		this.house.close();
	}

	private int run() {
		return this.house.node().dispatcher().run();
	}

	private Node nodeTo(ScriptedSmtp server) {
		return this.house.node(MailChannels.to(server.port(), this.house.source, this.house.clock));
	}

	@Test
	void aServerThatIsAwayIsAskedAgainAfterAWhile() {
		this.house.planned("one");
		this.house.stopMailServer();
		this.house.clock.set(DUE);
		assertThat(run()).isZero();
		assertThat(this.house.state("one")).isEqualTo(ReminderState.PENDING);
		assertThat(this.house.nextTry("one")).isEqualTo(DUE.plus(Duration.ofMinutes(5)));
		Message waiting = this.house.mails().get(0);
		assertThat(waiting.state()).isEqualTo(MessageState.WAITING);
		assertThat(waiting.serverReply()).containsIgnoringCase("refused");
		this.house.startMailServer();
		assertThat(run()).isZero();
		this.house.clock.set(DUE.plus(Duration.ofMinutes(5)));
		assertThat(run()).isOne();
		assertThat(this.house.receivedIds()).containsExactly(waiting.messageId());
		assertThat(this.house.mails()).singleElement().extracting(Message::state).isEqualTo(MessageState.SENT);
	}

	@Test
	void whenNobodyCanBeReachedOthersAreNotTried() {
		this.house.planned("one");
		this.house.garden.plan(TaskFixture.task("ben's", this.house.garden.person("ben", RowFixture.ZONE), DAY));
		this.house.node().materialiser().everybody();
		this.house.stopMailServer();
		this.house.clock.set(DUE);
		assertThat(run()).isZero();
		assertThat(this.house.mails()).extracting(Message::state).containsOnly(MessageState.WAITING);
		this.house.startMailServer();
		// Who was not tried goes at once; two may have been tried at the same time.
		int mails = run();
		this.house.clock.advance(Duration.ofMinutes(5));
		assertThat(mails + run()).isEqualTo(2);
		assertThat(this.house.received()).hasSize(2);
	}

	@Test
	void waitsGrowUntilTheReminderHasLostItsUse() {
		this.house.planned("one");
		this.house.stopMailServer();
		this.house.clock.set(DUE);
		int tries = 0;
		while (this.house.state("one") == ReminderState.PENDING && tries < 100) {
			this.house.clock.set(this.house.nextTry("one"));
			run();
			tries++;
		}
		// DUE + 5 min + 15 min + 1 h + 3 h + 6 h ... to 15 November 23:00 UTC.
		assertThat(tries).isEqualTo(5 + 14);
		assertThat(this.house.state("one")).isEqualTo(ReminderState.EXPIRED);
		assertThat(this.house.mails()).singleElement().extracting(Message::state).isEqualTo(MessageState.DROPPED);
		this.house.startMailServer();
		assertThat(run()).isZero();
		assertThat(this.house.clock.instant()).isBefore(Instant.parse("2026-11-15T23:00:00Z"));
	}

	/** RFC 5321 section 4.2.1: 4yz may be tried again, 5yz may not. */
	@Test
	void aRecipientWhoIsBusyIsTriedAgain() throws Exception {
		this.house.planned("one");
		this.house.clock.set(DUE);
		try (ScriptedSmtp server = new ScriptedSmtp().say("RCPT", "451 4.7.1 come back in a while")) {
			assertThat(nodeTo(server).dispatcher().run()).isZero();
			assertThat(this.house.state("one")).isEqualTo(ReminderState.PENDING);
			server.say("RCPT", "250 ok");
			this.house.clock.advance(Duration.ofMinutes(5));
			assertThat(nodeTo(server).dispatcher().run()).isOne();
			assertThat(server.messages()).hasSize(1);
		}
	}

	@Test
	void aRecipientWhoIsRefusedIsNotTriedAgain() throws Exception {
		this.house.planned("one");
		this.house.clock.set(DUE);
		try (ScriptedSmtp server = new ScriptedSmtp().say("RCPT", "550 5.1.1 no such person here")) {
			assertThat(nodeTo(server).dispatcher().run()).isZero();
			assertThat(this.house.state("one")).isEqualTo(ReminderState.FAILED);
			assertThat(this.house.mails()).singleElement().satisfies((mail) -> {
				assertThat(mail.state()).isEqualTo(MessageState.FAILED);
				assertThat(mail.serverReply()).contains("550 5.1.1 no such person here");
			});
			server.say("RCPT", "250 ok");
			this.house.clock.advance(Duration.ofDays(1));
			Node node = nodeTo(server);
			node.materialiser().everybody();
			assertThat(node.dispatcher().run()).isZero();
			assertThat(server.messages()).isEmpty();
		}
	}

	/** RFC 1047: whether it arrived can't be known, so the same mail goes again. */
	@Test
	void aConnectionLostAfterTheLastDotRepeatsTheSameMail() throws Exception {
		this.house.planned("one");
		this.house.clock.set(DUE);
		try (ScriptedSmtp server = new ScriptedSmtp().say("END", ScriptedSmtp.HANG_UP)) {
			assertThat(nodeTo(server).dispatcher().run()).isZero();
			server.say("END", "250 ok");
			this.house.clock.advance(Duration.ofMinutes(5));
			assertThat(nodeTo(server).dispatcher().run()).isOne();
			String id = "Message-ID: " + this.house.mails().get(0).messageId();
			assertThat(server.messages()).hasSize(2).allMatch((message) -> message.contains(id));
		}
	}

	@Test
	void withoutAMailServerTheMailIsKeptToBeRead() {
		CareTask task = this.house.planned("one");
		this.house.clock.set(DUE);
		assertThat(this.house.node(MailChannels.none(this.house.source)).dispatcher().run()).isOne();
		assertThat(this.house.state("one")).isEqualTo(ReminderState.KEPT);
		Message kept = this.house.mails().get(0);
		assertThat(kept.state()).isEqualTo(MessageState.KEPT);
		assertThat(kept.sentAt()).isNull();
		assertThat(kept.person()).isEqualTo(ADA);
		assertThat(kept.text()).contains(task.id().toString());
		assertThat(run()).as("a server set up later doesn't get old mails").isZero();
	}

	@Test
	void aWaitingMailWhoseTaskWentAwayIsDropped() {
		CareTask task = this.house.planned("one");
		this.house.stopMailServer();
		this.house.clock.set(DUE);
		run();
		this.house.garden.plan(TaskFixture.withdrawn(task));
		this.house.node().materialiser().everybody();
		assertThat(this.house.mails()).singleElement().extracting(Message::state).isEqualTo(MessageState.DROPPED);
		assertThat(this.house.state("one")).isEqualTo(ReminderState.WITHDRAWN);
	}

	@Test
	void aWaitingMailLeavesOutATaskThatWentAway() {
		this.house.planned("one");
		CareTask two = this.house.planned("two");
		this.house.stopMailServer();
		this.house.clock.set(DUE);
		run();
		assertThat(this.house.mails().get(0).text()).contains(": 2 plantings");
		this.house.garden.plan(TaskFixture.withdrawn(two));
		this.house.startMailServer();
		this.house.clock.advance(Duration.ofMinutes(5));
		assertThat(run()).isOne();
		assertThat(this.house.mails()).singleElement().satisfies((mail) -> {
			assertThat(mail.text()).startsWith("To do: ").doesNotContain(two.id().toString());
			assertThat(this.house.receivedIds()).containsExactly(mail.messageId());
		});
	}

}
