/** Messages to servers of people's own, signed as Standard Webhooks 1.0.0 says. */
@NullMarked
package org.leafward.reminders.channel.webhook;

import org.jspecify.annotations.NullMarked;
