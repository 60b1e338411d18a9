package org.leafward.feeds.content;

import java.util.List;
import org.leafward.accounts.PersonId;
import org.leafward.feeds.FeedKind;
import org.leafward.feeds.FeedPart;
import org.leafward.feeds.core.FeedEntry;
import org.leafward.feeds.core.FeedWindow;
import org.leafward.feeds.core.TaskEntries;
import org.leafward.feeds.core.WorkdayEntries;
import org.leafward.feeds.store.DocumentTable.Claimed;
import org.leafward.workdays.GroupId;
import org.leafward.workdays.PersonWorkday;
import org.leafward.workdays.SignUpState;
import org.leafward.workdays.Workdays;
import org.springframework.stereotype.Component;

/** Workdays of the groups of whoever reads; in the calendar of a group only its own. */
@Component
class WorkdaySource implements EntrySource {

	private final Workdays workdays;

	WorkdaySource(Workdays workdays) {
		this.workdays = workdays;
	}

	@Override
	public List<FeedEntry> entries(Claimed feed, FeedWindow window, TaskEntries words, String base) {
		PersonId reader = (feed.kind() == FeedKind.PERSON) ? new PersonId(feed.what()) : feed.owner();
		boolean all = feed.kind() == FeedKind.PERSON;
		if (!feed.options().parts().contains(FeedPart.WORKDAYS) || reader == null
				|| !all && feed.kind() != FeedKind.GROUP) {
			return List.of();
		}
		WorkdayEntries entries = new WorkdayEntries(words, base);
		return this.workdays.ofPerson(reader, window.days())
			.stream()
			.filter((one) -> all || one.workday().group().equals(new GroupId(feed.what())))
			.filter((one) -> one.state() != SignUpState.OUT)
			.map((PersonWorkday one) -> entries.of(one.workday(), one.state()))
			.toList();
	}

}
