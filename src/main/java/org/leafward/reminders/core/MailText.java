package org.leafward.reminders.core;

/**
 * What a mail says.
 *
 * @param subject one line
 * @param text plain text, lines ending in LF
 * @param html a whole HTML document with the same content
 */
public record MailText(String subject, String text, String html) {
}
