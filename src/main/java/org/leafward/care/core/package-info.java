/**
 * The pure part of care.
 */
@NullMarked
package org.leafward.care.core;

import org.jspecify.annotations.NullMarked;
