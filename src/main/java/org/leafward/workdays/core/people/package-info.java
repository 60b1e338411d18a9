/** Whose turn it is: pure. */
@NullMarked
package org.leafward.workdays.core.people;

import org.jspecify.annotations.NullMarked;
