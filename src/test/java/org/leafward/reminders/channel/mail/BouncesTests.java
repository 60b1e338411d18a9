package org.leafward.reminders.channel.mail;

import com.zaxxer.hikari.HikariDataSource;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.leafward.measure.BadInput;
import org.leafward.reminders.Suppressed;
import org.leafward.reminders.TaskFixture;
import org.leafward.reminders.channel.mail.Bounces.Bounce;
import org.leafward.reminders.store.MessageTable;
import org.leafward.reminders.store.SuppressionTable;
import org.leafward.support.SettableClock;
import org.leafward.support.TestDatabase;
import org.springframework.jdbc.core.simple.JdbcClient;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

class BouncesTests {

	private static final String OURS = "bounce+%s@mail.example.org"
		.formatted(TaskFixture.id("one").toString().replace("-", ""));

	private static HikariDataSource source;

	private static SuppressionTable suppressed;

	private static Bounces bounces;

	@BeforeAll
	static void open() {
		source = TestDatabase.fresh();
		suppressed = new SuppressionTable(JdbcClient.create(source), new SettableClock(MailChannels.MADE));
		MessageTable messages = new MessageTable(JdbcClient.create(source));
		messages.save(List.of(MailChannels.mail("one", "Ada@example.org")));
		bounces = new Bounces(messages, suppressed,
				MailSettings.of("reminders@example.org", "", "bounce@mail.example.org"));
	}

	@AfterAll
	static void close() {
		source.close();
	}

	@AfterEach
	void lift() {
		suppressed.lift("ada@example.org");
	}

	/**
	 * In the shape of RFC 3464 appendix E: a notice, the status, the headers of the mail.
	 */
	private static String report(String to, String recipient) {
		return """
				Date: Thu, 12 Nov 2026 07:00:00 +0000
				From: Mail Delivery Subsystem <MAILER-DAEMON@cs.example.net>
				Message-Id: <RAA14128@cs.example.net>
				To: <%s>
				MIME-Version: 1.0
				Content-Type: multipart/report; report-type=delivery-status;
				 boundary="RAA14128.773615765/CS"

				--RAA14128.773615765/CS

				Could not be delivered.

				--RAA14128.773615765/CS
				content-type: message/delivery-status

				Reporting-MTA: dns; cs.example.net

				%s

				--RAA14128.773615765/CS
				content-type: message/rfc822

				Subject: one
				To: ada@example.org

				--RAA14128.773615765/CS--
				""".formatted(to, recipient);
	}

	private static String failed(String status, String diagnostic) {
		return """
				Original-Recipient: rfc822;ada@example.org
				Final-Recipient: rfc822;ada@example.org
				Action: failed
				Status: %s
				Diagnostic-Code: %s""".formatted(status, diagnostic);
	}

	private static Bounce read(String mail) throws IOException {
		return bounces.read(stream(mail));
	}

	private static InputStream stream(String mail) {
		return new ByteArrayInputStream(mail.replace("\n", "\r\n").getBytes(StandardCharsets.UTF_8));
	}

	/**
	 * The first two are fields of RFC 3464 appendix E.2; the others are as Postfix,
	 * Exchange and Exim write them.
	 */
	@ParameterizedTest
	@CsvSource(delimiter = '|',
			value = { "5.0.0 (permanent failure)|smtp; 550 'arathib@vnet.IBM.COM' is not a registered gateway user",
					"5.1.1|smtp;550 5.1.1 <ada@example.org>: Recipient address rejected: User unknown",
					"5.1.1|X-Postfix; unknown user: \"ada\"", "5.1.10|smtp;550 5.1.10 RESOLVER.ADR.RecipientNotFound",
					"5.0.0|smtp; 550 no such address here", "5.1.2|X-Unix; host unknown" })
	void anAddressAtWhichNobodyIsGetsNoMore(String status, String diagnostic) throws IOException {
		assertThat(read(report(OURS, failed(status, diagnostic)))).isEqualTo(Bounce.SUPPRESSED);
		assertThat(suppressed.list(0, 10)).extracting(Suppressed::address).containsExactly("ada@example.org");
		assertThat(read(report(OURS, failed(status, diagnostic)))).isEqualTo(Bounce.KNOWN);
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|',
			value = { "5.7.1|smtp; 550 5.7.1 message content rejected", "5.2.2|smtp; 552 5.2.2 mailbox full",
					"5.4.7|smtp; 550 5.4.7 delivery expired", "5.0.0|smtp; 554 blocked because of policy" })
	void whatIsNoFaultOfTheAddressEndsNothing(String status, String diagnostic) throws IOException {
		assertThat(read(report(OURS, failed(status, diagnostic)))).isEqualTo(Bounce.REFUSED);
		assertThat(suppressed.list(0, 10)).isEmpty();
	}

	/**
	 * RFC 3464 section 2.3.3: delayed, delivered, relayed and expanded are no failures.
	 */
	@ParameterizedTest
	@ValueSource(strings = { "delayed", "delivered", "relayed", "expanded" })
	void whatDidNotFailEndsNothing(String action) throws IOException {
		assertThat(read(
				report(OURS, "Final-Recipient: rfc822;ada@example.org\nAction: %s\nStatus: 4.0.0".formatted(action))))
			.isEqualTo(Bounce.PASSES);
		// RFC 3464 appendix E.1: failed, with a status that passes.
		assertThat(read(report(OURS, failed("4.0.0", "smtp; 426 connection timed out")))).isEqualTo(Bounce.PASSES);
		assertThat(suppressed.list(0, 10)).isEmpty();
	}

	@Test
	void eachRecipientCounts() throws IOException {
		assertThat(read(
				report(OURS, failed("5.7.1", "smtp; 550 5.7.1 no") + "\n\n" + failed("5.1.1", "smtp; 550 5.1.1 no"))))
			.isEqualTo(Bounce.SUPPRESSED);
	}

	@Test
	void theAddressMayStandWhereTheServerPutIt() throws IOException {
		String mail = "Delivered-To: %s\n".formatted(OURS)
				+ report("postmaster@example.org", failed("5.1.1", "smtp; 550 5.1.1 no"));
		assertThat(read(mail)).isEqualTo(Bounce.SUPPRESSED);
	}

	@Test
	void nobodyEndsTheMailsOfOthers() throws IOException {
		String unknown = "bounce+%s@mail.example.org".formatted(TaskFixture.id("two").toString().replace("-", ""));
		for (String to : List.of(unknown, "ada@example.org", "bounce@mail.example.org", "")) {
			assertThat(read(report(to, failed("5.1.1", "smtp; 550 5.1.1 no")))).isEqualTo(Bounce.UNKNOWN);
		}
		assertThat(suppressed.list(0, 10)).isEmpty();
	}

	@ParameterizedTest
	@ValueSource(strings = { "To: x\nSubject: I am away\n\nUntil Monday.\n", "", "no headers at all",
			"Content-Type: multipart/report; boundary=x\n\n--x\nContent-Type: text/plain\n\nno status\n--x--\n",
			"Content-Type: multipart/alternative; boundary=x\n\n--x\nContent-Type: message/delivery-status\n\nAction: failed\n--x--\n" })
	void anythingElseIsNoReport(String mail) throws IOException {
		assertThat(read(mail)).isEqualTo(Bounce.NO_REPORT);
	}

	@ParameterizedTest
	@ValueSource(strings = { "Content-Type: multipart/report\n\nno boundary\n",
			"Content-Type: multipart/report; boundary=\"\n\n--\n", "Content-Type: multipart/report; boundary=x\n\n" })
	void whatIsBrokenIsToldOrPassedOver(String mail) throws IOException {
		try {
			assertThat(read(mail)).isEqualTo(Bounce.NO_REPORT);
		}
		catch (BadInput ex) {
			assertThat(ex.where()).isEqualTo("request body");
		}
		assertThat(suppressed.list(0, 10)).isEmpty();
	}

	@Test
	@Timeout(120)
	void isBounded() throws IOException {
		InputStream endless = new InputStream() {

			@Override
			public int read() {
				return 'a';
			}

		};
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> bounces.read(endless)).withMessageContaining("1 MB");
		// What was sent comes back behind the report.
		assertThat(read(report(OURS, failed("5.1.1", "smtp; 550 5.1.1 no")) + "a\n".repeat(300_000)))
			.isEqualTo(Bounce.SUPPRESSED);
		// Within the bound, whatever is nested or repeated.
		String groups = String.join("\n\n", Collections.nCopies(4000, "Action: delayed\nStatus: 4.0.0"));
		assertThat(read(report(OURS, groups))).isEqualTo(Bounce.PASSES);
		String parts = String.join("", Collections.nCopies(30_000, "--x\nA: b\n\nc\n"));
		assertThat(read("Content-Type: multipart/report; boundary=x\n\n%s--x--\n".formatted(parts)))
			.isEqualTo(Bounce.NO_REPORT);
		assertThat(read("To: %s\nContent-Type: multipart/report; boundary=x\n\n"
			.formatted(String.join(", ", Collections.nCopies(30_000, "bounce+0@mail.example.org")))))
			.isEqualTo(Bounce.NO_REPORT);
	}

	@Test
	void withoutAReturnAddressNothingIsRead() {
		Bounces none = new Bounces(new MessageTable(JdbcClient.create(source)), suppressed, MailChannels.PLAIN);
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> none.read(stream("")))
			.satisfies((ex) -> assertThat(ex.where()).isEqualTo("leafward.mail.bounces"));
	}

}
