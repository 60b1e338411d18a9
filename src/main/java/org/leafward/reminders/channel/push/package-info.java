/** Messages to browsers by push services (RFC 8030, 8291, 8292). */
@NullMarked
package org.leafward.reminders.channel.push;

import org.jspecify.annotations.NullMarked;
