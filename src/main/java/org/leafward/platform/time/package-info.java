/**
 * The only clock.
 */
@NullMarked
package org.leafward.platform.time;

import org.jspecify.annotations.NullMarked;
