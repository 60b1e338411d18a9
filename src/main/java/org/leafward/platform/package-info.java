/**
 * Wiring: database, clock, jobs, event care. Imports no capability and is imported by
 * none.
 */
@ApplicationModule(displayName = "Platform", allowedDependencies = {})
@NullMarked
package org.leafward.platform;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
