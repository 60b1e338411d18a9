package org.leafward.feeds.ical;

import java.nio.charset.StandardCharsets;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

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

	private static final String TODO = """
			BEGIN:VCALENDAR
			VERSION:2.0
			PRODID:-//Example//EN
			BEGIN:VTODO
			UID:one@example.org
			DTSTAMP:20260102T030405Z
			LAST-MODIFIED:20260102T030405Z
			SEQUENCE:0
			DTSTART;VALUE=DATE:20260402
			DUE;VALUE=DATE:20260403
			COMPLETED:20260402T070000Z
			PERCENT-COMPLETE:100
			STATUS:COMPLETED
			CLASS:PUBLIC
			SUMMARY:Prune
			BEGIN:VALARM
			ACTION:DISPLAY
			DESCRIPTION:Prune
			TRIGGER:PT8H
			END:VALARM
			END:VTODO
			END:VCALENDAR
			""".replace("\n", "\r\n");

	@Test
	void passesAGoodSample() {
		assertThat(IcsLinter.problems(octets(GOOD), octets(GOOD))).isEmpty();
	}

	@ParameterizedTest
	@ValueSource(strings = { "PT8H", "PT7H30M", "P1DT6H", "P1W", "PT0S" })
	void passesAGoodTodoWithAnAlarm(String trigger) {
		assertThat(IcsLinter.problems(octets(TODO.replace("PT8H", trigger)))).isEmpty();
		assertThat(IcsLinter.problems(octets(TODO.replaceAll("COMPLETED:2026.*\r\n|PERCENT.*\r\n", "")
			.replace("STATUS:COMPLETED", "STATUS:NEEDS-ACTION")))).isEmpty();
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
				arguments("dtstamp", GOOD.replace("DTSTAMP:20260102T030405Z", "DTSTAMP:20260102T030406Z")),
				arguments("sequence", GOOD.replace("SEQUENCE:0", "SEQUENCE:-1")),
				arguments("status", GOOD.replace("SUMMARY", "STATUS:NEEDS-ACTION\r\nSUMMARY")),
				arguments("status", GOOD.replace("SUMMARY", "STATUS:confirmed\r\nSUMMARY")),
				arguments("event: has DUE", GOOD.replace("SUMMARY", "DUE;VALUE=DATE:20260404\r\nSUMMARY")),
				arguments("class", GOOD.replace("SUMMARY", "CLASS:SECRET\r\nSUMMARY")),
				arguments("refresh", GOOD.replace("PT12H", "P12H")),
				arguments("refresh", GOOD.replace("PT12H", "-PT12H")),
				arguments("refresh", GOOD.replace("PT12H", "PT0S")),
				arguments("refresh: X-PUBLISHED-TTL", GOOD.replace("VERSION", "X-PUBLISHED-TTL:P1H\r\nVERSION")),
				arguments("todo: needs one DUE", TODO.replaceAll("DUE.*\r\n", "")),
				arguments("todo: needs one STATUS", TODO.replaceAll("STATUS.*\r\n", "")),
				arguments("todo: needs one UID", TODO.replaceAll("UID.*\r\n", "")),
				arguments("todo: has TRANSP", TODO.replace("SUMMARY", "TRANSP:OPAQUE\r\nSUMMARY")),
				arguments("due", TODO.replace("DUE;VALUE=DATE:20260403", "DUE;VALUE=DATE:20260402")),
				arguments("utc: COMPLETED", TODO.replace("20260402T070000Z", "20260402")),
				arguments("completed", TODO.replaceAll("COMPLETED:2026.*\r\n", "")),
				arguments("completed", TODO.replace("STATUS:COMPLETED", "STATUS:CANCELLED")),
				arguments("completed", TODO.replace("COMPLETE:100", "COMPLETE:50")),
				arguments("status", TODO.replace("STATUS:COMPLETED", "STATUS:CONFIRMED")),
				arguments("dtstamp", TODO.replace("DTSTAMP:20260102T030405Z", "DTSTAMP:20260102T030406Z")),
				arguments("uid: twice", TODO.replaceAll("(?s)(BEGIN:VTODO.*END:VTODO\r\n)", "$1$1")),
				arguments("alarm: action", TODO.replace("ACTION:DISPLAY", "ACTION:AUDIO")),
				arguments("alarm: needs one ACTION", TODO.replace("ACTION:DISPLAY\r\n", "")),
				arguments("alarm: needs one DESCRIPTION", TODO.replace("DESCRIPTION:Prune\r\n", "")),
				arguments("alarm: needs one TRIGGER", TODO.replace("TRIGGER:PT8H\r\n", "")),
				arguments("alarm: trigger", TODO.replace("PT8H", "-PT8H")),
				arguments("alarm: trigger", TODO.replace("PT8H", "P8H")),
				arguments("alarm: trigger", TODO.replace("PT8H", "20260402T080000Z")), arguments("component", ""));
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
