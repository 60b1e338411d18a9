package org.leafward.reminders.links;

import org.leafward.accounts.PersonId;
import org.leafward.reminders.Series;

/**
 * What stands in the address at which a series is left.
 *
 * @param person whose messages
 * @param channel code of the channel
 * @param series the series
 */
public record StopLink(PersonId person, String channel, Series series) {
}
