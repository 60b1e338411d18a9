package org.leafward.register;

import java.util.UUID;

/**
 * A site has another position, height or microclimate, another county, region, time zone
 * or soil, or other features.
 *
 * @param site the site
 */
public record SitePlaceChanged(UUID site) {
}
