/**
 * Where a task stands on a day, and what may be done with it.
 */
@NullMarked
package org.leafward.care.core.state;

import org.jspecify.annotations.NullMarked;
