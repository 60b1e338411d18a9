/**
 * People, who is looking, and what may be opened. Light module: no sub-packages but web.
 */
@ApplicationModule(displayName = "Accounts", allowedDependencies = { "language", "measure", "pages" })
@NullMarked
package org.leafward.accounts;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
