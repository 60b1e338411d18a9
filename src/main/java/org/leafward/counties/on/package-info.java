/**
 * What happens elsewhere and moves the dates of a county.
 */
@NullMarked
package org.leafward.counties.on;

import org.jspecify.annotations.NullMarked;
