package org.leafward.reminders.channel.mail;

import com.icegreen.greenmail.junit5.GreenMailExtension;
import com.icegreen.greenmail.user.GreenMailUser;
import com.icegreen.greenmail.util.ServerSetup;
import com.zaxxer.hikari.HikariDataSource;
import jakarta.mail.BodyPart;
import jakarta.mail.Message.RecipientType;
import jakarta.mail.Session;
import jakarta.mail.internet.InternetAddress;
import jakarta.mail.internet.MimeBodyPart;
import jakarta.mail.internet.MimeMessage;
import jakarta.mail.internet.MimeMultipart;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.leafward.accounts.MailedAnswers;
import org.leafward.accounts.Post;
import org.leafward.accounts.Post.Outcome;
import org.leafward.reminders.SenderFixture;
import org.leafward.reminders.store.SuppressionTable;
import org.leafward.support.SettableClock;
import org.leafward.support.TestDatabase;
import org.springframework.beans.factory.support.StaticListableBeanFactory;
import org.springframework.jdbc.core.simple.JdbcClient;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * Invitations as they arrive at another implementation of SMTP, and answers as they are
 * read from another implementation of IMAP (GreenMail).
 */
class PostedMailsTests {

	@RegisterExtension
	static final GreenMailExtension SERVER = new GreenMailExtension(
			new ServerSetup[] { new ServerSetup(0, "127.0.0.1", ServerSetup.PROTOCOL_SMTP),
					new ServerSetup(0, "127.0.0.1", ServerSetup.PROTOCOL_IMAP) })
		.withPerMethodLifecycle(true);

	private static final SettableClock CLOCK = new SettableClock(MailChannels.MADE);

	private static final String TOKEN = "0123456789abcdef0123456789abcdef";

	private static final String CALENDAR = "BEGIN:VCALENDAR\r\nVERSION:2.0\r\nMETHOD:REQUEST\r\nBEGIN:VEVENT\r\n"
			+ "UID:workday-1@leafward\r\nSUMMARY:Grüne Jornada\r\nEND:VEVENT\r\nEND:VCALENDAR\r\n";

	private static HikariDataSource source;

	@BeforeAll
	static void database() {
		source = TestDatabase.fresh();
	}

	@AfterAll
	static void close() {
		source.close();
	}

	private static PostedMails post(int port) {
		return new PostedMails(new SmtpLines((port > 0) ? SenderFixture.to(port) : SenderFixture.none(), 2, CLOCK),
				new SuppressionTable(JdbcClient.create(source), CLOCK), MailChannels.PLAIN);
	}

	private static Post.Mail mail(String to, @Nullable String calendar, @Nullable String method) {
		return new Post.Mail(UUID.fromString("00000000-0000-4000-8000-000000000009"), to, "Nora\r\nBcc: x@example.org",
				"Workday on Sat 5 Dec\r\nX-Evil: 1",
				"Do you come?\n\n- Mulch\n- Prune\n\nhttps://plants.example.org/w/" + TOKEN, calendar, method, "b1",
				"es", MailChannels.MADE);
	}

	@Test
	void anInvitationHasTextHtmlAndCalendarSideBySideAndTheCalendarAsAFile() throws Exception {
		assertThat(post(SERVER.getSmtp().getPort()).hand(mail("nora@example.org", CALENDAR, "REQUEST")).outcome())
			.isEqualTo(Outcome.TAKEN);
		MimeMessage came = SERVER.getReceivedMessages()[0];
		assertThat(came.getAllRecipients()).hasSize(1);
		assertThat(came.getHeader("X-Evil")).isNull();
		assertThat(came.getContentLanguage()).containsExactly("es");
		assertThat(came.getMessageID()).isEqualTo("<00000000-0000-4000-8000-000000000009@example.org>");
		assertThat(came.getHeader("References")).containsExactly("<workday-b1@example.org>");
		MimeMultipart all = (MimeMultipart) came.getContent();
		assertThat(all.getContentType()).startsWith("multipart/mixed");
		MimeMultipart words = (MimeMultipart) all.getBodyPart(0).getContent();
		assertThat(words.getContentType()).startsWith("multipart/alternative");
		List<String> types = new ArrayList<>();
		for (int i = 0; i < words.getCount(); i++) {
			types.add(words.getBodyPart(i).getContentType());
		}
		assertThat(types).hasSize(3);
		assertThat(types.get(0)).startsWith("text/plain");
		assertThat(types.get(1)).startsWith("text/html");
		assertThat((String) words.getBodyPart(1).getContent()).contains("<html lang=\"es\">",
				"<ul><li>Mulch</li><li>Prune</li></ul>");
		// RFC 6047, section 2.4: method and charset stand in the type.
		assertThat(types.get(2)).isEqualTo("text/calendar; charset=UTF-8; method=REQUEST");
		assertThat(words.getBodyPart(2).getDisposition()).isNull();
		assertThat(octets(words.getBodyPart(2))).isEqualTo(CALENDAR);
		assertThat(all.getBodyPart(1).getFileName()).isEqualTo("invite.ics");
		assertThat(octets(all.getBodyPart(1))).isEqualTo(CALENDAR);
	}

	private static String octets(BodyPart part) throws Exception {
		return new String(part.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
	}

	@Test
	void aMailWithoutAnInvitationIsTextAndHtml() throws Exception {
		assertThat(post(SERVER.getSmtp().getPort()).hand(mail("ada@example.org", null, null)).outcome())
			.isEqualTo(Outcome.TAKEN);
		MimeMultipart all = (MimeMultipart) SERVER.getReceivedMessages()[0].getContent();
		assertThat(all.getContentType()).startsWith("multipart/alternative");
		assertThat(all.getCount()).isEqualTo(2);
	}

	@Test
	void whoCanNotBeReachedIsToldApart() {
		assertThat(post(0).hand(mail("ada@example.org", null, null)).outcome()).isEqualTo(Outcome.KEPT);
		assertThat(post(1).hand(mail("ada@example.org", null, null)).outcome()).isEqualTo(Outcome.LATER);
		assertThat(post(SERVER.getSmtp().getPort()).hand(mail("nobody", CALENDAR, "REQUEST")).outcome())
			.isNotEqualTo(Outcome.KEPT);
		new SuppressionTable(JdbcClient.create(source), CLOCK).suppress("gone@example.org", "550 5.1.1");
		assertThat(post(SERVER.getSmtp().getPort()).hand(mail("gone@example.org", null, null)).outcome())
			.isEqualTo(Outcome.REFUSED);
	}

	private static AnswerBox box(List<String> taken) {
		MailedAnswers taker = (token, calendar) -> {
			taken.add(token + "|" + calendar.contains("PARTSTAT=ACCEPTED"));
			return true;
		};
		return new AnswerBox(new StaticListableBeanFactory(Map.of("taker", taker)).getBeanProvider(MailedAnswers.class),
				"127.0.0.1", SERVER.getImap().getPort(), false, "answers", "secret", "INBOX");
	}

	private static MimeMessage answer(String to, int padding) throws Exception {
		MimeMessage mail = new MimeMessage(Session.getInstance(new Properties()));
		mail.setFrom(new InternetAddress("somebody@example.net"));
		mail.setRecipient(RecipientType.TO, new InternetAddress(to));
		mail.setSubject("Accepted");
		MimeMultipart parts = new MimeMultipart("alternative");
		MimeBodyPart text = new MimeBodyPart();
		text.setText("Nora accepts." + "x".repeat(padding));
		parts.addBodyPart(text);
		MimeBodyPart calendar = new MimeBodyPart();
		calendar.setContent("BEGIN:VCALENDAR\r\nMETHOD:REPLY\r\nATTENDEE;PARTSTAT=ACCEPTED:x\r\nEND:VCALENDAR",
				"text/calendar; method=REPLY; charset=UTF-8");
		parts.addBodyPart(calendar);
		mail.setContent(parts);
		mail.saveChanges();
		return mail;
	}

	@Test
	void answersAreReadOnceFromTheMailboxAndNothingIsDeleted() throws Exception {
		GreenMailUser user = SERVER.setUser("answers@example.org", "answers", "secret");
		user.deliver(answer("answers+" + TOKEN + "@example.org", 0));
		user.deliver(answer("answers@example.org", 0));
		user.deliver(answer("answers+" + TOKEN + "@example.org", AnswerBox.LONGEST));
		MimeMessage plain = new MimeMessage(Session.getInstance(new Properties()));
		plain.setRecipient(RecipientType.TO, new InternetAddress("answers+" + TOKEN + "@example.org"));
		plain.setText("I can’t come, sorry", "UTF-8");
		plain.saveChanges();
		user.deliver(plain);
		List<String> taken = new ArrayList<>();
		AnswerBox box = box(taken);
		assertThat(box.read()).isEqualTo(1);
		assertThat(taken).containsExactly(TOKEN + "|true");
		assertThat(box.read()).as("what was seen is not read again").isZero();
		assertThat(SERVER.getReceivedMessages()).hasSize(4);
	}

	@Test
	void aMailboxThatCanNotBeOpenedIsNoEndOfTheJob() {
		assertThat(box(new ArrayList<>()).read()).as("there is no such user").isZero();
	}

}
