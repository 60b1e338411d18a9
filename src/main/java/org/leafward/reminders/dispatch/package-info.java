/** Fills the reminder rows from the plan, and empties them through the channel. */
@NullMarked
package org.leafward.reminders.dispatch;

import org.jspecify.annotations.NullMarked;
