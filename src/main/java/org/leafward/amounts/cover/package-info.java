/**
 * Which plants need a cover tonight, and whether the cover is enough.
 */
@NamedInterface("cover")
@NullMarked
package org.leafward.amounts.cover;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
