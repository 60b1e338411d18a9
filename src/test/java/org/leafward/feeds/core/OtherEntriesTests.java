package org.leafward.feeds.core;

import biweekly.Biweekly;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.leafward.accounts.PersonId;
import org.leafward.advisories.Advisory;
import org.leafward.advisories.AdvisoryId;
import org.leafward.advisories.AdvisoryState;
import org.leafward.advisories.AdvisoryText;
import org.leafward.advisories.AlertFacts;
import org.leafward.advisories.Area;
import org.leafward.advisories.Bilingual;
import org.leafward.advisories.Category;
import org.leafward.advisories.Certainty;
import org.leafward.advisories.PlantChoice;
import org.leafward.advisories.Severity;
import org.leafward.advisories.Urgency;
import org.leafward.feeds.core.FeedEntry.Standing;
import org.leafward.feeds.ical.CalendarWriter;
import org.leafward.feeds.ical.CalendarWriter.Before;
import org.leafward.feeds.ical.CalendarWriter.Component;
import org.leafward.feeds.ical.CalendarWriter.Head;
import org.leafward.feeds.ical.IcsLinter;
import org.leafward.language.Language;
import org.leafward.register.SiteId;
import org.leafward.workdays.GroupId;
import org.leafward.workdays.GroupSite;
import org.leafward.workdays.SignUpState;
import org.leafward.workdays.Workday;
import org.leafward.workdays.WorkdayId;
import org.leafward.workdays.WorkdayState;

import static org.assertj.core.api.Assertions.assertThat;
import static org.leafward.feeds.core.CareTaskFixture.CHANGED;
import static org.leafward.feeds.core.CareTaskFixture.ENTRIES;

/** Workdays and advisories in calendars, read back by another library. */
class OtherEntriesTests {

	private static final String BASE = "https://calendar.example.org";

	private static final ZoneId ZONE = ZoneId.of("America/Chicago");

	private static final Instant MADE = Instant.parse("2026-09-01T12:00:00Z");

	private final WorkdayEntries workdays = new WorkdayEntries(ENTRIES, BASE);

	private final AdvisoryEntries advisories = new AdvisoryEntries(ENTRIES, Language.ENGLISH, BASE);

	private static Workday workday(WorkdayState state, String because, LocalDate rain) {
		PersonId owner = new PersonId(new UUID(1, 1));
		return new Workday(new WorkdayId(new UUID(2, 2)), new GroupId(new UUID(3, 3)), "Friends, of the; Mill",
				LocalDate.of(2026, 11, 7), LocalTime.of(9, 0), LocalTime.of(12, 30), ZONE, "Mill gate, north",
				List.of(new GroupSite(new SiteId(new UUID(4, 4)), owner, "Mill garden", "near 45.1, -90.2", false)),
				state, because, 3, 12, 4, 0, List.of(), rain, false, MADE, MADE);
	}

	private static Advisory advisory(AdvisoryState state) {
		AdvisoryText english = new AdvisoryText("Freeze tonight; cover what is tender",
				"A low of 28 °F (-2 °C) is forecast.", "Alder County", "Tonight to Saturday morning",
				"Tender plants die back.", "Cover them before dusk, take the covers off in the morning.");
		AdvisoryText spanish = new AdvisoryText("Helada esta noche: cubra lo delicado",
				"Se espera una mínima de -2 °C.", "Condado de Alder", "Esta noche hasta el sábado",
				"Las plantas delicadas mueren.", "Cúbralas antes del anochecer.");
		return new Advisory(new AdvisoryId(new UUID(5, 5)), new UUID(6, 6), 2, state, null,
				new Bilingual("Freeze", "Helada"),
				new AlertFacts(Category.MET, Set.of(), Urgency.EXPECTED, Severity.MODERATE, Certainty.LIKELY),
				Area.of(List.of("alder")), PlantChoice.EVERYTHING, Set.of(), MADE, MADE.plusSeconds(600),
				Instant.parse("2026-10-03T01:00:00Z"), Instant.parse("2026-10-03T15:00:00Z"), ZONE, english, spanish);
	}

	private static byte[] write(FeedEntry... entries) {
		return new CalendarWriter()
			.write(new Head("Plant care", "About.", "en"), List.of(entries), Component.EVENT, null,
					Before.nothing(CHANGED))
			.octets();
	}

	private static VEvent read(byte[] octets) {
		assertThat(IcsLinter.problems(octets)).isEmpty();
		ICalendar calendar = Biweekly.parse(new String(octets, StandardCharsets.UTF_8)).first();
		assertThat(calendar.getEvents()).hasSize(1);
		return calendar.getEvents().get(0);
	}

	/**
	 * RFC 5545 sections 3.6.5 and 3.8.2.4; November 7 is behind the end of summer time.
	 */
	@Test
	void aWorkdayHasItsHoursInItsZone() {
		FeedEntry entry = this.workdays.of(workday(WorkdayState.FIXED, null, LocalDate.of(2026, 11, 8)),
				SignUpState.IN);
		byte[] octets = write(entry);
		String text = new String(octets, StandardCharsets.UTF_8);
		assertThat(text).contains("DTSTART;TZID=America/Chicago:20261107T090000",
				"BEGIN:VTIMEZONE\r\nTZID:America/Chicago", "TRANSP:OPAQUE");
		VEvent read = read(octets);
		assertThat(read.getDateStart().getValue().toInstant()).isEqualTo(Instant.parse("2026-11-07T15:00:00Z"));
		assertThat(read.getDateEnd().getValue().toInstant()).isEqualTo(Instant.parse("2026-11-07T18:30:00Z"));
		assertThat(read.getLocation().getValue()).isEqualTo("Mill gate, north");
		assertThat(read.getSummary().getValue()).isEqualTo("Workday: Friends, of the; Mill");
		assertThat(read.getUid().getValue()).isEqualTo("workday-" + new UUID(2, 2) + "@leafward");
		assertThat(read.getDescription().getValue()).isEqualTo("""
				You have a place.
				Sites: Mill garden
				If the weather forbids it: Sun 8 Nov 2026
				Answer, tasks and tools: https://calendar.example.org/workdays/00000000-0000-0002-0000-000000000002""");
	}

	@Test
	void aWorkdayThatIsCalledOffSaysWhyAndKeepsNoTime() {
		FeedEntry entry = this.workdays.of(workday(WorkdayState.CALLED_OFF, "Lightning is likely.", null),
				SignUpState.IN);
		VEvent read = read(write(entry));
		assertThat(read.getSummary().getValue()).isEqualTo("Called off: Friends, of the; Mill");
		assertThat(read.getStatus().getValue()).isEqualTo("CANCELLED");
		assertThat(read.getTransparency().getValue()).isEqualTo("TRANSPARENT");
		assertThat(read.getDescription().getValue()).startsWith("Called off: Lightning is likely.\n");
	}

	/** From 20:00 on 2 October to 10:00 on the 3rd where it holds: both days. */
	@Test
	void anAdvisoryStandsOnItsDays() {
		FeedEntry entry = this.advisories.of(advisory(AdvisoryState.AHEAD));
		assertThat(entry.window().from()).isEqualTo(LocalDate.of(2026, 10, 2));
		assertThat(entry.window().to()).isEqualTo(LocalDate.of(2026, 10, 3));
		VEvent read = read(write(entry));
		assertThat(read.getSummary().getValue()).isEqualTo("Advisory: Freeze tonight; cover what is tender");
		assertThat(read.getDescription().getValue()).contains("A low of 28 °F (-2 °C) is forecast.",
				"What to do: Cover them before dusk", "https://calendar.example.org/advisories/");
		assertThat(this.advisories.of(advisory(AdvisoryState.CANCELLED)).standing()).isEqualTo(Standing.CANCELLED);
	}

	@Test
	void anAdvisoryIsReadInSpanish() {
		assertThat(new AdvisoryEntries(ENTRIES, Language.SPANISH, BASE).of(advisory(AdvisoryState.AHEAD)).summary())
			.endsWith("Helada esta noche: cubra lo delicado");
	}

	@Test
	void whateverItSaysItStaysBelowTheSizeOfADescription() {
		AdvisoryText long_ = new AdvisoryText("Ü".repeat(140), "Ü".repeat(2000), "Ü".repeat(2000), "Ü".repeat(2000),
				"Ü".repeat(2000), "Ü".repeat(2000));
		Advisory plain = advisory(AdvisoryState.AHEAD);
		Advisory wordy = new Advisory(plain.id(), plain.message(), 1, plain.state(), null, plain.event(), plain.facts(),
				plain.area(), plain.plants(), Set.of(), MADE, MADE, plain.onset(), plain.expires(), ZONE, long_, null);
		FeedEntry entry = this.advisories.of(wordy);
		assertThat(entry.description().getBytes(StandardCharsets.UTF_8))
			.hasSizeLessThanOrEqualTo(TaskEntries.DESCRIPTION);
		assertThat(entry.description()).endsWith(plain.path());
		assertThat(IcsLinter.problems(write(entry))).isEmpty();
	}

}
