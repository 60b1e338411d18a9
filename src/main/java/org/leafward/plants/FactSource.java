package org.leafward.plants;

/**
 * Where a fact about a species comes from, when it is more than common knowledge.
 *
 * @param fact what the source says, in a few words
 * @param title title of the publication
 * @param publisher who published it
 * @param address web address
 */
public record FactSource(String fact, String title, String publisher, String address) {
}
