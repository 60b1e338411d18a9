/** The tables of schema {@code climate}. */
@NullMarked
package org.leafward.climate.store;

import org.jspecify.annotations.NullMarked;
