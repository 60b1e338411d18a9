package org.leafward.workdays;

import java.time.Instant;
import java.util.UUID;

/**
 * A link by which people join a group, without its secret.
 *
 * @param id identifier
 * @param group which group
 * @param madeAt when it was made
 * @param expiresAt until when it works
 */
public record GroupLink(UUID id, GroupId group, Instant madeAt, Instant expiresAt) {
}
