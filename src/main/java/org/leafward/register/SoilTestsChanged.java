package org.leafward.register;

import java.util.UUID;

/**
 * A soil test of a site was entered or taken back.
 *
 * @param site the site
 */
public record SoilTestsChanged(UUID site) {
}
