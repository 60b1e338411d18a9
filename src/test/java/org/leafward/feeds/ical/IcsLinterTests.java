package org.leafward.feeds.ical;

import java.nio.charset.StandardCharsets;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

/** The linter is worth what it catches: one broken sample for each rule. */
class IcsLinterTests {

	private static final String GOOD = """
			BEGIN:VCALENDAR
			VERSION:2.0
			PRODID:-//Example//EN
			REFRESH-INTERVAL;VALUE=DURATION:PT12H
			BEGIN:VEVENT
			UID:one@example.org
			DTSTAMP:20260102T030405Z
			LAST-MODIFIED:20260102T030405Z
			SEQUENCE:0
			DTSTART;VALUE=DATE:20260402
			DTEND;VALUE=DATE:20260403
			SUMMARY:Prune\\, then rest
			CATEGORIES:Plant care,To do
			END:VEVENT
			END:VCALENDAR
			""".replace("\n", "\r\n");

	@Test
	void passesAGoodSample() {
		assertThat(IcsLinter.problems(octets(GOOD), octets(GOOD))).isEmpty();
	}

	static Stream<Arguments> broken() {
		return Stream.of(arguments("line break", GOOD.replace("\r\n", "\n")),
				arguments("line break", GOOD.replace("SEQUENCE:0\r\n", "SEQUENCE:0\r\r\n")),
				arguments("line break", GOOD.stripTrailing()),
				arguments("length", GOOD.replace("Prune", "Prune" + "x".repeat(60))),
				arguments("length", GOOD.replace("Prune", "ü".repeat(30))),
				arguments("fold: empty continuation", GOOD.replace("SEQUENCE", " \r\nSEQUENCE")),
				arguments("fold: empty line", GOOD.replace("SEQUENCE", "\r\nSEQUENCE")),
				arguments("code point: U+2028", GOOD.replace("rest", "re\u2028st")),
				arguments("code point: U+0085", GOOD.replace("rest", "re\u0085st")),
				arguments("code point: U+0007", GOOD.replace("rest", "re\u0007st")),
				arguments("code point: U+FEFF", "\uFEFF" + GOOD),
				arguments("content line", GOOD.replace("SEQUENCE:0", "SEQUENCE 0")),
				arguments("nesting", GOOD.replace("END:VEVENT\r\n", "")),
				arguments("nesting", GOOD.replace("END:VCALENDAR\r\n", "")),
				arguments("component", GOOD.replaceAll("(?s)BEGIN:VEVENT.*END:VEVENT\r\n", "")),
				arguments("method", GOOD.replace("VERSION", "METHOD:PUBLISH\r\nVERSION")),
				arguments("text", GOOD.replace("\\, then", ", then")),
				arguments("text", GOOD.replace("\\, then", "; then")),
				arguments("text", GOOD.replace("\\, then", "\\: then")),
				arguments("text", GOOD.replace("\\, then", "\\N then")),
				arguments("text", GOOD.replace("rest", "rest\\")),
				arguments("categories", GOOD.replace("care,", "care\\,")),
				arguments("utc: DTSTAMP", GOOD.replace("DTSTAMP:20260102T030405Z", "DTSTAMP:20260102T030405")),
				arguments("utc: LAST", GOOD.replace("LAST-MODIFIED:20260102T030405Z", "LAST-MODIFIED:20260102")),
				arguments("refresh", GOOD.replace("INTERVAL;VALUE=DURATION:", "INTERVAL:VALUE=DURATION:")),
				arguments("event: needs one DTSTAMP", GOOD.replaceAll("DTSTAMP.*\r\n", "")),
				arguments("event: needs one UID", GOOD.replaceAll("UID:.*\r\n", "")),
				arguments("uid: twice", GOOD.replaceAll("(?s)(BEGIN:VEVENT.*END:VEVENT\r\n)", "$1$1")),
				arguments("end", GOOD.replace("20260403", "20260402")),
				arguments("tzid",
						GOOD.replace("DTSTART;VALUE=DATE:20260402", "DTSTART;TZID=Europe/Berlin:20260402T080000")),
				arguments("component", ""));
	}

	@ParameterizedTest(name = "{0} ({index})")
	@MethodSource
	void broken(String rule, String sample) {
		assertThat(IcsLinter.problems(octets(sample))).anyMatch((problem) -> problem.startsWith(rule));
	}

	@Test
	void catchesAFoldInsideACharacter() {
		byte[] octets = octets(GOOD.replace("Prune", "\u00fc"));
		String latin = new String(octets, StandardCharsets.ISO_8859_1);
		byte[] split = latin.replace("\u00c3\u00bc", "\u00c3\r\n \u00bc").getBytes(StandardCharsets.ISO_8859_1);
		assertThat(IcsLinter.problems(split)).anyMatch((problem) -> problem.startsWith("utf-8"));
	}

	@Test
	void catchesAFeedThatIsTooLarge() {
		String padding = ("X-PAD:" + "x".repeat(60) + "\r\n").repeat(14_000);
		assertThat(IcsLinter.problems(octets(GOOD.replace("VERSION", padding + "VERSION"))))
			.anyMatch((problem) -> problem.startsWith("size"));
	}

	@Test
	void catchesRendersThatDiffer() {
		assertThat(IcsLinter.problems(octets(GOOD), octets(GOOD.replace("SEQUENCE:0", "SEQUENCE:1"))))
			.containsExactly("two renders differ from octet " + (GOOD.indexOf("SEQUENCE:0") + 9));
	}

	private static byte[] octets(String text) {
		return text.getBytes(StandardCharsets.UTF_8);
	}

}
