/** The pages of the outbox. */
@NullMarked
package org.leafward.reminders.web;

import org.jspecify.annotations.NullMarked;
