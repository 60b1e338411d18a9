package org.leafward.register;

import java.util.UUID;

/**
 * A bed of a site was added, changed or removed, or other plantings stand in one.
 *
 * @param site the site
 */
public record BedsChanged(UUID site) {
}
