/**
 * Takes up again what a listener could not finish.
 */
@NullMarked
package org.leafward.platform.events;

import org.jspecify.annotations.NullMarked;
