package org.leafward.reminders.channel.mail;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Codes as RFC 3463 sections 3.2 to 3.8, RFC 5248, RFC 7372, RFC 7504 and RFC 7505 give
 * them; words as Postfix, Exim, Sendmail, Exchange and Gmail write them.
 */
class SmtpReplyTests {

	@ParameterizedTest
	@CsvSource(delimiter = '|',
			value = { "550 5.1.1 <ada@example.org>: Recipient address rejected: User unknown",
					"550 5.1.2 Bad destination system address", "553 5.1.3 Bad destination mailbox address syntax",
					"551 5.1.6 mailbox has moved, no forwarding address", "556 5.1.10 Recipient address has null MX",
					"550 5.1.10 RESOLVER.ADR.RecipientNotFound; Recipient not found by SMTP address lookup",
					"550 5.2.1 The email account that you tried to reach is disabled", "550 No such user here",
					"550 Unrouteable address", "553 sorry, no mailbox here by that name", "550 5.0.0 unknown user",
					"550 5.1.0 <ada@example.org> address unknown",
					"550-5.1.1 The email account that you tried to reach does not exist" })
	void nobodyIsThere(String text) {
		SmtpReply reply = SmtpReply.of(Integer.parseInt(text.substring(0, 3)), text + "\n");
		assertThat(reply.nobodyThere()).isTrue();
		assertThat(reply.theirs()).isTrue();
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|',
			value = { "552 5.2.2 mailbox full", "552 Requested mail action aborted: storage exceeded",
					"554 5.3.0 system trouble", "550 5.4.1 no answer from host", "550 5.4.6 routing loop" })
	void somebodyIsThereWhoCantTakeIt(String text) {
		SmtpReply reply = SmtpReply.of(Integer.parseInt(text.substring(0, 3)), text);
		assertThat(reply.nobodyThere()).isFalse();
		assertThat(reply.theirs()).isTrue();
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|',
			value = { "550 5.7.1 Relaying denied", "554 5.7.1 Service unavailable; Client host blocked",
					"550 5.7.26 unauthenticated mail is not accepted", "550 relay not permitted",
					"550 Sender verify failed", "550 SPF check failed", "550 rejected because of policy",
					"550 5.1.0 <us@example.org>: Sender address rejected: User unknown",
					"550 5.1.1 <us@example.org>: Sender address rejected: User unknown",
					"553 5.1.8 sender's system is none", "553 5.1.7 Bad sender's mailbox address syntax",
					"554 Transaction failed", "501 5.5.4 invalid arguments", "554 5.6.0 content" })
	void itIsAboutUs(String text) {
		SmtpReply reply = SmtpReply.of(Integer.parseInt(text.substring(0, 3)), text);
		assertThat(reply.nobodyThere()).isFalse();
		assertThat(reply.theirs()).isFalse();
	}

	@Test
	void whatPassesIsNotTheEndOfAnAddress() {
		SmtpReply reply = SmtpReply.of(450, "450 4.1.1 <ada@example.org>: unverified address");
		assertThat(reply.nobodyThere()).isFalse();
		assertThat(reply.passes()).isTrue();
		assertThat(reply.enhanced()).isEqualTo("4.1.1");
	}

	/** RFC 3463 section 2: the code stands at the beginning; other numbers are words. */
	@Test
	void readsTheCodeAtTheBeginningOnly() {
		assertThat(SmtpReply.of(550, "550 see 5.1.1 in our manual").enhanced()).isEmpty();
		assertThat(SmtpReply.of(550, "550 5.1.1234 no").enhanced()).isEmpty();
		assertThat(SmtpReply.of(550, "550-5.7.1 first\n550 5.7.1 second\n").words())
			.isEqualTo("550-5.7.1 first 550 5.7.1 second");
		assertThat(SmtpReply.of(550, "550 " + "x".repeat(5000)).words()).hasSize(SmtpReply.LONGEST);
	}

}
