package org.leafward.reminders.channel.mail;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MailSettingsTests {

	private static final String FROM = "Leafward <reminders@example.org>";

	private static final UUID MAIL = UUID.fromString("0b0e8a52-6d0c-4b9e-8f61-d2f1f2a4c7aa");

	@Test
	void whatIsBlankIsTheSender() {
		MailSettings settings = MailSettings.of(FROM, " ", "");
		assertThat(settings.replyTo()).isNull();
		assertThat(settings.bounces()).isNull();
		assertThat(settings.from().domain()).isEqualTo("example.org");
	}

	/** RFC 5321 section 4.5.3.1.1: 64 octets before the at sign. */
	@Test
	void theLongestReturnPathIsShortEnough() {
		ReturnPath longest = ReturnPath.of("b".repeat(31) + "@example.org");
		assertThat(longest.address(MAIL).indexOf('@')).isEqualTo(64);
		assertThat(longest.mail(longest.address(MAIL))).contains(MAIL);
	}

	@ParameterizedTest
	@ValueSource(strings = { "bounce+0b0e8a526d0c4b9e8f61d2f1f2a4c7aa@Mail.example.org",
			"BOUNCE+0B0E8A526D0C4B9E8F61D2F1F2A4C7AA@MAIL.EXAMPLE.ORG",
			"Somebody <bounce+0b0e8a526d0c4b9e8f61d2f1f2a4c7aa@mail.example.org>, x@example.org" })
	void aReturnPathIsKnownAgain(String text) {
		assertThat(ReturnPath.of("bounce@mail.example.org").mail(text)).contains(MAIL);
	}

	@ParameterizedTest
	@ValueSource(strings = { "", "bounce@mail.example.org", "bounce+0b0e8a52@mail.example.org",
			"bounce+0b0e8a526d0c4b9e8f61d2f1f2a4c7aa@mail.example.org.evil.example",
			"xbounce+0b0e8a526d0c4b9e8f61d2f1f2a4c7aa@mail.example.org",
			"bounce+0b0e8a526d0c4b9e8f61d2f1f2a4c7aab@mail.example.org",
			"bounce+0b0e8a526d0c4b9e8f61d2f1f2a4c7ag@mail.example.org",
			"bounce+0b0e8a526d0c4b9e8f61d2f1f2a4c7aa@mailxexample.org" })
	void whatIsNoneOfOursIsNone(String text) {
		assertThat(ReturnPath.of("bounce@mail.example.org").mail(text)).isEmpty();
	}

	@ParameterizedTest
	@ValueSource(strings = { "bounce", "a+b@example.org", "<bounce@example.org>", "a b@example.org", "@example.org",
			"bbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbb@example.org", "bounce@example.org\r\nx" })
	void aReturnPathThatIsNoneIsTold(String address) {
		assertThatIllegalArgumentException().isThrownBy(() -> MailSettings.of(FROM, "", address))
			.withMessageContaining("leafward.mail.bounces");
	}

	@ParameterizedTest
	@ValueSource(strings = { "help", "help@", "Help <help@example.org", "a@b, c@d" })
	void aPlaceForAnswersThatIsNoneIsTold(String address) {
		assertThatIllegalArgumentException().isThrownBy(() -> MailSettings.of(FROM, address, ""))
			.withMessageContaining("leafward.mail.reply-to");
	}

}
