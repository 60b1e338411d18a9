package org.leafward.reminders.dispatch;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.leafward.accounts.PersonId;
import org.leafward.reminders.Message;
import org.leafward.reminders.ReminderState;
import org.leafward.reminders.RowFixture;
import org.leafward.reminders.TaskFixture;
import org.leafward.reminders.store.ClaimTable.Reaped;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.leafward.reminders.dispatch.DispatchFixture.DAY;
import static org.leafward.reminders.dispatch.DispatchFixture.DUE;

/** Nodes that die, nodes that start again and nodes that work at the same time. */
class RestartTests {

	private static final Duration PAST_THE_CLAIM = Node.CLAIM.plusMillis(1);

	private DispatchFixture house;

	@BeforeEach
	void open() {
		this.house = new DispatchFixture();
	}

	@AfterEach
	void close() {
		this.house.close();
	}

	/** Stops for ever inside the channel, as a killed process would: nothing follows. */
	private void die(Consumer<Message> before) throws InterruptedException {
		CountDownLatch dead = new CountDownLatch(1);
		MailLike channel = (mail) -> {
			before.accept(mail);
			dead.countDown();
			throw new ThreadDeath();
		};
		Thread process = new Thread(() -> this.house.node(channel).dispatcher().run());
		process.setDaemon(true);
		process.start();
		assertThat(dead.await(20, TimeUnit.SECONDS)).isTrue();
	}

	@Test
	void aNodeKilledBeforeTheMailLeftLosesNothing() throws Exception {
		this.house.planned("one");
		this.house.clock.set(DUE);
		die((mail) -> {
		});
		Node restarted = this.house.node();
		assertThat(restarted.dispatcher().reap()).isEqualTo(new Reaped(0, 0));
		assertThat(restarted.dispatcher().run()).isZero();
		this.house.clock.advance(PAST_THE_CLAIM);
		assertThat(restarted.dispatcher().reap()).isEqualTo(new Reaped(1, 1));
		assertThat(restarted.dispatcher().run()).isOne();
		assertThat(restarted.dispatcher().run()).isZero();
		assertThat(this.house.receivedIds()).hasSize(1);
		assertThat(this.house.mails()).hasSize(1);
	}

	/**
	 * RFC 1047: this one can't be told from a loss; RFC 5322 section 3.6.4: same
	 * identifier.
	 */
	@Test
	void aNodeKilledAfterTheMailLeftRepeatsItUnderTheSameMessageId() throws Exception {
		this.house.planned("one");
		this.house.clock.set(DUE);
		die((mail) -> this.house.smtp().deliver(mail));
		this.house.clock.advance(PAST_THE_CLAIM);
		Node restarted = this.house.node();
		restarted.dispatcher().reap();
		assertThat(restarted.dispatcher().run()).isOne();
		assertThat(this.house.receivedIds()).hasSize(2).containsOnly(this.house.mails().get(0).messageId());
		assertThat(this.house.mails()).hasSize(1);
		assertThat(restarted.dispatcher().run()).isZero();
	}

	@Test
	void aNodeThatComesBackLateDoesNotUndoWhatAnotherDid() {
		this.house.planned("one");
		this.house.clock.set(DUE);
		MailLike slow = (mail) -> {
			this.house.clock.advance(PAST_THE_CLAIM);
			Node other = this.house.node();
			other.dispatcher().reap();
			other.dispatcher().run();
			return this.house.smtp().deliver(mail);
		};
		this.house.node(slow).dispatcher().run();
		assertThat(this.house.state("one")).isEqualTo(ReminderState.SENT);
		assertThat(this.house.mails()).hasSize(1);
		assertThat(Set.copyOf(this.house.receivedIds())).hasSize(1);
		assertThat(this.house.node().dispatcher().run()).isZero();
	}

	@Test
	void twoNodesAtTheSameTimeSendOneMailToEachPerson() throws Exception {
		int persons = 30;
		for (int number = 0; number < persons; number++) {
			PersonId person = this.house.garden.person("p" + number, RowFixture.ZONE);
			for (int task = 0; task < 3; task++) {
				this.house.garden.plan(TaskFixture.task("task " + task + " of " + number, person, DAY));
			}
		}
		this.house.node().materialiser().everybody();
		this.house.clock.set(DUE);
		CyclicBarrier together = new CyclicBarrier(2);
		Callable<Integer> work = () -> {
			Node node = this.house.node();
			together.await();
			return node.dispatcher().run();
		};
		ExecutorService threads = Executors.newFixedThreadPool(2);
		int mails = 0;
		try {
			List<Future<Integer>> both = List.of(threads.submit(work), threads.submit(work));
			for (Future<Integer> one : both) {
				mails += one.get();
			}
		}
		finally {
			threads.shutdown();
		}
		// What one node had to leave because the other was looking at it.
		mails += this.house.node().dispatcher().run();
		assertThat(mails).isEqualTo(persons);
		Set<String> recipients = new TreeSet<>();
		for (Message mail : this.house.mails()) {
			recipients.add(mail.recipient());
			assertThat(mail.text()).startsWith("To do: ").contains(": 3 plantings");
		}
		assertThat(recipients).hasSize(persons);
		assertThat(new TreeSet<>(this.house.receivedIds())).hasSize(persons);
		assertThat(this.house.receivedIds()).hasSize(persons);
	}

	@Test
	void twoNodesAtTheSameTimeMakeEachReminderOnce() throws Exception {
		for (int task = 0; task < 20; task++) {
			this.house.garden.plan(TaskFixture.task("task " + task, DAY));
		}
		CyclicBarrier together = new CyclicBarrier(2);
		ExecutorService threads = Executors.newFixedThreadPool(2);
		try {
			List<Future<Boolean>> both = new ArrayList<>();
			for (int thread = 0; thread < 2; thread++) {
				Node node = this.house.node();
				both.add(threads.submit(() -> {
					together.await();
					node.materialiser().person(TaskFixture.ADA);
					return true;
				}));
			}
			for (Future<Boolean> one : both) {
				assertThat(one.get()).isTrue();
			}
		}
		finally {
			threads.shutdown();
		}
		assertThat(this.house.database.sql("select count(*) from reminders.reminder where state = 'PENDING'")
			.query(Integer.class)
			.single()).isEqualTo(20);
	}

}
