package org.leafward.accounts;

import java.time.ZoneId;

/**
 * Somebody who looks after plants.
 *
 * @param id identifier
 * @param name the name to address them by
 * @param email where reminders go
 * @param zone time zone in which their reminders are due
 */
public record Person(PersonId id, String name, String email, ZoneId zone) {
}
