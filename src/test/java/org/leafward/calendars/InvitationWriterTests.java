package org.leafward.calendars;

import biweekly.Biweekly;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import biweekly.parameter.ParticipationStatus;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Arrays;
import java.util.List;
import java.util.TimeZone;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.leafward.calendars.Invitation.Method;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * Invitations, read back by another library (biweekly) and held against the tables of RFC
 * 5546 in {@code shared/itip/restrictions.csv}.
 */
class InvitationWriterTests {

	private static final Instant STAMP = Instant.parse("2026-11-26T21:00:00Z");

	private static final ZoneId ZONE = ZoneId.of("America/Chicago");

	static Invitation invitation(Method method, int sequence) {
		return new Invitation(method, "workday-1@leafward", sequence, STAMP,
				LocalDateTime.of(2026, 12, 5, 9, 0).atZone(ZONE), LocalDateTime.of(2026, 12, 5, 12, 0).atZone(ZONE),
				"Workday: Green, \"Crew\"; really", "Line one,\nline two; ünïcode\u0007 and a\u2028separator",
				"the shed\r\nATTENDEE:mailto:evil@example.org",
				new Party("Crew \"A\"\r\nX-EVIL:1", "answers+a1@example.org"),
				new Party("Nora; Field", "nora@example.org"), Answer.NONE, "https://plants.example.org/workdays/1");
	}

	/**
	 * Each morning of five years: in March 2027 the library that writes the other
	 * properties would be an hour late for a week in North America. That the zone beside
	 * it is read as it is meant is tried with readers of other people.
	 */
	@ParameterizedTest
	@ValueSource(strings = { "America/Chicago", "America/New_York", "Europe/London", "Australia/Lord_Howe",
			"America/Sao_Paulo", "Asia/Kolkata" })
	void timesAreThoseOfTheClockOnTheWallOnEachDay(String zone) {
		LocalDate first = LocalDate.of(2026, 1, 1);
		Invitation like = invitation(Method.REQUEST, 0);
		first.datesUntil(first.plusYears(5)).forEach((day) -> {
			ZonedDateTime start = day.atTime(9, 30).atZone(ZoneId.of(zone));
			String date = day.format(DateTimeFormatter.BASIC_ISO_DATE);
			assertThat(InvitationWriter
				.write(new Invitation(Method.REQUEST, like.uid(), 0, STAMP, start, start.plusHours(3), like.summary(),
						"", "", like.organizer(), like.attendee(), Answer.NONE, null))
				.lines()).contains("DTSTART;TZID=%s:%sT093000".formatted(zone, date),
						"DTEND;TZID=%s:%sT123000".formatted(zone, date));
		});
	}

	@ParameterizedTest
	@EnumSource(Method.class)
	void keepsToTheTablesOfTheStandard(Method method) throws IOException {
		String text = InvitationWriter.write(invitation(method, 2));
		List<String> lines = Arrays.asList(text.replace("\r\n ", "").split("\r\n"));
		int event = lines.indexOf("BEGIN:VEVENT");
		int checked = 0;
		for (String row : Files.readAllLines(Path.of("shared/itip/restrictions.csv"))) {
			String[] cells = row.split(",");
			if (row.startsWith("#") || !cells[0].equals(method.name())) {
				continue;
			}
			List<String> part = cells[1].equals("VEVENT") ? lines.subList(event, lines.size())
					: lines.subList(0, event);
			long found = part.stream().filter((line) -> line.split("[:;]", 2)[0].equals(cells[2])).count();
			switch (cells[3]) {
				case "1" -> assertThat(found).as(row).isEqualTo(1);
				case "0" -> assertThat(found).as(row).isZero();
				case "0-1" -> assertThat(found).as(row).isLessThanOrEqualTo(1);
				case "1+" -> assertThat(found).as(row).isPositive();
				default -> throw new IllegalStateException(row);
			}
			checked++;
		}
		assertThat(checked).isGreaterThan(9);
		assertThat(lines).contains("METHOD:" + method.name());
	}

	@Test
	void anotherLibraryReadsWhatWasMeant() {
		ICalendar read = Biweekly.parse(InvitationWriter.write(invitation(Method.REQUEST, 3))).first();
		assertThat(read.getMethod().getValue()).isEqualTo("REQUEST");
		VEvent event = read.getEvents().get(0);
		assertThat(event.getUid().getValue()).isEqualTo("workday-1@leafward");
		assertThat(event.getSequence().getValue()).isEqualTo(3);
		// 09:00 in Chicago in December is 15:00 UTC.
		assertThat(event.getDateStart().getValue().toInstant()).isEqualTo(Instant.parse("2026-12-05T15:00:00Z"));
		assertThat(event.getDateEnd().getValue().toInstant()).isEqualTo(Instant.parse("2026-12-05T18:00:00Z"));
		assertThat(event.getSummary().getValue()).isEqualTo("Workday: Green, \"Crew\"; really");
		assertThat(event.getDescription().getValue()).isEqualTo("Line one,\nline two; ünïcode and a\nseparator");
		assertThat(event.getLocation().getValue()).isEqualTo("the shed ATTENDEE:mailto:evil@example.org");
		assertThat(event.getAttendees()).hasSize(1);
		assertThat(event.getAttendees().get(0).getEmail()).isEqualTo("nora@example.org");
		assertThat(event.getAttendees().get(0).getCommonName()).isEqualTo("Nora; Field");
		assertThat(event.getAttendees().get(0).getParticipationStatus()).isEqualTo(ParticipationStatus.NEEDS_ACTION);
		assertThat(event.getAttendees().get(0).getRsvp()).isTrue();
		assertThat(event.getOrganizer().getEmail()).isEqualTo("answers+a1@example.org");
		assertThat(event.getExperimentalProperty("X-EVIL")).isNull();
		assertThat(read.validate(biweekly.ICalVersion.V2_0).getWarnings()).isEmpty();
	}

	@Test
	void cancellingSaysSoInMethodAndStatus() {
		ICalendar read = Biweekly.parse(InvitationWriter.write(invitation(Method.CANCEL, 4))).first();
		assertThat(read.getMethod().getValue()).isEqualTo("CANCEL");
		assertThat(read.getEvents().get(0).getStatus().getValue()).isEqualTo("CANCELLED");
		assertThat(read.getEvents().get(0).getSequence().getValue()).isEqualTo(4);
	}

	@Test
	void noLineIsLongerThanItMayBe() {
		byte[] octets = InvitationWriter.write(invitation(Method.REQUEST, 0)).getBytes(StandardCharsets.UTF_8);
		for (String line : new String(octets, StandardCharsets.ISO_8859_1).split("\r\n")) {
			assertThat(line.length()).as(line).isLessThanOrEqualTo(75);
		}
	}

	/**
	 * The rules of each zone as another library applies them, against Java's own, each
	 * day of ten years to come but for the days of the changes: that library is some
	 * hours late on them east of Greenwich (python-dateutil read each hour right).
	 */
	@ParameterizedTest
	@ValueSource(strings = { "America/Chicago", "America/Phoenix", "Europe/Berlin", "Europe/London", "Australia/Sydney",
			"America/Santiago", "Asia/Kolkata", "America/St_Johns", "Pacific/Auckland", "Africa/Johannesburg" })
	void zonesMeanWhatTheyMeanElsewhere(String name) {
		ZoneId zone = ZoneId.of(name);
		ZonedDateTime day = LocalDateTime.of(2027, 1, 1, 12, 0).atZone(zone);
		String event = "BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:x\r\n" + ZoneText.of(zone)
				+ "BEGIN:VEVENT\r\nUID:1\r\nDTSTAMP:20260101T000000Z\r\nDTSTART;TZID=%s:20270101T120000\r\nEND:VEVENT\r\nEND:VCALENDAR\r\n"
					.formatted(name);
		// Their own rules, not those of Java's zone with the same name.
		ICalendar read = Biweekly.parse(event).first();
		TimeZone theirs = new biweekly.io.ICalTimeZone(read.getTimezoneInfo().getComponents().iterator().next());
		int compared = 0;
		for (int i = 0; i < 3650; i++) {
			Instant noon = day.plusDays(i).toInstant();
			if (zone.getRules().getOffset(noon.minusSeconds(86_400)) != zone.getRules()
				.getOffset(noon.plusSeconds(86_400))) {
				continue;
			}
			assertThat(theirs.getOffset(noon.toEpochMilli()) / 1000).as("%s %s", name, noon)
				.isEqualTo(zone.getRules().getOffset(noon).getTotalSeconds());
			compared++;
		}
		assertThat(compared).isGreaterThan(3500);
	}

}
