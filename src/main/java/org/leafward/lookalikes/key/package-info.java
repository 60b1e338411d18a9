/**
 * Reads the look-alike key from config/lookalikes.
 */
@NullMarked
package org.leafward.lookalikes.key;

import org.jspecify.annotations.NullMarked;
