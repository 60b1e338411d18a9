package org.leafward.feeds.on;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.leafward.accounts.PersonId;
import org.leafward.advisories.Advisories;
import org.leafward.advisories.AdvisoryId;
import org.leafward.advisories.AdvisoryIssued;
import org.leafward.care.PlanChanged;
import org.leafward.feeds.FeedDocuments;
import org.leafward.feeds.FeedKind;
import org.leafward.feeds.RebuildWorker;
import org.leafward.register.Bed;
import org.leafward.register.BedId;
import org.leafward.register.Beds;
import org.leafward.register.SiteId;
import org.leafward.workdays.Group;
import org.leafward.workdays.GroupId;
import org.leafward.workdays.Groups;
import org.leafward.workdays.Member;
import org.leafward.workdays.PlanTerms;
import org.leafward.workdays.SignUpChanged;
import org.leafward.workdays.WorkdayCalledOff;

import static org.mockito.ArgumentMatchers.any;
import static org.mockito.ArgumentMatchers.anyInt;
import static org.mockito.ArgumentMatchers.eq;
import static org.mockito.BDDMockito.given;
import static org.mockito.BDDMockito.then;
import static org.mockito.Mockito.mock;

/** Whose calendars become stale by what happens below. */
class FeedListenersTests {

	private static final Instant NOW = Instant.parse("2026-11-25T12:00:00Z");

	private final FeedDocuments documents = mock();

	private final RebuildWorker worker = mock();

	private final Groups groups = mock();

	private final Advisories advisories = mock();

	private final Beds beds = mock();

	private final FeedListeners listeners = new FeedListeners(this.documents, this.worker, this.groups, this.advisories,
			this.beds);

	private final PersonId ada = new PersonId(new UUID(0, 1));

	private final PersonId ben = new PersonId(new UUID(0, 2));

	@Test
	void aPlanReachesTheBedsAndGroupsOfItsSite() {
		SiteId site = new SiteId(UUID.randomUUID());
		BedId bed = new BedId(UUID.randomUUID());
		GroupId group = new GroupId(UUID.randomUUID());
		given(this.beds.ofSite(site)).willReturn(List.of(new Bed(bed, site, "North", null, null, null)));
		given(this.groups.lookingAfter(site)).willReturn(List.of(group));
		this.listeners.on(new PlanChanged(site.value(), this.ada.value(), 1, 0, 0, NOW));
		then(this.documents).should().planChanged(site.value(), this.ada.value());
		then(this.documents).should().changed(FeedKind.BED, bed.value());
		then(this.documents).should().changed(FeedKind.GROUP, group.value());
		then(this.documents).shouldHaveNoMoreInteractions();
		then(this.worker).should().soon();
	}

	@Test
	void aWorkdayReachesAllMembersAndASignUpOnePerson() {
		GroupId id = new GroupId(UUID.randomUUID());
		given(this.groups.find(id))
			.willReturn(
					Optional.of(
							new Group(id, "Crew", "", ZoneOffset.UTC, "", Set.of(), LocalTime.of(9, 0), LocalTime.NOON,
									9, Set.of(), PlanTerms.USUAL,
									List.of(new Member(this.ada, "Ada", true, Set.of(), Set.of(), Set.of()),
											new Member(this.ben, "Ben", false, Set.of(), Set.of(), Set.of())),
									List.of())));
		this.listeners.on(new WorkdayCalledOff(UUID.randomUUID(), id.value(), LocalDate.of(2026, 11, 28), NOW));
		then(this.documents).should().changedFor(List.of(this.ada, this.ben), false);
		then(this.documents).should().changed(FeedKind.GROUP, id.value());
		this.listeners.on(new SignUpChanged(UUID.randomUUID(), id.value(), this.ben.value(), "IN", NOW));
		then(this.documents).should().changedFor(List.of(this.ben), true);
	}

	@Test
	void anAdvisoryReachesThoseConcernedPageByPage() {
		UUID advisory = UUID.randomUUID();
		AdvisoryId id = new AdvisoryId(advisory);
		given(this.advisories.concerned(eq(id), any(), anyInt())).willReturn(List.of(this.ada), List.of(this.ben),
				List.of());
		this.listeners.on(new AdvisoryIssued(advisory, UUID.randomUUID(), NOW, NOW, NOW.plusSeconds(3600), "Minor",
				Set.of("us-ia-alder-county")));
		then(this.advisories).should().concerned(eq(id), eq(null), anyInt());
		then(this.advisories).should().concerned(eq(id), eq(this.ada), anyInt());
		then(this.documents).should().changedFor(List.of(this.ada), true);
		then(this.documents).should().changedFor(List.of(this.ben), true);
		then(this.documents).should().changed(FeedKind.GROUP, null);
	}

}
