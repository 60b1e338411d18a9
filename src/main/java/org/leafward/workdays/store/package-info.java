/** Tables of groups and workdays; nobody outside the module sees them. */
@NullMarked
package org.leafward.workdays.store;

import org.jspecify.annotations.NullMarked;
