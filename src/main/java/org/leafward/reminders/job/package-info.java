/** Clustered Quartz jobs, each a caller of one service. */
@NullMarked
package org.leafward.reminders.job;

import org.jspecify.annotations.NullMarked;
