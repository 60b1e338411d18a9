/**
 * What somebody typed, which kinds of plants there are, when they went into the ground.
 * Pure.
 */
@NullMarked
package org.leafward.quick.core;

import org.jspecify.annotations.NullMarked;
