/** Whether reminders leave: meters and health, the only place that knows Micrometer. */
@NullMarked
package org.leafward.reminders.watch;

import org.jspecify.annotations.NullMarked;
