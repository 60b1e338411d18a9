/**
 * Patterns and pairs of units. Pure Java.
 */
@NullMarked
package org.leafward.language.core;

import org.jspecify.annotations.NullMarked;
