package org.leafward.care.web;

/**
 * A line of a page: what it is about and what there is to say.
 *
 * @param label a word or two
 * @param words the rest
 */
record Fact(String label, String words) {
}
