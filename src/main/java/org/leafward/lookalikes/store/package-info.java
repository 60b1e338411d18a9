/**
 * Tables of cases, their notes and photos, and of the versions of the key that
 * specialists published.
 */
@NullMarked
package org.leafward.lookalikes.store;

import org.jspecify.annotations.NullMarked;
