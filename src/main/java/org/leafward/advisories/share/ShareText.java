package org.leafward.advisories.share;

/**
 * Words to pass on.
 *
 * @param language code of their language
 * @param brief for where there is little room
 * @param full for a newsletter
 */
public record ShareText(String language, String brief, String full) {
}
