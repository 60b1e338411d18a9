/** Jobs; what they call lies above. */
@NullMarked
package org.leafward.workdays.job;

import org.jspecify.annotations.NullMarked;
