/**
 * Lists of plantings that somebody typed, copied or saved: what stands on each line.
 * Pure.
 */
@NullMarked
package org.leafward.register.core.list;

import org.jspecify.annotations.NullMarked;
