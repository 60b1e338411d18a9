/**
 * What happens elsewhere and ends a quick calendar.
 */
@NullMarked
package org.leafward.quick.on;

import org.jspecify.annotations.NullMarked;
