package org.leafward.reminders.channel.mail;

import java.net.DatagramSocket;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.leafward.reminders.ScriptedSmtp;
import org.leafward.reminders.SenderFixture;
import org.leafward.reminders.channel.mail.MailFinding.Level;
import org.leafward.support.SettableClock;

import static org.assertj.core.api.Assertions.assertThat;

@Timeout(60)
class MailDoctorTests {

	private static final SettableClock CLOCK = new SettableClock(MailChannels.MADE);

	private static MailDoctor doctor(int port, String home, MailSettings settings, String names) {
		return new MailDoctor(new SmtpLines((port > 0) ? SenderFixture.to(port) : SenderFixture.none(), 1, CLOCK),
				new MailChannels.FixedLinks(home), settings, new DnsTexts(names));
	}

	private static Map<String, Level> levels(List<MailFinding> found) {
		return found.stream().collect(Collectors.toMap(MailFinding::what, MailFinding::level));
	}

	@Test
	void allIsWell() throws Exception {
		try (ScriptedSmtp server = new ScriptedSmtp();
				NameServer names = new NameServer(Map.of("mail.example.org", List.of("google-site=1", "v=spf1 mx -all"),
						"_dmarc.example.org", List.of("v=DMARC1; p=none; rua=mailto:dmarc@example.org")))) {
			MailDoctor doctor = doctor(server.port(), "https://plants.example.org",
					MailSettings.of("Gardens <reminders@mail.example.org>", "", "bounce@mail.example.org"),
					names.address());
			assertThat(doctor.settings()).hasSize(4).allMatch((one) -> one.level() == Level.GOOD);
			assertThat(server.connections()).isZero();
			List<MailFinding> outside = doctor.outside();
			assertThat(levels(outside)).isEqualTo(Map.of("Connection", Level.GOOD, "Who may send (SPF)", Level.GOOD,
					"What to do with forged mail (DMARC)", Level.GOOD, "Signature", Level.LOOK));
			assertThat(outside).anyMatch((one) -> one.words().contains("mail.example.org: v=spf1 mx -all"))
				// RFC 7489 section 6.6.3: found at the domain above.
				.anyMatch((one) -> one.words().startsWith("example.org: v=DMARC1; p=none"));
			assertThat(server.commands()).last().isEqualTo("QUIT");
		}
	}

	@Test
	void aTrialIsToldWhatItLacks() {
		MailDoctor doctor = doctor(0, "http://localhost:8080",
				MailSettings.of("Leafward <reminders@localhost>", "", ""), "dns://127.0.0.1:1");
		assertThat(levels(doctor.settings())).isEqualTo(Map.of("Mail server", Level.BAD, "Sender", Level.BAD,
				"Leaving by one click", Level.LOOK, "Return address", Level.LOOK));
		// Nobody is asked about a domain that is none.
		assertThat(doctor.outside()).isEmpty();
	}

	@Test
	void recordsThatAreMissingOrTwiceAreTold() throws Exception {
		MailSettings settings = MailSettings.of("reminders@example.org", "", "");
		try (NameServer names = new NameServer(
				Map.of("example.org", List.of("v=spf1 a -all", "v=spf1 mx -all", "v=spf10")))) {
			assertThat(levels(doctor(0, "https://a.example", settings, names.address()).outside()))
				.containsEntry("Who may send (SPF)", Level.BAD)
				.containsEntry("What to do with forged mail (DMARC)", Level.LOOK);
		}
		try (NameServer names = new NameServer(Map.of())) {
			assertThat(levels(doctor(0, "https://a.example", settings, names.address()).outside()))
				.containsEntry("Who may send (SPF)", Level.BAD);
		}
	}

	@Test
	void aReturnAddressElsewhereIsTold() {
		MailSettings settings = MailSettings.of("reminders@example.org", "", "bounce@example.net");
		assertThat(levels(doctor(0, "https://a.example", settings, "dns:").settings())).containsEntry("Return address",
				Level.LOOK);
	}

	@Test
	void whoDoesNotAnswerIsWaitedForWithinBounds() throws Exception {
		try (ServerSocket gone = new ServerSocket(0, 1, InetAddress.getLoopbackAddress());
				DatagramSocket silent = new DatagramSocket(0, InetAddress.getLoopbackAddress())) {
			int port = gone.getLocalPort();
			gone.close();
			MailDoctor doctor = doctor(port, "https://a.example", MailSettings.of("reminders@example.org", "", ""),
					"dns://127.0.0.1:" + silent.getLocalPort());
			assertThat(levels(doctor.outside())).containsEntry("Connection", Level.BAD)
				.containsEntry("Who may send (SPF)", Level.LOOK)
				.containsEntry("What to do with forged mail (DMARC)", Level.LOOK);
		}
	}

}
