/**
 * From markers and rules to dated windows, and from two plans to their difference.
 */
@NullMarked
package org.leafward.care.core.plan;

import org.jspecify.annotations.NullMarked;
