package org.leafward.register;

import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;

/**
 * A photo of a planting, without its picture.
 *
 * @param id identifier
 * @param planting what it shows
 * @param width px
 * @param height px
 * @param words what is seen on it, 1 to 200 characters; for those who can't see it, too
 * @param day on which it was taken, as its people say
 * @param at when it came in
 */
public record PlantPhoto(UUID id, PlantingId planting, int width, int height, String words, LocalDate day, Instant at) {
}
