/**
 * Changing the look-alike key: drafts, what they would change in recorded cases,
 * versions.
 */
@NullMarked
package org.leafward.lookalikes.workshop;

import org.jspecify.annotations.NullMarked;
