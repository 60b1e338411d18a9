/**
 * What iCalendar documents of all kinds share: clean text, lines folded by octets, time
 * zones, and invitations (RFC 5545, 5546). It knows no capability; feeds and workdays
 * both write with it.
 */
@ApplicationModule(displayName = "Calendars", allowedDependencies = {})
@NullMarked
package org.leafward.calendars;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
