package org.leafward.register;

import java.util.UUID;

/**
 * A site has another position, height or microclimate, or another region or other
 * features.
 *
 * @param site the site
 */
public record SitePlaceChanged(UUID site) {
}
