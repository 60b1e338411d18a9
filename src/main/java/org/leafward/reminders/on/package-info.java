/** Listeners to what happened in the modules below. */
@NullMarked
package org.leafward.reminders.on;

import org.jspecify.annotations.NullMarked;
