/**
 * Messages to browsers by push services (RFC 8030, 8291, 8292); the only place that knows
 * the library for them.
 */
@NullMarked
package org.leafward.reminders.channel.push;

import org.jspecify.annotations.NullMarked;
