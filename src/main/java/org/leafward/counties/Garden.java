package org.leafward.counties;

import java.time.Instant;
import java.time.LocalDate;
import org.leafward.register.SiteId;

/**
 * The model garden of a county.
 *
 * @param county code of the county
 * @param site its site
 * @param version rises with every change of its tasks
 * @param tendedOn the day on which its plants were last looked after
 * @param madeAt when it was made
 */
public record Garden(String county, SiteId site, long version, LocalDate tendedOn, Instant madeAt) {
}
