/**
 * The stored tasks.
 */
@NullMarked
package org.leafward.care.store;

import org.jspecify.annotations.NullMarked;
