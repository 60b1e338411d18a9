package org.leafward.lookalikes.core;

/**
 * One answer to a question, which is one evidence.
 *
 * @param id the evidence, unique in the key, for example {@code leaf-edge-inward}
 * @param words the answer, a few words
 * @param help what it looks like, a sentence; may be empty
 * @param brief the evidence as it stands in a list of what speaks for and against, for
 * example "brown from the edge inward"
 * @param usual how often it is ticked whatever the cause, above 0 and below 1
 */
public record Answer(String id, String words, String help, String brief, double usual) {
}
