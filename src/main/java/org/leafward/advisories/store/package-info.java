/**
 * Tables of advisories.
 */
@NullMarked
package org.leafward.advisories.store;

import org.jspecify.annotations.NullMarked;
