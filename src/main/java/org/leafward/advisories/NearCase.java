package org.leafward.advisories;

import java.time.LocalDate;
import org.leafward.measure.GeoPoint;

/**
 * A case of the look-alike key, as much of it as says where a trouble is about.
 *
 * @param id identifier of the case, whatever its form; it counts once
 * @param cause code of the most likely cause
 * @param causeWords the cause in words
 * @param species identifier of the plant's species
 * @param at where; coarse is enough
 * @param seenOn the day
 */
public record NearCase(String id, String cause, Bilingual causeWords, String species, GeoPoint at, LocalDate seenOn) {
}
