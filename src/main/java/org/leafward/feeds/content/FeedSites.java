package org.leafward.feeds.content;

import java.util.List;
import java.util.Optional;
import org.leafward.feeds.store.DocumentTable.Claimed;
import org.leafward.register.Bed;
import org.leafward.register.BedId;
import org.leafward.register.Beds;
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

	private final Beds beds;

	/**
	 * Creates the look-up.
	 * @param groups who belongs to what
	 * @param beds parts of sites
	 */
	public FeedSites(Groups groups, Beds beds) {
		this.groups = groups;
		this.beds = beds;
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
			case BED -> bed(feed).map((one) -> List.of(one.site())).orElse(List.of());
			case PERSON -> List.of();
		};
	}

	/**
	 * The bed that a calendar is about.
	 * @param feed the calendar of a bed
	 * @return empty when it is gone
	 */
	public Optional<Bed> bed(Claimed feed) {
		return this.beds.find(new BedId(feed.what()));
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
