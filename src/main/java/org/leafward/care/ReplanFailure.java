package org.leafward.care;

import java.time.Instant;
import org.leafward.register.SiteId;

/**
 * A site whose tasks could not be derived.
 *
 * @param site the site
 * @param attempts how often it failed in a row
 * @param reason what went wrong the last time
 * @param nextTry when it is tried again at the earliest
 */
public record ReplanFailure(SiteId site, int attempts, String reason, Instant nextTry) {
}
