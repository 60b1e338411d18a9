/**
 * Shapes on the earth and on paper. Pure.
 */
@NullMarked
package org.leafward.regions.core;

import org.jspecify.annotations.NullMarked;
