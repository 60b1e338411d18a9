/**
 * Entries to RFC 5545 octets; the only place that knows the calendar library.
 */
@NamedInterface("ical")
@NullMarked
package org.leafward.feeds.ical;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
