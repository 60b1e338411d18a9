/** Internet mail; the only place that knows Jakarta Mail. */
@NullMarked
package org.leafward.reminders.channel.mail;

import org.jspecify.annotations.NullMarked;
