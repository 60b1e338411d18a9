package org.leafward.register;

import java.util.UUID;

/**
 * Plantings of a site were added, changed or ended. Published once for each change,
 * however many plantings it touches.
 *
 * @param site the site
 */
public record PlantingsChanged(UUID site) {
}
