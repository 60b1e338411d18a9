/** Addresses in messages that let somebody act without signing in, and what they do. */
@NullMarked
package org.leafward.reminders.links;

import org.jspecify.annotations.NullMarked;
