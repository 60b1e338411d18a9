package org.leafward.calendars;

/**
 * Who invites, or is invited.
 *
 * @param name what they are called
 * @param address an e-mail address
 */
public record Party(String name, String address) {
}
