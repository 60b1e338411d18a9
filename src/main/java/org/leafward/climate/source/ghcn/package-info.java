/** Reads the two official layouts of GHCN-Daily. */
@NullMarked
package org.leafward.climate.source.ghcn;

import org.jspecify.annotations.NullMarked;
