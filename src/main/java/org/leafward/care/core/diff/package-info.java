/**
 * Differences between texts.
 */
@NullMarked
package org.leafward.care.core.diff;

import org.jspecify.annotations.NullMarked;
