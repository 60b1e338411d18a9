/** What of a planting and its site goes into the amounts and ramps of its tasks. */
@NullMarked
package org.leafward.care.core.amount;

import org.jspecify.annotations.NullMarked;
