package org.leafward.accounts;

/**
 * A mail with a secret in it. It is sent at once and kept nowhere, so that the outbox
 * doesn't open other people's accounts.
 *
 * @param to the address
 * @param name the name beside it
 * @param subject one line
 * @param text plain text
 */
public record Letter(String to, String name, String subject, String text) {
}
