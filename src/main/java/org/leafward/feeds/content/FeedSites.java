package org.leafward.feeds.content;

import java.util.List;
import java.util.Optional;
import org.leafward.feeds.store.DocumentTable.Claimed;
import org.leafward.register.SiteId;
import org.leafward.workdays.Group;
import org.leafward.workdays.GroupId;
import org.leafward.workdays.GroupSite;
import org.leafward.workdays.Groups;
import org.springframework.stereotype.Component;

/** The sites that a calendar is about. */
@Component
public class FeedSites {

	/** More than a group looks after. */
	private static final int MOST = 1_000;

	private final Groups groups;

	/**
	 * Creates the look-up.
	 * @param groups who belongs to what
	 */
	public FeedSites(Groups groups) {
		this.groups = groups;
	}

	/**
	 * The sites of a calendar that isn't about all that somebody has.
	 * @param feed the calendar
	 * @return nothing when they are gone, or when the reader no longer belongs to the
	 * group
	 */
	public List<SiteId> of(Claimed feed) {
		return switch (feed.kind()) {
			case SITE -> List.of(new SiteId(feed.what()));
			case GROUP -> group(feed).map((one) -> one.sites().stream().map(GroupSite::site).limit(MOST).toList())
				.orElse(List.of());
			case BED, PERSON -> List.of();
		};
	}

	/**
	 * The group that a calendar is about.
	 * @param feed the calendar
	 * @return empty for others, and when the reader no longer belongs to it
	 */
	public Optional<Group> group(Claimed feed) {
		return Optional.ofNullable(feed.owner())
			.flatMap((reader) -> this.groups.find(new GroupId(feed.what()))
				.filter((one) -> one.member(reader).isPresent()));
	}

}
