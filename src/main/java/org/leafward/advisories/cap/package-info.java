/**
 * Alerts by the Common Alerting Protocol 1.2 (OASIS Standard, 1 July 2010).
 */
@NullMarked
package org.leafward.advisories.cap;

import org.jspecify.annotations.NullMarked;
