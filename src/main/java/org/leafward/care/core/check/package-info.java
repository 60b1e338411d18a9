/**
 * Finds rules that contradict each other.
 */
@NamedInterface("check")
@NullMarked
package org.leafward.care.core.check;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
