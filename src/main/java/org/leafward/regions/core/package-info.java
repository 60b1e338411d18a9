/**
 * Shapes on the earth and on paper. Pure.
 */
@NamedInterface("shapes")
@NullMarked
package org.leafward.regions.core;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
