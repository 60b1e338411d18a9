package org.leafward.quick;

import java.util.UUID;
import org.leafward.accounts.PersonId;
import org.leafward.feeds.FeedId;
import org.leafward.register.SiteId;

/**
 * A quick calendar as it is kept.
 *
 * @param id identifier
 * @param person who has it
 * @param site the place
 * @param feed the latest feed
 */
public record QuickCalendar(UUID id, PersonId person, SiteId site, FeedId feed) {
}
