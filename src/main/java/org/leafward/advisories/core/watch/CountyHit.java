package org.leafward.advisories.core.watch;

/**
 * A hit in a county.
 *
 * @param code code of the county
 * @param name its name
 * @param hit what was found there
 */
public record CountyHit(String code, String name, Hit hit) {
}
