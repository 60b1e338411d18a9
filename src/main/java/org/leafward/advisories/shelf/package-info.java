/**
 * What was sent, read: from memory as long as somebody may act on it.
 */
@NullMarked
package org.leafward.advisories.shelf;

import org.jspecify.annotations.NullMarked;
