package org.leafward.reminders.channel.mail;

import com.icegreen.greenmail.junit5.GreenMailExtension;
import com.icegreen.greenmail.util.GreenMailUtil;
import com.icegreen.greenmail.util.ServerSetup;
import jakarta.mail.BodyPart;
import jakarta.mail.Message.RecipientType;
import jakarta.mail.internet.InternetAddress;
import jakarta.mail.internet.MimeMessage;
import jakarta.mail.internet.MimeMultipart;
import java.time.Instant;
import java.util.Arrays;
import java.util.Date;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.leafward.reminders.Message;
import org.leafward.reminders.MessageFixture;
import org.leafward.reminders.SenderFixture;
import org.leafward.reminders.channel.Delivery;
import org.leafward.reminders.channel.Delivery.Outcome;

import static org.assertj.core.api.Assertions.assertThat;

/** What arrives at another implementation of SMTP (GreenMail). */
class MailChannelTests {

	@RegisterExtension
	static final GreenMailExtension SERVER = new GreenMailExtension(
			new ServerSetup(0, "127.0.0.1", ServerSetup.PROTOCOL_SMTP));

	private static final Instant MADE = Instant.parse("2026-11-12T06:00:00Z");

	private static Message mail(String recipient, String name, String subject, String text) {
		return MessageFixture.mail("7c1e", "Gärten am Ort <reminders@example.org>", recipient, name, MessageFixture
			.words(subject, text, "<!DOCTYPE html>\n<html lang=\"en\"><body><p>Grüße</p></body></html>\n"));
	}

	private static Delivery send(Message mail) {
		return new MailChannel(SenderFixture.to(SERVER.getSmtp().getPort())).deliver(mail);
	}

	private static MimeMessage received(Message mail) {
		assertThat(send(mail)).isEqualTo(Delivery.of(Outcome.TAKEN));
		assertThat(SERVER.getReceivedMessages()).hasSize(1);
		return SERVER.getReceivedMessages()[0];
	}

	@Test
	void carriesTheHeadersOfAReminder() throws Exception {
		MimeMessage message = received(mail("ada@example.org", "Ada Łuk", "Thu 12 Nov: Grüße", "Grüße\n"));
		// RFC 5322 section 3.6: each of these once.
		for (String once : List.of("Date", "From", "To", "Subject", "Message-ID", "MIME-Version", "Content-Type")) {
			assertThat(message.getHeader(once)).as(once).hasSize(1);
		}
		assertThat(message.getFrom()).containsExactly(new InternetAddress("reminders@example.org"));
		assertThat(((InternetAddress) message.getFrom()[0]).getPersonal()).isEqualTo("Gärten am Ort");
		assertThat(message.getAllRecipients()).containsExactly(new InternetAddress("ada@example.org"));
		assertThat(((InternetAddress) message.getAllRecipients()[0]).getPersonal()).isEqualTo("Ada Łuk");
		assertThat(message.getSubject()).isEqualTo("Thu 12 Nov: Grüße");
		// RFC 5322 section 3.3; the date of the row, not of the try.
		assertThat(message.getHeader("Date", null)).isEqualTo("Thu, 12 Nov 2026 06:00:00 +0000");
		assertThat(message.getSentDate()).isEqualTo(Date.from(MADE));
		// RFC 5322 section 3.6.4.
		assertThat(message.getMessageID()).isEqualTo("<7c1e@example.org>");
		// RFC 3834 section 5.
		assertThat(message.getHeader("Auto-Submitted")).containsExactly("auto-generated");
		// MS-OXCMAIL, X-Auto-Response-Suppress.
		assertThat(message.getHeader("X-Auto-Response-Suppress")).containsExactly("OOF, AutoReply");
		// RFC 2919 section 2.
		assertThat(message.getHeader("List-Id")).containsExactly("Care reminders <care-reminders.example.org>");
	}

	/** RFC 2046 section 5.1.4: the same content twice, the plainest first. */
	@Test
	void isTextAndThenHtml() throws Exception {
		MimeMessage message = received(mail("ada@example.org", "Ada", "one", "Grüße aus dem Garten\n"));
		assertThat(message.getContentType()).startsWith("multipart/alternative;");
		MimeMultipart parts = (MimeMultipart) message.getContent();
		assertThat(parts.getCount()).isEqualTo(2);
		BodyPart text = parts.getBodyPart(0);
		assertThat(text.getContentType()).isEqualToIgnoringCase("text/plain; charset=UTF-8");
		assertThat((String) text.getContent()).isEqualToNormalizingNewlines("Grüße aus dem Garten\n");
		BodyPart html = parts.getBodyPart(1);
		assertThat(html.getContentType()).isEqualToIgnoringCase("text/html; charset=UTF-8");
		assertThat((String) html.getContent()).contains("<p>Grüße</p>");
	}

	/**
	 * RFC 5322 section 2.1.1 and RFC 5321 section 2.3.7: 998 octets, CR and LF in pairs.
	 */
	@Test
	void hasShortLinesOfSevenBits() {
		String raw = GreenMailUtil
			.getWholeMessage(received(mail("ada@example.org", "Ä".repeat(90), "ü".repeat(118), "ö".repeat(5000))));
		assertThat(raw.chars()).allMatch((octet) -> octet < 128);
		assertThat(Arrays.asList(raw.split("\r\n"))).allMatch((line) -> line.length() <= 998)
			.noneMatch((line) -> line.contains("\n") || line.contains("\r"));
	}

	/** RFC 5322 section 2.2: what ends a line must not come from outside. */
	@Test
	void letsNobodyAddHeaders() throws Exception {
		MimeMessage message = received(mail("ada@example.org", "Ada\r\nBcc: eve@example.org\r\nX-Evil: 1",
				"one\r\nBcc: eve@example.org\n\nbody", "text\r\n.\r\nMAIL FROM:<eve@example.org>\r\n"));
		assertThat(message.getHeader("Bcc")).isNull();
		assertThat(message.getHeader("X-Evil")).isNull();
		assertThat(message.getRecipients(RecipientType.BCC)).isNull();
		assertThat(message.getAllRecipients()).hasSize(1);
		// Not even folded: the whole value on the header's own line.
		assertThat(message.getHeader("Subject")).containsExactly("one Bcc: eve@example.org body");
		assertThat(message.getHeader("To")).containsExactly("\"Ada Bcc: eve@example.org X-Evil: 1\" <ada@example.org>");
		// RFC 5321 section 4.5.2: a line that is one dot doesn't end the mail.
		assertThat((String) ((MimeMultipart) message.getContent()).getBodyPart(0).getContent()).contains("MAIL FROM");
	}

	@Test
	void refusesAnAddressThatIsNone() {
		assertThat(send(mail("ada@example.org\r\nBcc: eve@example.org", "Ada", "one", "text")).outcome())
			.isEqualTo(Outcome.REFUSED);
		assertThat(send(mail("", "Ada", "one", "text")).outcome()).isEqualTo(Outcome.REFUSED);
		assertThat(Arrays.stream(SERVER.getReceivedMessages()))
			.noneMatch((message) -> GreenMailUtil.getWholeMessage(message).contains("eve@"));
	}

	@Test
	void keepsTheMailWithoutAMailServer() {
		assertThat(new MailChannel(SenderFixture.none()).deliver(mail("ada@example.org", "Ada", "one", "text")))
			.isEqualTo(Delivery.of(Outcome.KEPT));
	}

}
