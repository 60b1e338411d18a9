package org.leafward.lookalikes;

import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;

/**
 * Something written in a case.
 *
 * @param id identifier
 * @param person who wrote it; null for an operator, and for people who are gone
 * @param fromDesk whether the help desk wrote it
 * @param words what, up to 2,000 characters
 * @param at when
 */
public record CaseNote(UUID id, @Nullable PersonId person, boolean fromDesk, String words, Instant at) {
}
