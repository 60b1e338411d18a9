package org.leafward.pages;

import java.time.LocalDate;

/**
 * A date worth a thin labelled line in a picture.
 *
 * @param label what happens, a few words
 * @param date when
 */
public record DateLine(String label, LocalDate date) {
}
