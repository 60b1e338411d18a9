package org.leafward.reminders.channel.mail;

import static org.assertj.core.api.Assertions.assertThat;

import com.zaxxer.hikari.HikariDataSource;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leafward.reminders.Message;
import org.leafward.reminders.ScriptedSmtp;
import org.leafward.reminders.SenderFixture;
import org.leafward.reminders.Suppressed;
import org.leafward.reminders.channel.Delivery;
import org.leafward.reminders.channel.Delivery.Outcome;
import org.leafward.reminders.store.SuppressionTable;
import org.leafward.support.SettableClock;
import org.leafward.support.TestDatabase;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.mail.javamail.JavaMailSenderImpl;

class SmtpTroubleTests {

	private static final Message MAIL = MailChannels.mail("1", "ada@example.org");

	private static final SettableClock CLOCK = new SettableClock(MailChannels.MADE);

	private static HikariDataSource source;

	private static SuppressionTable suppressed;

	@BeforeAll
	static void database() {
		source = TestDatabase.fresh();
		suppressed = new SuppressionTable(JdbcClient.create(source), CLOCK);
	}

	@AfterAll
	static void close() {
		source.close();
	}

	@AfterEach
	void lift() {
		suppressed.lift("ada@example.org");
	}

	private static Delivery deliver(int port) {
		return MailChannels.to(port, source, CLOCK).deliver(MAIL);
	}

	/**
	 * RFC 5321 section 4.2.1: replies 4yz pass, 5yz stay; section 3.1 and 3.8: a greeting
	 * of 421 or 554 is no session at all. Enhanced codes from RFC 3463 and 5248.
	 */
	@ParameterizedTest
	@CsvSource(delimiter = '|',
			value = { "RCPT|550 5.1.1 no such person here|REFUSED|true", "RCPT|550 no such person here|REFUSED|true",
					"RCPT|552 5.2.2 mailbox full|REFUSED|false", "RCPT|550 5.7.1 not from you|OUR_FAULT|false",
					"RCPT|554 no|OUR_FAULT|false", "RCPT|450 4.2.1 mailbox is busy|LATER|false",
					"RCPT|451 4.7.1 come back in a while|LATER|false", "RCPT|452 4.2.2 full|LATER|false",
					"RCPT|421 4.7.0 too much|LATER|false", "MAIL|550 5.7.1 not from you|OUR_FAULT|false",
					"MAIL|550 5.1.1 who are you|OUR_FAULT|false", "MAIL|553 no such sender|OUR_FAULT|false",
					"MAIL|451 4.3.0 not now|LATER|false", "MAIL|421 4.7.0 too much|LATER|false",
					"MAIL|530 5.7.0 Must issue a STARTTLS command first|UNREACHABLE|false",
					"DATA|554 5.6.0 no|OUR_FAULT|false", "DATA|550 no|OUR_FAULT|false",
					"DATA|451 4.3.0 not now|LATER|false", "END|554 5.7.1 not such words|OUR_FAULT|false",
					"END|550 not such words|OUR_FAULT|false", "END|550 5.1.10 RecipientNotFound|REFUSED|true",
					"END|552 5.2.2 mailbox full|REFUSED|false", "END|451 4.3.2 disk full|LATER|false",
					"GREETING|421 4.3.2 closing|UNREACHABLE|false", "GREETING|554 5.3.2 no service|UNREACHABLE|false" })
	void goesByDigitCodeAndStep(String step, String reply, Outcome outcome, boolean nobody) throws Exception {
		try (ScriptedSmtp server = new ScriptedSmtp().say(step, reply)) {
			Delivery delivery = deliver(server.port());
			assertThat(delivery.outcome()).isEqualTo(outcome);
			assertThat(delivery.reason()).contains(reply);
			assertThat(suppressed.find(List.of("ada@example.org"))).hasSize(nobody ? 1 : 0);
		}
	}

	/** RFC 5321 section 3.8: a server may end the connection after any reply. */
	@ParameterizedTest
	@CsvSource(delimiter = '|',
			value = { "RCPT|550 5.1.1 no such person here|REFUSED", "MAIL|421 4.7.0 too much|LATER",
					"RCPT|421 4.7.0 too much|LATER", "DATA|554 5.7.1 no|OUR_FAULT", "END|554 5.7.1 no|OUR_FAULT",
					"END|421 4.3.2 closing|LATER" })
	void whatWasSaidCountsThoughTheServerHangsUp(String step, String reply, Outcome outcome) throws Exception {
		try (ScriptedSmtp server = new ScriptedSmtp().say(step, reply + ScriptedSmtp.HANG_UP)) {
			Delivery delivery = deliver(server.port());
			assertThat(delivery.outcome()).isEqualTo(outcome);
			assertThat(delivery.reason()).contains(reply);
		}
	}

	/** RFC 1047: only after the last dot nobody knows what came of the mail. */
	@ParameterizedTest
	@CsvSource({ "GREETING,UNREACHABLE", "EHLO,UNREACHABLE", "MAIL,UNREACHABLE", "RCPT,LATER", "DATA,LATER",
			"END,UNCERTAIN" })
	void aLostConnectionIsJudgedByHowFarTheMailGot(String step, Outcome outcome) throws Exception {
		try (ScriptedSmtp server = new ScriptedSmtp().say(step, ScriptedSmtp.HANG_UP)) {
			assertThat(deliver(server.port()).outcome()).isEqualTo(outcome);
			assertThat(server.messages()).hasSize(step.equals("END") ? 1 : 0);
			assertThat(suppressed.find(List.of("ada@example.org"))).isEmpty();
		}
	}

	/** RFC 1047: whoever gets both copies can tell by the name that they are one. */
	@Test
	void aMailWithoutWordHasTheSameNameEachTime() throws Exception {
		try (ScriptedSmtp server = new ScriptedSmtp().say("END", ScriptedSmtp.HANG_UP)) {
			assertThat(deliver(server.port()).outcome()).isEqualTo(Outcome.UNCERTAIN);
			assertThat(deliver(server.port()).outcome()).isEqualTo(Outcome.UNCERTAIN);
			assertThat(server.messages()).hasSize(2)
				.allMatch((message) -> message.contains("Message-ID: <1@example.org>\r\n"));
		}
	}

	/** RFC 4954 section 6. */
	@Test
	void aWrongPasswordIsNoReasonToLoseMails() throws Exception {
		try (ScriptedSmtp server = new ScriptedSmtp().say("EHLO", "250-test\r\n250 AUTH PLAIN")
			.say("AUTH", "535 5.7.8 Error: authentication failed")) {
			JavaMailSenderImpl client = SenderFixture.client(server.port());
			client.setUsername("leafward");
			client.setPassword("moss-and-fern");
			SmtpLines lines = new SmtpLines(SenderFixture.of(client), 4, CLOCK);
			Delivery delivery = MailChannels.channel(lines, source, MailChannels.PLAIN, "https://plants.example.org")
				.deliver(MAIL);
			assertThat(delivery.outcome()).isEqualTo(Outcome.UNREACHABLE);
			assertThat(delivery.reason()).contains("name and password").contains("535").doesNotContain("moss");
			SmtpTrouble tried = lines.tryOut();
			assertThat(tried).isNotNull();
			assertThat(tried.alarm()).isTrue();
			assertThat(server.commands()).noneMatch((command) -> command.startsWith("MAIL"));
		}
	}

	@Test
	void nobodyListening() throws Exception {
		int port;
		try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
			port = socket.getLocalPort();
		}
		Delivery delivery = deliver(port);
		assertThat(delivery.outcome()).isEqualTo(Outcome.UNREACHABLE);
		assertThat(delivery.reason()).containsIgnoringCase("connection refused");
	}

	@Test
	void aServerThatNeverAnswersIsGivenUp() throws Exception {
		try (ServerSocket silent = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
			JavaMailSenderImpl client = SenderFixture.client(silent.getLocalPort());
			client.getJavaMailProperties().setProperty("mail.smtp.timeout", "200");
			SmtpLines lines = new SmtpLines(SenderFixture.of(client), 4, CLOCK);
			assertThat(MailChannels.channel(lines, source, MailChannels.PLAIN, "https://plants.example.org")
				.deliver(MAIL)
				.outcome()).isEqualTo(Outcome.UNREACHABLE);
		}
	}

	@Test
	void aWillingServerTakesIt() throws Exception {
		try (ScriptedSmtp server = new ScriptedSmtp()) {
			assertThat(deliver(server.port())).isEqualTo(Delivery.of(Outcome.TAKEN));
			assertThat(server.messages()).singleElement().asString().contains("Message-ID: <1@example.org>\r\n");
		}
	}

	@Test
	void anAddressAtWhichNobodyIsGetsNoMore() throws Exception {
		try (ScriptedSmtp server = new ScriptedSmtp().say("RCPT", "550 5.1.1 no such person here")) {
			deliver(server.port());
			assertThat(suppressed.list(0, 10)).singleElement()
				.isEqualTo(new Suppressed("ada@example.org", "550 5.1.1 no such person here", MailChannels.MADE));
		}
	}

}
