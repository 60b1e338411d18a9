package org.leafward.workdays;

import org.leafward.accounts.PersonId;
import org.leafward.register.SiteId;

/**
 * A site that its owner gave to a group.
 *
 * @param site which
 * @param owner whose it is
 * @param name what they call it
 * @param where what members are told of where it is: an address, or county and rough
 * position where its owner wants no more said
 * @param exact whether that is an address
 */
public record GroupSite(SiteId site, PersonId owner, String name, String where, boolean exact) {
}
