/**
 * Cases that came up near each other.
 */
@NullMarked
package org.leafward.advisories.core.cases;

import org.jspecify.annotations.NullMarked;
