/**
 * Phases of the plant's year with their estimates, and events that people log.
 */
@NamedInterface("phase")
@NullMarked
package org.leafward.care.core.phase;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
