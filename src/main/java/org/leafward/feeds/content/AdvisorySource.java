package org.leafward.feeds.content;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.leafward.accounts.PersonId;
import org.leafward.advisories.Advisories;
import org.leafward.advisories.Advisory;
import org.leafward.feeds.FeedKind;
import org.leafward.feeds.FeedPart;
import org.leafward.feeds.core.AdvisoryEntries;
import org.leafward.feeds.core.FeedEntry;
import org.leafward.feeds.core.FeedWindow;
import org.leafward.feeds.core.TaskEntries;
import org.leafward.feeds.store.DocumentTable.Claimed;
import org.leafward.register.SiteId;
import org.springframework.stereotype.Component;

/** Advisories that concern what the calendar is about. */
@Component
class AdvisorySource implements EntrySource {

	/**
	 * Days that what is over stays, as long as the advisories remember whom it concerned.
	 */
	private static final int BEHIND = 60;

	private final Advisories advisories;

	private final FeedSites sites;

	AdvisorySource(Advisories advisories, FeedSites sites) {
		this.advisories = advisories;
		this.sites = sites;
	}

	@Override
	public List<FeedEntry> entries(Claimed feed, FeedWindow window, TaskEntries words, String base) {
		if (!feed.options().parts().contains(FeedPart.ADVISORIES)) {
			return List.of();
		}
		AdvisoryEntries entries = new AdvisoryEntries(words, feed.options().speech().language(), base);
		return concerned(feed).stream()
			.map(entries::of)
			.filter((entry) -> window.days().overlaps(entry.window()))
			.toList();
	}

	private Collection<Advisory> concerned(Claimed feed) {
		if (feed.kind() == FeedKind.PERSON) {
			return this.advisories.of(new PersonId(feed.what()), Math.min(BEHIND, feed.options().behind()));
		}
		List<SiteId> sites = this.sites.of(feed);
		Set<Advisory> all = new LinkedHashSet<>();
		if (!sites.isEmpty()) {
			this.advisories.currentFor(sites).values().forEach(all::addAll);
		}
		return all;
	}

}
