package org.leafward.feeds.content;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.leafward.accounts.PersonId;
import org.leafward.advisories.Advisories;
import org.leafward.feeds.FeedId;
import org.leafward.feeds.FeedKind;
import org.leafward.feeds.FeedOptions;
import org.leafward.feeds.FeedPart;
import org.leafward.feeds.core.FeedEntry;
import org.leafward.feeds.core.FeedWindow;
import org.leafward.feeds.store.DocumentTable.Claimed;
import org.leafward.language.Speech;
import org.leafward.register.Beds;
import org.leafward.register.SiteId;
import org.leafward.workdays.Group;
import org.leafward.workdays.GroupId;
import org.leafward.workdays.Groups;
import org.leafward.workdays.PersonWorkday;
import org.leafward.workdays.SignUpState;
import org.leafward.workdays.Workday;
import org.leafward.workdays.WorkdayId;
import org.leafward.workdays.WorkdayState;
import org.leafward.workdays.Workdays;

import static org.assertj.core.api.Assertions.assertThat;
import static org.leafward.feeds.core.CareTaskFixture.ENTRIES;
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.ArgumentMatchers.anyInt;
import static org.mockito.BDDMockito.given;
import static org.mockito.BDDMockito.then;
import static org.mockito.Mockito.mock;

/** Whose workdays and advisories come into which calendar. */
class EntrySourcesTests {

	private static final LocalDate DAY = LocalDate.of(2026, 10, 1);

	private static final Instant MADE = Instant.parse("2026-09-01T12:00:00Z");

	private final PersonId person = new PersonId(UUID.randomUUID());

	private final GroupId mill = new GroupId(UUID.randomUUID());

	private final GroupId park = new GroupId(UUID.randomUUID());

	private final Workdays workdays = mock();

	private final Advisories advisories = mock();

	private final Groups groups = mock();

	private Workday day(GroupId group, String name) {
		return new Workday(new WorkdayId(UUID.randomUUID()), group, name, DAY.plusDays(3), LocalTime.of(9, 0),
				LocalTime.NOON, ZoneOffset.UTC, "", List.of(), WorkdayState.FIXED, null, 0, 10, 0, 0, List.of(), null,
				false, MADE, MADE);
	}

	private Claimed feed(FeedKind kind, UUID what, FeedPart... parts) {
		return Claimed.of(new FeedId(UUID.randomUUID()), kind, what, this.person, new FeedOptions(Speech.USUAL,
				(parts.length == 0) ? EnumSet.allOf(FeedPart.class) : Set.of(parts), null, 30, 60), MADE);
	}

	private List<String> said(EntrySource source, Claimed feed) {
		return source.entries(feed, new FeedWindow(DAY, 30, 60), ENTRIES, "https://calendar.example.org")
			.stream()
			.map(FeedEntry::summary)
			.toList();
	}

	@Test
	void workdaysComeToTheirPeopleAndOfAGroupItsOwn() {
		given(this.workdays.ofPerson(any(), any()))
			.willReturn(List.of(new PersonWorkday(this.person, day(this.mill, "Mill"), null, false),
					new PersonWorkday(this.person, day(this.park, "Park"), SignUpState.IN, true),
					new PersonWorkday(this.person, day(this.park, "Not for me"), SignUpState.OUT, true)));
		WorkdaySource source = new WorkdaySource(this.workdays);
		assertThat(said(source, feed(FeedKind.PERSON, this.person.value()))).containsExactly("Workday: Mill",
				"Workday: Park");
		assertThat(said(source, feed(FeedKind.GROUP, this.park.value()))).containsExactly("Workday: Park");
		assertThat(said(source, feed(FeedKind.SITE, UUID.randomUUID()))).isEmpty();
		assertThat(said(source, feed(FeedKind.PERSON, this.person.value(), FeedPart.TASKS))).isEmpty();
		assertThat(said(source, feed(FeedKind.PERSON, this.person.value(), FeedPart.WORKDAYS))).hasSize(2);
	}

	@Test
	void advisoriesAreAskedForWhatTheCalendarIsAbout() {
		UUID site = UUID.randomUUID();
		AdvisorySource source = new AdvisorySource(this.advisories, new FeedSites(this.groups, mock(Beds.class)));
		given(this.advisories.currentFor(any())).willReturn(Map.of());
		said(source, feed(FeedKind.PERSON, this.person.value()));
		then(this.advisories).should().of(this.person, 30);
		said(source, feed(FeedKind.SITE, site));
		then(this.advisories).should().currentFor(List.of(new SiteId(site)));
		given(this.groups.find(this.mill)).willReturn(Optional.<Group>empty());
		said(source, feed(FeedKind.GROUP, this.mill.value()));
		said(source, feed(FeedKind.PERSON, this.person.value(), FeedPart.TASKS));
		then(this.advisories).should().of(any(), anyInt());
		then(this.advisories).shouldHaveNoMoreInteractions();
	}

}
