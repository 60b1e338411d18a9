package org.leafward.care.core.phase;

/**
 * Something that people log and rules hang on.
 *
 * @param name lower case with hyphens, for example {@code oak-wound}
 * @param words the event for readers
 */
public record LoggedEvent(String name, String words) {
}
