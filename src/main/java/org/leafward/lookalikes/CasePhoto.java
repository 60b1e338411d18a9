package org.leafward.lookalikes;

import java.time.Instant;
import java.util.UUID;

/**
 * A photo of a case, without its picture.
 *
 * @param id identifier
 * @param width px
 * @param height px
 * @param words what it shows; empty when nobody said
 * @param at when it was added
 */
public record CasePhoto(UUID id, int width, int height, String words, Instant at) {
}
