/**
 * What look-alikes keep.
 */
@NullMarked
package org.leafward.lookalikes.store;

import org.jspecify.annotations.NullMarked;
