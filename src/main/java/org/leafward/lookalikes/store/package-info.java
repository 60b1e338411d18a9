/** Tables of cases, their notes and photos. */
@NullMarked
package org.leafward.lookalikes.store;

import org.jspecify.annotations.NullMarked;
