/** How long work takes, who may do it and with what: pure, and all of it estimates. */
@NullMarked
package org.leafward.workdays.core.effort;

import org.jspecify.annotations.NullMarked;
