/**
 * Reads everything under config/: YAML checked against a JSON Schema, with file, line,
 * reason and mend for each problem. Never knows what the files are for.
 */
@ApplicationModule(displayName = "Knowledge", allowedDependencies = { "measure" })
@NullMarked
package org.leafward.knowledge;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
