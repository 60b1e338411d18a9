package org.leafward.reminders.channel.mail;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import com.zaxxer.hikari.HikariDataSource;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.leafward.reminders.ScriptedSmtp;
import org.leafward.reminders.SenderFixture;
import org.leafward.reminders.channel.Delivery;
import org.leafward.reminders.channel.Delivery.Outcome;
import org.leafward.support.SettableClock;
import org.leafward.support.TestDatabase;

/** How many connections a mail server sees, and which mails come by them. */
@Timeout(60)
class SmtpLinesTests {

	private static final Delivery TAKEN = Delivery.of(Outcome.TAKEN);

	private static HikariDataSource source;

	private final SettableClock clock = new SettableClock(MailChannels.MADE);

	private ScriptedSmtp server;

	private SmtpLines lines;

	private MailChannel channel;

	@BeforeAll
	static void database() {
		source = TestDatabase.fresh();
	}

	@AfterAll
	static void closeDatabase() {
		source.close();
	}

	@BeforeEach
	void open() throws Exception {
		this.server = new ScriptedSmtp();
		this.lines = new SmtpLines(SenderFixture.to(this.server.port()), 2, this.clock);
		this.channel = MailChannels.channel(this.lines, source, MailChannels.PLAIN, "https://plants.example.org");
	}

	@AfterEach
	void close() throws Exception {
		this.lines.destroy();
		this.server.close();
	}

	private Delivery send(int number) {
		return this.channel.deliver(MailChannels.mail(String.valueOf(number), "ada@example.org"));
	}

	private void sendAll(int from, int to) {
		for (int number = from; number < to; number++) {
			assertThat(send(number)).isEqualTo(TAKEN);
		}
	}

	@Test
	void aConnectionIsUsedForTheNextMail() {
		sendAll(0, 10);
		assertThat(this.server.connections()).isOne();
		assertThat(this.server.messages()).hasSize(10);
		// Each mail has a transaction of its own.
		assertThat(this.server.commands().stream().filter((one) -> one.startsWith("MAIL FROM:"))).hasSize(10);
	}

	@Test
	void aConnectionCarriesAHundredMails() {
		sendAll(0, 201);
		assertThat(this.server.connections()).isEqualTo(3);
		assertThat(this.server.commands().stream().filter("QUIT"::equals)).hasSize(2);
	}

	@Test
	void aConnectionLivesForAMinute() {
		sendAll(0, 2);
		this.clock.advance(Duration.ofSeconds(59));
		sendAll(2, 3);
		assertThat(this.server.connections()).isOne();
		this.clock.advance(Duration.ofSeconds(1));
		sendAll(3, 4);
		assertThat(this.server.connections()).isEqualTo(2);
		assertThat(this.server.commands()).contains("QUIT");
	}

	@Test
	void oldConnectionsAreClosedThoughNobodySends() {
		sendAll(0, 1);
		this.lines.tidy();
		assertThat(this.server.commands()).doesNotContain("QUIT");
		this.clock.advance(Duration.ofSeconds(60));
		this.lines.tidy();
		assertThat(this.server.commands()).endsWith("QUIT");
	}

	@Test
	void thereAreNoMoreConnectionsThanAllowed() throws Exception {
		ExecutorService threads = Executors.newFixedThreadPool(6);
		try {
			List<Future<Delivery>> sent = new ArrayList<>();
			for (int number = 0; number < 300; number++) {
				int name = number;
				sent.add(threads.submit(() -> send(name)));
			}
			for (Future<Delivery> one : sent) {
				assertThat(one.get()).isEqualTo(TAKEN);
			}
		}
		finally {
			threads.shutdownNow();
		}
		assertThat(this.server.mostConnections()).isLessThanOrEqualTo(4);
		assertThat(this.server.connections()).isBetween(3, 8);
		assertThat(this.server.messages()).hasSize(300);
		assertThat(this.server.messages().stream().map((one) -> one.replaceAll("(?s).*Message-ID: (\\S+).*", "$1")))
			.doesNotHaveDuplicates();
	}

	@Test
	void aConnectionThatWasClosedMeanwhileIsReplaced() throws Exception {
		sendAll(0, 1);
		this.server.hangUp();
		sendAll(1, 2);
		assertThat(this.server.connections()).isEqualTo(2);
		assertThat(this.server.messages()).hasSize(2);
	}

	/**
	 * RFC 5321 section 3.8: a server that has waited too long says 421 to the next
	 * command.
	 */
	@Test
	void a421OfAnOldConnectionIsNoAnswerToTheMail() {
		sendAll(0, 1);
		this.server.say("MAIL", "421 4.4.2 idle for too long" + ScriptedSmtp.HANG_UP);
		Delivery both = send(1);
		// Said to the new connection as well, it is one.
		assertThat(both.outcome()).isEqualTo(Outcome.LATER);
		assertThat(this.server.connections()).isEqualTo(2);
		this.server.willing("MAIL");
		sendAll(2, 3);
		assertThat(this.server.connections()).isEqualTo(3);
		assertThat(this.server.messages()).hasSize(2);
	}

	/** Nothing is sent twice that may have been taken. */
	@ParameterizedTest
	@ValueSource(strings = { ScriptedSmtp.HANG_UP, "421 4.3.2 closing" + ScriptedSmtp.HANG_UP })
	void aMailThatWasHandedOnIsNotSentAgainByAnotherConnection(String end) {
		sendAll(0, 1);
		this.server.say("END", end);
		assertThat(send(1).outcome()).isEqualTo(end.startsWith("421") ? Outcome.LATER : Outcome.UNCERTAIN);
		assertThat(this.server.connections()).isOne();
		assertThat(this.server.messages()).hasSize(2);
	}

	/** RFC 5321 section 4.1.1.5: RSET, and the connection is as good as before. */
	@ParameterizedTest
	@CsvSource(delimiter = '|', value = { "MAIL|550 5.7.1 no", "RCPT|550 5.7.1 no", "RCPT|450 4.2.1 busy",
			"DATA|554 5.5.1 no", "END|554 5.6.0 no" })
	void aRefusalDoesNotEndTheConnection(String step, String reply) {
		this.server.say(step, reply);
		assertThat(send(0).outcome()).isNotEqualTo(Outcome.TAKEN);
		this.server.willing(step);
		sendAll(1, 3);
		assertThat(this.server.connections()).isOne();
		assertThat(this.server.commands()).contains("RSET");
	}

	@Test
	void nothingIsKeptAfterTheEnd() {
		this.lines.destroy();
		sendAll(0, 2);
		assertThat(this.server.connections()).isEqualTo(2);
		assertThat(this.server.commands().stream().filter("QUIT"::equals)).hasSize(2);
	}

	@ParameterizedTest
	@ValueSource(ints = { 0, -1, 51 })
	void theNumberOfConnectionsHasBounds(int most) {
		assertThatIllegalArgumentException().isThrownBy(() -> new SmtpLines(SenderFixture.none(), most, this.clock))
			.withMessageContaining("leafward.mail.connections");
	}

	@Test
	void tryingOutSaysWhetherThereIsAServer() throws Exception {
		assertThat(this.lines.tryOut()).isNull();
		this.server.close();
		assertThat(this.lines.tryOut()).isNotNull();
	}

}
