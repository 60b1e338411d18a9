/**
 * When the watch looks.
 */
@NullMarked
package org.leafward.advisories.job;

import org.jspecify.annotations.NullMarked;
