package org.leafward.register;

import java.util.UUID;

/**
 * A site is new.
 *
 * @param site the site
 * @param owner whose site it is
 */
public record SiteRegistered(UUID site, UUID owner) {
}
