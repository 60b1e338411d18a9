/** The reminder and mail rows; the only SQL of the module. */
@NullMarked
package org.leafward.reminders.store;

import org.jspecify.annotations.NullMarked;
