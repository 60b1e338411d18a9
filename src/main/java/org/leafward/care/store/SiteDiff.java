package org.leafward.care.store;

import org.leafward.care.core.plan.PlanDiff;
import org.leafward.register.Site;

/**
 * What has to be written for a site.
 *
 * @param site the site
 * @param diff the difference
 */
public record SiteDiff(Site site, PlanDiff diff) {
}
