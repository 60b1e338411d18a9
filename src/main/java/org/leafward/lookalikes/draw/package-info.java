/** Our own drawings of leaves and crowns, for the questions. */
@NullMarked
package org.leafward.lookalikes.draw;

import org.jspecify.annotations.NullMarked;
