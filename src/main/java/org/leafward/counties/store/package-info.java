/**
 * Tables of this module.
 */
@NullMarked
package org.leafward.counties.store;

import org.jspecify.annotations.NullMarked;
