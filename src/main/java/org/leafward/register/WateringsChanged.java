package org.leafward.register;

import java.util.UUID;

/**
 * A watering of a site was recorded or taken back.
 *
 * @param site the site
 */
public record WateringsChanged(UUID site) {
}
