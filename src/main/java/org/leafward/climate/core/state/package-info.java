/**
 * States of the weather that care waits for: frost ahead, a hot dry wind, a dry spell, a
 * thaw, new snow.
 */
@NullMarked
package org.leafward.climate.core.state;

import org.jspecify.annotations.NullMarked;
