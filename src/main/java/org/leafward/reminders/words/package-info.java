/** The words of messages as files hold them, and what programs get in place of words. */
@NullMarked
package org.leafward.reminders.words;

import org.jspecify.annotations.NullMarked;
