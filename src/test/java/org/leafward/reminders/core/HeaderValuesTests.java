package org.leafward.reminders.core;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

class HeaderValuesTests {

	/** RFC 5322 section 2.2: a header's body has no CR and no LF. */
	@ParameterizedTest
	@ValueSource(strings = { "Ada\r\nBcc: x@example.org", "Ada\nBcc: x@example.org", "Ada\rBcc: x@example.org",
			"Ada\u0085Bcc: x@example.org", "Ada\u2028Bcc: x@example.org", " Ada \t\u0000\r\n Bcc: x@example.org\n" })
	void areOneLine(String name) {
		assertThat(OneLine.of(name)).isEqualTo("Ada Bcc: x@example.org");
	}

	/** UAX #9 sections 2.1 to 2.4: these act on the words behind them. */
	@Test
	void turnNothingAround() {
		assertThat(OneLine.of("a\u202Egpj.exe\u202C b")).isEqualTo("agpj.exe b");
		assertThat(OneLine.of("\u2066\u2067\u2068a\u2069\uFEFF")).isEqualTo("a");
		assertThat(OneLine.of("half \uD83C char \uD83C\uDF31")).isEqualTo("half char \uD83C\uDF31");
		// A mark without power over others, and a space that isn't to be broken.
		assertThat(OneLine.of("a\u200Eb 5\u00A0mm")).isEqualTo("a\u200Eb 5\u00A0mm");
	}

	@Test
	void areSetApartWhenTheyRunTheOtherWay() {
		assertThat(OneLine.apart("jardín №7 🌱")).isEqualTo("jardín №7 🌱");
		assertThat(OneLine.apart("גן 42")).isEqualTo("\u2068גן 42\u2069");
		assertThat(OneLine.apart("plot حديقة")).isEqualTo("\u2068plot حديقة\u2069");
	}

	@Test
	void areCutBetweenCharacters() {
		assertThat(OneLine.of("abcdef", 6)).isEqualTo("abcdef");
		assertThat(OneLine.of("abcdef", 5)).isEqualTo("abcd…");
		assertThat(OneLine.of("ab cdef", 4)).isEqualTo("ab…");
		// A character outside the Basic Multilingual Plane is two chars in Java.
		assertThat(OneLine.of("\uD83C\uDF31\uD83C\uDF31\uD83C\uDF31", 2)).isEqualTo("\uD83C\uDF31…");
	}

	@ParameterizedTest
	@CsvSource({ "Leafward <reminders@example.org>,example.org", "reminders@localhost,localhost",
			"Green Group Süd <a.b+c@mail.example.org>,mail.example.org" })
	void ofASenderGiveItsDomain(String line, String domain) {
		assertThat(SenderAddress.of(line)).isEqualTo(new SenderAddress(line, domain));
	}

	@ParameterizedTest
	@ValueSource(
			strings = { "", "Leafward", "a@b@c", "Leafward <a@b>, Other <c@d>", "Leafward <a@b", "Leaf\nward <a@b>" })
	void ofASenderMustBeOneAddress(String line) {
		assertThatIllegalArgumentException().isThrownBy(() -> SenderAddress.of(line))
			.withMessageContaining("leafward.mail.from");
	}

}
