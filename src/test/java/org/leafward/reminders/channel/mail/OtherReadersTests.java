package org.leafward.reminders.channel.mail;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Date;
import java.util.Properties;
import jakarta.mail.Session;
import org.apache.james.mime4j.dom.Message;
import org.apache.james.mime4j.dom.Multipart;
import org.apache.james.mime4j.dom.TextBody;
import org.apache.james.mime4j.dom.address.Mailbox;
import org.apache.james.mime4j.message.DefaultMessageBuilder;
import org.apache.james.mime4j.stream.Field;
import org.apache.james.mime4j.stream.MimeConfig;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.leafward.reminders.MessageText;
import org.leafward.reminders.Series;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * Mails as another library reads them (Apache James Mime4j, strict), from the octets that
 * leave.
 */
class OtherReadersTests {

	private static final String STOP = "https://plants.example.org/u/Zx3-kQ";

	private static final String LONG = "Gießen: 30 l je Quadratmeter, bevor der Boden friert – 🌱 und Wurzelraum. "
		.repeat(40);

	private static byte[] octets(String name, String subject, String text, String html) throws Exception {
		MessageText words = new MessageText(subject, text, html, "", "/", "{}");
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		MimeForm
			.reminder(
					MailChannels.mail("7c1e", "ada@example.org", name, words, Series.SINGLE, "<task-1@example.org>", 0),
					Session.getInstance(new Properties()),
					MailSettings.of("x@example.org", "Hilfe für Gärten <help@example.org>", ""), STOP)
			.writeTo(out);
		return out.toByteArray();
	}

	private static Message read(byte[] octets) throws Exception {
		DefaultMessageBuilder builder = new DefaultMessageBuilder();
		builder.setMimeEntityConfig(MimeConfig.STRICT);
		return builder.parseMessage(new ByteArrayInputStream(octets));
	}

	private static String text(Message message, int part) throws Exception {
		TextBody body = (TextBody) ((Multipart) message.getBody()).getBodyParts().get(part).getBody();
		return new String(body.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
	}

	@Test
	void readTheSameHeaders() throws Exception {
		Message message = read(octets("Ada Łuk", "Thu 12 Nov: Grüße aus dem Garten", "text\n", "<p>text</p>"));
		assertThat(message.getSubject()).isEqualTo("Thu 12 Nov: Grüße aus dem Garten");
		Mailbox from = message.getFrom().get(0);
		assertThat(from.getName()).isEqualTo("Gärten am Ort");
		assertThat(from.getAddress()).isEqualTo("reminders@example.org");
		Mailbox to = message.getTo().flatten().get(0);
		assertThat(to.getName()).isEqualTo("Ada Łuk");
		assertThat(to.getAddress()).isEqualTo("ada@example.org");
		assertThat(message.getReplyTo().flatten().get(0).getName()).isEqualTo("Hilfe für Gärten");
		assertThat(message.getDate()).isEqualTo(Date.from(MailChannels.MADE));
		assertThat(message.getMessageId()).isEqualTo("<7c1e@example.org>");
		for (String once : new String[] { "List-Unsubscribe", "List-Unsubscribe-Post", "List-Id", "Auto-Submitted",
				"In-Reply-To", "References", "Reply-To", "Message-ID", "Date", "From", "To", "Subject" }) {
			assertThat(message.getHeader().getFields(once)).as(once).hasSize(1);
		}
		assertThat(message.getHeader().getField("List-Unsubscribe").getBody()).isEqualTo("<" + STOP + ">");
		assertThat(message.getHeader().getField("References").getBody()).isEqualTo("<task-1@example.org>");
	}

	@Test
	void readTheSameWords() throws Exception {
		Message message = read(octets("Ada", LONG.substring(0, 109), LONG, "<p>%s</p>".formatted(LONG)));
		assertThat(message.getSubject()).isEqualTo(LONG.substring(0, 109));
		assertThat(message.getMimeType()).isEqualTo("multipart/alternative");
		Multipart parts = (Multipart) message.getBody();
		assertThat(parts.getBodyParts()).extracting((part) -> part.getMimeType() + " " + part.getCharset())
			.containsExactly("text/plain UTF-8", "text/html UTF-8");
		assertThat(text(message, 0)).isEqualTo(LONG);
		assertThat(text(message, 1)).isEqualTo("<p>%s</p>".formatted(LONG));
	}

	/** RFC 5322 section 2.1.1; RFC 2045 section 6.7 and RFC 2047 section 2 ask for 76. */
	@Test
	void getLinesOf76CharactersAtMost() throws Exception {
		String mail = new String(octets("Ä".repeat(100), "ü".repeat(118), LONG, LONG), StandardCharsets.ISO_8859_1);
		assertThat(mail.chars()).allMatch((octet) -> octet < 128);
		assertThat(Arrays.asList(mail.split("\r\n"))).allMatch((line) -> line.length() <= 76);
	}

	@ParameterizedTest
	@ValueSource(strings = { "\r\nBcc: eve@example.org", "\nBcc: eve@example.org", "\rBcc: eve@example.org",
			"\r\n\r\nbody", "\u2028Bcc: eve@example.org", "=?UTF-8?Q?=0D=0ABcc:_eve@example.org?=",
			"\" <eve@example.org>, \"", "Ä\r\nBcc: eve@example.org", "\u0000\u0007" })
	void seeNoHeaderThatSomebodyWroteIntoAName(String evil) throws Exception {
		Message message = read(octets("Ada" + evil, "one" + evil, "text", "<p>text</p>"));
		assertThat(message.getHeader().getFields()).extracting(Field::getName)
			.doesNotContain("Bcc")
			.contains("Subject", "Content-Type");
		assertThat(message.getBcc()).isNull();
		assertThat(message.getTo().flatten()).extracting(Mailbox::getAddress).containsExactly("ada@example.org");
		assertThat(text(message, 0)).isEqualTo("text");
	}

}
