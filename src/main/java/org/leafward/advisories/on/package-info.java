/**
 * What follows from what happened.
 */
@NullMarked
package org.leafward.advisories.on;

import org.jspecify.annotations.NullMarked;
