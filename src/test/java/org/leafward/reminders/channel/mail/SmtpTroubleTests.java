package org.leafward.reminders.channel.mail;

import java.net.InetAddress;
import java.net.ServerSocket;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leafward.reminders.Message;
import org.leafward.reminders.MessageFixture;
import org.leafward.reminders.ScriptedSmtp;
import org.leafward.reminders.SenderFixture;
import org.leafward.reminders.channel.Delivery;
import org.leafward.reminders.channel.Delivery.Outcome;

import static org.assertj.core.api.Assertions.assertThat;

class SmtpTroubleTests {

	private static final Message MAIL = MessageFixture.mail("1",
			MessageFixture.words("subject", "text", "<p>text</p>"));

	private static Delivery deliver(int port) {
		return new MailChannel(SenderFixture.to(port)).deliver(MAIL);
	}

	/**
	 * RFC 5321 section 4.2.1: replies 4yz pass, 5yz stay; section 3.1 and 3.8: a greeting
	 * of 421 or 554 is no session at all. Enhanced codes from RFC 3463 and 5248.
	 */
	@ParameterizedTest
	@CsvSource(delimiter = '|',
			value = { "RCPT|550 5.1.1 no such person here|REFUSED", "RCPT|450 4.2.1 mailbox is busy|LATER",
					"RCPT|451 4.7.1 come back in a while|LATER", "RCPT|452 4.2.2 full|LATER",
					"MAIL|550 5.7.1 not from you|REFUSED", "MAIL|451 4.3.0 not now|LATER", "DATA|554 5.6.0 no|REFUSED",
					"DATA|451 4.3.0 not now|LATER", "END|554 5.7.1 not such words|REFUSED",
					"END|451 4.3.2 disk full|LATER", "GREETING|421 4.3.2 closing|UNREACHABLE",
					"GREETING|554 5.3.2 no service|UNREACHABLE" })
	void goesByTheFirstDigit(String step, String reply, Outcome outcome) throws Exception {
		try (ScriptedSmtp server = new ScriptedSmtp().say(step, reply)) {
			Delivery delivery = deliver(server.port());
			assertThat(delivery.outcome()).isEqualTo(outcome);
			if (!step.equals("GREETING")) {
				assertThat(delivery.reason()).contains(reply);
			}
		}
	}

	@ParameterizedTest
	@CsvSource({ "GREETING", "EHLO", "MAIL", "RCPT", "DATA", "END" })
	void aLostConnectionIsTriedAgain(String step) throws Exception {
		try (ScriptedSmtp server = new ScriptedSmtp().say(step, ScriptedSmtp.HANG_UP)) {
			assertThat(deliver(server.port()).outcome()).isEqualTo(Outcome.UNREACHABLE);
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
	void aWillingServerTakesIt() throws Exception {
		try (ScriptedSmtp server = new ScriptedSmtp()) {
			assertThat(deliver(server.port())).isEqualTo(Delivery.of(Outcome.TAKEN));
			assertThat(server.messages()).singleElement().asString().contains("Message-ID: <1@example.org>\r\n");
		}
	}

}
