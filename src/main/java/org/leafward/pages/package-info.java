/**
 * The shared look of the HTML and the shape of errors. Knows no capability.
 */
@ApplicationModule(displayName = "Pages", allowedDependencies = { "measure" })
@NullMarked
package org.leafward.pages;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
