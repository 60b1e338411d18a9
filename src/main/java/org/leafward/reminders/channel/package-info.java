/** The ways a message can leave the house, one folder each. */
@NullMarked
package org.leafward.reminders.channel;

import org.jspecify.annotations.NullMarked;
