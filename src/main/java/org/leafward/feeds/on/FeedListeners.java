package org.leafward.feeds.on;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.advisories.Advisories;
import org.leafward.advisories.AdvisoryCancelled;
import org.leafward.advisories.AdvisoryId;
import org.leafward.advisories.AdvisoryIssued;
import org.leafward.advisories.AdvisoryUpdated;
import org.leafward.care.PlanChanged;
import org.leafward.feeds.FeedDocuments;
import org.leafward.feeds.FeedKind;
import org.leafward.feeds.RebuildWorker;
import org.leafward.register.Beds;
import org.leafward.register.SiteId;
import org.leafward.workdays.GroupId;
import org.leafward.workdays.Groups;
import org.leafward.workdays.Member;
import org.leafward.workdays.SignUpChanged;
import org.leafward.workdays.WorkdayCalledOff;
import org.leafward.workdays.WorkdayFixed;
import org.leafward.workdays.WorkdayMoved;
import org.springframework.modulith.events.ApplicationModuleListener;
import org.springframework.stereotype.Component;

/** Keeps documents in step with plans, workdays and advisories. */
@Component
class FeedListeners {

	/** Whose calendars are marked by one statement. */
	private static final int AT_ONCE = 2_000;

	private final FeedDocuments documents;

	private final RebuildWorker worker;

	private final Groups groups;

	private final Advisories advisories;

	private final Beds beds;

	FeedListeners(FeedDocuments documents, RebuildWorker worker, Groups groups, Advisories advisories, Beds beds) {
		this.documents = documents;
		this.worker = worker;
		this.groups = groups;
		this.advisories = advisories;
		this.beds = beds;
	}

	@ApplicationModuleListener(id = "feeds.plan-changed")
	void on(PlanChanged event) {
		this.documents.planChanged(event.site(), event.person());
		SiteId site = new SiteId(event.site());
		this.beds.ofSite(site).forEach((bed) -> this.documents.changed(FeedKind.BED, bed.id().value()));
		this.groups.lookingAfter(site).forEach((group) -> this.documents.changed(FeedKind.GROUP, group.value()));
		this.worker.soon();
	}

	@ApplicationModuleListener(id = "feeds.workday-fixed")
	void on(WorkdayFixed event) {
		group(event.group());
	}

	@ApplicationModuleListener(id = "feeds.workday-moved")
	void on(WorkdayMoved event) {
		group(event.group());
	}

	@ApplicationModuleListener(id = "feeds.workday-called-off")
	void on(WorkdayCalledOff event) {
		group(event.group());
	}

	@ApplicationModuleListener(id = "feeds.sign-up-changed")
	void on(SignUpChanged event) {
		this.documents.changedFor(List.of(new PersonId(event.person())), true);
		this.worker.soon();
	}

	@ApplicationModuleListener(id = "feeds.advisory-issued")
	void on(AdvisoryIssued event) {
		concerned(event.advisory());
	}

	@ApplicationModuleListener(id = "feeds.advisory-updated")
	void on(AdvisoryUpdated event) {
		concerned(event.advisory());
	}

	@ApplicationModuleListener(id = "feeds.advisory-cancelled")
	void on(AdvisoryCancelled event) {
		concerned(event.advisory());
	}

	private void group(UUID group) {
		this.groups.find(new GroupId(group))
			.ifPresent((one) -> this.documents.changedFor(one.members().stream().map(Member::person).toList(), false));
		this.documents.changed(FeedKind.GROUP, group);
		this.worker.soon();
	}

	private void concerned(UUID advisory) {
		AdvisoryId id = new AdvisoryId(advisory);
		@Nullable PersonId last = null;
		List<PersonId> page = this.advisories.concerned(id, last, AT_ONCE);
		while (!page.isEmpty()) {
			this.documents.changedFor(page, true);
			last = page.get(page.size() - 1);
			page = this.advisories.concerned(id, last, AT_ONCE);
		}
		// Members read of sites that are not theirs.
		this.documents.changed(FeedKind.GROUP, null);
		this.worker.soon();
	}

}
