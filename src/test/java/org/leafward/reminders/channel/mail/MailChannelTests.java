package org.leafward.reminders.channel.mail;

import com.icegreen.greenmail.junit5.GreenMailExtension;
import com.icegreen.greenmail.util.GreenMailUtil;
import com.icegreen.greenmail.util.ServerSetup;
import com.zaxxer.hikari.HikariDataSource;
import jakarta.mail.BodyPart;
import jakarta.mail.Message.RecipientType;
import jakarta.mail.internet.InternetAddress;
import jakarta.mail.internet.MimeMessage;
import jakarta.mail.internet.MimeMultipart;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.Date;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.leafward.accounts.Person;
import org.leafward.accounts.PersonId;
import org.leafward.reminders.Message;
import org.leafward.reminders.MessageText;
import org.leafward.reminders.ScriptedSmtp;
import org.leafward.reminders.SenderFixture;
import org.leafward.reminders.Series;
import org.leafward.reminders.TaskFixture;
import org.leafward.reminders.channel.Channel;
import org.leafward.reminders.channel.Delivery;
import org.leafward.reminders.channel.Delivery.Outcome;
import org.leafward.reminders.store.SuppressionTable;
import org.leafward.support.SettableClock;
import org.leafward.support.TestDatabase;
import org.springframework.jdbc.core.simple.JdbcClient;

import static org.assertj.core.api.Assertions.assertThat;

/** What arrives at another implementation of SMTP (GreenMail). */
class MailChannelTests {

	@RegisterExtension
	static final GreenMailExtension SERVER = new GreenMailExtension(
			new ServerSetup(0, "127.0.0.1", ServerSetup.PROTOCOL_SMTP));

	private static final SettableClock CLOCK = new SettableClock(MailChannels.MADE);

	private static final String STOP = "https://plants.example.org/u/mail-single-" + TaskFixture.ADA.value();

	private static HikariDataSource source;

	@BeforeAll
	static void database() {
		source = TestDatabase.fresh();
	}

	@AfterAll
	static void close() {
		source.close();
	}

	private static MessageText words(String subject, String text) {
		return new MessageText(subject, text, "<!DOCTYPE html>\n<html lang=\"en\"><body><p>Grüße</p></body></html>\n",
				"", "/", "{}");
	}

	private static Message mail(String recipient, String name, String subject, String text) {
		return MailChannels.mail("7c1e", recipient, name, words(subject, text), Series.SINGLE, null, 0);
	}

	private static Message mail(Series series, @Nullable String thread) {
		return MailChannels.mail("7c1e", "ada@example.org", "Ada", words("one", "text"), series, thread, 0);
	}

	private static Delivery send(Message mail) {
		return send(mail, MailChannels.PLAIN, "https://plants.example.org");
	}

	private static Delivery send(Message mail, MailSettings settings, String home) {
		SmtpLines lines = new SmtpLines(SenderFixture.to(SERVER.getSmtp().getPort()), 4, CLOCK);
		try {
			return MailChannels.channel(lines, source, settings, home).deliver(mail);
		}
		finally {
			lines.destroy();
		}
	}

	private static MimeMessage received(Message mail) {
		return received(mail, MailChannels.PLAIN, "https://plants.example.org");
	}

	private static MimeMessage received(Message mail, MailSettings settings, String home) {
		assertThat(send(mail, settings, home)).isEqualTo(Delivery.of(Outcome.TAKEN));
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
		assertThat(message.getSentDate()).isEqualTo(Date.from(MailChannels.MADE));
		// RFC 5322 section 3.6.4.
		assertThat(message.getMessageID()).isEqualTo("<7c1e@example.org>");
		// RFC 3834 section 5.
		assertThat(message.getHeader("Auto-Submitted")).containsExactly("auto-generated");
		// MS-OXCMAIL, X-Auto-Response-Suppress.
		assertThat(message.getHeader("X-Auto-Response-Suppress")).containsExactly("OOF, AutoReply");
		assertThat(message.getHeader("Reply-To")).isNull();
	}

	/**
	 * RFC 8058 section 3.1: one https URI at least, and the other header to the letter.
	 * On one line, as a fold breaks signatures that others make.
	 */
	@Test
	void canBeStoppedByOneClick() {
		String raw = GreenMailUtil.getWholeMessage(received(mail("ada@example.org", "Ada", "one", "text")));
		assertThat(raw).contains("\r\nList-Unsubscribe: <" + STOP + ">\r\n")
			.contains("\r\nList-Unsubscribe-Post: List-Unsubscribe=One-Click\r\n");
	}

	/** RFC 8058 section 3.1 asks for https; RFC 2369 section 3.2 takes any address. */
	@Test
	void isStoppedByALinkWhereThereIsNoEncryption() throws Exception {
		MimeMessage message = received(mail("ada@example.org", "Ada", "one", "text"), MailChannels.PLAIN,
				"http://localhost:8080");
		assertThat(message.getHeader("List-Unsubscribe-Post")).isNull();
		assertThat(message.getHeader("List-Unsubscribe"))
			.containsExactly("<http://localhost:8080/u/mail-single-%s>".formatted(TaskFixture.ADA.value()));
	}

	/** A header that asks to be broken is worse than a mail that doesn't leave. */
	@ParameterizedTest
	@ValueSource(strings = { "https://a.example.org\r\nBcc: <eve@example.org>", "https://a>, <mailto:eve@example.org",
			"https://a b", "mailto:eve@example.org" })
	void sendsNothingWithABrokenLink(String home) {
		assertThat(send(mail(Series.SINGLE, null), MailChannels.PLAIN, home).outcome()).isEqualTo(Outcome.REFUSED);
		assertThat(SERVER.getReceivedMessages()).isEmpty();
	}

	/**
	 * RFC 2919 section 2: a name and a dot-atom in angle brackets, one for each series.
	 */
	@ParameterizedTest
	@CsvSource({ "MORNING,Care in the morning <morning.reminders.example.org>",
			"OUTLOOK,Care outlook <outlook.reminders.example.org>",
			"TONIGHT,Frost tonight <tonight.reminders.example.org>",
			"SINGLE,Care reminders <single.reminders.example.org>" })
	void eachSeriesIsAListOfItsOwn(Series series, String list) throws Exception {
		MimeMessage message = received(mail(series, null));
		assertThat(message.getHeader("List-Id")).containsExactly(list);
		assertThat(message.getHeader("List-Unsubscribe", null)).contains("/u/mail-" + series.code() + "-");
	}

	/** RFC 5322 section 3.6.4. */
	@ParameterizedTest
	@EnumSource(names = { "SINGLE", "TONIGHT" })
	void standsWithOthersAboutTheSame(Series series) throws Exception {
		MimeMessage message = received(mail(series, "<task-1@example.org>"));
		assertThat(message.getHeader("In-Reply-To")).containsExactly("<task-1@example.org>");
		assertThat(message.getHeader("References")).containsExactly("<task-1@example.org>");
		assertThat(message.getMessageID()).isEqualTo("<7c1e@example.org>");
	}

	@ParameterizedTest
	@EnumSource(names = { "MORNING", "OUTLOOK" })
	void digestsStandAlone(Series series) throws Exception {
		MimeMessage message = received(mail(series, "<task-1@example.org>"));
		assertThat(message.getHeader("In-Reply-To")).isNull();
		assertThat(message.getHeader("References")).isNull();
	}

	@ParameterizedTest
	@ValueSource(strings = { "", "task-1", "<task 1@example.org>", "<a@b>\r\nBcc: eve@example.org", "<a@b><c@d>" })
	void aThreadThatIsNoneIsLeftOut(String thread) throws Exception {
		MimeMessage message = received(mail(Series.SINGLE, thread));
		assertThat(message.getHeader("References")).isNull();
		assertThat(message.getHeader("Bcc")).isNull();
	}

	@Test
	void answersGoWhereSomebodyReadsThem() throws Exception {
		MimeMessage message = received(mail(Series.SINGLE, null),
				MailSettings.of("Gardens <reminders@example.org>", "Hilfe für Gärten <help@example.org>", ""),
				"https://plants.example.org");
		assertThat(message.getHeader("Reply-To", null))
			.isEqualTo("=?UTF-8?Q?Hilfe_f=C3=BCr_G=C3=A4rten?= <help@example.org>");
	}

	/** RFC 5321 section 4.4: what MAIL FROM says is where failures are told. */
	@Test
	void failuresGoToAnAddressForEachMail() throws Exception {
		MailSettings settings = MailSettings.of("Gardens <reminders@example.org>", "", "bounce@mail.example.org");
		try (ScriptedSmtp server = new ScriptedSmtp()) {
			for (MailSettings each : List.of(settings, MailChannels.PLAIN)) {
				SmtpLines lines = new SmtpLines(SenderFixture.to(server.port()), 4, CLOCK);
				assertThat(MailChannels.channel(lines, source, each, "https://plants.example.org")
					.deliver(mail(Series.SINGLE, null))).isEqualTo(Delivery.of(Outcome.TAKEN));
				lines.destroy();
			}
			assertThat(server.commands().stream().filter((one) -> one.startsWith("MAIL")))
				.containsExactly(
						"MAIL FROM:<bounce+%s@mail.example.org>"
							.formatted(TaskFixture.id("7c1e").toString().replace("-", "")),
						"MAIL FROM:<reminders@example.org>");
			// Whom it comes from doesn't change.
			assertThat(server.messages()).allMatch((one) -> one.contains("<reminders@example.org>\r\n"))
				.noneMatch((one) -> one.contains("bounce+"));
		}
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

	/** The last one would be written to "foo@..." if each letter were cut to an octet. */
	@ParameterizedTest
	@ValueSource(strings = { "ada@example.org\r\nBcc: eve@example.org", "", "ada@example.org, eve@example.org",
			"ada eve@example.org", "\u0166oo@example.org" })
	void refusesAnAddressThatIsNone(String address) {
		assertThat(send(mail(address, "Ada", "one", "text")).outcome()).isEqualTo(Outcome.REFUSED);
		assertThat(SERVER.getReceivedMessages()).isEmpty();
	}

	@Test
	void keepsTheMailWithoutAMailServer() {
		assertThat(MailChannels.none(source).deliver(mail("ada@example.org", "Ada", "one", "text")))
			.isEqualTo(Delivery.of(Outcome.KEPT));
	}

	@Test
	void goesToConfirmedAddressesAtWhichSomebodyIs() {
		SuppressionTable suppressed = new SuppressionTable(JdbcClient.create(source), CLOCK);
		suppressed.suppress("Cy@Example.org", "550 5.1.1 gone");
		Channel channel = MailChannels.none(source);
		Person ada = new Person(TaskFixture.ADA, "Ada", "ada@example.org", ZoneOffset.UTC);
		Person ben = new Person(new PersonId(TaskFixture.id("ben")), "Ben", "ben@example.org", ZoneOffset.UTC, false);
		Person cy = new Person(new PersonId(TaskFixture.id("cy")), "Cy", "cy@example.ORG", ZoneOffset.UTC);
		Person dee = new Person(new PersonId(TaskFixture.id("dee")), "Dee", null, ZoneOffset.UTC, true);
		assertThat(channel.addresses(List.of(ada, ben, cy, dee))).isEqualTo(Map.of(TaskFixture.ADA, "ada@example.org"));
		suppressed.lift("cy@example.org");
		assertThat(channel.addresses(List.of(ada, cy))).hasSize(2);
		assertThat(channel.addresses(List.of())).isEmpty();
	}

}
