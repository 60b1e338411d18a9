/** When a reminder is due, for which tasks, and what it says: values in, values out. */
@NullMarked
package org.leafward.reminders.core;

import org.jspecify.annotations.NullMarked;
