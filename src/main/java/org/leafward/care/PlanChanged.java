package org.leafward.care;

import java.time.Instant;
import java.util.UUID;

/**
 * The tasks of a site changed. Published once per site and derivation that wrote
 * something.
 *
 * @param site the site
 * @param person whose site it is
 * @param added number of tasks that are new
 * @param changed number of tasks with another date or text
 * @param withdrawn number of tasks no longer needed
 * @param at when
 */
public record PlanChanged(UUID site, UUID person, int added, int changed, int withdrawn, Instant at) {
}
