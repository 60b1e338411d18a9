/**
 * The freezes of a place from the stations around it, and how far they can be trusted.
 */
@NullMarked
package org.leafward.climate.core.place;

import org.jspecify.annotations.NullMarked;
