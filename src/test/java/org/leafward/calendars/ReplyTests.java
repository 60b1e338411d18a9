package org.leafward.calendars;

import biweekly.Biweekly;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import biweekly.parameter.ParticipationStatus;
import biweekly.property.Attendee;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import static org.assertj.core.api.Assertions.assertThat;

/** Replies as another library (biweekly) writes them, and as programs in the wild do. */
class ReplyTests {

	private static String written(ParticipationStatus status, String method) {
		ICalendar calendar = new ICalendar();
		calendar.setMethod(method);
		VEvent event = new VEvent();
		event.setUid("workday-1@leafward");
		event.setSequence(2);
		Attendee attendee = new Attendee("Nora, with: colons; and more", "nora@example.org");
		attendee.setParticipationStatus(status);
		event.addAttendee(attendee);
		event.setOrganizer("answers@example.org");
		calendar.addEvent(event);
		return Biweekly.write(calendar).go();
	}

	@ParameterizedTest
	@CsvSource({ "ACCEPTED,YES", "TENTATIVE,MAYBE", "DECLINED,NO" })
	void readsWhatAnotherLibraryWrites(String status, Answer answer) {
		assertThat(Reply.read(written(ParticipationStatus.get(status), "REPLY")))
			.isEqualTo(Optional.of(new Reply("workday-1@leafward", 2, answer)));
	}

	@ParameterizedTest
	@ValueSource(strings = { "REQUEST", "COUNTER", "REFRESH", "CANCEL", "PUBLISH" })
	void anythingElseIsNoReply(String method) {
		assertThat(Reply.read(written(ParticipationStatus.ACCEPTED, method))).isEmpty();
	}

	@Test
	void foldedLinesSmallLettersAndAlarmsDoNotConfuseIt() {
		assertThat(Reply.read("""
				BEGIN:VCALENDAR
				method:reply
				BEGIN:VTIMEZONE
				TZID:X
				BEGIN:STANDARD
				DTSTART:19700101T000000
				END:STANDARD
				END:VTIMEZONE
				BEGIN:VEVENT
				UID:workday-
				 1@leafward
				ATTENDEE;CN="a;PARTSTAT=DECLINED:b";PART
				 STAT=ACCEPTED:mailto:nora@example.org
				BEGIN:VALARM
				UID:other
				ATTENDEE;PARTSTAT=DECLINED:mailto:x@example.org
				END:VALARM
				END:VEVENT
				END:VCALENDAR
				""")).isEqualTo(Optional.of(new Reply("workday-1@leafward", 0, Answer.YES)));
	}

	@Test
	void twoPeopleTwoEventsOrTooMuchAreNoReply() {
		String one = written(ParticipationStatus.ACCEPTED, "REPLY");
		String event = one.substring(one.indexOf("BEGIN:VEVENT"), one.indexOf("END:VCALENDAR"));
		assertThat(Reply.read(one.replace("END:VCALENDAR", event + "END:VCALENDAR"))).isEmpty();
		assertThat(Reply.read(one.replace("END:VEVENT", "ATTENDEE;PARTSTAT=DECLINED:mailto:a@b.c\r\nEND:VEVENT")))
			.isEmpty();
		assertThat(Reply.read(one.replace("END:VEVENT", "X-A:" + "a".repeat(Reply.LONGEST) + "\r\nEND:VEVENT")))
			.isEmpty();
		assertThat(Reply.read("")).isEmpty();
		assertThat(Reply.read("BEGIN:A\nBEGIN:A\nBEGIN:A\nBEGIN:A\nBEGIN:A\nMETHOD:REPLY")).isEmpty();
	}

}
