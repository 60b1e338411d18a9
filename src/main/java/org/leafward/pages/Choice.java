package org.leafward.pages;

/**
 * One of a few things to choose from in a form.
 *
 * @param value what the form sends
 * @param words what the reader sees
 */
public record Choice(String value, String words) {
}
