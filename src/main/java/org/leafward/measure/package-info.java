/**
 * Units, dates and small shared values. Pure Java; knows no other package and never reads
 * a clock.
 */
@ApplicationModule(displayName = "Measure", allowedDependencies = {})
@NullMarked
package org.leafward.measure;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
